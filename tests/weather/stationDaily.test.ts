import { addDays } from "@pith/rules";
import { expect, test } from "vitest";
import { readStationDaily } from "../../packages/services/src/imports/stationDaily.ts";

/**
 * A station's daily file of the Global Historical Climatology Network, in the two forms that its readme documents.
 * TMAX and TMIN in tenths of a degree, PRCP in tenths of a millimetre: 217 is 21.7.
 */

const HEAD =
  '"STATION","DATE","LATITUDE","LONGITUDE","ELEVATION","NAME","PRCP","PRCP_ATTRIBUTES","SNOW","SNOW_ATTRIBUTES","TMAX","TMAX_ATTRIBUTES","TMIN","TMIN_ATTRIBUTES"';
const day = (date: string, prcp: string, tmax: string, tmin: string, station = "XX000000001") =>
  `"${station}","${date}","43.6","-89.4","250","ALDERTARN, COUNTY FARM",${prcp},"","",${tmax},${tmin}`;
const NO_FLAGS = '",,0,2400"';
const ofDays = (...rows: string[]) => readStationDaily([HEAD, ...rows].join("\n"), null);
const ofValues = (...rows: string[]) => readStationDaily(rows.join("\n"), "XX000000001");
const rowsOf = (read: ReturnType<typeof readStationDaily>) => read?.accepted.map((a) => a.row);

test("a row a day: tenths become units, a blank and -9999 are missing, other elements are left out", () => {
  const read = ofDays(
    day("1938-05-01", '"   25",",,0,2400"', '"  217",",,0,2400"', '"  -11",",,0,2400"'),
    day("1938-05-02", '"",""', '"  220",",,0,2400"', '"-9999",""'),
  );
  expect(rowsOf(read)).toEqual([
    { date: "1938-05-01", rainMm: 2.5, tMaxC: 21.7, tMinC: -1.1 },
    { date: "1938-05-02", tMaxC: 22 },
  ]);
  expect(read?.refused).toEqual([]);
  expect(read?.questions).toEqual([]);
  expect(read?.columns.filter((c) => c.field).map((c) => [c.header, c.field, c.unit])).toEqual([
    ["DATE", "date", null],
    ["PRCP", "rainMm", "0.1 mm"],
    ["TMAX", "tMaxC", "0.1 °C"],
    ["TMIN", "tMinC", "0.1 °C"],
  ]);
});

test("a value that failed a quality check is refused with what the check says; the day's others stay", () => {
  const read = ofDays(day("1938-05-01", `"25",${NO_FLAGS}`, '"917",",X,0"', '"-11",",,0"'));
  expect(rowsOf(read)).toEqual([{ date: "1938-05-01", rainMm: 2.5, tMinC: -1.1 }]);
  expect(read?.refused).toEqual([
    {
      line: 2,
      column: "TMAX",
      value: "917",
      reason: "it failed the network's quality check X: no place on earth has it",
    },
  ]);
});

test("a trace is 0; a zero that is only presumed stays missing, and is told", () => {
  const read = ofDays(
    day("1938-05-01", '"0","T,,0"', '"217",",,0"', '"0",",,0"'),
    day("1938-05-02", '"0","P,,0"', '"217",",,0"', '"0",",,0"'),
  );
  expect(rowsOf(read)).toEqual([
    { date: "1938-05-01", rainMm: 0, tMaxC: 21.7, tMinC: 0 },
    { date: "1938-05-02", tMaxC: 21.7, tMinC: 0 },
  ]);
  expect(read?.refused.map((r) => r.reason)).toEqual([
    "1 values are flagged P, missing and presumed to be zero; they stay missing",
  ]);
});

test.each([
  ["without a header", []],
  ["with one", ["ID,DATE,ELEMENT,DATA_VALUE,M_FLAG,Q_FLAG,S_FLAG,OBS_TIME"]],
])("a row a value, %s: the same days", (_, head) => {
  const read = ofValues(
    ...head,
    "XX000000001,19380501,TMAX,217,,,0,2400",
    "XX000000001,19380501,TMIN,-11,,,0,2400",
    "XX000000001,19380502,TMAX,300,,I,0,",
    "XX000000001,19380501,PRCP,25,,,0,",
    "XX000000001,19380502,SNWD,0,,,0,",
    "XX000000001,19380502,TMIN,5,,,0,",
  );
  expect(rowsOf(read)).toEqual([
    { date: "1938-05-01", tMaxC: 21.7, tMinC: -1.1, rainMm: 2.5 },
    { date: "1938-05-02", tMinC: 0.5 },
  ]);
  expect(read?.refused).toMatchObject([{ line: 3 + head.length, column: "TMAX", value: "300" }]);
});

test("of several stations the site's is read; where it is not among them, all are named and none is read", () => {
  const rows = ["XX000000001,19380501,TMAX,217,,,0,", "XX000000002,19380501,TMAX,300,,,0,"];
  expect(rowsOf(ofValues(...rows))).toEqual([{ date: "1938-05-01", tMaxC: 21.7 }]);
  expect(readStationDaily(rows.join("\n"), null)).toMatchObject({
    accepted: [],
    refused: [
      {
        reason:
          "The file holds 2 stations (XX000000001, XX000000002). Name the one wanted as the site's weather station, or leave the others out.",
      },
    ],
  });
});

test.each([
  ["the same day twice", ["19380501,TMAX,217", "19380501,TMAX,218"], "1938-05-01 stands on line 1 already"],
  ["a day that is none", ["19380501,TMAX,217", "19380431,TMAX,218"], '"19380431" is not a day'],
  ["a maximum below its minimum", ["19380501,TMAX,17", "19380501,TMIN,80"], "must not be below tMinC"],
  ["a heat that never was", ["19380501,TMIN,17", "19380501,TMAX,917"], "must be at most 60"],
])("%s is refused", (_, values, reason) => {
  const read = ofValues(...values.map((value) => `XX000000001,${value},,,0,`));
  expect(read?.refused).toMatchObject([{ reason: expect.stringContaining(reason) }]);
});

test("a value that is not whole tenths is refused, and in the table of days it makes the table another one", () => {
  const read = ofValues("XX000000001,19380501,TMAX,217,,,0,", "XX000000001,19380502,TMAX,21.7,,,0,");
  expect(read?.refused).toMatchObject([{ reason: '"21.7" is not a whole number of tenths' }]);
  expect(ofDays(day("1938-05-01", '"0.25",",,0"', '"71",",,0"', '"40",",,0"'))).toBeUndefined();
});

test("any other file is left to the ordinary reader", () => {
  expect(readStationDaily("date,tMaxC,tMinC,rainMm\n1938-04-01,2.2,-1.1,\n", null)).toBeUndefined();
  expect(readStationDaily("sampled on,bed,pH\n2026-03-14,North,6.4\n", null)).toBeUndefined();
});

test("a file of nothing but refusals stops with one sentence", () => {
  const rows = Array.from({ length: 6000 }, (_, i) => {
    const date = addDays("1938-01-01", i).replaceAll("-", "");
    return `XX000000001,${date},TMAX,217,,X,0,`;
  });
  expect(ofValues(...rows)?.refused).toEqual([
    {
      line: 1,
      column: null,
      value: null,
      reason:
        "More than 5000 values cannot be used; the first, on line 1: it failed the network's quality check X: no place on earth has it.",
    },
  ]);
});

test("no element of ours, and a file that breaks in a quote", () => {
  expect(ofValues("XX000000001,19380502,SNWD,0,,,0,")?.refused).toMatchObject([
    { reason: "No TMAX, TMIN, PRCP value stands in the file." },
  ]);
  expect(() => ofDays('"XX000000001","1938-05-01')).toThrow("The file cannot be read as CSV (line 2)");
});

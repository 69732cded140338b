import type { Column } from "@pith/contract";
import { describe, expect, test } from "vitest";
import { dateFormatOf, readDay, readNumber } from "../../packages/services/src/imports/cells.ts";
import { readCsv } from "../../packages/services/src/imports/csv.ts";
import { readSoilTests } from "../../packages/services/src/imports/readSoilTests.ts";
import { readWeather } from "../../packages/services/src/imports/readWeather.ts";

/** Reading files: what is understood by name, what is asked, what is refused and why. */

const BED = "0b6c2a5e-0000-4000-8000-000000000001";
const defaults = { bedsByName: new Map([["north tunnel", BED]]) };
const soil = (csv: string, more: object = {}, now?: Column[], before?: Column[]) =>
  readSoilTests(readCsv(csv), { now, before }, { ...defaults, ...more });
const weather = (csv: string, said?: Column[]) => readWeather(readCsv(csv), said);

describe("cells", () => {
  test("a limit is not turned into a number", () => {
    expect(readNumber("<0.5", false)).toEqual({
      kind: "unreadable",
      reason: '"<0.5" is a limit, not a number; leave the cell empty or give the number',
    });
  });
  test("6,5 is 6.5 only where the separator is not a comma", () => {
    expect(readNumber("6,5", true)).toEqual({ kind: "number", value: 6.5 });
    expect(readNumber("6,5", false).kind).toBe("unreadable");
  });
  test("31 April does not exist", () => {
    expect(readDay("2026-04-31", "YYYY-MM-DD")).toBeNull();
    expect(readDay("04/30/2026", "MM/DD/YYYY")).toBe("2026-04-30");
  });
  test("04/05/2026 alone is in doubt; 04/25/2026 beside it settles it", () => {
    expect(dateFormatOf(["04/05/2026"])).toBeNull();
    expect(dateFormatOf(["04/05/2026", "04/25/2026"])).toBe("MM/DD/YYYY");
  });
});

describe("a laboratory's file", () => {
  test("columns are matched by name with unit, extractant, method and extraction", async () => {
    const read = await soil(
      "Date sampled,Bed,Sample ID,Depth (in),pH,Buffer pH (SMP),OM %,CEC meq/100g,EC 1:2 (mmhos/cm),Mehlich-3 P ppm,Mehlich-3 K lb/A\n" +
        "2026-03-14,North tunnel,A1,6,6.4,6.8,3.1,9.5,0.4,52,240\n",
    );
    expect(read.questions).toEqual([]);
    expect(read.refused).toEqual([]);
    expect(read.accepted[0]?.row).toMatchObject({
      bedId: BED,
      sampledOn: "2026-03-14",
      sampleRef: "A1",
      depthCm: 15.24,
      waterPh: 6.4,
      bufferPh: { method: "smp", value: 6.8 },
      organicMatterPct: 3.1,
      cecCmolPerKg: 9.5,
      ec: { dSPerM: 0.4, extraction: "1:2" },
      values: [
        { nutrient: "P", extractant: "mehlich-3", mgPerKg: 52 },
        { nutrient: "K", extractant: "mehlich-3", mgPerKg: 120 },
      ],
    });
  });

  test("a unit and an extractant that the file does not state are asked, never guessed", async () => {
    const read = await soil("sampled on,bed,depth cm,P\n2026-03-14,North tunnel,15,52\n");
    expect(read.accepted).toEqual([]);
    expect(read.questions.map((q) => [q.header, q.about])).toEqual([
      ["P", "unit"],
      ["P", "extractant"],
    ]);
  });

  test("answered questions settle the column; `not stated` keeps the value without an extractant", async () => {
    const columns = [{ header: "P", field: "P", unit: "ppm", extractant: "not stated" }];
    const read = await soil("sampled on,bed,depth cm,P\n2026-03-14,North tunnel,15,52\n", {}, columns);
    expect(read.questions).toEqual([]);
    expect(read.accepted[0]?.row.values).toEqual([{ nutrient: "P", mgPerKg: 52 }]);
  });

  test("each refused row is named by line, column and reason, and the others are kept", async () => {
    const read = await soil(
      "sampled on,bed,depth cm,sample,pH\n" +
        "2026-03-14,North tunnel,15,A,19\n" +
        "2026-03-14,South field,15,B,6.5\n" +
        "14 March,North tunnel,15,C,6.5\n" +
        "2026-03-14,North tunnel,15,D,6.5\n" +
        "2026-03-14,North tunnel,15,D,6.6\n",
    );
    expect(read.accepted.map((a) => a.line)).toEqual([5]);
    expect(read.refused).toEqual([
      { line: 2, column: "pH", reason: "waterPh must be at most 12", value: "19" },
      {
        line: 3,
        column: "bed",
        reason: 'There is no bed "South field" on this farm; its beds are north tunnel',
        value: "South field",
      },
      {
        line: 4,
        column: "sampled on",
        reason: '"14 March" is not a day written as YYYY-MM-DD',
        value: "14 March",
      },
      {
        line: 6,
        column: "sample",
        reason: "The same sample stands on line 5 with other values: pH 6.5 on line 5, 6.6 here",
        value: "D",
      },
    ]);
  });

  test("a file without a depth says which two places could say it", async () => {
    const read = await soil("sampled on,bed,pH\n2026-03-14,North tunnel,6.5\n");
    expect(read.refused.map((r) => r.reason)).toEqual([
      "No column is the sampling depth, and none was given for the whole file (depthCm).",
    ]);
    const deep = await soil("sampled on,bed,pH\n2026-03-14,North tunnel,6.5\n", { depthCm: 20 });
    expect(deep.accepted[0]?.row.depthCm).toBe(20);
  });

  test("1 meq K per 100 g is 391.0 mg/kg (reference row SN-121)", async () => {
    const read = await soil(
      "sampled on;bed;depth cm;K ammonium acetate meq/100 g\n2026-03-14;North tunnel;15;1,0\n",
    );
    expect(read.accepted[0]?.row.values).toEqual([
      {
        nutrient: "K",
        extractant: "ammonium-acetate",
        mgPerKg: expect.closeTo(391.0, 1),
        reported: { value: 1, unit: "meq/100 g" },
      },
    ]);
  });
});

describe("a station's file", () => {
  test("names in any of the usual spellings, units converted: 68 F is 20 C, 0.5 in is 12.7 mm, 10 mph is 4.4704 m/s", async () => {
    const read = await weather(
      "Date,Max Temp (°F),Min Temp (°F),Rain (in),Wind mph\n2026-05-01,68,50,0.5,10\n",
    );
    expect(read.questions).toEqual([]);
    const row = read.accepted[0]?.row;
    expect(row?.date).toBe("2026-05-01");
    expect(row?.tMaxC).toBeCloseTo(20, 12);
    expect(row?.tMinC).toBeCloseTo(10, 12);
    expect(row?.rainMm).toBeCloseTo(12.7, 12);
    expect(row?.windMPerS).toBeCloseTo(4.4704, 12);
  });

  test("our own field names are understood with their units", async () => {
    const read = await weather(
      "date,tMaxC,tMinC,rainMm,rhMeanPct,windMPerS,rsMjPerM2Day\n2026-05-01,20,10,0,70,2,18\n",
    );
    expect(read.questions).toEqual([]);
    expect(read.accepted[0]?.row).toEqual({
      date: "2026-05-01",
      tMaxC: 20,
      tMinC: 10,
      rainMm: 0,
      rhMeanPct: 70,
      windMPerS: 2,
      rsMjPerM2Day: 18,
    });
  });

  test("temp_max without a unit is asked", async () => {
    const read = await weather("date,precipitation,temp_max,temp_min,wind\n2012-01-01,0.0,12.8,5.0,4.7\n");
    expect(read.questions.map((q) => q.header)).toEqual(["precipitation", "temp_max", "temp_min", "wind"]);
  });

  test("an empty cell is missing, not zero", async () => {
    const { accepted } = await weather("date,tMaxC,rainMm\n2026-05-01,20,\n");
    expect(accepted[0]?.row).toEqual({
      date: "2026-05-01",
      tMaxC: 20,
    });
  });

  test("a maximum below the minimum is refused with the line", async () => {
    const read = await weather("date,tMaxC,tMinC\n2026-05-01,5,9\n");
    expect(read.refused).toEqual([
      { line: 2, column: "tMaxC", reason: "tMaxC must not be below tMinC (read as °C)", value: "5" },
    ]);
  });

  test("Fahrenheit that claims Celsius is asked again", async () => {
    const days = Array.from(
      { length: 28 },
      (_, i) => `2026-06-${String(i + 1).padStart(2, "0")},${48 + (i % 5)}`,
    );
    const read = await weather(`date,tmax °C\n${days.join("\n")}\n`);
    expect(read.accepted).toEqual([]);
    expect(read.questions[0]?.ask).toBe(
      'Half the days of "tmax °C" would be hotter than 50 °C. In what unit is it?',
    );
  });

  test("line numbers hold across blank lines and quoted line breaks", async () => {
    const read = await weather('date,tMaxC,remark\n\n2026-05-01,20,"two\nlines"\n2026-05-02,x,\n');
    expect(read.refused).toEqual([{ line: 5, column: "tMaxC", reason: '"x" is not a number', value: "x" }]);
  });

  test("nothing but a header is refused in one sentence", async () => {
    expect(() => readCsv("date,tMaxC\n")).toThrow(
      "The file needs a header line and at least one row below it.",
    );
  });
});

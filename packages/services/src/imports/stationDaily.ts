import type { Column } from "@pith/contract";
import { problemsOf, WeatherDaySchema } from "@pith/rules";
import { parse } from "csv-parse/sync";
import { readDay } from "./cells.ts";
import { notCsv } from "./csv.ts";
import type { ReadFile, Refusal } from "./reading.ts";

/**
 * A station's file of the Global Historical Climatology Network - Daily (Menne et al. 2012; its readme states the
 * elements, their tenths and the flags), in either of its comma-separated forms:
 *
 * - one row a day, an element a column, its flags in `<ELEMENT>_ATTRIBUTES` as measurement, quality, source, time
 * - one row a value: station, day, element, value, the three flags, time; with or without a header
 *
 * Temperatures are tenths of a degree Celsius, rain is tenths of a millimetre. A value that failed a quality check is
 * refused and the others of its day are kept.
 */

const ELEMENTS = {
  TMAX: { field: "tMaxC", unit: "0.1 °C" },
  TMIN: { field: "tMinC", unit: "0.1 °C" },
  PRCP: { field: "rainMm", unit: "0.1 mm" },
} as const;
type Element = keyof typeof ELEMENTS;
const isElement = (word: string): word is Element => Object.hasOwn(ELEMENTS, word);

const MISSING = "-9999";
/** Flagged as missing and only presumed to be zero: missing is missing. */
const PRESUMED_ZERO = "P";

/** What each quality flag says, in our words. */
const QUALITY: Readonly<Record<string, string>> = {
  D: "the same values stand on other days",
  G: "it lies apart from all others of the season",
  I: "it contradicts the day's other values",
  K: "it repeats too often in a row",
  L: "it does not fit the length of its period",
  M: "it contradicts the month or year",
  N: "a zero stands for a missing value",
  O: "it is too far from what the season brings there",
  R: "it is out of range of the day before or after",
  S: "the stations around say otherwise",
  T: "it leaps from one day to the next",
  W: "it is too warm for snow",
  X: "no place on earth has it",
  Z: "it was found wrong by hand",
};

/** A longer list helps nobody: such a file is not what it should be. */
const MOST_REFUSED = 5000;

interface Value {
  line: number;
  station: string;
  day: string;
  element: Element;
  value: string;
  measurement: string;
  quality: string;
}

const ONE_VALUE_A_ROW = /^"?[A-Z]{2}[A-Z0-9_-]{9}"?,"?\d{8}"?,"?[A-Z0-9]{4}"?,"? *-?\d+"?,/;

/**
 * Reads such a file; undefined where it is none. Numbers with a decimal point are not in tenths, so a table that holds
 * them is left to the ordinary reader, which asks for their units.
 *
 * @param stationId of the site; chooses the station where the file holds several
 */
export function readStationDaily(csv: string, stationId: string | null): ReadFile | undefined {
  const text = csv.replace(/^\uFEFF/, "");
  const head = (text.split(/\r?\n/, 1)[0] ?? "").replaceAll('"', "").toUpperCase();
  const names = head.split(",").map((name) => name.trim());
  if (names.includes("STATION") && names.includes("DATE") && names.some((n) => n.endsWith("_ATTRIBUTES"))) {
    const values = valuesOfDays(text, names);
    return values && assemble(values, columnsOf(names), stationId);
  }
  const headed = /^ID,DATE,ELEMENT,(DATA_)?VALUE,/.test(head);
  if (!headed && !ONE_VALUE_A_ROW.test(text)) return undefined;
  return assemble(valuesOfLines(text, headed), columnsOf(["DATE", ...Object.keys(ELEMENTS)]), stationId);
}

const columnsOf = (names: string[]): Column[] =>
  names.map((header) => ({
    header,
    field: header === "DATE" ? "date" : isElement(header) ? ELEMENTS[header].field : null,
    unit: isElement(header) ? ELEMENTS[header].unit : null,
    extractant: null,
  }));

/** Calls back for each row and keeps none: a century of a big station is thirty million characters of cells. */
function eachRow(text: string, see: (cells: string[], line: number) => void): void {
  try {
    parse(text, {
      relaxColumnCount: true,
      skipEmptyLines: true,
      onRecord: (cells: string[], { lines }) => {
        see(
          cells.map((cell) => cell.trim()),
          lines,
        );
        return null;
      },
    });
  } catch (error) {
    throw notCsv(error);
  }
}

function valuesOfDays(text: string, names: string[]): Value[] | undefined {
  const values: Value[] = [];
  const at = (name: string) => names.indexOf(name);
  const elements = (Object.keys(ELEMENTS) as Element[]).filter((e) => at(e) >= 0);
  let inTenths = true;
  eachRow(text, (cells, line) => {
    if (line === 1) return;
    for (const element of elements) {
      const value = cells[at(element)] ?? "";
      if (value === "") continue;
      inTenths &&= !value.includes(".");
      const [measurement = "", quality = ""] = (cells[at(`${element}_ATTRIBUTES`)] ?? "").split(",");
      const station = cells[at("STATION")] ?? "";
      values.push({ line, station, day: cells[at("DATE")] ?? "", element, value, measurement, quality });
    }
  });
  return inTenths ? values : undefined;
}

function valuesOfLines(text: string, headed: boolean): Value[] {
  const values: Value[] = [];
  eachRow(text, (cells, line) => {
    if (headed && line === 1) return;
    const [station = "", day = "", element = "", value = "", measurement = "", quality = ""] = cells;
    if (isElement(element)) values.push({ line, station, day, element, value, measurement, quality });
  });
  return values;
}

function assemble(values: Value[], columns: Column[], stationId: string | null): ReadFile {
  const stations = [...new Set(values.map((v) => v.station))].sort();
  const station = stations.length === 1 ? stations[0] : stations.find((s) => s === stationId);
  if (station === undefined) return refuseAll(columns, whichStation(stations));
  const refused: Refusal[] = [];
  const refuse = ({ line, element, value }: Value, reason: string) =>
    refused.push({ line, column: element, reason, value });
  const days = new Map<string, Map<Element, { from: Value; stored: number }>>();
  let presumed = 0;
  for (const value of values) {
    if (value.station !== station || value.value === MISSING) continue;
    const day = readDay(value.day, "YYYY-MM-DD");
    if (day === null) {
      refuse(value, `"${value.day}" is not a day`);
    } else if (!/^-?\d+$/.test(value.value)) {
      refuse(value, `"${value.value}" is not a whole number of tenths`);
    } else if (value.quality.trim() !== "") {
      const flag = value.quality.trim();
      refuse(value, `it failed the network's quality check ${flag}: ${QUALITY[flag] ?? "not explained"}`);
    } else if (value.measurement.trim() === PRESUMED_ZERO) {
      presumed += 1;
    } else {
      const ofDay = days.get(day) ?? new Map();
      days.set(day, ofDay);
      const before = ofDay.get(value.element);
      if (before) refuse(value, `${day} stands on line ${before.from.line} already`);
      else ofDay.set(value.element, { from: value, stored: Number(value.value) / 10 });
    }
    if (refused.length > MOST_REFUSED) {
      const [first] = refused;
      return refuseAll(
        columns,
        `More than ${MOST_REFUSED} values cannot be used; the first, on line ${first?.line}: ${first?.reason}.`,
      );
    }
  }
  const accepted: ReadFile["accepted"] = [];
  for (const [date, ofDay] of [...days].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const row = { date, ...fieldsOf(ofDay) };
    const parsed = WeatherDaySchema.safeParse(row);
    const line = Math.min(...[...ofDay.values()].map((v) => v.from.line));
    if (parsed.success) accepted.push({ line, row });
    else {
      const [problem] = problemsOf(parsed.error, row);
      const [element, said] = [...ofDay].find(([e]) => ELEMENTS[e].field === problem?.field) ?? [];
      const reason = `${date}: ${problem?.field} ${problem?.message} (read as tenths)`;
      refused.push({ line, column: element ?? null, reason, value: said?.from.value ?? null });
    }
  }
  if (presumed > 0) {
    const reason = `${presumed} values are flagged P, missing and presumed to be zero; they stay missing`;
    refused.push({ line: 1, column: null, reason, value: null });
  }
  if (accepted.length === 0 && refused.length === 0) {
    return refuseAll(columns, `No ${Object.keys(ELEMENTS).join(", ")} value stands in the file.`);
  }
  return { columns, questions: [], accepted, refused };
}

const fieldsOf = (ofDay: Map<Element, { stored: number }>) =>
  Object.fromEntries([...ofDay].map(([element, { stored }]) => [ELEMENTS[element].field, stored]));

function whichStation(stations: string[]): string {
  if (stations.length === 0) return `No ${Object.keys(ELEMENTS).join(", ")} value stands in the file.`;
  const some = stations.slice(0, 5).join(", ");
  const more = stations.length > 5 ? " and more" : "";
  return `The file holds ${stations.length} stations (${some}${more}). Name the one wanted as the site's weather station, or leave the others out.`;
}

const refuseAll = (columns: Column[], reason: string): ReadFile => ({
  columns,
  questions: [],
  accepted: [],
  refused: [{ line: 1, column: null, reason, value: null }],
});

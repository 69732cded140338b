import type { Column } from "@pith/contract";
import { problemsOf, WeatherDaySchema } from "@pith/rules";
import { readNumber } from "./cells.ts";
import type { CsvFile, CsvRow } from "./csv.ts";
import { dayIn, settleDates } from "./dateColumn.ts";
import type { Watch } from "./progress.ts";
import { doubled, type Question, type ReadFile, RowRefused, readRows, settle } from "./reading.ts";
import { toStored, unitsOf } from "./units.ts";
import { matchWeatherColumn, weatherDimension } from "./weatherColumns.ts";

/**
 * Median daily maxima above this, over a file of a month and more, are not a climate where peppers grow outdoors: the
 * hottest month on record anywhere had a mean near 42 C (World Meteorological Organization archive; from memory).
 */
const HOTTEST_MEDIAN_MAX_C = 45;
const ENOUGH_DAYS_TO_JUDGE = 20;

/** Reads a station's daily file: columns by name, units as stated or as answered. */
export async function readWeather(
  file: CsvFile,
  said: Column[] | undefined,
  watch?: Watch,
): Promise<ReadFile> {
  const columns = settle(file.headers.map(matchWeatherColumn), said);
  const dateAt = columns.findIndex((c) => c.field === "date");
  const questions = [...settleDates(columns[dateAt], dateAt, file), ...unitQuestions(columns)];
  const twice = doubled(columns);
  if (dateAt < 0) return refuseAll(columns, "No column is a date. Name it `date`.", null);
  if (twice)
    return refuseAll(columns, `Two columns are read as ${twice.field}; leave one out.`, twice.header);
  if (!columns.some((c) => c.field !== null && c.field !== "date")) {
    return refuseAll(columns, "No column besides the date is one of a day's weather.", null);
  }
  if (questions.length > 0) return { columns, questions, accepted: [], refused: [] };

  const seen = new Map<string, number>();
  const read = (row: CsvRow) => {
    const day = readDayRow(row.cells, columns, file.decimalComma);
    const before = seen.get(day.date as string);
    if (before)
      throw new RowRefused(
        `${day.date} stands on line ${before} already`,
        columns[dateAt]?.header ?? null,
        day.date as string,
      );
    seen.set(day.date as string, row.line);
    return day;
  };
  const { accepted, refused } = await readRows(file.rows, read, watch);
  const warm = fahrenheitQuestion(columns, accepted);
  return warm
    ? { columns, questions: [warm], accepted: [], refused: [] }
    : { columns, questions, accepted, refused };
}

function readDayRow(cells: string[], columns: Column[], decimalComma: boolean): Record<string, unknown> {
  const day: Record<string, unknown> = {};
  columns.forEach((column, i) => {
    if (column.field === null) return;
    const text = cells[i] ?? "";
    if (column.field === "date") {
      day.date = dayIn(text, column);
      return;
    }
    const cell = readNumber(text, decimalComma);
    if (cell.kind === "unreadable") throw new RowRefused(cell.reason, column.header, text);
    const dimension = weatherDimension(column.field);
    if (cell.kind === "missing" || !dimension || dimension === "date") return;
    day[column.field] = toStored(dimension, column.unit ?? "", cell.value);
  });
  const parsed = WeatherDaySchema.safeParse(day);
  if (parsed.success) {
    if (Object.keys(day).length < 2) throw new RowRefused("The day has no values", null, null);
    return day;
  }
  const [first] = problemsOf(parsed.error, day);
  const column = columns.find((c) => c.field === first?.field);
  const stood = column ? (cells[columns.indexOf(column)] ?? null) : null;
  const reason = `${first?.field} ${first?.message}${column?.unit ? ` (read as ${column.unit})` : ""}`;
  throw new RowRefused(reason, column?.header ?? null, stood);
}

function unitQuestions(columns: Column[]): Question[] {
  return columns.flatMap((column): Question[] => {
    const dimension = column.field === null ? undefined : weatherDimension(column.field);
    if (!dimension || dimension === "date") return [];
    const choices = unitsOf(dimension);
    if (column.unit !== null && choices.includes(column.unit)) return [];
    const { header } = column;
    return [{ header, headers: [header], about: "unit", ask: `In what unit is "${header}"?`, choices }];
  });
}

/** A temperature in Fahrenheit that claims Celsius: asked again, with what made us ask. */
function fahrenheitQuestion(columns: Column[], accepted: ReadFile["accepted"]): Question | null {
  const column = columns.find((c) => c.field === "tMaxC" && c.unit === "°C");
  const maxima = accepted.map((a) => a.row.tMaxC).filter((t) => typeof t === "number");
  if (!column || maxima.length < ENOUGH_DAYS_TO_JUDGE) return null;
  const median = maxima.sort((a, b) => a - b)[Math.floor(maxima.length / 2)] ?? 0;
  if (median <= HOTTEST_MEDIAN_MAX_C) return null;
  return {
    header: column.header,
    headers: [column.header],
    about: "unit",
    ask: `Half the days of "${column.header}" would be hotter than ${median.toFixed(0)} °C. In what unit is it?`,
    choices: ["°F", "0.1 °C"],
  };
}

const refuseAll = (columns: Column[], reason: string, column: string | null): ReadFile => ({
  columns,
  questions: [],
  accepted: [],
  refused: [{ line: 1, column, reason, value: null }],
});

import type { Column } from "@pith/contract";
import { problemsOf, SoilTestSchema } from "@pith/rules";
import { readNumber } from "./cells.ts";
import type { CsvFile, CsvRow } from "./csv.ts";
import { dayIn, settleDates } from "./dateColumn.ts";
import { doubled, type Question, type ReadFile, RowRefused, readRows, settle } from "./reading.ts";
import {
  BUFFER_METHOD_CHOICES,
  EC_CHOICES,
  EXTRACTANT_CHOICES,
  isNutrient,
  matchSoilColumn,
  soilDimension,
} from "./soilColumns.ts";
import { nutrientToMgPerKg, nutrientUnits, toStored, unitsOf } from "./units.ts";

/** What the file does not say itself and was said once for all of it. */
export interface SoilFileDefaults {
  /** Beds of the farm by name, lower case. */
  bedsByName: Map<string, string>;
  bedId?: string;
  depthCm?: number;
  labName?: string;
}

/** What a person answers where a report does not say; the rules then refuse the value rather than guess. */
const NOT_STATED = "not stated";

/** Reads a laboratory's file: columns by name; a unit or an extractant it does not state is asked, never guessed. */
export function readSoilTests(
  file: CsvFile,
  said: Column[] | undefined,
  defaults: SoilFileDefaults,
): ReadFile {
  const columns = settle(file.headers.map(matchSoilColumn), said);
  const at = (field: string) => columns.findIndex((c) => c.field === field);
  const dateAt = at("sampledOn");
  const missing = missingColumns(columns, defaults);
  if (missing.length > 0) {
    return {
      columns,
      questions: [],
      accepted: [],
      refused: missing.map((reason) => ({ line: 1, column: null, reason, value: null })),
    };
  }
  const questions = [...settleDates(columns[dateAt], dateAt, file), ...columnQuestions(columns)];
  if (questions.length > 0) return { columns, questions, accepted: [], refused: [] };

  const seen = new Map<string, number>();
  const { accepted, refused } = readRows(file.rows, (row) => {
    const test = readTest(row, columns, file.decimalComma, defaults);
    const key = [test.bedId, test.sampledOn, test.sampleRef, test.depthCm].join("|");
    const before = seen.get(key);
    if (before)
      throw new RowRefused(`The same sample stands on line ${before} already`, null, String(test.sampleRef));
    seen.set(key, row.line);
    return test;
  });
  return { columns, questions, accepted, refused };
}

function missingColumns(columns: Column[], defaults: SoilFileDefaults): string[] {
  const has = (field: string) => columns.some((c) => c.field === field);
  const twice = doubled(columns, () => false);
  return [
    ...(has("sampledOn") ? [] : ["No column is the sampling date. Name it `sampled on`."]),
    ...(has("bed") || defaults.bedId
      ? []
      : ["No column is the bed, and no bed was chosen for the whole file (bedId)."]),
    ...(has("depthCm") || defaults.depthCm
      ? []
      : ["No column is the sampling depth, and none was given for the whole file (depthCm)."]),
    ...(twice ? [`Two columns are read as ${twice.field}; leave one out ("${twice.header}").`] : []),
    ...(columns.some((c) => c.field && (isNutrient(c.field) || ["waterPh", "ec"].includes(c.field)))
      ? []
      : ["No column is a result (pH, salts or a nutrient)."]),
  ];
}

function columnQuestions(columns: Column[]): Question[] {
  const rowExtractant = columns.some((c) => c.field === "extractant");
  return columns.flatMap((column): Question[] => {
    const { field, header } = column;
    if (field === null) return [];
    const asked: Question[] = [];
    const units = isNutrient(field) ? nutrientUnits(field) : choicesFor(field);
    if (units && !(column.unit !== null && units.includes(column.unit))) {
      asked.push({ header, about: "unit", ask: `In what unit is "${header}"?`, choices: units });
    }
    const meanings = meaningChoices(field);
    const needsMeaning = meanings && column.extractant === null && !(isNutrient(field) && rowExtractant);
    if (needsMeaning) {
      const what = field === "ec" ? "extraction" : field === "bufferPh" ? "buffer method" : "extractant";
      asked.push({
        header,
        about: "extractant",
        ask: `By which ${what} is "${header}"?`,
        choices: field === "bufferPh" ? meanings : [...meanings, NOT_STATED],
      });
    }
    return asked;
  });
}

function choicesFor(field: string): string[] | null {
  const dimension = soilDimension(field);
  return !dimension || dimension === "date" || dimension === "text" ? null : unitsOf(dimension);
}

function meaningChoices(field: string): string[] | null {
  if (isNutrient(field)) return EXTRACTANT_CHOICES;
  return field === "ec" ? EC_CHOICES : field === "bufferPh" ? BUFFER_METHOD_CHOICES : null;
}

type TestRow = Record<string, unknown> & {
  bedId: string;
  sampledOn: string;
  sampleRef: string;
  depthCm: number;
};

function readTest(
  row: CsvRow,
  columns: Column[],
  decimalComma: boolean,
  defaults: SoilFileDefaults,
): TestRow {
  const cell = (field: string) => {
    const i = columns.findIndex((c) => c.field === field);
    return i < 0
      ? { column: undefined, text: "" }
      : { column: columns[i], text: (row.cells[i] ?? "").trim() };
  };
  const number = (column: Column, text: string): number | undefined => {
    const read = readNumber(text, decimalComma);
    if (read.kind === "unreadable") throw new RowRefused(read.reason, column.header, text);
    if (read.kind === "missing" || column.field === null) return undefined;
    if (isNutrient(column.field)) return nutrientToMgPerKg(column.field, column.unit ?? "", read.value);
    const dimension = soilDimension(column.field);
    return !dimension || dimension === "date" || dimension === "text"
      ? read.value
      : toStored(dimension, column.unit ?? "", read.value);
  };
  const scalar = (field: string): number | undefined => {
    const { column, text } = cell(field);
    return column ? number(column, text) : undefined;
  };

  const date = cell("sampledOn");
  const ec = cell("ec");
  const ecValue = scalar("ec");
  const buffer = cell("bufferPh");
  const bufferValue = scalar("bufferPh");
  const stated = cell("extractant").text.toLowerCase();
  const rowExtractant = EXTRACTANT_CHOICES.find((e) => e === stated.replace(/\s+/g, "-"));
  if (stated !== "" && !rowExtractant) {
    const reason = `extractant must be one of ${EXTRACTANT_CHOICES.join(", ")}`;
    throw new RowRefused(reason, cell("extractant").column?.header ?? null, stated);
  }
  const values = columns.flatMap((column, i) => {
    if (column.field === null || !isNutrient(column.field)) return [];
    const mgPerKg = number(column, row.cells[i] ?? "");
    const extractant = column.extractant === NOT_STATED ? undefined : (column.extractant ?? rowExtractant);
    return mgPerKg === undefined
      ? []
      : [{ nutrient: column.field, ...(extractant && { extractant }), mgPerKg }];
  });
  const result = defined({
    waterPh: scalar("waterPh"),
    bufferPh:
      bufferValue === undefined ? undefined : { method: buffer.column?.extractant, value: bufferValue },
    organicMatterPct: scalar("organicMatterPct"),
    cecCmolPerKg: scalar("cecCmolPerKg"),
    acidityCmolPerKg: scalar("acidityCmolPerKg"),
    ec:
      ecValue === undefined
        ? undefined
        : defined({
            dSPerM: ecValue,
            extraction: ec.column?.extractant === NOT_STATED ? undefined : ec.column?.extractant,
          }),
    values,
  });
  const test = {
    sampledOn: dayIn(date.text, date.column as Column),
    depthCm: scalar("depthCm") ?? defaults.depthCm,
    medium: mediumOf(cell("medium").text),
    ...result,
  };
  const parsed = SoilTestSchema.safeParse({ id: "row", ...test });
  if (!parsed.success) {
    const [first] = problemsOf(parsed.error, test);
    const column = columns.find((c) => c.field !== null && first?.field.startsWith(c.field));
    throw new RowRefused(
      `${first?.field} ${first?.message}`,
      column?.header ?? null,
      String(first?.received ?? ""),
    );
  }
  if (Object.keys(result).length === 1 && values.length === 0)
    throw new RowRefused("The row has no result", null, null);
  return {
    ...test,
    bedId: bedOf(cell("bed"), defaults),
    depthCm: parsed.data.depthCm,
    labName: cell("labName").text || defaults.labName || null,
    sampleRef: cell("sampleRef").text || "1",
  };
}

function bedOf(cell: { column: Column | undefined; text: string }, defaults: SoilFileDefaults): string {
  const named = defaults.bedsByName.get(cell.text.toLowerCase());
  if (named) return named;
  if (cell.text === "" && defaults.bedId) return defaults.bedId;
  const known = [...defaults.bedsByName.keys()].join(", ");
  throw new RowRefused(
    `There is no bed "${cell.text}" on this farm; its beds are ${known}`,
    cell.column?.header ?? null,
    cell.text,
  );
}

function mediumOf(text: string): string {
  if (/pot|contain|peat|bark|soilless/i.test(text)) return "potting-medium";
  return /organic|muck/i.test(text) ? "organic-soil" : "mineral-soil";
}

const defined = <T extends Record<string, unknown>>(o: T): Partial<T> =>
  Object.fromEntries(Object.entries(o).filter(([, v]) => v !== undefined)) as Partial<T>;

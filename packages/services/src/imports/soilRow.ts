import type { Column } from "@pith/contract";
import { problemsOf, SoilTestSchema } from "@pith/rules";
import { readDepth, readNumber, readYesNo } from "./cells.ts";
import type { CsvRow } from "./csv.ts";
import { dayIn } from "./dateColumn.ts";
import { reportedAs, toMgPerKg } from "./nutrientUnits.ts";
import { RowRefused } from "./reading.ts";
import type { SampleRow } from "./samples.ts";
import { EXTRACTANT_CHOICES, extractantNamed, isNutrient, soilDimension } from "./soilColumns.ts";
import { NOT_STATED } from "./soilQuestions.ts";
import { toStored } from "./units.ts";

/** What the file does not say itself and was said once for all of it. */
export interface SoilFileDefaults {
  /** Beds of the farm by name, lower case; null where several beds have that name. */
  bedsByName: Map<string, string | null>;
  bedId?: string;
  depthCm?: number;
  labName?: string;
}

interface Place {
  column: Column;
  at: number;
}

/** Reads one row after another of a file whose columns are settled. */
export function soilRowReader(columns: Column[], decimalComma: boolean, defaults: SoilFileDefaults) {
  const places = new Map<string, Place>();
  const nutrients: Place[] = [];
  columns.forEach((column, at) => {
    if (column.field === null) return;
    if (isNutrient(column.field)) nutrients.push({ column, at });
    else if (!places.has(column.field)) places.set(column.field, { column, at });
  });
  const textOf = (row: CsvRow, place: Place | undefined) => (place ? (row.cells[place.at] ?? "").trim() : "");
  const text = (row: CsvRow, field: string) => textOf(row, places.get(field));

  /** The number that is printed in a cell, in the column's own unit. */
  const printed = (row: CsvRow, place: Place): number | undefined => {
    const cell = textOf(row, place);
    const read = (place.column.field === "depthCm" ? readDepth : readNumber)(
      withoutUnit(cell, place.column.unit),
      decimalComma,
    );
    if (read.kind === "unreadable") throw new RowRefused(read.reason, place.column.header, cell);
    return read.kind === "number" ? read.value : undefined;
  };
  const scalar = (row: CsvRow, field: string): number | undefined => {
    const place = places.get(field);
    const value = place && printed(row, place);
    if (!place || value === undefined) return undefined;
    const dimension = soilDimension(field);
    return !dimension || dimension === "date" || dimension === "text"
      ? value
      : toStored(dimension, place.column.unit ?? "", value);
  };
  const depthCm = (row: CsvRow) => scalar(row, "depthCm") ?? defaults.depthCm;

  const valuesOf = (row: CsvRow, says: { depthCm: number | undefined; cecCmolPerKg: number | undefined }) => {
    const stated = statedExtractant(text(row, "extractant"), places.get("extractant"));
    return nutrients.flatMap((place) => {
      const { column } = place;
      const value = printed(row, place);
      if (value === undefined || column.field === null) return [];
      const mgPerKg = toMgPerKg(column, column.field, value, says);
      if (typeof mgPerKg === "string")
        throw new RowRefused(`${column.field} ${mgPerKg}`, column.header, textOf(row, place));
      const extractant = column.extractant === NOT_STATED ? undefined : (column.extractant ?? stated);
      const reported = reportedAs(column, column.field, value);
      const read = {
        nutrient: column.field,
        ...(extractant && { extractant }),
        mgPerKg,
        ...(reported && { reported }),
      };
      return [{ place, read }];
    });
  };

  const read = (row: CsvRow): SampleRow => {
    const date = places.get("sampledOn");
    const ec = places.get("ec");
    const ecValue = scalar(row, "ec");
    const buffer = places.get("bufferPh");
    const bufferValue = scalar(row, "bufferPh");
    const cecCmolPerKg = scalar(row, "cecCmolPerKg");
    const depth = depthCm(row);
    const values = valuesOf(row, { depthCm: depth, cecCmolPerKg });
    const extraction = ec?.column.extractant === NOT_STATED ? null : ec?.column.extractant;
    const result = defined({
      waterPh: scalar(row, "waterPh"),
      bufferPh:
        bufferValue === undefined ? undefined : { method: buffer?.column.extractant, value: bufferValue },
      organicMatterPct: scalar(row, "organicMatterPct"),
      cecCmolPerKg,
      acidityCmolPerKg: scalar(row, "acidityCmolPerKg"),
      freeLime: fizz(text(row, "freeLime"), places.get("freeLime")),
      ec: ecValue === undefined ? undefined : { dSPerM: ecValue, ...(extraction && { extraction }) },
      values: values.map((v) => v.read),
    });
    const test = {
      sampledOn: dayIn(textOf(row, date), date?.column ?? NO_COLUMN),
      depthCm: depth,
      medium: mediumOf(text(row, "medium"), places.get("medium")),
      ...result,
    };
    const parsed = SoilTestSchema.safeParse({ id: "row", ...test });
    if (!parsed.success) {
      const [first] = problemsOf(parsed.error, test);
      const nth = /^values\.(\d+)/.exec(first?.field ?? "")?.[1];
      const place =
        nth === undefined
          ? [...places.values()].find((p) => first?.field.startsWith(p.column.field ?? "-"))
          : values[Number(nth)]?.place;
      const what = nth === undefined ? first?.field : `${place?.column.field} in mg/kg`;
      const there = place ? textOf(row, place) : String(first?.received ?? "");
      throw new RowRefused(`${what} ${first?.message}`, place?.column.header ?? null, there);
    }
    if (Object.keys(result).length === 1 && values.length === 0)
      throw new RowRefused("The row has no result", null, null);
    return {
      ...test,
      bedId: bedOf(text(row, "bed"), places.get("bed"), defaults),
      depthCm: parsed.data.depthCm,
      labName: text(row, "labName") || defaults.labName || null,
      sampleRef: text(row, "sampleRef") || "1",
    };
  };
  return { read, depthCm, sampleColumn: places.get("sampleRef")?.column.header ?? null };
}

const NO_COLUMN: Column = { header: "", field: null, unit: null, extractant: null };

/** `6 in` in a column of inches is 6; any other unit in a cell stays there and is refused. */
function withoutUnit(cell: string, unit: string | null): string {
  const spelled = unit === "in" ? /\s*(in|inch|inches|")\.?$/i : unit === "cm" ? /\s*cm$/i : null;
  return spelled ? cell.replace(spelled, "") : cell;
}

function statedExtractant(said: string, place: Place | undefined): string | undefined {
  if (said === "") return undefined;
  const found = extractantNamed(said);
  if (found) return found;
  const reason = `extractant must be one of ${EXTRACTANT_CHOICES.join(", ")}`;
  throw new RowRefused(reason, place?.column.header ?? null, said);
}

function fizz(said: string, place: Place | undefined): boolean | undefined {
  const read = readYesNo(said);
  if (read !== null) return read;
  throw new RowRefused(
    `"${said}" says neither that it fizzes nor that it does not`,
    place?.column.header ?? null,
    said,
  );
}

const MOST_BEDS_NAMED = 8;

function bedOf(said: string, place: Place | undefined, defaults: SoilFileDefaults): string {
  const named = defaults.bedsByName.get(said.toLowerCase());
  if (named) return named;
  if (said === "" && defaults.bedId) return defaults.bedId;
  const refuse = (reason: string) => new RowRefused(reason, place?.column.header ?? null, said);
  if (named === null) throw refuse(`More than one bed of this farm is called "${said}"`);
  const known = [...defaults.bedsByName.keys()];
  const more = known.length > MOST_BEDS_NAMED ? ` and ${known.length - MOST_BEDS_NAMED} more` : "";
  throw refuse(
    `There is no bed "${said}" on this farm; its beds are ${known.slice(0, MOST_BEDS_NAMED).join(", ")}${more}`,
  );
}

const MEDIA: [words: RegExp, medium: string][] = [
  [/^(potting|container|soilless|bark|coir)([ -](mix|medium|media|substrate|soil))?$/, "potting-medium"],
  // Peat alone may be a bog or a bale.
  [/^peat[ -](mix|medium|media|substrate)$/, "potting-medium"],
  [/^(organic|muck|peat)[ -]soil$|^muck$/, "organic-soil"],
  [/^((mineral|field|garden)([ -]soil)?|soil)?$/, "mineral-soil"],
  // A texture class is one of a mineral soil.
  [/^((loamy|sandy|silty|silt|clay|sandy clay|silty clay) )?(sand|silt|loam|clay)$/, "mineral-soil"],
];

/** Word for word, so that a field named for its potatoes or its certificate is not taken for a pot or for muck. */
function mediumOf(said: string, place: Place | undefined): string {
  const words = said.toLowerCase().replace(/\s+/g, " ");
  const found = MEDIA.find(([known]) => known.test(words));
  if (found) return found[1];
  const reason =
    "What was sampled must be mineral soil, its texture or empty; organic soil, muck or peat soil; or a potting, container, soilless, peat, bark or coir mix or medium";
  throw new RowRefused(reason, place?.column.header ?? null, said);
}

const defined = <T extends Record<string, unknown>>(o: T): Partial<T> =>
  Object.fromEntries(Object.entries(o).filter(([, v]) => v !== undefined)) as Partial<T>;

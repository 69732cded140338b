import type { SeasonRecord } from "@pith/contract";
import type { getTranslations } from "next-intl/server";
import { dayText, instantText } from "../../format/dates.ts";
import { type FormUnit, inText } from "../../format/units.ts";

type Words = Awaited<ReturnType<typeof getTranslations<"seasonRecord">>>;

/** Ends of columns' names and the units they say, longest first where one ends like another. */
const UNITS: readonly (readonly [RegExp, FormUnit])[] = [
  [/KgPerHa$/, "kg/ha"],
  [/MgPerL$/, "mg/L"],
  [/DSPerM$/, "dS/m"],
  [/Litres$/, "L"],
  [/Minutes$/, "minutes"],
  [/Hours$/, "hours"],
  [/^days$|Days$/, "days"],
  [/Pct$/, "pct"],
  [/Kg$/, "kg"],
  [/M2$/, "m2"],
  [/Mm$/, "mm"],
  [/Cm$/, "cm"],
];
const unitOf = (column: string): FormUnit | null => UNITS.find(([end]) => end.test(column))?.[1] ?? null;

/** Columns whose values are words of a list and not of a person. */
const LISTED: ReadonlySet<string> = new Set([
  "from",
  "kind",
  "kept",
  "saw",
  "task",
  "target",
  "certifiedUse",
]);

const DAY = /^\d{4}-\d\d-\d\d$/;

/** A value of a table as it is read: in the farm's units, days and words spelt; null where it is unknown. */
export function cellText(
  column: string,
  value: unknown,
  units: SeasonRecord["units"],
  t: Words,
): string | null {
  if (value === null || value === undefined || value === "") return null;
  if (Array.isArray(value)) {
    const culls = value as { cause: string; kg: number }[];
    return (
      culls.map(({ cause, kg }) => `${t(`listed.${cause}`)} ${inText(kg, "kg", units)}`).join(", ") || null
    );
  }
  if (typeof value === "number") {
    const unit = unitOf(column);
    return unit ? inText(value, unit, units) : String(value);
  }
  const text = String(value);
  if (column === "at") return instantText(text, undefined);
  if (DAY.test(text)) return dayText(text);
  // A material's kind comes in words already; an interval's does not.
  return LISTED.has(column) && t.has(`listed.${text}`) ? t(`listed.${text}`) : text;
}

export const isNumber = (column: string): boolean => unitOf(column) !== null || column === "ph";

import type { MeasureUnit } from "@pith/rules";

/** Ends of columns' names and their units, longest first where one ends like another. */
const ENDS: readonly (readonly [string, MeasureUnit])[] = [
  ["KgPerHa", "kg/ha"],
  ["MgPerL", "mg/L"],
  ["DSPerM", "dS/m"],
  ["Litres", "L"],
  ["Minutes", "minutes"],
  ["Hours", "hours"],
  ["Days", "days"],
  ["Pct", "pct"],
  ["Kg", "kg"],
  ["M2", "m2"],
  ["Mm", "mm"],
  ["Cm", "cm"],
];

/** The unit of a column, read from the end of its name; null where it has none, as money and shares of two units. */
export function measureOf(column: string): MeasureUnit | null {
  if (/PerKg$|PerHour$/.test(column)) return null;
  if (column === "days") return "days";
  return ENDS.find(([end]) => column.endsWith(end))?.[1] ?? null;
}

import { formatMeasure, type Language, type MeasureUnit, shownUnit, type UnitSystem } from "@pith/rules";
import { readerLanguage } from "./language.ts";

/** Numbers of the rules' charts, ranges and tables, in the reader's units. */

const plain = new Intl.NumberFormat("en", { maximumFractionDigits: 2 });

/** The reader's unit for one of the rules; what no reader converts, like pH, stays as it is named. */
export function readerUnit(unit: string, units: UnitSystem, language: Language = "en") {
  try {
    return { ...shownUnit(unit as MeasureUnit, units, language), known: true };
  } catch {
    return { label: unit, fromSi: (v: number) => v, known: false };
  }
}

export const unitText = (unit: string, units: UnitSystem, language: Language): string =>
  readerUnit(unit, units, language).label;

/** The digits alone, as many as a measure in a sentence has. */
export function figureText(value: number, unit?: string, units: UnitSystem = "metric"): string {
  if (unit === undefined) return plain.format(value);
  const { label, known } = readerUnit(unit, units);
  if (!known) return plain.format(value);
  const whole = formatMeasure({ value, unit: unit as MeasureUnit }, units, "en");
  return whole.slice(0, whole.length - label.length).trimEnd();
}

/** Digits and unit; a pH has none. */
export function amountText(
  value: number,
  unit: string,
  units: UnitSystem,
  language: Language = readerLanguage(),
): string {
  const { known } = readerUnit(unit, units);
  if (!known) return unit === "pH" ? plain.format(value) : `${plain.format(value)} ${unit}`;
  return formatMeasure({ value, unit: unit as MeasureUnit }, units, language);
}

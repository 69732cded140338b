import { type Language, LOCALES } from "./language.ts";
import type { Measure, MeasureUnit } from "./message.ts";

/** Which units a reader thinks in. */
export type UnitSystem = "metric" | "us";

/** International definitions: inch 25.4 mm, pound 0.45359237 kg, US gallon 3.785411784 L, acre 4046.8564224 m2. */
const INCH_MM = 25.4;
const FOOT_M = 0.3048;
const POUND_KG = 0.45359237;
const OUNCE_G = 28.349523125;
const US_GALLON_L = 3.785411784;
const US_FLUID_OUNCE_ML = 29.5735295625;
/** Eight fluid ounces. */
const US_CUP_ML = 8 * US_FLUID_OUNCE_ML;
const ACRE_M2 = 4046.8564224;
const SQUARE_FOOT_M2 = FOOT_M * FOOT_M;
const SHORT_TON_KG = 2000 * POUND_KG;

interface Shown {
  label: string;
  /** From the SI value to the shown one. */
  convert: (value: number) => number;
}

const same = (label: string): Shown => ({ label, convert: (v) => v });
const times = (label: string, factor: number): Shown => ({ label, convert: (v) => v * factor });

const METRIC: Record<MeasureUnit, Shown> = {
  C: same("°C"),
  "C-difference": same("°C"),
  "C-hours": same("°C·h"),
  "C-days": same("°C·days"),
  mm: same("mm"),
  cm: same("cm"),
  m: same("m"),
  m2: same("m²"),
  ha: same("ha"),
  g: same("g"),
  kg: same("kg"),
  mL: same("mL"),
  "scoop-mL": same("mL"),
  L: same("L"),
  "L/h": same("L/h"),
  minutes: same("min"),
  hours: same("h"),
  days: same("days"),
  "kg/ha": same("kg/ha"),
  "kg/m2": same("kg/m²"),
  "g/m2": same("g/m²"),
  "g/m": same("g per m of row"),
  "kg/m": same("kg per m of row"),
  "g/plant": same("g per plant"),
  "t/ha": same("t/ha"),
  "mg/kg": same("mg/kg"),
  "mg/L": same("mg/L"),
  "dS/m": same("dS/m"),
  kPa: same("kPa"),
  pct: same("%"),
  W: same("W"),
  kWh: same("kWh"),
  "night-count": same("nights"),
  points: same("points"),
};

const US: Record<MeasureUnit, Shown> = {
  ...METRIC,
  C: { label: "°F", convert: (v) => v * 1.8 + 32 },
  "C-difference": times("°F", 1.8),
  "C-hours": times("°F·h", 1.8),
  "C-days": times("°F·days", 1.8),
  mm: times("in", 1 / INCH_MM),
  cm: times("in", 10 / INCH_MM),
  m: times("ft", 1 / FOOT_M),
  m2: times("sq ft", 1 / SQUARE_FOOT_M2),
  ha: times("acres", 10_000 / ACRE_M2),
  g: times("oz (weight)", 1 / OUNCE_G),
  kg: times("lb", 1 / POUND_KG),
  mL: times("US fl oz", 1 / US_FLUID_OUNCE_ML),
  "scoop-mL": times("US cups", 1 / US_CUP_ML),
  L: times("US gal", 1 / US_GALLON_L),
  "L/h": times("US gal/h", 1 / US_GALLON_L),
  "kg/ha": times("lb/acre", ACRE_M2 / 10_000 / POUND_KG),
  "kg/m2": times("lb/1000 sq ft", (1000 * SQUARE_FOOT_M2) / POUND_KG),
  "g/m2": times("lb/1000 sq ft", SQUARE_FOOT_M2 / POUND_KG),
  "g/m": times("lb per 100 ft of row", (100 * FOOT_M) / 1000 / POUND_KG),
  "kg/m": times("lb per 100 ft of row", (100 * FOOT_M) / POUND_KG),
  "g/plant": times("oz per plant", 1 / OUNCE_G),
  "t/ha": times("short tons/acre", ((1000 / SHORT_TON_KG) * ACRE_M2) / 10_000),
};

/** Labels that are words, in Spanish; the others are symbols and the same everywhere. */
const SPANISH: Record<string, string> = {
  "°C·days": "°C·días",
  "°F·days": "°F·días",
  days: "días",
  nights: "noches",
  points: "puntos",
  "g per m of row": "g por m de hilera",
  "kg per m of row": "kg por m de hilera",
  "g per plant": "g por planta",
  in: "pulg",
  ft: "pies",
  "sq ft": "pies²",
  "oz (weight)": "oz (peso)",
  "US fl oz": "oz líq. (EE. UU.)",
  "US cups": "tazas (EE. UU.)",
  "US gal": "gal (EE. UU.)",
  "US gal/h": "gal/h (EE. UU.)",
  "lb/1000 sq ft": "lb/1000 pies²",
  "lb per 100 ft of row": "lb por 100 pies de hilera",
  "oz per plant": "oz por planta",
  "short tons/acre": "toneladas cortas/acre",
};
/** Of one. */
const SINGULAR: Record<string, string> = {
  days: "day",
  nights: "night",
  points: "point",
  acres: "acre",
  "US cups": "US cup",
  días: "día",
  noches: "noche",
  puntos: "punto",
  "tazas (EE. UU.)": "taza (EE. UU.)",
};

/** A unit's label as it is said in a language. */
const labelIn = (label: string, language: Language): string =>
  language === "es" ? (SPANISH[label] ?? label) : label;

/** A measure as a reader in that unit system would want it: at most three meaningful digits. */
export function formatMeasure(measure: Measure, units: UnitSystem, language: Language): string {
  const shown = (units === "us" ? US : METRIC)[measure.unit];
  const value = shown.convert(measure.value);
  const size = Math.abs(value);
  const decimals = size >= 100 ? 0 : size >= 10 ? (measure.unit === "C" ? 1 : 0) : size >= 1 ? 1 : 2;
  const digits = numberFormat(language, decimals).format(value === 0 ? 0 : value);
  const label = labelIn(shown.label, language);
  return `${digits} ${digits === "1" ? (SINGULAR[label] ?? label) : label}`;
}

const numberFormats = new Map<string, Intl.NumberFormat>();

/** Making a format costs a hundred times what using one does, and a round says thousands of numbers. */
function numberFormat(language: Language, decimals: number): Intl.NumberFormat {
  const id = `${language}:${decimals}`;
  const known = numberFormats.get(id);
  if (known) return known;
  const format = new Intl.NumberFormat(LOCALES[language], { maximumFractionDigits: decimals });
  numberFormats.set(id, format);
  return format;
}

/** One factor table for tests and forms: how a shown unit relates to the SI one. */
export function shownUnit(
  unit: MeasureUnit,
  units: UnitSystem,
  language: Language = "en",
): { label: string; fromSi: (v: number) => number } {
  const shown = (units === "us" ? US : METRIC)[unit];
  return { label: labelIn(shown.label, language), fromSi: shown.convert };
}

import { type Language, LOCALES, type MeasureUnit, shownUnit, type UnitSystem } from "@pith/rules";
import { readerLanguage } from "./language.ts";

/** SI inside, the reader's units on the page and in forms. Every conversion of the dashboard is in this file. */

/** A unit a form field or a table can carry; the ones beyond the rules' own are shown as they are, or converted here. */
export type FormUnit =
  | MeasureUnit
  | "share"
  | "per-kg"
  | "kg/L"
  | "kg/m3"
  | "deg"
  | "plants"
  | "nights"
  | "rows"
  | "m3"
  | "per-h"
  | "W/m2K"
  | "per-L"
  | "per-mass";

interface Shown {
  label: string;
  fromSi: (value: number) => number;
}

const POUNDS_PER_KG = 1 / 0.45359237;
const own: Record<Exclude<FormUnit, MeasureUnit>, (units: UnitSystem) => Shown> = {
  share: () => ({ label: "%", fromSi: (v) => v * 100 }),
  "per-kg": (units) =>
    units === "us"
      ? { label: "per lb", fromSi: (v) => v / POUNDS_PER_KG }
      : { label: "per kg", fromSi: (v) => v },
  "kg/m3": () => ({ label: "kg/m³", fromSi: (v) => v }),
  "kg/L": () => ({ label: "kg/L", fromSi: (v) => v }),
  deg: () => ({ label: "°", fromSi: (v) => v }),
  plants: () => ({ label: "plants", fromSi: (v) => v }),
  nights: () => ({ label: "nights", fromSi: (v) => v }),
  rows: () => ({ label: "rows", fromSi: (v) => v }),
  m3: (units) =>
    units === "us"
      ? { label: "cu ft", fromSi: (v) => v / 0.028316846592 }
      : { label: "m³", fromSi: (v) => v },
  // Without labels: which of them a price is in hangs on the fuel beside it, and its hint says so.
  "per-L": (units) => ({ label: "", fromSi: (v) => (units === "us" ? v * 3.785411784 : v) }),
  "per-mass": (units) => ({ label: "", fromSi: (v) => (units === "us" ? v / POUNDS_PER_KG : v) }),
  "per-h": () => ({ label: "per hour", fromSi: (v) => v }),
  "W/m2K": (units) =>
    units === "us"
      ? { label: "Btu/(h·ft²·°F)", fromSi: (v) => v / 5.678263341113489 }
      : { label: "W/(m²·K)", fromSi: (v) => v },
};

const isOwn = (unit: FormUnit): unit is keyof typeof own => unit in own;
/** Labels of this table that are words, in Spanish; those of the rules' own units are the rules'. */
const SPANISH: Record<string, string> = {
  "per lb": "por lb",
  "per kg": "por kg",
  plants: "plantas",
  nights: "noches",
  rows: "hileras",
  "cu ft": "pies³",
  "per hour": "por hora",
};
const shown = (unit: FormUnit, units: UnitSystem, language: Language): Shown => {
  if (!isOwn(unit)) return shownUnit(unit, units, language);
  const { label, fromSi } = own[unit](units);
  return { label: language === "es" ? (SPANISH[label] ?? label) : label, fromSi };
};

export const unitLabel = (unit: FormUnit, units: UnitSystem, language = readerLanguage()): string =>
  shown(unit, units, language).label;

/** A number as it stands in a form field: at most five meaningful digits, never in exponents. */
export function inField(value: number, unit: FormUnit | undefined, units: UnitSystem): string {
  const converted = unit ? shown(unit, units, "en").fromSi(value) : value;
  const decimals = Math.max(0, 4 - Math.floor(Math.log10(Math.max(Math.abs(converted), 1e-4))));
  return String(Number(converted.toFixed(Math.min(decimals, 6))));
}

/** The SI value of a number typed in the reader's unit. Every shown unit is a straight line of the SI one. */
export function toSi(typed: number, unit: FormUnit | undefined, units: UnitSystem): number {
  if (!unit) return typed;
  const { fromSi } = shown(unit, units, "en");
  const zero = fromSi(0);
  return (typed - zero) / (fromSi(1) - zero);
}

/** A number with its unit for a line of text or a table. */
export function inText(
  value: number,
  unit: FormUnit,
  units: UnitSystem,
  language: Language = readerLanguage(),
): string {
  const { label, fromSi } = shown(unit, units, language);
  const converted = fromSi(value);
  const size = Math.abs(converted);
  const maximumFractionDigits = size >= 100 ? 0 : size >= 10 ? 1 : 2;
  const digits = new Intl.NumberFormat(LOCALES[language], { maximumFractionDigits }).format(converted);
  return label === "°" ? `${digits}°` : `${digits} ${label}`;
}

const fromName: [RegExp, FormUnit][] = [
  [/[pP]ricePerKg$/, "per-kg"],
  [/WPerM2K$/, "W/m2K"],
  [/ChangesPerH$/, "per-h"],
  [/DSPerM$/, "dS/m"],
  [/MgPerL$|CaCO3PerL$/, "mg/L"],
  [/KgPerL$/, "kg/L"],
  [/TPerHa$/, "t/ha"],
  [/KgPerHa(Low|High)?$/, "kg/ha"],
  [/LPerH$/, "L/h"],
  [/DegreeHours$/, "C-hours"],
  [/Nights$|\.nights$/, "nights"],
  [/stationOffset\.(min|sd)C$/, "C-difference"],
  [/efficiency$|Risk$|Share$|Fraction$/, "share"],
  [/Pct$/, "pct"],
  [/Deg$/, "deg"],
  [/KgPerM3$/, "kg/m3"],
  [/M2$/, "m2"],
  [/M3$/, "m3"],
  [/outputW$/, "W"],
  [/Cm$/, "cm"],
  [/Kg$|^kg$|\.kg$/, "kg"],
  [/^litres$|volumeL$|tankL$/, "L"],
  [/^minutes/, "minutes"],
  [/^hours$|Hours$/, "hours"],
  [/daysToMaturity\.days$|HarvestDays$/, "days"],
  [/^plants$/, "plants"],
  [/^rowsPerBed$|^planRows$/, "rows"],
  [/[a-z]C$/, "C"],
  [/[a-z]M$/, "m"],
];

/** The unit of a field of the wire, which always stands last in its name. */
export const unitOf = (path: string): FormUnit | undefined => fromName.find(([name]) => name.test(path))?.[1];

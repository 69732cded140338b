/** What a unit of a column measures, and how it becomes the unit we store. */
type Convert = (value: number) => number;
const times =
  (factor: number): Convert =>
  (v) =>
    v * factor;
const same: Convert = (v) => v;

/**
 * Units by what they measure; the first is the one stored. Factors: inch 25.4 mm, mile 1609.344 m, langley
 * 0.041868 MJ/m2 and W/m2 x 0.0864 = MJ/m2/day (FAO-56 Table 3); 1 mmho/cm = 1 dS/m by definition.
 */
export const DIMENSIONS = {
  temperature: { "°C": same, "°F": (v: number) => (v - 32) / 1.8, "0.1 °C": times(0.1) },
  rain: { mm: same, in: times(25.4), "0.1 mm": times(0.1), "0.01 in": times(0.254) },
  wind: {
    "m/s": same,
    "km/h": times(1 / 3.6),
    mph: times(1609.344 / 3600),
    "km/day": times(1000 / 86_400),
    knots: times(1852 / 3600),
  },
  radiation: {
    "MJ/m2/day": same,
    "W/m2": times(0.0864),
    "kWh/m2/day": times(3.6),
    langleys: times(0.041868),
  },
  percent: { "%": same, fraction: times(100) },
  hours: { h: same, min: times(1 / 60) },
  height: { m: same, ft: times(0.3048) },
  depth: { cm: same, in: times(2.54), mm: times(0.1) },
  ph: { pH: same },
  exchange: { "cmol/kg": same, "meq/100 g": same },
  conductivity: {
    "dS/m": same,
    "mmhos/cm": same,
    "mS/cm": same,
    "uS/cm": times(0.001),
  },
} as const satisfies Record<string, Record<string, Convert>>;
export type Dimension = keyof typeof DIMENSIONS;

/** The units that a reader may choose from. */
export const unitsOf = (dimension: Dimension): string[] => Object.keys(DIMENSIONS[dimension]);

/** A value in the unit we store; undefined for a unit that does not measure this. */
export const toStored = (dimension: Dimension, unit: string, value: number): number | undefined =>
  (DIMENSIONS[dimension] as Record<string, Convert>)[unit]?.(value);

const SPELLINGS: [RegExp, string][] = [
  [/(°|deg(rees)?\s*)f\b|\bfahrenheit\b|\(f\)|_f$|[ ,]f$/, "°F"],
  [/(°|deg(rees)?\s*)c\b|\bcelsius\b|\(c\)|_c$|[ ,]c$/, "°C"],
  [/\bmeq\s*\/\s*100\s*g\b/, "meq/100 g"],
  [/\bcmolc?(\(\+\))?\s*\/\s*kg\b/, "cmol/kg"],
  [/\bmg\s*\/\s*kg\b/, "mg/kg"],
  [/\bppm\b/, "ppm"],
  [/\blbs?\.?\s*(\/|per)\s*(a|ac|acre)\b/, "lb/acre"],
  [/\bkg\s*(\/|per)\s*ha\b/, "kg/ha"],
  [/\bds\s*\/\s*m\b/, "dS/m"],
  [/\bmmhos?\s*\/\s*cm\b/, "mmhos/cm"],
  [/\bms\s*\/\s*cm\b/, "mS/cm"],
  [/\b[uµμ]s\s*\/\s*cm\b/, "uS/cm"],
  [/\bmj\s*\/?\s*(m2|m²|m\^2)|\bmj\b.*\bm-?2\b/, "MJ/m2/day"],
  [/\bkwh\b/, "kWh/m2/day"],
  [/\bw\s*\/\s*(m2|m²|m\^2)/, "W/m2"],
  [/\blangleys?\b/, "langleys"],
  [/\bkm\s*\/\s*h\b|\bkmh\b|\bkph\b/, "km/h"],
  [/\bkm\s*\/\s*d(ay)?\b/, "km/day"],
  [/\bm\s*\/\s*s\b|\bm s\b|\bmper ?s\b/, "m/s"],
  [/\bmph\b/, "mph"],
  [/\bknots?\b|\bkn\b/, "knots"],
  [/\b(in|inch|inches)\b|"/, "in"],
  [/\bcm\b/, "cm"],
  [/\bmm\b/, "mm"],
  [/\bft\b|\bfeet\b/, "ft"],
  [/%|\bpct\b|\bpercent\b/, "%"],
  [/\bhours?\b|\bhrs?\b|\(h\)|\bh$/, "h"],
];

/** The unit that a header states, in our spelling; null where it states none. */
export function unitInHeader(header: string): string | null {
  const h = spaced(header);
  return SPELLINGS.find(([pattern]) => pattern.test(h))?.[1] ?? null;
}

/** A header in lower case with its words apart: `tMaxC` reads as `t max c`, `rain_mm` as `rain mm`, `pH` stays. */
export function spaced(header: string): string {
  const oneWord = /^[A-Za-z0-9_]+$/.test(header) && header !== "pH";
  const apart = oneWord ? header.replace(/([a-z0-9])([A-Z])/g, "$1 $2") : header;
  return apart.replace(/_/g, " ").toLowerCase().trim();
}

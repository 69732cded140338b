import { type Quantity, SENSOR_UNITS } from "@pith/contract";

/** A unit in a base unit: value x scale + offset. */
type Linear = readonly [base: string, scale: number, offset: number];

/**
 * Names of the SenML registry stand for themselves (RFC 8428 section 12.1; "%" is there a ratio, not hundredths). Secondary
 * units have the scales of RFC 8798 Table 2. Kelvin and Fahrenheit: SI brochure, 273.15 K and 1.8. Inch 25.4 mm, mile
 * 1609.344 m, nautical mile 1852 m by definition; 1 cbar = 1 kPa; 1 dS/m = 1 mS/cm = 0.1 S/m.
 */
const UNITS: Record<string, Linear> = {
  Cel: ["Cel", 1, 0],
  K: ["Cel", 1, -273.15],
  degF: ["Cel", 1 / 1.8, -32 / 1.8],
  "%RH": ["%RH", 1, 0],
  m: ["m", 1, 0],
  mm: ["m", 1 / 1000, 0],
  cm: ["m", 1 / 100, 0],
  in: ["m", 0.0254, 0],
  "m/s": ["m/s", 1, 0],
  "km/h": ["m/s", 1 / 3.6, 0],
  "m/h": ["m/s", 1 / 3600, 0],
  mph: ["m/s", 1609.344 / 3600, 0],
  kn: ["m/s", 1852 / 3600, 0],
  "W/m2": ["W/m2", 1, 0],
  Pa: ["Pa", 1, 0],
  hPa: ["Pa", 100, 0],
  kPa: ["Pa", 1000, 0],
  cbar: ["Pa", 1000, 0],
  "/": ["/", 1, 0],
  "%": ["/", 1, 0],
  "/100": ["/", 1 / 100, 0],
  "/1000": ["/", 1 / 1000, 0],
  "S/m": ["S/m", 1, 0],
  "dS/m": ["S/m", 0.1, 0],
  "mS/cm": ["S/m", 0.1, 0],
  "uS/cm": ["S/m", 0.0001, 0],
  "%EL": ["%EL", 1, 0],
};

export type Convert = (value: number) => number;
const same: Convert = (v) => v;

/** The unit that readings of a quantity are kept in. */
export const keptIn = (quantity: Quantity): string => SENSOR_UNITS[quantity][0];

/** From a unit to the one kept; undefined where the unit does not measure the quantity. */
export function converterOf(quantity: Quantity, unit: string): Convert | undefined {
  if (!(SENSOR_UNITS[quantity] as readonly string[]).includes(unit)) return undefined;
  const from = UNITS[unit];
  const to = UNITS[keptIn(quantity)];
  if (!from || !to || from[0] !== to[0]) return undefined;
  if (from === to) return same;
  // What is cut off at the twelfth digit is the arithmetic's own, so that 300 mm sent as 0.3 m is 300 again.
  return (v) => Number(((v * from[1] + from[2] - to[2]) / to[1]).toPrecision(12));
}

/** What would be accepted, for people. */
export const unitsFor = (quantity: Quantity): string => SENSOR_UNITS[quantity].join(", ");

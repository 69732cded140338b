import type { Column } from "@pith/contract";
import { quantities } from "@pith/rules";

/** Units of a soil nutrient's content, and how each becomes mg/kg. */

/** mg/kg in one meq/100 g: atomic mass over charge x 10 (reference row SN-121). */
const MG_PER_MEQ: Record<string, number> = { K: 390.983, Ca: 200.39, Mg: 121.525, Na: 229.898 };
/** One lb/acre in kg/ha by the definitions of pound and acre (SN-110). */
const KG_PER_HA_PER_LB_PER_ACRE = 0.45359237 / 0.40468564224;
/** Two million pounds of soil to the acre: the trade's slice of 6 to 7 in (SN-115, SN-116). */
const SLICE_LB_PER_ACRE = 2_000_000;
const SLICE_CM = 6 * 2.54;
/** Depths that the trade's slice is meant for: 6 to 7 in, and the 15 to 18 cm they are rounded to. */
const USUAL_CM = { from: 15, to: 18 };

/** A share of exchange capacity: a base saturation. */
export const OF_CEC = "% of CEC";
export const isBase = (nutrient: string): boolean => nutrient in MG_PER_MEQ;
export const isByArea = (unit: string | null): boolean => unit === "lb/acre" || unit === "kg/ha";
export const isUsualDepth = (depthCm: number): boolean => depthCm >= USUAL_CM.from && depthCm <= USUAL_CM.to;

export const nutrientUnits = (nutrient: string): string[] => [
  "mg/kg",
  "ppm",
  "lb/acre",
  "kg/ha",
  ...(isBase(nutrient) ? ["cmol/kg", "meq/100 g"] : []),
  "%",
  ...(isBase(nutrient) ? [OF_CEC] : []),
];

/** Forms that a laboratory may print a nutrient in; the first is the one stored. */
const FORMS: Record<string, string[]> = {
  "NO3-N": ["NO3-N", "NO3"],
  P: ["P", "P2O5", "PO4"],
  K: ["K", "K2O"],
  Ca: ["Ca", "CaO"],
  Mg: ["Mg", "MgO"],
  S: ["S", "SO4"],
};
export const formsOf = (nutrient: string): string[] => FORMS[nutrient] ?? [nutrient];

const remembered = new Map<string, number>();
const once = (key: string, compute: () => number): number => {
  const known = remembered.get(key) ?? compute();
  remembered.set(key, known);
  return known;
};

/** How much of the stored form is in one of the printed form, by the rules' own arithmetic (SN-101 to SN-104, SN-120). */
const formFactor = (from: string, to: string): number =>
  from === to ? 1 : once(`${from} ${to}`, () => numberOf("nutrient-form", { from, to, amount: 1 }, "amount"));

function numberOf(quantity: string, input: object, output: string): number {
  const value = quantities[quantity]?.compute(input).value[output];
  if (typeof value !== "number") throw new Error(`${quantity} does not answer ${output}`);
  return value;
}

/** Pounds of nutrient an acre for one mg/kg, by the mass of soil that the laboratory reckons with. */
function lbPerAcrePerMgPerKg(column: Column, depthCm: number): number {
  const slice = SLICE_LB_PER_ACRE / 1e6;
  if (column.basis === "slice-per-6-in") return (slice * depthCm) / SLICE_CM;
  if (column.basis !== "depth-and-density") return slice;
  const bulkDensityKgPerM3 = column.densityKgPerM3 ?? Number.NaN;
  return numberOf("soil-test-mass", { mgPerKg: 1, depthCm, bulkDensityKgPerM3 }, "lbPerAcre");
}

/** What of a row the reckoning of one of its values needs. */
export interface RowSays {
  depthCm: number | undefined;
  cecCmolPerKg: number | undefined;
}

/**
 * A value as printed, to mg/kg of the form stored; a string says why it cannot be known. The column's unit is one of
 * `nutrientUnits`, its basis stated where the unit is one by area.
 */
export function toMgPerKg(column: Column, nutrient: string, value: number, row: RowSays): number | string {
  const [stored = nutrient] = formsOf(nutrient);
  const inForm = value * formFactor(column.form ?? stored, stored);
  switch (column.unit) {
    case "lb/acre":
    case "kg/ha": {
      if (row.depthCm === undefined) return `is in ${column.unit}, and the row states no depth`;
      const { depthCm } = row;
      const perMg = once(`${column.basis} ${column.densityKgPerM3} ${depthCm}`, () =>
        lbPerAcrePerMgPerKg(column, depthCm),
      );
      return inForm / (column.unit === "kg/ha" ? perMg * KG_PER_HA_PER_LB_PER_ACRE : perMg);
    }
    case "cmol/kg":
    case "meq/100 g":
      return inForm * (MG_PER_MEQ[nutrient] ?? Number.NaN);
    case OF_CEC:
      if (row.cecCmolPerKg === undefined) {
        return "is a share of exchange capacity, and the row states no exchange capacity";
      }
      return (inForm / 100) * row.cecCmolPerKg * (MG_PER_MEQ[nutrient] ?? Number.NaN);
    case "%":
      return inForm * 10_000;
    default:
      return inForm;
  }
}

/** The value as the laboratory printed it, kept beside mg/kg where it was anything else. */
export function reportedAs(column: Column, nutrient: string, value: number) {
  const [stored] = formsOf(nutrient);
  const other = column.form && column.form !== stored ? column.form : null;
  const same = column.unit === "mg/kg" || column.unit === "ppm";
  if (same && !other) return undefined;
  return { value, unit: [column.unit, other].filter(Boolean).join(" ") };
}

import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { fao56 } from "../cite.ts";

/**
 * Water between field capacity and wilting point in the root zone [mm].
 *
 *   TAW = 1000 (θFC - θWP) Zr
 *
 * Source: FAO-56, eq. 82.
 */
export const totalAvailableWaterMm = (soil: {
  fieldCapacity: number;
  wiltingPoint: number;
  rootDepthM: number;
}): number => 1000 * (soil.fieldCapacity - soil.wiltingPoint) * soil.rootDepthM;

/**
 * The share of TAW that can be taken before the crop is short, at the day's evapotranspiration.
 *
 *   p = p(table) + 0.04 (5 - ETc), between 0.1 and 0.8
 *
 * Source: FAO-56, Table 22 note and p. 162.
 */
export const adjustedDepletionFraction = (depletionFractionTable: number, etcMmPerDay: number): number =>
  Math.min(0.8, Math.max(0.1, depletionFractionTable + 0.04 * (5 - etcMmPerDay)));

/**
 * Water stress coefficient, 1 with no stress, 0 at the wilting point.
 *
 *   Ks = (TAW - Dr) / ((1 - p) TAW) where Dr > RAW, with (1 - p) TAW = TAW - RAW
 *
 * Source: FAO-56, eq. 84.
 */
export function stressCoefficient(input: { tawMm: number; rawMm: number; depletionMm: number }): number {
  const { tawMm, rawMm, depletionMm } = input;
  if (depletionMm <= rawMm) return 1;
  if (depletionMm >= tawMm) return 0;
  return (tawMm - depletionMm) / (tawMm - rawMm);
}

/** `root-zone-water`: TAW, RAW and p. Refuses a wilting point not below field capacity. */
export const rootZoneWater = defineQuantity({
  id: "root-zone-water",
  question: "How much water can the root zone hold, and how much of it is easily had?",
  schema: z.strictObject({
    fieldCapacity: num("water content at field capacity", "m3/m3", 0.02, 0.9),
    wiltingPoint: num("water content at wilting point", "m3/m3", 0, 0.6),
    rootDepthM: num("depth of the root zone", "m", 0.03, 3),
    depletionFractionTable: num("depletion fraction p as tabulated, at 5 mm a day", "fraction", 0.1, 0.8),
    etcMmPerDay: num("crop evapotranspiration of the day", "mm/day", 0, 20).optional(),
  }),
  outputs: {
    tawMm: { meaning: "total available water", unit: "mm" },
    rawMm: { meaning: "readily available water", unit: "mm" },
    depletionFraction: { meaning: "depletion fraction used", unit: "fraction" },
  },
  sources: [fao56("eq. 82, 83"), fao56("Table 22")],
  compute(input, w) {
    const { fieldCapacity, wiltingPoint, rootDepthM, depletionFractionTable: table, etcMmPerDay } = input;
    if (wiltingPoint >= fieldCapacity) {
      const bound = `below ${fieldCapacity}`;
      refuse("wiltingPoint", `must be below fieldCapacity (${fieldCapacity})`, bound, wiltingPoint);
    }
    if (etcMmPerDay === undefined) {
      w.estimate("etcMmPerDay", "p is left as tabulated, which is for 5 mm a day", fao56("Table 22"));
    }
    const tawMm = w.line(
      "TAW",
      "total available water",
      `1000 (θFC - θWP) Zr = 1000 (${fieldCapacity} - ${wiltingPoint}) ${rootDepthM}`,
      totalAvailableWaterMm(input),
      "mm",
      fao56("eq. 82"),
    );
    const p = w.line(
      "p",
      "depletion fraction",
      etcMmPerDay === undefined
        ? `p(table) = ${table}`
        : `p(table) + 0.04 (5 - ETc), 0.1 to 0.8, p(table) = ${table}, ETc = ${etcMmPerDay}`,
      etcMmPerDay === undefined ? table : adjustedDepletionFraction(table, etcMmPerDay),
      "fraction",
      fao56("Table 22 note"),
    );
    const rawMm = w.line("RAW", "readily available water", "p TAW", p * tawMm, "mm", fao56("eq. 83"));
    return { tawMm, rawMm, depletionFraction: p };
  },
});

/** Refuses a depletion or a readily available water above the total. */
export function refuseBeyondTaw(
  input: { tawMm: number; rawMm: number },
  field: string,
  depletionMm: number,
): void {
  const bound = `at most ${input.tawMm}`;
  if (input.rawMm > input.tawMm) {
    refuse("rawMm", `must not be above tawMm (${input.tawMm})`, bound, input.rawMm);
  }
  if (depletionMm > input.tawMm) {
    refuse(field, `must not be above tawMm (${input.tawMm})`, bound, depletionMm);
  }
}

/** `water-stress`: Ks of eq. 84. Refuses RAW or a depletion above TAW. */
export const waterStress = defineQuantity({
  id: "water-stress",
  question: "How far does this depletion hold the crop back?",
  schema: z.strictObject({
    tawMm: num("total available water", "mm", 0.1, 2000),
    rawMm: num("readily available water", "mm", 0, 2000),
    depletionMm: num("water missing from the root zone", "mm", 0, 2000),
  }),
  outputs: { ks: { meaning: "water stress coefficient, 1 with no stress", unit: "" } },
  sources: [fao56("eq. 84")],
  compute(input, w) {
    refuseBeyondTaw(input, "depletionMm", input.depletionMm);
    return {
      ks: w.line(
        "Ks",
        "water stress coefficient",
        `(TAW - Dr) / (TAW - RAW) where Dr > RAW, else 1; TAW = ${input.tawMm}, RAW = ${input.rawMm}, Dr = ${input.depletionMm}`,
        stressCoefficient(input),
        "",
        fao56("eq. 84"),
      ),
    };
  },
});

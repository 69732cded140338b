import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { fao56 } from "../cite.ts";

/** Depth of soil that dries by evaporation, the lower end of the printed 0.10 to 0.15 m. Source: FAO-56, eq. 73. */
const EVAPORATION_DEPTH_M = 0.1;

/**
 * Water that can evaporate from the top of a soil once it is wet [mm].
 *
 *   TEW = 1000 (θFC - 0.5 θWP) Ze
 *
 * Source: FAO-56, eq. 73.
 */
const totalEvaporableWaterMm = (soil: {
  fieldCapacity: number;
  wiltingPoint: number;
  evaporationDepthM: number;
}): number => 1000 * (soil.fieldCapacity - 0.5 * soil.wiltingPoint) * soil.evaporationDepthM;

/** `evaporable-water`: TEW of eq. 73. Refuses a wilting point not below field capacity. */
export const evaporableWater = defineQuantity({
  id: "evaporable-water",
  question: "How much water can evaporate from the top of this soil before it is dry?",
  schema: z.strictObject({
    fieldCapacity: num("water content at field capacity", "m3/m3", 0.02, 0.9),
    wiltingPoint: num("water content at wilting point", "m3/m3", 0, 0.6),
    evaporationDepthM: num("depth that dries by evaporation; 0.10 where left out", "m", 0.05, 0.2).optional(),
  }),
  outputs: { tewMm: { meaning: "total evaporable water", unit: "mm" } },
  sources: [fao56("eq. 73")],
  compute(input, w) {
    const { fieldCapacity, wiltingPoint } = input;
    if (wiltingPoint >= fieldCapacity) {
      const bound = `below ${fieldCapacity}`;
      refuse("wiltingPoint", `must be below fieldCapacity (${fieldCapacity})`, bound, wiltingPoint);
    }
    if (input.evaporationDepthM === undefined) {
      w.estimate("evaporationDepthM", "0.10 m, the lower end of the printed 0.10 to 0.15 m", fao56("eq. 73"));
    }
    const evaporationDepthM = input.evaporationDepthM ?? EVAPORATION_DEPTH_M;
    return {
      tewMm: w.line(
        "TEW",
        "total evaporable water",
        `1000 (θFC - 0.5 θWP) Ze = 1000 (${fieldCapacity} - 0.5 × ${wiltingPoint}) ${evaporationDepthM}`,
        totalEvaporableWaterMm({ fieldCapacity, wiltingPoint, evaporationDepthM }),
        "mm",
        fao56("eq. 73"),
      ),
    };
  },
});

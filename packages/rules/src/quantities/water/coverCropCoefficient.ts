import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { SourceRef } from "../../core/working.ts";
import { KC_MIN } from "./dualExposedSoil.ts";

const source: SourceRef = { key: "allen-pereira-2009", locator: "Kd for row crops; FAO-56 eq. 97" };

/** Multiplier on the cover: leaves reach further than the ground straight below them. Source: FAO-56, eq. 97. */
const CROWN_MULTIPLIER = 2;

/**
 * The basal coefficient of a stand that covers only part of its ground.
 *
 *   Kcb = Kcmin + Kd (Kcb,full - Kcmin)        Kd = min(1, 2 fc, fc^(1 / (1 + h)))
 *
 * Source: Allen and Pereira 2009, the form of FAO-56 eq. 97; read second hand.
 */
export function basalFromCover(input: {
  coverFraction: number;
  heightM: number;
  kcbFull: number;
  kcMin?: number;
}): number {
  const { coverFraction: fc, heightM, kcbFull, kcMin = KC_MIN } = input;
  const density = Math.min(1, CROWN_MULTIPLIER * fc, fc ** (1 / (1 + heightM)));
  return kcMin + density * (kcbFull - kcMin);
}

/** `cover-crop-coefficient`: {@link basalFromCover} with its working. */
export const coverCropCoefficient = defineQuantity({
  id: "cover-crop-coefficient",
  question: "What is the basal crop coefficient of plants that cover this much of the ground?",
  schema: z.strictObject({
    coverFraction: num("share of the ground that the plants cover, seen from above", "fraction", 0, 1),
    heightM: num("height of the plants", "m", 0.01, 20),
    kcbFull: num("basal coefficient at full cover, moved to the climate", "", 0.2, 1.6),
    kcMin: num("coefficient of dry bare soil; 0.15 where left out", "", 0, 0.2).optional(),
  }),
  outputs: {
    kcb: { meaning: "basal crop coefficient", unit: "" },
    density: { meaning: "density coefficient Kd", unit: "" },
  },
  sources: [source],
  compute(input, w) {
    const { coverFraction: fc, heightM, kcbFull } = input;
    if (input.kcMin === undefined) w.estimate("kcMin", "0.15, the lower end of the printed 0.15 to 0.20");
    const kcMin = input.kcMin ?? KC_MIN;
    const density = w.line(
      "Kd",
      "density coefficient",
      `min(1, 2 fc, fc^(1 / (1 + h))), fc = ${fc}, h = ${heightM}`,
      Math.min(1, CROWN_MULTIPLIER * fc, fc ** (1 / (1 + heightM))),
      "",
      source,
    );
    return {
      density,
      kcb: w.line(
        "Kcb",
        "basal crop coefficient",
        `Kcmin + Kd (Kcb,full - Kcmin), Kcmin = ${kcMin}, Kcb,full = ${kcbFull}`,
        basalFromCover({ ...input, kcMin }),
        "",
        source,
      ),
    };
  },
});

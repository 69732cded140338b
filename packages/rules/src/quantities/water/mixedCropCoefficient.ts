import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { fao56 } from "../cite.ts";

const crop = z.strictObject({
  areaFraction: num("share of the ground", "fraction", 0.001, 1),
  heightM: num("height of the crop", "m", 0.01, 20),
  kc: num("crop coefficient", "", 0, 2),
});

/**
 * `mixed-crop-coefficient`: one coefficient for crops that share a bed and its water, weighted by ground and height,
 * because the taller one takes more of the sun and the wind.
 *
 *   Kc,field = Σ f h Kc / Σ f h
 *
 * Source: FAO-56, eq. 104. Refuses shares that together pass 1.
 */
export const mixedCropCoefficient = defineQuantity({
  id: "mixed-crop-coefficient",
  question: "What is the crop coefficient of a bed that several crops share?",
  schema: z.strictObject({
    crops: z
      .array(crop)
      .min(1)
      .max(20)
      .meta({ meaning: "the crops: areaFraction, heightM [m] and kc of each", unit: "list" }),
  }),
  outputs: { kc: { meaning: "crop coefficient of the bed", unit: "" } },
  sources: [fao56("eq. 104")],
  compute({ crops }, w) {
    const covered = crops.reduce((sum, c) => sum + c.areaFraction, 0);
    if (covered > 1 + 1e-9) {
      refuse(
        "crops",
        `must not cover more than all of the ground (${covered})`,
        "shares of 1 or less",
        covered,
      );
    }
    const weight = crops.reduce((sum, c) => sum + c.areaFraction * c.heightM, 0);
    const weighted = crops.reduce((sum, c) => sum + c.areaFraction * c.heightM * c.kc, 0);
    const parts = crops.map((c) => `${c.areaFraction} × ${c.heightM} m × ${c.kc}`).join(" + ");
    return {
      kc: w.line(
        "Kc,field",
        "crop coefficient of the bed",
        `Σ f h Kc / Σ f h, f h Kc = ${parts}`,
        weighted / weight,
        "",
        fao56("eq. 104"),
      ),
    };
  },
});

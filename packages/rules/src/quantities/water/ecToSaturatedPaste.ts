import { z } from "zod";
import { num, word } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { EC_EXTRACTIONS, TEXTURES } from "../../states/parts.ts";
import { EC_TO_PASTE, type EcRelation, TEXTURE_GROUP } from "../../tables/ecConversion.ts";

/** Conductivity of the saturated paste by one relation; more water never makes an extract stronger, so not below EC. */
const ofRelation = ({ slope, interceptDsPerM }: EcRelation, ecDsPerM: number): number =>
  Math.max(ecDsPerM, slope * ecDsPerM + interceptDsPerM);

/**
 * `ec-to-saturated-paste`: ECe = b EC + a, by extraction and texture; the default relation and the span of all held.
 *
 * Sources: Hogg and Henry 1984 (1:1, 1:2), Sonmez et al. 2008 (1:1, 1:5), Talsma 1968 (1:5), all second hand. The soils
 * they come from differ, so do they: a reading in the saturated paste outranks each of them.
 */
export const ecToSaturatedPaste = defineQuantity({
  id: "ec-to-saturated-paste",
  question: "What would this soil read in the saturated paste?",
  schema: z.strictObject({
    ecDsPerM: num("electrical conductivity as the laboratory reports it", "dS/m", 0, 50),
    extraction: word("extraction it was read in", EC_EXTRACTIONS),
    texture: word("texture class of the soil", TEXTURES),
  }),
  outputs: {
    eceDsPerM: { meaning: "conductivity of the saturated paste extract", unit: "dS/m" },
    lowDsPerM: { meaning: "the lowest that a published relation gives", unit: "dS/m" },
    highDsPerM: { meaning: "the highest that a published relation gives", unit: "dS/m" },
  },
  sources: [{ key: "hogg-henry-1984" }, { key: "sonmez-2008" }, { key: "talsma-1968" }],
  compute({ ecDsPerM, extraction, texture }, w) {
    if (extraction === "saturated-paste") {
      const ece = w.line("ECe", "read in the saturated paste itself", "ECe = EC", ecDsPerM, "dS/m");
      return { eceDsPerM: ece, lowDsPerM: ece, highDsPerM: ece };
    }
    const relations = EC_TO_PASTE[extraction][TEXTURE_GROUP[texture]];
    const values = relations.map((r, i) =>
      w.line(
        i === 0 ? "ECe" : "ECe'",
        i === 0 ? "conductivity of the saturated paste extract" : "the same by another relation",
        `b EC + a, not below EC; b = ${r.slope}, a = ${r.interceptDsPerM}, EC = ${ecDsPerM}`,
        ofRelation(r, ecDsPerM),
        "dS/m",
        r.source,
      ),
    );
    w.estimate("eceDsPerM", `converted from ${extraction} in ${texture}, not measured`, relations[0].source);
    return {
      eceDsPerM: ofRelation(relations[0], ecDsPerM),
      lowDsPerM: Math.min(...values),
      highDsPerM: Math.max(...values),
    };
  },
});

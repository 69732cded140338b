import type { SourceRef } from "../core/working.ts";
import type { EC_EXTRACTIONS, TEXTURES } from "../states/parts.ts";

type Texture = (typeof TEXTURES)[number];
/** The three groups that the published relations tell apart. */
type TextureGroup = "coarse" | "medium" | "fine";

/** ECe = slope × EC + intercept [dS/m]. */
export interface EcRelation {
  slope: number;
  interceptDsPerM: number;
  source: SourceRef;
}

/** Which group a texture class falls in (common practice: by the class's own name). */
export const TEXTURE_GROUP: Record<Texture, TextureGroup> = {
  sand: "coarse",
  "loamy-sand": "coarse",
  "sandy-loam": "coarse",
  loam: "medium",
  "silt-loam": "medium",
  silt: "medium",
  "silty-clay-loam": "fine",
  "silty-clay": "fine",
  clay: "fine",
};

const relation = (slope: number, interceptDsPerM: number, key: string, locator: string): EcRelation => ({
  slope,
  interceptDsPerM,
  source: { key, locator },
});
const hogg = (slope: number, intercept: number, how: string) =>
  relation(slope, intercept, "hogg-henry-1984", how);
const sonmez = (slope: number, intercept: number, how: string) =>
  relation(slope, intercept, "sonmez-2008", how);
const talsma = relation(6.4, 0, "talsma-1968", "all textures");

/**
 * From a dilute extract to the saturated paste, by extraction and texture. The first relation is the default (1:1 and 1:2:
 * cold prairie soils of Saskatchewan), the others disagree with it and say how far.
 */
export const EC_TO_PASTE: Record<
  Exclude<(typeof EC_EXTRACTIONS)[number], "saturated-paste">,
  Record<TextureGroup, readonly [EcRelation, ...EcRelation[]]>
> = {
  "1:1": {
    coarse: [hogg(3.01, -0.06, "1:1 suspension, coarse"), sonmez(2.72, -1.27, "1:1, sandy")],
    medium: [hogg(3.01, -0.77, "1:1 suspension, medium"), sonmez(2.15, -0.44, "1:1, loamy")],
    fine: [hogg(2.66, -0.97, "1:1 suspension, fine"), sonmez(2.03, -0.41, "1:1, clay")],
  },
  "1:2": {
    coarse: [hogg(2.79, 0.71, "1:2 extract, coarse"), hogg(3.58, 0.1, "1:2 suspension, coarse")],
    medium: [hogg(2.35, -0.36, "1:2 extract, medium"), hogg(3.23, -0.67, "1:2 suspension, medium")],
    fine: [hogg(2.16, 0.03, "1:2 extract, fine"), hogg(3.12, -0.59, "1:2 suspension, fine")],
  },
  "1:5": {
    coarse: [sonmez(8.22, -0.33, "1:5, sandy"), talsma],
    medium: [sonmez(7.58, 0.06, "1:5, loamy"), talsma],
    fine: [sonmez(7.36, -0.24, "1:5, clay"), talsma],
  },
};

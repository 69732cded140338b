import { refuse } from "../../core/errors.ts";
import type { Working } from "../../core/working.ts";
import { latestTest } from "../../food/latestTest.ts";
import { ecToSaturatedPaste } from "../../quantities/water/ecToSaturatedPaste.ts";
import { type EC_EXTRACTIONS, type SoilTest, TEXTURES } from "../../states/parts.ts";
import type { PlantingState } from "../../states/states.ts";

type Extraction = (typeof EC_EXTRACTIONS)[number];

/** A soil's salt in the saturated paste, measured or converted, with the span of the published relations. */
interface SoilSalt {
  kind: "read";
  test: SoilTest;
  ecDsPerM: number;
  extraction: Extraction;
  eceDsPerM: number;
  lowDsPerM: number;
  highDsPerM: number;
  converted: boolean;
}

/** What the soil tests say of salt. `unread`: there is a number, and what it lacks to be read. */
export type SoilSaltReading =
  | { kind: "none" }
  | { kind: "unread"; lacks: "extraction"; field: string; ecDsPerM: number }
  | { kind: "unread"; lacks: "texture"; field: string; ecDsPerM: number; extraction: Extraction }
  | SoilSalt;

/**
 * The newest soil test with a conductivity, as the saturated paste would read.
 *
 * @throws DomainError naming the medium: potting media by any extraction, organic soil by a dilute one
 */
export function soilSaltOf(state: PlantingState, today: string, w: Working): SoilSaltReading {
  latestTest(state.soilTests, today);
  const [newest] = state.soilTests
    .flatMap((test, index) => (test.ec ? [{ test, ec: test.ec, index }] : []))
    .toSorted((a, b) => (a.test.sampledOn < b.test.sampledOn ? 1 : -1));
  if (!newest) return { kind: "none" };
  const { test, ec, index } = newest;
  const path = `soilTests.${index}`;
  if (test.medium === "potting-medium") {
    const message = "salt limits and conversions are of soil; they do not read a potting medium";
    refuse(`${path}.medium`, message, "mineral-soil", test.medium);
  }
  const { extraction, dSPerM: ecDsPerM } = ec;
  if (extraction === undefined) {
    return { kind: "unread", lacks: "extraction", field: `${path}.ec.extraction`, ecDsPerM };
  }
  if (extraction !== "saturated-paste" && test.medium === "organic-soil") {
    const message = `no published relation from ${extraction} to the saturated paste is held for organic soil`;
    refuse(`${path}.ec.extraction`, message, "saturated-paste", extraction);
  }
  const { texture } = state.bed.soil;
  if (extraction !== "saturated-paste" && texture === undefined) {
    return { kind: "unread", lacks: "texture", field: "bed.soil.texture", ecDsPerM, extraction };
  }
  // The paste is read as it is, whatever the texture.
  const answer = ecToSaturatedPaste.compute({ ecDsPerM, extraction, texture: texture ?? "loam" });
  w.include(answer);
  return {
    kind: "read",
    test,
    ecDsPerM,
    extraction,
    ...answer.value,
    converted: extraction !== "saturated-paste",
  };
}

/** What a dilute reading could be in the saturated paste, from the lightest to the heaviest soil. */
export function widestPaste(ecDsPerM: number, extraction: Extraction): { low: number; high: number } {
  const all = TEXTURES.map((texture) => ecToSaturatedPaste.compute({ ecDsPerM, extraction, texture }).value);
  return {
    low: Math.min(...all.map((v) => v.lowDsPerM)),
    high: Math.max(...all.map((v) => v.highDsPerM)),
  };
}

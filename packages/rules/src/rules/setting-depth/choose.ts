import type { FieldNote } from "../../states/parts.ts";
import type { PlantingState } from "../../states/states.ts";
import { type SoilReading, soilNow } from "../../warmth/soilTemperature.ts";

/** Soil at 10 cm in the morning from which a stem may be set deeper (guides, from memory: 16 to 18 C; the warm end). */
export const WARM_SOIL_C = 18;
/** Most stem to bury: to the first true leaf (catalogue; depth-guides, from memory). */
export const DEEPEST_STEM_CM = 5;
/** Soil drawn over the root ball so that it does not wick dry (cp). */
export const SOIL_OVER_BALL_CM = 1;
/** A graft union stays at least this far above the soil (cp). */
export const UNION_ABOVE_SOIL_CM = 3;

type Depth = "root-ball" | "seed-leaves";
/** Why it went the way it went; the first that holds. */
type Reason =
  | "grafted"
  | "woody"
  | "not-leggy"
  | "stem-unknown"
  | "soil-unknown"
  | "soil-cold"
  | "trade-rule"
  | "leggy-green-warm";

/** How deep, and why. */
export interface Choice {
  depth: Depth;
  buriedStemCm: number;
  reason: Reason;
  leggy: boolean;
  stem: "green" | "woody" | null;
  /** Both kinds of stem were noted; the later counts. */
  contradicted: boolean;
  soil: SoilReading | null;
  /** Trade and trials part here and nowhere else: leggy, green, ungrafted, warm soil. */
  open: boolean;
}

/**
 * The root ball by default; to the seed leaves only for a leggy, green-stemmed, ungrafted plant in warm soil, and only
 * where the trials are followed. Never a woody stem, never a graft union. Every doubt ends at the root ball, which no
 * source speaks against.
 *
 * @param reading option in force of the choice `setting-depth.leggy`
 */
export function chooseDepth(state: PlantingState, today: string, reading: string): Choice {
  const notes = state.notes.filter((n) => n.on <= today);
  const leggy = notes.some((n) => n.kind === "leggy");
  const { stem, contradicted } = stemOf(notes);
  const soil = soilNow(state, today);
  const seen = reasonOf(state.planting.grafted === true, leggy, stem, soil);
  const open = seen === "leggy-green-warm";
  const reason: Reason = open && reading !== "trials" ? "trade-rule" : seen;
  const depth: Depth = reason === "leggy-green-warm" ? "seed-leaves" : "root-ball";
  return {
    depth,
    buriedStemCm: depth === "seed-leaves" ? DEEPEST_STEM_CM : 0,
    reason,
    leggy,
    stem,
    contradicted,
    soil,
    open,
  };
}

function reasonOf(grafted: boolean, leggy: boolean, stem: Choice["stem"], soil: SoilReading | null): Reason {
  if (grafted) return "grafted";
  if (stem === "woody") return "woody";
  if (!leggy) return "not-leggy";
  if (stem === null) return "stem-unknown";
  if (soil === null) return "soil-unknown";
  return soil.morningC >= WARM_SOIL_C ? "leggy-green-warm" : "soil-cold";
}

/** The later of the two notes counts; on the same day woody does, because burying wood is the worse mistake. */
function stemOf(notes: FieldNote[]): { stem: Choice["stem"]; contradicted: boolean } {
  const last = (kind: FieldNote["kind"]) =>
    notes
      .filter((n) => n.kind === kind)
      .reduce<string | null>((a, n) => (a !== null && a > n.on ? a : n.on), null);
  const green = last("stem-green");
  const woody = last("stem-woody");
  if (green === null && woody === null) return { stem: null, contradicted: false };
  const contradicted = green !== null && woody !== null;
  return { stem: green !== null && (woody === null || green > woody) ? "green" : "woody", contradicted };
}

import type { SourceRef } from "../core/working.ts";
import type { Application, Material } from "../states/food.ts";
import { AMMONIUM_KEPT_ON_SURFACE, DRY_FROM_PCT, MANURE_RELEASE } from "../tables/manureRelease.ts";
import type { Range } from "../tables/uptake.ts";

/** Manures and composts: their nitrogen comes free over years, by a published share. */
export const ROTS: ReadonlySet<Material["kind"]> = new Set<Material["kind"]>([
  "manure",
  "poultry-manure",
  "compost",
]);

/** First-year share of a compost's nitrogen [%]. From memory, unverified (SN-912). */
const COMPOST_RELEASE_PCT: Range = { low: 10, high: 25 };
/** Share of a manure's nitrogen that is ammonium where no analysis says: 8 of 21 lb/ton in one worked example (SN-901). */
const AMMONIUM_SHARE_OF_EXAMPLE = 8 / 21;

export const COMPOST_RELEASE_SOURCE: SourceRef = { key: "nitrogen-credits-memory", locator: "SN-912" };

/** What is known of a material that rots, from the shed or from an application. */
interface Analysis extends Pick<Material, "kind" | "nPct"> {
  manure?: Material["manure"];
  composted?: boolean | undefined;
}

const isComposted = (m: Analysis) => m.kind === "compost" || (m.composted ?? m.manure?.composted ?? false);

/** Release of organic nitrogen in that year [%]; where animal or dry matter is not known, the span of what it may be. */
function releasePct(m: Analysis, year: 0 | 1 | 2): Range {
  const animal = m.manure?.animal ?? (m.kind === "poultry-manure" ? "poultry" : undefined);
  const dryMatter = m.manure?.dryMatterPct;
  const rows = animal
    ? [MANURE_RELEASE[animal]]
    : (["cattle", "swine", "sheep", "horse"] as const).map((a) => MANURE_RELEASE[a]);
  const values = rows.flatMap(({ wet, dry }) =>
    dryMatter === undefined ? [wet[year], dry[year]] : [(dryMatter >= DRY_FROM_PCT ? dry : wet)[year]],
  );
  return { low: Math.min(...values), high: Math.max(...values) };
}

/**
 * Of the nitrogen in the analysis, what a crop can take up so many years after it was spread [% of fresh weight]; 0 is the
 * same year. Of a mineral fertiliser, and of a meal, all of it in the same year. Of a manure:
 *
 *   ammonium × kept + (total - ammonium) × release
 *
 * Ammonium is kept whole where it is worked in and 0.66 on the surface. Sources: SN-901, SN-902; composts SN-912 (memory).
 */
export function nitrogenFreePct(m: Analysis, years: number): Range {
  const { nPct } = m;
  if (!ROTS.has(m.kind)) return years === 0 ? { low: nPct, high: nPct } : { low: 0, high: 0 };
  if (years > 2 || (isComposted(m) && years > 0)) return { low: 0, high: 0 };
  if (isComposted(m)) {
    return { low: (nPct * COMPOST_RELEASE_PCT.low) / 100, high: (nPct * COMPOST_RELEASE_PCT.high) / 100 };
  }
  const release = releasePct(m, years === 0 ? 0 : years === 1 ? 1 : 2);
  const measured = m.manure?.ammoniumNPct;
  // Where no analysis says how much is ammonium, it may be none, or as much as in the example.
  const ammonium =
    measured === undefined
      ? { low: 0, high: nPct * AMMONIUM_SHARE_OF_EXAMPLE }
      : { low: Math.min(nPct, measured), high: Math.min(nPct, measured) };
  const organic = (share: number, pct: number) => ((nPct - share) * pct) / 100;
  if (years > 0)
    return { low: organic(ammonium.high, release.low), high: organic(ammonium.low, release.high) };
  return {
    low: ammonium.low * AMMONIUM_KEPT_ON_SURFACE + organic(ammonium.low, release.low),
    high: ammonium.high + organic(ammonium.high, release.high),
  };
}

/** What a plan counts on of a material's nitrogen this year: the middle of {@link nitrogenFreePct} [% of fresh weight]. */
export function countedNPct(material: Analysis): number {
  const { low, high } = nitrogenFreePct(material, 0);
  return (low + high) / 2;
}

/** An application with what the shed still knows of its material. */
export function analysisOf(applied: Application, shed: Material[]): Analysis {
  const material = shed.find((m) => m.id === applied.materialId);
  return {
    kind: applied.kind ?? material?.kind ?? "other",
    nPct: applied.nPct,
    ...(material?.manure ? { manure: material.manure } : {}),
    composted: applied.composted ?? material?.manure?.composted,
  };
}

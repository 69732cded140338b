import type { SourceRef } from "../core/working.ts";
import { optionOf } from "../evidence/choices.ts";
import type { BedHistory, Crop, SoilDisease } from "../states/bedPlan.ts";
import type { Settings } from "../states/parts.ts";
import { ROTATION_INTERVALS } from "../tables/rotationIntervals.ts";

export type RestReading = "shortest" | "longest";
export const restReading = (settings: Settings): RestReading =>
  optionOf("rotation.interval", settings) as RestReading;

/** One interval held against what stood in a bed. */
export interface Rest {
  /** Null: of peppers themselves, whatever the disease. */
  disease: SoilDisease | null;
  /** The disease was found in this bed. */
  found: boolean;
  /** Whole seasons without a host that are asked for. */
  neededYears: number;
  source: SourceRef;
  /** The last host before the season, where one is recorded. */
  last?: { season: number; crop: Crop };
  /** Whole seasons without a host that there were; where no host is recorded, as far back as the record goes. */
  restedYears: number;
  /** First season in which peppers may stand here again, as far as the record goes. */
  from: number;
  verdict: "clear" | "too-soon" | "unknown";
}

/**
 * How a bed stands for peppers in a season: the seasons since the last host of each pathogen against the published rest.
 * Where the disease was found in the bed the longest rest holds, whatever was chosen (common practice). A record that does
 * not reach back far enough leaves it open.
 */
export function restsOf(history: readonly BedHistory[], season: number, reading: RestReading): Rest[] {
  // What stands there in the season itself are these peppers; another crop before them in the same year does count.
  const past = history.filter((h) => h.season < season || (h.season === season && h.crop !== "pepper"));
  const recorded = recordedBack(past, season);
  return ROTATION_INTERVALS.flatMap(({ disease, hosts, onlyWhereFound, restYears, ...sources }): Rest[] => {
    const found = disease !== null && history.some((h) => h.disease === disease && h.season <= season);
    if (onlyWhereFound && !found) return [];
    const which = found || reading === "longest" ? "long" : "short";
    const needed = { disease, found, neededYears: restYears[which], source: sources[which] };
    const last = past
      .filter((h) => hosts.includes(h.crop) || (disease !== null && h.disease === disease))
      .reduce<BedHistory | undefined>((a, h) => (a && a.season >= h.season ? a : h), undefined);
    if (!last) {
      const verdict = recorded >= needed.neededYears ? "clear" : "unknown";
      return [{ ...needed, restedYears: recorded, from: season, verdict }];
    }
    const since = Math.max(0, season - last.season - 1);
    const tooSoon = since < needed.neededYears || last.season === season;
    // A season that nobody wrote down may have had a host: only recorded ones count as rest.
    const open = !tooSoon && recorded < needed.neededYears;
    const restedYears = open ? recorded : since;
    return [
      {
        ...needed,
        last: { season: last.season, crop: last.crop },
        restedYears,
        from: last.season + needed.neededYears + 1,
        verdict: tooSoon ? "too-soon" : open ? "unknown" : "clear",
      },
    ];
  });
}

/** The rest that keeps peppers out longest; undefined where none does. */
export const bindingRest = (rests: readonly Rest[]): Rest | undefined =>
  rests.filter((r) => r.verdict === "too-soon").toSorted((a, b) => b.from - a.from)[0];

/** How many seasons straight back from this one have a record. */
function recordedBack(past: readonly BedHistory[], season: number): number {
  const known = new Set(past.map((h) => h.season));
  let years = 0;
  while (known.has(season - years - 1)) years++;
  return years;
}

/** Whether a bed may take peppers: too soon for any pathogen, or open because nothing is recorded. */
export function restVerdict(rests: readonly Rest[]): Rest["verdict"] {
  if (rests.some((r) => r.verdict === "too-soon")) return "too-soon";
  return rests.some((r) => r.verdict === "unknown") ? "unknown" : "clear";
}

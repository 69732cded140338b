import { daysBetween } from "../core/days.ts";
import type { SourceRef } from "../core/working.ts";
import { soilTestMass } from "../quantities/soil/soilTestMass.ts";
import type { PlantingState } from "../states/states.ts";
import { KG_PER_HA_PER_LB_PER_ACRE } from "../tables/landUnits.ts";
import { MANURE_RELEASE_SOURCE } from "../tables/manureRelease.ts";
import type { Range } from "../tables/uptake.ts";
import { croppedAreaM2 } from "../water/ground.ts";
import { SEASON_DAYS } from "../water/stages.ts";
import { analysisOf, COMPOST_RELEASE_SOURCE, nitrogenFreePct, ROTS } from "./available.ts";
import { latestTestOf } from "./latestTest.ts";
import { nitrateOf } from "./nitrateCheck.ts";

type CreditKind = PlantingState["feeding"]["credits"][number]["kind"];

/** Nitrogen from elsewhere [kg/ha], as a range, and what of it the plan counts on. */
export interface Credit {
  kind: CreditKind;
  low: number;
  /** What the plan counts on: the middle, or less where the range is of memory alone. */
  mid: number;
  high: number;
  how: "given" | "computed";
  /** Why `mid` is what it is. */
  assumes: "middle" | "lowest" | "whole";
  source: SourceRef | null;
}

const CP: SourceRef = { key: "common-practice" };
/** A nitrate test speaks for about two months (common practice). */
const NITRATE_TEST_HOLDS_DAYS = 60;
/** Of nitrate found in the soil, half to all is still there when roots come (common practice). */
const NITRATE_KEPT = { low: 0.5, high: 1 } as const;
/** Mineral topsoil where nobody weighed it (common practice). */
const BULK_DENSITY_KG_PER_M3 = 1300;
/** From so many days on what was watered so far says how the season will be watered (common practice). */
const PACE_KNOWN_DAYS = 14;
const DAYS_OF_A_YEAR = 365;
/** Nitrogen a soil releases in a year for each percent of organic matter [lb/A]. From memory, unverified (SN-911). */
const ORGANIC_MATTER_LB_PER_ACRE: Range = { low: 10, high: 40 };
const ORGANIC_MATTER_SOURCE: SourceRef = { key: "nitrogen-credits-memory", locator: "SN-911" };

/** 1 mg/L in 1 mm on a hectare (10 m3) is 0.01 kg. */
const nitrateInWaterKgPerHa = (mgPerL: number, mm: number) => (mgPerL * mm) / 100;

const ranged = (
  kind: CreditKind,
  { low, high }: Range,
  source: SourceRef,
  assumes: Credit["assumes"] = "middle",
): Credit => ({
  kind,
  low,
  mid: assumes === "middle" ? (low + high) / 2 : low,
  high,
  how: "computed",
  assumes,
  source,
});

/** The credits as judged by the agent, and those that can be computed where the agent gave none of that kind. */
export function creditsOf(state: PlantingState, start: string, today: string): Credit[] {
  const judged = state.feeding.credits.map(
    (c): Credit => ({
      kind: c.kind,
      low: c.nKgPerHaLow,
      mid: (c.nKgPerHaLow + c.nKgPerHaHigh) / 2,
      high: c.nKgPerHaHigh,
      how: "given",
      assumes: "middle",
      source: null,
    }),
  );
  const computed = [
    ...fromDressings(state, start, today),
    organicMatter(state, today),
    inWater(state, start, today),
    inSoil(state, start, today),
  ].filter((c) => c !== undefined);
  return [...judged, ...computed.filter((c) => !judged.some((j) => j.kind === c.kind))];
}

/** What manure and compost of this year and the two before set free for this crop (SN-901, SN-902, SN-912). */
function fromDressings(state: PlantingState, start: string, today: string): Credit[] {
  const sums = new Map<"manure" | "compost", Range>();
  for (const applied of state.applications) {
    const analysis = analysisOf(applied, state.shed);
    if (!ROTS.has(analysis.kind) || applied.on > today) continue;
    const years = Math.max(0, Math.floor(daysBetween(applied.on, start) / DAYS_OF_A_YEAR));
    const pct = nitrogenFreePct(analysis, years);
    const kgPerHa = (share: number) =>
      (applied.amountKg * share * 100) / Math.max(applied.areaM2, croppedAreaM2(state.bed));
    const kind = analysis.kind === "compost" ? "compost" : "manure";
    const had = sums.get(kind) ?? { low: 0, high: 0 };
    sums.set(kind, { low: had.low + kgPerHa(pct.low), high: had.high + kgPerHa(pct.high) });
  }
  return [...sums].map(([kind, range]) =>
    ranged(kind, range, kind === "compost" ? COMPOST_RELEASE_SOURCE : MANURE_RELEASE_SOURCE),
  );
}

/** A range from memory: the plan counts on its lowest alone (SN-911). */
function organicMatter(state: PlantingState, today: string): Credit | undefined {
  const found = latestTestOf(
    state.soilTests,
    today,
    (t) => t.medium === "mineral-soil" && t.organicMatterPct !== undefined,
  );
  const pct = found?.test.organicMatterPct;
  if (pct === undefined) return undefined;
  const { low, high } = ORGANIC_MATTER_LB_PER_ACRE;
  const kgPerHa = (lbPerAcre: number) => lbPerAcre * pct * KG_PER_HA_PER_LB_PER_ACRE;
  return ranged(
    "organic-matter",
    { low: kgPerHa(low), high: kgPerHa(high) },
    ORGANIC_MATTER_SOURCE,
    "lowest",
  );
}

/**
 * Nitrate in the water of the season. Where its depth is stated that is counted whole; else what was given so far is
 * the least, and the same pace to the season's end the most. Worth counting above 3 to 5 mg/L (SN-908).
 */
function inWater(state: PlantingState, start: string, today: string): Credit | undefined {
  const tested = state.waterTests
    ?.filter((t) => t.sampledOn <= today && t.nitrateNMgPerL !== undefined)
    .toSorted((a, b) => (a.sampledOn < b.sampledOn ? 1 : -1))[0]?.nitrateNMgPerL;
  const mgPerL = state.water?.nitrateNMgPerL ?? tested;
  if (mgPerL === undefined) return undefined;
  const { irrigationMm, givenMm } = state.water ?? {};
  if (irrigationMm !== undefined) {
    const kg = nitrateInWaterKgPerHa(mgPerL, irrigationMm);
    return ranged("irrigation-water", { low: kg, high: kg }, CP, "whole");
  }
  const days = daysBetween(start, today);
  if (givenMm === undefined || days < PACE_KNOWN_DAYS) return undefined;
  const low = nitrateInWaterKgPerHa(mgPerL, givenMm);
  return ranged("irrigation-water", { low, high: (low * Math.max(SEASON_DAYS, days)) / days }, CP);
}

/**
 * Nitrate a test found before the plants went in. A later test also finds what was fed since, which is counted already:
 * it is read by {@link nitrateCheck} instead.
 */
function inSoil(state: PlantingState, start: string, today: string): Credit | undefined {
  const found = latestTestOf(
    state.soilTests,
    today,
    (t) => nitrateOf(t) !== undefined && t.sampledOn <= start,
  );
  const value = found && nitrateOf(found.test);
  if (!found || !value || daysBetween(found.test.sampledOn, start) > NITRATE_TEST_HOLDS_DAYS)
    return undefined;
  const bulkDensityKgPerM3 = state.bed.soil.bulkDensityKgPerM3 ?? BULK_DENSITY_KG_PER_M3;
  const { kgPerHa } = soilTestMass({
    mgPerKg: value.mgPerKg,
    depthCm: found.test.depthCm,
    bulkDensityKgPerM3,
  });
  return ranged("soil-nitrate", { low: kgPerHa * NITRATE_KEPT.low, high: kgPerHa * NITRATE_KEPT.high }, CP);
}

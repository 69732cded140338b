import { refuse } from "../../core/errors.ts";
import type { Working } from "../../core/working.ts";
import { type FeedingPlan, planFor } from "../../food/plan.ts";
import { givenIfDone, openFeedings } from "../../food/unanswered.ts";
import { woodAsh } from "../../quantities/soil/woodAsh.ts";
import { type LimeNeed, limeNeedOf, type NoRelation, phAfter } from "../../soil-acidity/limeNeed.ts";
import { stillWorkingKgPerHa } from "../../soil-acidity/residual.ts";
import type { AcidSoil } from "../../soil-acidity/soil.ts";
import { LIME_TARGET } from "../../soil-acidity/target.ts";
import type { PlantingState } from "../../states/states.ts";
import type { Range } from "../../tables/uptake.ts";
import { STRICTEST_CAP, STRICTEST_CEILING } from "../../tables/woodAsh.ts";
import { bedAreaM2, croppedAreaM2 } from "../../water/ground.ts";
import { type Ash, type AshContent, contentOf } from "./ash.ts";
import { ashOfTheYearKg, openAsh, openAshKg } from "./given.ts";
import { type AshTiming, ashTiming } from "./timing.ts";

/** What each bound would allow on this bed [kg]. The smallest is taken. */
const BOUNDS = ["cap", "lime", "potash", "stock", "label"] as const;
type Bound = (typeof BOUNDS)[number];

/** How much, and what it brings. Rates of potash and phosphate on cropped land, of lime on the bed. */
export interface AshPlan {
  kg: number;
  binding: Bound;
  allows: Partial<Record<Bound, number>>;
  k2oKgPerHa: Range;
  p2o5KgPerHa: Range;
  limeKgPerHa: Range;
  /** By the least and the most lime value; null where no buffering relation can say. */
  predictedPh: { low: number; high: number } | null;
}

export interface Reading {
  ash: Ash;
  content: AshContent;
  soil: AcidSoil;
  food: FeedingPlan;
  need: LimeNeed;
  timing: AshTiming;
  plan: AshPlan;
  code: "spread" | "wait" | "too-late" | "no-potash-need" | "no-lime-need" | "cap-reached";
}

/** What is not known; each is asked for. */
export type Lacks = "origin" | "goal" | "set-out" | "potash" | NoRelation;

/** Whether ash is out of the question by pH: the strictest of the published ceilings. */
export const tooHighPh = (soil: AcidSoil): boolean => soil.waterPh > STRICTEST_CEILING.ph;

/**
 * The whole reckoning. `countOpen`: ash that was advised and never answered is taken as spread.
 */
export function readAsh(
  state: PlantingState,
  ash: Ash,
  soil: AcidSoil,
  today: string,
  countOpen: boolean,
  w: Working,
): Reading | Lacks[] {
  if (soil.organic) {
    const message = "ash is reckoned here for mineral soil; the bounds held are none of organic soil";
    refuse(`${soil.path}.medium`, message, "mineral-soil", soil.test.medium);
  }
  const { planting } = state;
  const goal = planting.yieldGoalTPerHa;
  const start = planting.setOutOn ?? planting.plannedSetOutOn;
  const content = contentOf(ash.material);
  const openKg = countOpen ? openAshKg(openAsh(state, today)) : 0;
  const hectares = { bed: bedAreaM2(state.bed) / 10_000, cropped: croppedAreaM2(state.bed) / 10_000 };
  const atWork =
    stillWorkingKgPerHa(state, soil, today, "high") + (openKg * content.ccePct.high) / 100 / hectares.bed;
  const need = limeNeedOf(soil, state.settings.limeTargetPh ?? LIME_TARGET.ph, atWork, w);
  const lacks: Lacks[] = [];
  if (ash.material.ashOf === undefined || ash.material.ashOf === "unknown") lacks.push("origin");
  if (goal === undefined) lacks.push("goal");
  if (start === undefined) lacks.push("set-out");
  if ("lacks" in need) lacks.push(need);
  if (goal === undefined || start === undefined) return lacks;
  const unconfirmed = givenIfDone(openFeedings(state, today), state);
  if (openKg > 0) {
    const perHa = (pct: number) => (openKg * pct) / 100 / hectares.cropped;
    unconfirmed.push({
      on: today,
      nKgPerHa: 0,
      p2o5KgPerHa: perHa(content.p2o5Pct.high),
      k2oKgPerHa: perHa(content.k2oPct.high),
    });
  }
  const food = planFor(state, goal, start, today, unconfirmed);
  if (food.leftK2o === null) lacks.push("potash");
  if (lacks.length > 0 || "lacks" in need || food.leftK2o === null) return lacks;
  const usedKg = ashOfTheYearKg(state, today) + openKg;
  const plan = planOf(state, { ash, content, soil, need, usedKg, leftK2o: food.leftK2o, hectares });
  const timing = ashTiming(state, start, today);
  return { ash, content, soil, food, need, timing, plan, code: codeOf(plan, food.leftK2o, need, timing) };
}

function codeOf(plan: AshPlan, leftK2o: number, need: LimeNeed, timing: AshTiming): Reading["code"] {
  if (leftK2o === 0) return "no-potash-need";
  if (need.needKgPerHa === 0) return "no-lime-need";
  if (plan.allows.cap === 0) return "cap-reached";
  if (timing.when === "too-late" || timing.when === "after-crop") return "too-late";
  return timing.when === "wait" ? "wait" : "spread";
}

interface Known {
  ash: Ash;
  content: AshContent;
  soil: AcidSoil;
  need: LimeNeed;
  usedKg: number;
  leftK2o: number;
  hectares: { bed: number; cropped: number };
}

/**
 * The smallest of what the strictest cap leaves of the year, what the lime need allows and what the potash need allows;
 * where it was not analysed by its highest published content, so that none is passed whatever the ash holds.
 */
function planOf(state: PlantingState, known: Known): AshPlan {
  const { ash, content, soil, need, hectares } = known;
  const { stockKg, labelMostKgPerHa } = ash.material;
  const allows: AshPlan["allows"] = {
    cap: Math.max(0, STRICTEST_CAP.kgPerHa * hectares.bed - known.usedKg),
    lime: (need.needKgPerHa * hectares.bed * 100) / content.ccePct.high,
    potash: (known.leftK2o * hectares.cropped * 100) / content.k2oPct.high,
    ...(stockKg !== undefined && { stock: stockKg }),
    ...(labelMostKgPerHa !== undefined && { label: labelMostKgPerHa * hectares.bed }),
  };
  let binding: Bound = "cap";
  for (const bound of BOUNDS)
    if ((allows[bound] ?? Infinity) < (allows[binding] ?? Infinity)) binding = bound;
  const kg = allows[binding] ?? 0;
  const brought = (end: "low" | "high", areaM2: number) =>
    woodAsh({
      kgPerM2: kg / areaM2,
      k2oPct: content.k2oPct[end],
      ccePct: content.ccePct[end],
      soilPh: soil.waterPh,
    });
  const onBed = (end: "low" | "high") => brought(end, bedAreaM2(state.bed)).limeEquivalentKgPerHa;
  const onCropped = (end: "low" | "high") => brought(end, croppedAreaM2(state.bed)).k2oKgPerHa;
  const [low, high] = [onBed("low"), onBed("high")].map((kgPerHa) =>
    phAfter(soil, kgPerHa + need.creditKgPerHa),
  );
  return {
    kg,
    binding,
    allows,
    k2oKgPerHa: { low: onCropped("low"), high: onCropped("high") },
    p2o5KgPerHa: {
      low: (kg * content.p2o5Pct.low) / 100 / hectares.cropped,
      high: (kg * content.p2o5Pct.high) / 100 / hectares.cropped,
    },
    limeKgPerHa: { low: onBed("low"), high: onBed("high") },
    predictedPh: low == null || high == null ? null : { low, high },
  };
}

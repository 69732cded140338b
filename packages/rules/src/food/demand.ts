import { addDays, localDay } from "../core/days.ts";
import { DomainError } from "../core/errors.ts";
import type { Demand, WhyLeftOut } from "../states/food.ts";
import type { PlantingState } from "../states/states.ts";
import { type Range, uptakePerTonne } from "../tables/uptake.ts";
import { croppedAreaM2 } from "../water/ground.ts";
import { contentsOf } from "./blend/contents.ts";
import { feedingDates } from "./curve.ts";
import { contentPct, whyNot } from "./mayUse.ts";
import { type MineralNeed, MOST_K2O_KG_PER_HA, MOST_P2O5_KG_PER_HA } from "./mineralNeed.ts";
import { COUNTS_BEFORE_DAYS, type FeedingPlan, N_CEILING_KG_PER_HA, planFor } from "./plan.ts";
import { secondaryNeeds } from "./secondaryNeeds.ts";
import { treatedShare } from "./strip.ts";
import { givenIfDone, openFeedings } from "./unanswered.ts";

/**
 * What a planting still needs this season, and from which materials of its shed it may come. Undefined where feeding
 * gives no advice: cleared, out of season, in containers, lacking a yield goal or a setting-out day, or refused.
 */
export function demandOf(state: PlantingState): Demand | undefined {
  const today = localDay(state.asOf, state.site.timeZone);
  const { endedOn, setOutOn, plannedSetOutOn, yieldGoalTPerHa } = state.planting;
  const start = setOutOn ?? plannedSetOutOn;
  // Containers are fed through their water, by a rule of their own: a share here would feed them twice.
  if (state.bed.kind === "containers") return undefined;
  if (endedOn !== undefined && endedOn <= today) return undefined;
  if (start === undefined || yieldGoalTPerHa === undefined) return undefined;
  if (today >= feedingDates(start, [], today).end) return undefined;
  try {
    // Nothing is given twice on a guess: what nobody answered is taken as given until somebody says otherwise.
    const ifDone = givenIfDone(openFeedings(state, today), state);
    return demandFrom(state, planFor(state, yieldGoalTPerHa, start, today, ifDone), yieldGoalTPerHa, today);
  } catch (error) {
    if (error instanceof DomainError) return undefined;
    throw error;
  }
}

/** The same from a plan that stands already. */
export function demandFrom(state: PlantingState, plan: FeedingPlan, goal: number, today: string): Demand {
  const needs = needsOf(state, plan, goal, today);
  const chosen = state.feeding.materialId;
  const asked = needs.filter((n) => n.leastKgPerHa > 0).map((n) => n.nutrient);
  const leftOut = state.shed.flatMap((m): { materialId: string; why: WhyLeftOut }[] => {
    const why =
      whyNot(state, m, today) ??
      (asked.every((nutrient) => contentPct(m, nutrient) === 0) ? "no-food" : undefined) ??
      (chosen !== undefined && chosen !== m.id ? "another-chosen" : undefined);
    return why === undefined ? [] : [{ materialId: m.id, why }];
  });
  const out = new Set(leftOut.map((l) => l.materialId));
  return {
    plantingId: state.planting.id,
    areaM2: croppedAreaM2(state.bed),
    needs,
    bounds: boundsOf(state, plan.dates.start, today),
    ...givenByLabel(state, plan.dates.start, today),
    allowed: state.shed.filter((m) => !out.has(m.id)).map((m) => m.id),
    leftOut,
  };
}

/**
 * The office's bounds are for the season: what was given of it is taken off. Salt is set for the treated strip; on cropped land
 * it is as much less as the strip is narrower.
 */
function boundsOf(state: PlantingState, start: string, today: string): Demand["bounds"] {
  const { feedingChlorideMostKgPerHa, feedingAmmoniumMostPct, feedingSaltMostKgPerHa } = state.settings;
  const { feedingCaToMgLeast: caToMgLeast, feedingCaToKLeast: caToKLeast } = state.settings;
  const given = givenMaterials(state, start, today);
  const had = (of: "chloride" | "salt") =>
    given.reduce((sum, g) => sum + g.kgPerHa * (contentsOf(g.material)[of] ?? 0), 0);
  return {
    ...(feedingChlorideMostKgPerHa === undefined
      ? {}
      : { chlorideMostKgPerHa: Math.max(0, feedingChlorideMostKgPerHa - had("chloride")) }),
    ...(feedingAmmoniumMostPct === undefined ? {} : { ammoniumMostPct: feedingAmmoniumMostPct }),
    ...(feedingSaltMostKgPerHa === undefined
      ? {}
      : { saltMostKgPerHa: Math.max(0, feedingSaltMostKgPerHa * treatedShare(state) - had("salt")) }),
    ...(caToMgLeast === undefined ? {} : { caToMgLeast }),
    ...(caToKLeast === undefined ? {} : { caToKLeast }),
  };
}

/** What was given this season of materials that the shed still knows [kg/ha]. */
function givenMaterials(state: PlantingState, start: string, today: string) {
  const earliest = addDays(start, -COUNTS_BEFORE_DAYS);
  return state.applications.flatMap((a) => {
    const material = state.shed.find((m) => m.id === a.materialId);
    if (!material || a.on < earliest || a.on > today) return [];
    return [{ material, kgPerHa: (a.amountKg * 10_000) / Math.max(a.areaM2, croppedAreaM2(state.bed)) }];
  });
}

function givenByLabel(state: PlantingState, start: string, today: string): Pick<Demand, "given"> {
  const sums = new Map<string, number>();
  for (const { material, kgPerHa } of givenMaterials(state, start, today)) {
    if (material.labelMostKgPerHa !== undefined)
      sums.set(material.id, (sums.get(material.id) ?? 0) + kgPerHa);
  }
  return sums.size === 0
    ? {}
    : { given: [...sums].map(([materialId, kgPerHa]) => ({ materialId, kgPerHa })) };
}

/**
 * Floors are what the plan gives. Ceilings: nitrogen, as much as the high end of the need would ask of the rest of the
 * season; phosphate and potash, one step up in what the soil test allows, so that a mixed material need not be thrown
 * out for a trace, and never above the published most.
 */
function needsOf(state: PlantingState, plan: FeedingPlan, goal: number, today: string): Demand["needs"] {
  const lowered = plan.moved.n.factor < 1;
  const spareN = lowered ? 0 : (plan.season.high - plan.season.mid) * plan.aheadN;
  const mostN = Math.min(Math.max(0, N_CEILING_KG_PER_HA - plan.givenN), plan.leftN + spareN);
  const p2o5 = Math.min(MOST_P2O5_KG_PER_HA, mineralMost("p2o5KgPerT", plan.p2o5, goal)) - plan.givenP2o5;
  const k2o = Math.min(MOST_K2O_KG_PER_HA, mineralMost("k2oKgPerT", plan.k2o, goal)) - plan.givenK2o;
  const [leftP2o5, leftK2o] = [plan.leftP2o5 ?? 0, plan.leftK2o ?? 0];
  return [
    { nutrient: "N", leastKgPerHa: plan.leftN, mostKgPerHa: Math.max(plan.leftN, mostN) },
    { nutrient: "P2O5", leastKgPerHa: leftP2o5, mostKgPerHa: Math.max(leftP2o5, p2o5) },
    { nutrient: "K2O", leastKgPerHa: leftK2o, mostKgPerHa: Math.max(leftK2o, k2o) },
    ...secondaryNeeds(state, today).map(({ nutrient, leastKgPerHa, mostKgPerHa }) => ({
      nutrient,
      leastKgPerHa,
      mostKgPerHa,
    })),
  ];
}

/** Most of a mineral that a season may bring along [kg/ha]; where none is asked for, what the fruit carries off again. */
function mineralMost(field: "p2o5KgPerT" | "k2oKgPerT", need: MineralNeed, goal: number): number {
  const whole = uptakePerTonne("whole-crop")[field];
  const fruit = uptakePerTonne("fruit")[field];
  const middle = ({ low, high }: Range) => (low + high) / 2;
  return (
    goal *
    { responds: whole.high, "may-respond": middle(whole), unlikely: fruit.high, unknown: middle(fruit) }[
      need.response
    ]
  );
}

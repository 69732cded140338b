import type { Step } from "../../core/rule.ts";
import { ratioOn } from "../../food/curve.ts";
import { type FeedingPlan, missedN } from "../../food/plan.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Measure, type Message, measure, onDay, say, wordOf } from "../../text/message.ts";
import { isSlow, type MaterialPlan } from "./material.ts";

const kgPerHa = (value: number) => measure(value, "kg/ha");
/** Smaller differences than this are not worth a sentence [kg/ha]. */
const WORTH_SAYING_KG_PER_HA = 1;

/** First what to do and from which bag, then what else the bed wants, then where the season stands. */
export function stepsOf(state: PlantingState, plan: FeedingPlan, material: MaterialPlan | undefined): Step[] {
  const said = [
    ...(material ? doseSaid(state, material) : noMaterialSaid(state, plan)),
    ...(material ? bagSaid(plan, material) : []),
    ...mineralSaid(plan, material),
    ...ratioSaid(plan),
    ...needSaid(plan),
  ];
  return said.map((text) => ({ text }));
}

function noMaterialSaid(state: PlantingState, plan: FeedingPlan): Message[] {
  if (plan.leftN + (plan.leftP2o5 ?? 0) + (plan.leftK2o ?? 0) === 0) return [];
  return [say(state.feeding.materialId === undefined ? "feeding.step.choose" : "feeding.step.fits-nothing")];
}

/** Where the season stands. What each credit is stands in the working. */
function needSaid(plan: FeedingPlan): Message[] {
  const credited = plan.credits.length > 0;
  // Without this the sums would leave a rest that nobody explains.
  const missed = missedN(plan);
  return [
    say(credited ? "feeding.step.need-credited" : "feeding.step.need", {
      low: kgPerHa(plan.need.low),
      high: kgPerHa(plan.need.high),
      season: kgPerHa(plan.seasonN),
      given: kgPerHa(plan.givenN),
      left: kgPerHa(plan.leftN),
    }),
    ...(missed >= WORTH_SAYING_KG_PER_HA ? [say("feeding.step.missed", { missed: kgPerHa(missed) })] : []),
    ...(plan.capped ? [say("feeding.step.ceiling", { most: kgPerHa(plan.seasonN) })] : []),
  ];
}

function doseSaid(state: PlantingState, m: MaterialPlan): Message[] {
  const { dose } = m;
  if (!dose || dose.kg === 0) return [];
  const material = wordOf(`material.${m.material.kind}`);
  if (!m.dueNow) {
    return [
      say("feeding.step.next", { material, day: onDay(dose.on), bed: amount(dose.kg), weeks: dose.weeks }),
      ...slowSaid(m),
    ];
  }
  const { bed, planting } = state;
  const grams = dose.kg * 1000;
  const shared = { material, bed: amount(dose.kg), area: kgPerHa(dose.kgPerHa), weeks: dose.weeks };
  return [
    bed.containers
      ? say("feeding.step.dose-container", { ...shared, each: measure(grams / bed.containers.count, "g") })
      : say("feeding.step.dose-bed", {
          ...shared,
          row: measure(grams / (bed.lengthM * planting.rowsPerBed), "g/m"),
          plant: measure(grams / planting.plants, "g/plant"),
        }),
    ...(m.dry ? [say("feeding.step.dry", { weeks: m.dry.weeks, bed: amount(m.dry.kg) })] : []),
    ...slowSaid(m),
  ];
}

const slowSaid = (m: MaterialPlan): Message[] =>
  isSlow(m.material.kind)
    ? [say("feeding.step.slow", { material: wordOf(`material.${m.material.kind}`) })]
    : [];

/** The bag over the rest of the season: what it gives, what is left of it, what it brings too much or too little of. */
function bagSaid(plan: FeedingPlan, m: MaterialPlan): Message[] {
  const { n, p2o5, k2o } = m.brings;
  return [
    say("feeding.step.season", {
      material: wordOf(`material.${m.material.kind}`),
      bed: amount(m.seasonKg),
      area: kgPerHa(m.seasonKgPerHa),
      until: onDay(plan.dates.end),
    }),
    ...stockSaid(m),
    ...(p2o5 + k2o > 0
      ? [say("feeding.step.brings", { n: kgPerHa(n), p2o5: kgPerHa(p2o5), k2o: kgPerHa(k2o) })]
      : []),
    ...overSaid("n", m.over.n),
    ...overSaid("p2o5", m.over.p2o5),
    ...overSaid("k2o", m.over.k2o),
    ...(m.over.n <= -WORTH_SAYING_KG_PER_HA
      ? [say("feeding.step.short", { nutrient: wordOf("feeding.nutrient.n"), short: kgPerHa(-m.over.n) })]
      : []),
  ];
}

function stockSaid(m: MaterialPlan): Message[] {
  if (m.stockLeftKg === undefined) return [say("feeding.step.stock-unknown")];
  if (m.shortfallKg > 0)
    return [say("feeding.step.shortfall", { short: amount(m.shortfallKg), have: amount(m.takenKg) })];
  return [say("feeding.step.stock-left", { left: amount(m.stockLeftKg) })];
}

function overSaid(nutrient: "n" | "p2o5" | "k2o", over: number | null): Message[] {
  if (over === null || over < WORTH_SAYING_KG_PER_HA) return [];
  return [say(`feeding.step.over-${nutrient}`, { over: kgPerHa(over) })];
}

/** What the soil test asks for, and how much of it this material leaves to another. */
function mineralSaid(plan: FeedingPlan, m: MaterialPlan | undefined): Message[] {
  return (["p2o5", "k2o"] as const).map((nutrient) => {
    const need = plan[nutrient];
    const name = wordOf(`feeding.nutrient.${nutrient}`);
    if (need.kgPerHa === null) {
      return say("feeding.step.mineral-unknown", {
        nutrient: name,
        why: wordOf(`feeding.because.${need.because ?? "no-test"}`),
      });
    }
    const left = (nutrient === "p2o5" ? plan.leftP2o5 : plan.leftK2o) ?? 0;
    const short = m ? Math.max(0, -(m.over[nutrient] ?? 0)) : 0;
    const elsewhere = short >= WORTH_SAYING_KG_PER_HA ? "-elsewhere" : "";
    return say(`feeding.step.mineral-${need.response}${elsewhere}`, {
      nutrient: name,
      season: kgPerHa(need.kgPerHa),
      left: kgPerHa(left),
      short: kgPerHa(short),
    });
  });
}

function ratioSaid(plan: FeedingPlan): Message[] {
  if (plan.k2o.kgPerHa === null || plan.k2o.kgPerHa === 0) return [];
  const key = plan.from < plan.dates.buds ? "feeding.step.ratio-before" : "feeding.step.ratio-after";
  return [
    say(key, {
      k2o: kgPerHa(plan.weeksK2o[0]?.kgPerHa ?? 0),
      ratio: ratioOn(plan.dates, plan.from).toFixed(1),
      buds: onDay(plan.dates.buds),
    }),
  ];
}

/** Grams where a scale for kilograms would not show it. */
export const amount = (kg: number): Measure => (kg < 1 ? measure(kg * 1000, "g") : measure(kg, "kg"));

import type { Step } from "../../core/rule.ts";
import { ratioOn } from "../../food/curve.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Measure, type Message, measure, onDay, say, wordOf } from "../../text/message.ts";
import { isSlow, type MaterialPlan } from "./material.ts";
import type { FeedingPlan } from "./plan.ts";

const kgPerHa = (value: number) => measure(value, "kg/ha");
/** Weeks that one dry dressing may stand for (common practice: side-dress every three weeks). */
const DRY_DRESSING_WEEKS = 3;
/** Smaller differences than this are not worth a sentence [kg/ha]. */
const WORTH_SAYING_KG_PER_HA = 1;

/** What to give this week and over the season, in units that can be measured. */
export function stepsOf(state: PlantingState, plan: FeedingPlan, material: MaterialPlan | undefined): Step[] {
  const said = [
    ...needSaid(plan),
    ...(material ? materialSaid(state, plan, material) : noMaterialSaid(state, plan)),
    ...mineralSaid(plan),
    ...ratioSaid(plan),
  ];
  return said.map((text) => ({ text }));
}

function noMaterialSaid(state: PlantingState, plan: FeedingPlan): Message[] {
  if (plan.leftN + (plan.leftP2o5 ?? 0) + (plan.leftK2o ?? 0) === 0) return [];
  return [say(state.feeding.materialId === undefined ? "feeding.step.choose" : "feeding.step.fits-nothing")];
}

function needSaid(plan: FeedingPlan): Message[] {
  return [
    say("feeding.step.need", {
      low: kgPerHa(plan.need.low),
      high: kgPerHa(plan.need.high),
      season: kgPerHa(plan.seasonN),
      given: kgPerHa(plan.givenN),
      left: kgPerHa(plan.leftN),
    }),
    ...plan.credits.map((c) =>
      say("feeding.step.credit", {
        kind: wordOf(`feeding.credit.${c.kind}`),
        low: kgPerHa(c.low),
        high: kgPerHa(c.high),
      }),
    ),
    ...(plan.capped ? [say("feeding.step.ceiling", { most: kgPerHa(plan.seasonN) })] : []),
    say("feeding.step.week-n", { n: kgPerHa(plan.weeksN[0]?.kgPerHa ?? 0), from: onDay(plan.from) }),
  ];
}

function materialSaid(state: PlantingState, plan: FeedingPlan, m: MaterialPlan): Message[] {
  const { bed, planting } = state;
  const name = wordOf(`feeding.material.${m.material.kind}`);
  const rowM = bed.lengthM * planting.rowsPerBed;
  const said: Message[] = [];
  if (m.weekKg > 0) {
    const grams = m.weekKg * 1000;
    const shared = { material: name, bed: amount(m.weekKg), area: kgPerHa(m.weekKgPerHa) };
    said.push(
      bed.containers
        ? say("feeding.step.week-container", { ...shared, each: measure(grams / bed.containers.count, "g") })
        : say("feeding.step.week-bed", {
            ...shared,
            row: measure(grams / rowM, "g/m"),
            plant: measure(grams / planting.plants, "g/plant"),
          }),
    );
    if (state.feeding.method === "broadcast" || state.feeding.method === "banded") {
      const nutrients = m.lead === "N" ? plan.weeksN : m.lead === "K2O" ? plan.weeksK2o : [];
      const first = nutrients[0]?.kgPerHa ?? 0;
      const three = nutrients.slice(0, DRY_DRESSING_WEEKS).reduce((sum, w) => sum + w.kgPerHa, 0);
      if (first > 0 && three > first) {
        said.push(
          say("feeding.step.dry", { weeks: DRY_DRESSING_WEEKS, bed: amount((m.weekKg * three) / first) }),
        );
      }
    }
  } else if (m.nextOn !== undefined) {
    said.push(say("feeding.step.next", { material: name, day: onDay(m.nextOn), bed: amount(m.nextKg) }));
  }
  said.push(
    say("feeding.step.season", {
      material: name,
      bed: amount(m.seasonKg),
      area: kgPerHa(m.seasonKgPerHa),
      until: onDay(plan.dates.end),
    }),
    ...stockSaid(m),
    say("feeding.step.brings", {
      n: kgPerHa(m.brings.n),
      p2o5: kgPerHa(m.brings.p2o5),
      k2o: kgPerHa(m.brings.k2o),
    }),
    ...overSaid("n", m.over.n),
    ...overSaid("p2o5", m.over.p2o5),
    ...overSaid("k2o", m.over.k2o),
  );
  if (isSlow(m.material.kind)) said.push(say("feeding.step.slow", { material: name }));
  return said;
}

function stockSaid(m: MaterialPlan): Message[] {
  if (m.stockLeftKg === undefined) return [say("feeding.step.stock-unknown")];
  if (m.shortfallKg > 0)
    return [say("feeding.step.shortfall", { short: amount(m.shortfallKg), have: amount(m.takenKg) })];
  return [say("feeding.step.stock-left", { left: amount(m.stockLeftKg) })];
}

function overSaid(nutrient: "n" | "p2o5" | "k2o", over: number | null): Message[] {
  if (over === null || Math.abs(over) < WORTH_SAYING_KG_PER_HA) return [];
  const name = wordOf(`feeding.nutrient.${nutrient}`);
  return over > 0
    ? [say(`feeding.step.over-${nutrient}`, { over: kgPerHa(over) })]
    : [say("feeding.step.short", { nutrient: name, short: kgPerHa(-over) })];
}

function mineralSaid(plan: FeedingPlan): Message[] {
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
    return say(`feeding.step.mineral-${need.response}`, {
      nutrient: name,
      season: kgPerHa(need.kgPerHa),
      left: kgPerHa(left),
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
const amount = (kg: number): Measure => (kg < 1 ? measure(kg * 1000, "g") : measure(kg, "kg"));

import type { Step } from "../../core/rule.ts";
import { ratioOn } from "../../food/curve.ts";
import { type FeedingPlan, missedN } from "../../food/plan.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Message, measure, onDay, say, wordOf } from "../../text/message.ts";
import { amount } from "./amount.ts";
import { doseSaid } from "./doseSteps.ts";
import { type FeedingReading, type Frame, isHeldBack } from "./reading.ts";
import { tankSaid } from "./tankSteps.ts";
import { testsSaid } from "./testSteps.ts";

const kgPerHa = (value: number) => measure(value, "kg/ha");
/** Smaller differences than this are not worth a sentence [kg/ha]. */
const WORTH_SAYING_KG_PER_HA = 1;
/** More reasons than these hide what to do. */
const MOST_LEFT_OUT_SAID = 6;

/** First what to do and from which bags, then what else the bed wants, then where the season stands. */
export function stepsOf(state: PlantingState, r: FeedingReading, frame: Frame): Step[] {
  const { plan } = r;
  const held = r.code === "hold-back";
  const said = [
    ...holdBackSaid(r, frame),
    ...(r.schedule.materials.length === 0 ? noMaterialSaid(state, r) : held ? [] : doseSaid(state, r)),
    ...(held ? [] : tankSaid(state, r, frame.today)),
    ...testsSaid(state, r, frame.today),
    ...bagsSaid(r, frame),
    ...mineralSaid(r),
    ...r.secondary
      .filter((need) => need.leastKgPerHa > 0)
      .map((need) =>
        say("feeding.step.secondary", {
          nutrient: wordOf(`feeding.nutrient.${need.nutrient.toLowerCase()}`),
          rate: kgPerHa(need.leastKgPerHa),
        }),
      ),
    ...(held ? [] : ratioSaid(plan)),
    ...needSaid(plan),
  ];
  return said.map((text) => ({ text }));
}

/** Of two rules that speak of one planting on one day the cold's word holds; what is bought meanwhile may be. */
function holdBackSaid(r: FeedingReading, frame: Frame): Message[] {
  if (!isHeldBack(r, frame)) return [];
  const due = r.plan.weeksN[0]?.kgPerHa ?? 0;
  return [say("feeding.step.hold-back", { due: due > 0 ? "some" : "none", n: kgPerHa(due) })];
}

function noMaterialSaid(state: PlantingState, { demand, schedule }: FeedingReading): Message[] {
  if (schedule.short.length === 0 && demand.needs.every((n) => n.leastKgPerHa === 0)) return [];
  const kindOf = (id: string) => state.shed.find((m) => m.id === id)?.kind ?? "other";
  const chosen = state.feeding.materialId;
  const waits = demand.leftOut.some((l) => l.materialId === chosen && l.why === "ash-with-ammonium");
  return [
    say(chosen === undefined || waits ? "feeding.step.choose" : "feeding.step.fits-nothing"),
    ...demand.leftOut
      .filter((l) => l.why !== "another-chosen")
      .slice(0, MOST_LEFT_OUT_SAID)
      .map((l) =>
        say("feeding.step.left-out", {
          material: wordOf(`material.${kindOf(l.materialId)}`),
          why: wordOf(`feeding.left-out.${l.why}`),
        }),
      ),
  ];
}

/** Where the season stands. What each credit is stands in the working. */
function needSaid(plan: FeedingPlan): Message[] {
  const credited = plan.credits.length > 0;
  // Without this the sums would leave a rest that nobody explains.
  const missed = missedN(plan);
  return [
    ...(missed >= WORTH_SAYING_KG_PER_HA ? [say("feeding.step.missed", { missed: kgPerHa(missed) })] : []),
    ...(plan.capped ? [say("feeding.step.ceiling", { most: kgPerHa(plan.seasonN) })] : []),
    say(`feeding.step.need${plan.needBy ? "-guide" : ""}${credited ? "-credited" : ""}`, {
      guide: plan.needBy?.title ?? "",
      low: kgPerHa(plan.need.low),
      high: kgPerHa(plan.need.high),
      creditLow: kgPerHa(plan.creditsTotal.low),
      creditMid: kgPerHa(plan.creditsTotal.mid),
      creditHigh: kgPerHa(plan.creditsTotal.high),
      season: kgPerHa(plan.seasonN),
      seasonLow: kgPerHa(plan.season.low),
      seasonHigh: kgPerHa(plan.season.high),
      given: kgPerHa(plan.givenN),
      left: kgPerHa(plan.leftN),
    }),
  ];
}

/** The bags over the rest of the season: what they give, what is left of them, what they bring too much or too little of. */
function bagsSaid(r: FeedingReading, frame: Frame): Message[] {
  const { plan, schedule } = r;
  if (schedule.materials.length === 0) return shortSaid(r);
  const { n, p2o5, k2o } = schedule.brings;
  const hectares = r.demand.areaM2 / 10_000;
  return [
    ...schedule.materials.flatMap((m) => [
      say("feeding.step.season", {
        material: wordOf(`material.${m.material.kind}`),
        bed: amount(m.kg),
        area: kgPerHa(m.kg / hectares),
        until: onDay(plan.dates.end),
      }),
      ...stockSaid(m, r, frame),
    ]),
    ...(p2o5 + k2o > 0 || schedule.materials.length > 1
      ? [say("feeding.step.brings", { n: kgPerHa(n), p2o5: kgPerHa(p2o5), k2o: kgPerHa(k2o) })]
      : []),
    ...overSaid("n", n - plan.leftN),
    ...overSaid("p2o5", plan.leftP2o5 === null ? null : p2o5 - plan.leftP2o5),
    ...overSaid("k2o", plan.leftK2o === null ? null : k2o - plan.leftK2o),
    ...shortSaid(r),
  ];
}

function stockSaid(
  { material, kg, fromStockKg }: FeedingReading["schedule"]["materials"][number],
  r: FeedingReading,
  frame: Frame,
): Message[] {
  const name = wordOf(`material.${material.kind}`);
  if (material.stockKg === undefined) return [say("feeding.step.stock-unknown", { material: name })];
  if (kg - fromStockKg > ROUNDING_KG) {
    return [
      say("feeding.step.to-buy", {
        material: name,
        buy: amount(kg - fromStockKg),
        have: amount(fromStockKg),
      }),
    ];
  }
  if (frame.chosen?.id === material.id && r.shortfallKg > ROUNDING_KG) {
    return [say("feeding.step.shortfall", { short: amount(r.shortfallKg), have: amount(fromStockKg) })];
  }
  return [say("feeding.step.stock-left", { material: name, left: amount(material.stockKg - fromStockKg) })];
}

/** The solver's rounding of an amount on a bed. */
const ROUNDING_KG = 1e-4;

/** Phosphate and potash that are short are said with what the soil test asks for. */
const shortSaid = ({ schedule }: FeedingReading): Message[] =>
  schedule.short
    .filter((s) => s.nutrient !== "P2O5" && s.nutrient !== "K2O")
    .map((s) =>
      say("feeding.step.short", {
        nutrient: wordOf(`feeding.nutrient.${s.nutrient.toLowerCase()}`),
        short: kgPerHa(s.kgPerHa),
      }),
    );

function overSaid(nutrient: "n" | "p2o5" | "k2o", over: number | null): Message[] {
  if (over === null || over < WORTH_SAYING_KG_PER_HA) return [];
  return [say(`feeding.step.over-${nutrient}`, { over: kgPerHa(over) })];
}

/** What the soil test asks for, and how much of it the shed leaves to another material. */
function mineralSaid({ plan, schedule }: FeedingReading): Message[] {
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
    const short = schedule.short.find((s) => s.nutrient.toLowerCase() === nutrient)?.kgPerHa ?? 0;
    const elsewhere = short >= WORTH_SAYING_KG_PER_HA ? "-elsewhere" : "";
    const how = need.guide ? (need.guide.status === "memory" ? "guide-unverified" : "guide") : need.response;
    return say(`feeding.step.mineral-${how}${how === "unlikely" ? "" : elsewhere}`, {
      nutrient: name,
      season: kgPerHa(need.kgPerHa),
      left: kgPerHa(left),
      short: kgPerHa(short),
      guide: need.guide?.title ?? "",
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

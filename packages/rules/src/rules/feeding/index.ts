import { cautionsFor } from "../../cautions/register.ts";
import { addDays, instantAt, localDay } from "../../core/days.ts";
import type { AdviceBody, AnswerBody, Case, NeedsMoreBody, Rule, Stakes } from "../../core/rule.ts";
import { feedingDates } from "../../food/curve.ts";
import { type FeedingPlan, missedN, planFor } from "../../food/plan.ts";
import { givenIfDone, openFeedings } from "../../food/unanswered.ts";
import type { Material } from "../../states/food.ts";
import type { PlantingState } from "../../states/states.ts";
import { MATERIAL_FACTS } from "../../tables/materials.ts";
import { MEASURED_SEASON, uptakePerTonne } from "../../tables/uptake.ts";
import { type Message, measure, onDay, say, wordOf } from "../../text/message.ts";
import { croppedAreaM2 } from "../../water/ground.ts";
import { weeklyChart } from "./chart.ts";
import { chosenMaterial, isSlow, type MaterialPlan, materialPlan } from "./material.ts";
import { amount, stepsOf } from "./steps.ts";
import { writeWorking } from "./working.ts";

/** Hour of the week's last day until which giving it still helps. */
const LAST_HOUR = 20;
/** California's 50,000 lb of fruit an acre (SN-311), the high yield goal by which a missing one is judged. */
const HIGH_GOAL_T_PER_HA = 56;
/** Mulched Cubanelle in Puerto Rico: 20.8 t/ha without nitrogen, 51.2 at best (SN-307). */
const LOSS_WITHOUT_NITROGEN = 1 - 20.8 / 51.2;

/** What to feed, when, and from which material. */
export const feedingRule: Rule<"planting"> = {
  id: "feeding",
  version: 1,
  question: "What should this planting be given, when, and from which material?",
  subject: "planting",
  needs: [
    "a yield goal",
    "setting-out day, and when buds and fruit set were seen",
    "a soil test with extractants",
    "credits: legumes, manure, compost, nitrate in water and soil",
    "what was given already, and the material chosen from the shed",
  ],
  run,
};

function run(state: PlantingState): AnswerBody {
  const today = localDay(state.asOf, state.site.timeZone);
  const { planting } = state;
  if (planting.endedOn !== undefined && planting.endedOn <= today) {
    return { kind: "does-not-apply", reason: say("feeding.ended") };
  }
  const material = chosenMaterial(state, today);
  const start = planting.setOutOn ?? planting.plannedSetOutOn;
  const goal = planting.yieldGoalTPerHa;
  if (goal === undefined || start === undefined) return needsMore(goal, start);
  if (today >= feedingDates(start, [], today).end) {
    return { kind: "does-not-apply", reason: say("feeding.season-over") };
  }
  return adviceFrom(state, material, { goal, start, today });
}

function needsMore(goal: number | undefined, start: string | undefined): NeedsMoreBody {
  const missing: NeedsMoreBody["missing"] = [];
  const perTonne = uptakePerTonne("whole-crop").nKgPerT;
  if (goal === undefined) {
    missing.push({
      field: "planting.yieldGoalTPerHa",
      measure: say("feeding.missing.goal"),
      couldMove: say("feeding.missing.goal-moves", {
        lowGoal: measure(MEASURED_SEASON.fruitTPerHa, "t/ha"),
        low: measure(MEASURED_SEASON.fruitTPerHa * perTonne.low, "kg/ha"),
        highGoal: measure(HIGH_GOAL_T_PER_HA, "t/ha"),
        high: measure(HIGH_GOAL_T_PER_HA * perTonne.high, "kg/ha"),
      }),
    });
  }
  if (start === undefined) {
    missing.push({
      field: "planting.setOutOn",
      measure: say("feeding.missing.set-out"),
      couldMove: say("feeding.missing.set-out-moves"),
    });
  }
  return { kind: "needs-more", missing, working: [], estimated: [] };
}

interface Frame {
  goal: number;
  start: string;
  today: string;
}

/** One reading: the plan, what the material makes of it, and the decision. */
interface FeedingReading {
  plan: FeedingPlan;
  material: MaterialPlan | undefined;
  code: string;
}

function readingOf(
  state: PlantingState,
  material: Material | undefined,
  frame: Frame,
  unconfirmed: ReturnType<typeof givenIfDone>,
): FeedingReading {
  const plan = planFor(state, frame.goal, frame.start, frame.today, unconfirmed);
  const fit = material && materialPlan(state, plan, material);
  return { plan, material: fit, code: codeOf(plan, fit, frame) };
}

function codeOf(plan: FeedingPlan, m: MaterialPlan | undefined, { start, today }: Frame): string {
  const left = plan.leftN + (plan.leftP2o5 ?? 0) + (plan.leftK2o ?? 0);
  if (left === 0) return plan.seasonN === 0 ? "none-needed" : "enough-given";
  if (!m) return "choose-material";
  if (today < start) return "not-yet";
  if (m.takenKg === 0) return "buy";
  return m.dueNow ? "feed-this-week" : "none-this-week";
}

function decisionText(r: FeedingReading): Message {
  const { material: m, plan } = r;
  return say(`feeding.decision.${r.code}`, {
    n: measure(m?.dueNow && m.dose ? m.dose.nKgPerHa : (plan.weeksN[0]?.kgPerHa ?? 0), "kg/ha"),
    season: measure(plan.leftN, "kg/ha"),
    material: m ? wordOf(`material.${m.material.kind}`) : "",
    kg: amount(m?.dose?.kg ?? 0),
    weeks: m?.dose?.weeks ?? 1,
    day: onDay(m?.dose?.on ?? plan.from),
  });
}

/** Where a mineral alone is due: no response figure for one week's phosphate or potash was found (common practice). */
const HARM_OF_A_MINERAL_WEEK = 0.001;
const PRESSES: ReadonlySet<string> = new Set(["feed-this-week", "choose-material", "buy"]);

/**
 * Only what falls due this week is at stake now: what comes later can still be given later.
 *
 *   harm = L ((m + s)² - m²)     L loss without nitrogen, s share of the season's need due now, m share missed so far
 *
 * A response that flattens towards its best, as the rate trials found (SN-228), taken as a parabola (common practice):
 * one week missed costs little, each further one more, all of them together L.
 */
function stakesOf(state: PlantingState, r: FeedingReading, weekEnd: string): Stakes {
  const { plan } = r;
  const dueN = plan.weeksN[0]?.kgPerHa ?? 0;
  const dueK2o = plan.weeksK2o[0]?.kgPerHa ?? 0;
  const mineral = dueK2o > 0 || (plan.leftP2o5 ?? 0) > 0;
  if (!PRESSES.has(r.code) || (dueN === 0 && !mineral)) {
    return { harm: 0, reason: say("feeding.stakes.none"), actBy: null };
  }
  const actBy = instantAt(weekEnd, LAST_HOUR, state.site.timeZone);
  if (dueN === 0) return { harm: HARM_OF_A_MINERAL_WEEK, reason: say("feeding.stakes.mineral"), actBy };
  const share = dueN / plan.seasonN;
  const missed = missedN(plan) / plan.seasonN;
  return {
    harm: Math.min(1, LOSS_WITHOUT_NITROGEN * ((missed + share) ** 2 - missed ** 2)),
    reason: say("feeding.stakes", {
      share: measure(100 * share, "pct"),
      loss: measure(100 * LOSS_WITHOUT_NITROGEN, "pct"),
    }),
    actBy,
  };
}

function adviceFrom(state: PlantingState, material: Material | undefined, frame: Frame): AdviceBody {
  const { today } = frame;
  const open = openFeedings(state, today);
  const ifDone = givenIfDone(open, state);
  // Nothing is given twice on a guess: what nobody answered is taken as given until somebody says otherwise.
  const reading = readingOf(state, material, frame, ifDone);
  const { plan, material: m } = reading;
  const working = writeWorking(state, frame.goal, plan, m);
  const weekEnd = addDays(plan.from, 6);
  return {
    kind: "advice",
    decision: { code: reading.code, text: decisionText(reading) },
    steps: [
      ...(open.length > 0 ? [{ text: say("feeding.step.unanswered") }] : []),
      ...stepsOf(state, plan, m),
    ],
    window: { from: plan.from, to: weekEnd, endsBy: say("feeding.ends") },
    stakes: stakesOf(state, reading, weekEnd),
    working: working.lines,
    estimated: working.estimated,
    evidence: [
      "feeding.uptake",
      "feeding.daily-nitrogen",
      "feeding.schedule-memory",
      "feeding.nitrogen-plateau",
      "feeding.response",
      "feeding.potash-ratio",
      "feeding.potash-calcium",
    ],
    grade: "moderate",
    limits: limitsOf(state, plan, m),
    cautions: cautionsFor(...cautionIds(state, plan, material)),
    wouldChange: wouldChangeOf(state, plan),
    cases: open.length > 0 ? casesOf(state, material, frame, reading) : [],
    expected:
      m?.dose && m.dose.kg > 0
        ? {
            kind: "application",
            date: m.dose.on,
            materialId: m.material.id,
            amountKg: m.dose.kg,
            areaM2: croppedAreaM2(state.bed),
            nKgPerHa: m.dose.nKgPerHa,
          }
        : null,
    amounts: {
      nKgPerHa: plan.weeksN[0]?.kgPerHa ?? 0,
      seasonNKgPerHa: plan.leftN,
      seasonK2oKgPerHa: plan.leftK2o ?? 0,
      doseKg: m?.dueNow ? (m.dose?.kg ?? 0) : 0,
      seasonKg: m?.takenKg ?? 0,
      shortfallKg: m?.shortfallKg ?? 0,
    },
    charts: [weeklyChart(plan)],
  };
}

function cautionIds(state: PlantingState, plan: FeedingPlan, material: Material | undefined): string[] {
  const ids = ["fertiliser-handling", "nitrate-leaching", "nutrient-law"];
  if ((plan.leftP2o5 ?? 0) > 0 || (material?.p2o5Pct ?? 0) > 0) ids.push("phosphorus-runoff");
  if (state.feeding.method === "drip") ids.push("backflow");
  if (!material) return ids;
  ids.push(...(MATERIAL_FACTS[material.kind]?.cautions ?? []));
  // Ammonium hides in compounds and in materials whose kind nobody could name.
  if (material.kind === "compound" || material.kind === "other") ids.push("ash-not-with-ammonium");
  if (material.kind === "manure" || material.kind === "poultry-manure") ids.push("manure-raw");
  if (isSlow(material.kind) || material.kind === "fish") ids.push("organic-dust");
  if (material.certifiedUse === "restricted" && state.bed.certification !== "none")
    ids.push("certifier-first");
  return ids;
}

function limitsOf(state: PlantingState, plan: FeedingPlan, m: MaterialPlan | undefined): Message[] {
  const limits = [say("feeding.limit.basis"), say("feeding.limit.climate")];
  if (state.bed.kind === "containers") limits.push(say("feeding.limit.containers"));
  if (m && isSlow(m.material.kind)) limits.push(say("feeding.limit.slow"));
  if (state.planting.species !== "annuum") limits.push(say("feeding.limit.species"));
  if (plan.p2o5.response === "may-respond" || plan.k2o.response === "may-respond") {
    limits.push(say("feeding.limit.may-respond"));
  }
  return limits;
}

function wouldChangeOf(state: PlantingState, plan: FeedingPlan): Message[] {
  const changes = [
    say("feeding.change.goal", {
      low: measure(plan.need.low, "kg/ha"),
      high: measure(plan.need.high, "kg/ha"),
    }),
    say("feeding.change.leaching"),
  ];
  if (plan.p2o5.kgPerHa === null || plan.k2o.kgPerHa === null) changes.push(say("feeding.change.soil-test"));
  const { water } = state;
  if (water?.nitrateNMgPerL !== undefined && water.irrigationMm === undefined) {
    changes.push(say("feeding.change.water-mm", { n: measure(water.nitrateNMgPerL, "kg/ha") }));
  }
  if (water?.nitrateNMgPerL === undefined) changes.push(say("feeding.change.water-nitrate"));
  if (!plan.dates.seen.buds) changes.push(say("feeding.change.buds", { day: onDay(plan.dates.buds) }));
  if (!plan.credits.some((c) => c.kind === "organic-matter"))
    changes.push(say("feeding.change.organic-matter"));
  return changes;
}

function casesOf(
  state: PlantingState,
  material: Material | undefined,
  frame: Frame,
  ifDone: FeedingReading,
): Case[] {
  const ifNot = readingOf(state, material, frame, []);
  const day = onDay(openFeedings(state, frame.today).at(-1)?.due ?? frame.today);
  return [
    {
      when: say("feeding.case.done", { day }),
      decision: decisionText(ifDone),
      steps: stepsOf(state, ifDone.plan, ifDone.material),
    },
    {
      when: say("feeding.case.not-done", { day }),
      decision: decisionText(ifNot),
      steps: stepsOf(state, ifNot.plan, ifNot.material),
    },
  ];
}

import { cautionsFor } from "../../cautions/register.ts";
import { addDays, localDay } from "../../core/days.ts";
import type { AdviceBody, AnswerBody, Case, NeedsMoreBody, Rule } from "../../core/rule.ts";
import { ashApart, withoutOpenAsh } from "../../food/ashApart.ts";
import { feedingDates } from "../../food/curve.ts";
import { givenIfDone, openFeedings } from "../../food/unanswered.ts";
import type { PlantingState } from "../../states/states.ts";
import { MEASURED_SEASON, uptakePerTonne } from "../../tables/uptake.ts";
import { measure, onDay, say } from "../../text/message.ts";
import { holdsFeedBack } from "../cold-record/holdsFeedBack.ts";
import { supplyChart, weeklyChart } from "./chart.ts";
import { chosenMaterial } from "./chosen.ts";
import { decisionText, expectedOf, stakesOf } from "./decision.ts";
import { type FeedingReading, type Frame, readingOf } from "./reading.ts";
import { cautionIds, evidenceOf, limitsOf, wouldChangeOf } from "./says.ts";
import { stepsOf } from "./steps.ts";
import { weeklyTable } from "./table.ts";
import { writeWorking } from "./working.ts";

/** California's 50,000 lb of fruit an acre (SN-311), the high yield goal by which a missing one is judged. */
const HIGH_GOAL_T_PER_HA = 56;

/** What to feed, when, and from which materials. */
export const feedingRule: Rule<"planting"> = {
  id: "feeding",
  version: 4,
  question: "What should this planting be given, when, and from which materials?",
  subject: "planting",
  needs: [
    "a yield goal",
    "setting-out day, and when buds and fruit set were seen",
    "a soil test with extractants; leaf, sap and nitrate tests",
    "credits: legumes, manure, compost, organic matter, nitrate in water and soil",
    "what was given already, and what the shed holds",
    "the forecast; the injector and its tanks where feed goes through the water",
    "what the rule cold-record reads: after too much cold feed is held back",
  ],
  run,
};

function run(state: PlantingState): AnswerBody {
  const today = localDay(state.asOf, state.site.timeZone);
  const { planting } = state;
  if (planting.endedOn !== undefined && planting.endedOn <= today) {
    return { kind: "does-not-apply", reason: say("feeding.ended") };
  }
  if (state.bed.kind === "containers") return { kind: "does-not-apply", reason: say("feeding.containers") };
  const chosen = chosenMaterial(state, today);
  const start = planting.setOutOn ?? planting.plannedSetOutOn;
  const goal = planting.yieldGoalTPerHa;
  if (goal === undefined || start === undefined) return needsMore(goal, start);
  if (today >= feedingDates(start, [], today).end) {
    return { kind: "does-not-apply", reason: say("feeding.season-over") };
  }
  const holdBack = start <= today && holdsFeedBack(state);
  return adviceFrom(state, { goal, start, today, chosen, holdBack });
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

function adviceFrom(state: PlantingState, frame: Frame): AdviceBody {
  const open = openFeedings(state, frame.today);
  // Nothing is given twice on a guess: what nobody answered is taken as given until somebody says otherwise.
  const reading = readingOf(state, frame, givenIfDone(open, state), state.feeding.allotted);
  const { plan, schedule, dose } = reading;
  const ash = ashInTheWay(state, frame, reading);
  const working = writeWorking(state, frame, reading);
  const kg = (parts: { kg: number }[]) => parts.reduce((sum, p) => sum + p.kg, 0);
  const held = reading.code === "hold-back";
  const table = weeklyTable(state, reading, frame.today);
  return {
    kind: "advice",
    decision: { code: reading.code, text: decisionText(reading, frame) },
    steps: [
      ...(open.length > 0 ? [{ text: say("feeding.step.unanswered") }] : []),
      ...(ash ? [{ text: say("feeding.step.unanswered-ash", { ash: onDay(ash) }) }] : []),
      ...stepsOf(state, reading, frame),
    ],
    window: { from: plan.from, to: addDays(plan.from, 6), endsBy: say("feeding.ends") },
    stakes: stakesOf(state, reading, frame),
    working: working.lines,
    estimated: working.estimated,
    evidence: evidenceOf(state, reading, frame),
    grade: "moderate",
    limits: limitsOf(state, reading, frame),
    cautions: cautionsFor(...cautionIds(state, reading, frame.today)),
    wouldChange: wouldChangeOf(state, reading, frame),
    cases: open.length > 0 || ash ? casesOf(state, frame, reading, ash) : [],
    expected: expectedOf(state, reading),
    amounts: {
      nKgPerHa: held ? 0 : (plan.weeksN[0]?.kgPerHa ?? 0),
      seasonNKgPerHa: plan.leftN,
      seasonK2oKgPerHa: plan.leftK2o ?? 0,
      doseKg: reading.dueNow && !held ? kg(dose?.parts ?? []) : 0,
      seasonKg: kg(schedule.materials),
      shortfallKg: reading.shortfallKg,
    },
    charts: [weeklyChart(plan, held), supplyChart(plan, schedule)],
    ...(table.length > 0 ? { table } : {}),
  };
}

/** The day of ash or lime that was advised and never answered, where that alone keeps something of the shed back. */
function ashInTheWay(state: PlantingState, { today }: Frame, { demand }: FeedingReading): string | undefined {
  const apart = ashApart(state, today);
  if (!apart || apart.sure) return undefined;
  return demand.leftOut.some((l) => l.why === "ash-with-ammonium") ? apart.on : undefined;
}

/** Either way of what nobody answered. Where it was not done the planting is solved over the shed as it stands. */
function casesOf(
  state: PlantingState,
  frame: Frame,
  ifDone: FeedingReading,
  ash: string | undefined,
): Case[] {
  const open = openFeedings(state, frame.today);
  const given = givenIfDone(open, state);
  const params = { day: onDay(open.at(-1)?.due ?? frame.today), ash: onDay(ash ?? frame.today) };
  const feedings = open.length > 0 ? ["done", "not-done"] : [""];
  const ashes = ash ? ["ash-spread", "ash-not-spread"] : [""];
  return feedings.flatMap((feeding) =>
    ashes.map((spread) => {
      const bare = spread === "ash-not-spread";
      const asIs = !bare && feeding !== "not-done";
      const of = bare ? withoutOpenAsh(state, frame.today) : state;
      const counted = feeding === "not-done" ? [] : given;
      const chosen = chosenMaterial(of, frame.today);
      const reading = asIs ? ifDone : readingOf(of, { ...frame, chosen }, counted, undefined);
      return {
        when: say(`feeding.case.${[feeding, spread].filter((part) => part !== "").join("-")}`, params),
        decision: decisionText(reading, frame),
        steps: stepsOf(of, reading, frame),
      };
    }),
  );
}

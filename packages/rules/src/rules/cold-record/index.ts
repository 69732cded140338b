import { cautionsFor } from "../../cautions/register.ts";
import { addDays, instantAt } from "../../core/days.ts";
import type { AdviceBody, AnswerBody, Rule, Step } from "../../core/rule.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Message, measure, onDay, say, wordOf } from "../../text/message.ts";
import { coldChart } from "./chart.ts";
import { saysHoldFeedBack } from "./holdsFeedBack.ts";
import { areSeedlings, canStartAgain, type Decision, isBeyond, isSpoiled, type Judged } from "./judge.ts";
import { readCold } from "./read.ts";
import { type Signs, WARM_DAYS_TO_JUDGE } from "./signs.ts";
import { coldWorking } from "./working.ts";

/** What has the cold done to these plants? */
export const coldRecordRule: Rule<"planting"> = {
  id: "cold-record",
  version: 3,
  question: "What has the cold done to these plants?",
  subject: "planting",
  needs: [
    "temperatures measured at the plants, else daily minima and maxima of the site",
    "covers with dates",
    "notes on the growing point and on new leaves",
    "spare plants",
  ],
  run: runColdRecord,
};

/** Days until the plants are looked at again (cp). */
const LOOK_AGAIN_DAYS = 7;

function runColdRecord(state: PlantingState): AnswerBody {
  const read = readCold(state);
  return "kind" in read ? read : adviceFrom(state, read);
}

function adviceFrom(state: PlantingState, j: Judged): AdviceBody {
  const { records, hours, decision } = j;
  const { working, estimated } = coldWorking(j);
  return {
    kind: "advice",
    decision: { code: decision, text: decisionText(j) },
    steps: stepsOf(j),
    window: {
      from: j.today,
      to: addDays(j.today, LOOK_AGAIN_DAYS),
      endsBy: say("cold-record.ends"),
    },
    stakes: stakesOf(state, j),
    working,
    estimated,
    evidence: [
      "cold-record.low-nights",
      "cold-record.flowers",
      "cold-record.parthenocarpic",
      "cold-record.stunting",
      "cold-record.thresholds",
      "cold-record.hours",
    ],
    grade: hours.reconstructed === 0 ? "moderate" : "weak",
    limits: limitsOf(j),
    cautions: cautionsFor(
      ...(decision === "carry-on" ? [] : ["cold-look-alikes"]),
      ...(hours.estimatedUnder.length > 0 ? ["cover-overheats"] : []),
    ),
    wouldChange: wouldChange(j),
    cases: [],
    expected: decision === "carry-on" ? null : { kind: "look", date: addDays(j.today, 1) },
    amounts: { hoursBelow: records.whole.hoursBelow, degreeHours: records.whole.degreeHours },
    charts: [coldChart(hours, j.thresholds)],
  };
}

function decisionText({ decision, records, thresholds, signs, hours }: Judged): Message {
  const seen = records.latest;
  const spoiled = areSeedlings(thresholds) && isSpoiled(signs);
  if (decision === "start-again" || decision === "keep-what-lives" || spoiled) {
    return say(`cold-record.decision.${decision}${decision === "hold-back-and-look" ? "-spoiled" : ""}`, {
      sign: wordOf(signs.growingPointDead ? "cold-record.sign.dead" : "cold-record.sign.no-leaf"),
    });
  }
  if (decision === "warmer-nights") {
    return say("cold-record.decision.warmer-nights", { floor: measure(thresholds.nightFloorC ?? 0, "C") });
  }
  if (decision === "hold-back-and-look" && records.watched.frostDays > 0) {
    return say("cold-record.decision.hold-back-and-look-frost", {
      minimum: measure(hours.lowestMinimumC, "C"),
      frosts: records.watched.frostDays,
    });
  }
  return say(`cold-record.decision.${decision}`, {
    hours: measure(decision === "carry-on" ? seen.hoursBelow : records.watched.hoursBelow, "hours"),
    floor: measure(thresholds.floorC, "C"),
    from: onDay(records.watched.firstDay),
    to: onDay(records.watched.lastDay),
  });
}

function stepsOf(j: Judged): Step[] {
  const { decision, thresholds, hours, records, today } = j;
  const spoiled = areSeedlings(thresholds) && isSpoiled(j.signs);
  const again = { day: { day: addDays(today, LOOK_AGAIN_DAYS) } };
  const heat =
    thresholds.nightFloorC !== null && records.latest.coolNightHours > 0
      ? [
          say("cold-record.step.heat", {
            floor: measure(thresholds.nightFloorC, "C"),
            hours: measure(records.latest.coolNightHours, "hours"),
          }),
        ]
      : [];
  const byDecision: Record<Decision, Message[]> = {
    "carry-on": [say("cold-record.step.carry-on")],
    "warmer-nights": heat,
    "hold-back-and-look": [
      ...(spoiled ? lackingSaid(j.signs) : [say("cold-record.step.look")]),
      ...(records.whole.frostDays > 0 ? [say("cold-record.step.frost")] : []),
      feedSaid(j),
      ...heat,
      say("cold-record.step.again", again),
    ],
    "keep-what-lives": [say("cold-record.step.keep"), say("cold-record.step.again", again)],
    "start-again": [
      say(
        (j.signs.sparePlants ?? 0) > 0 ? "cold-record.step.replace" : "cold-record.step.sow",
        (j.signs.sparePlants ?? 0) > 0
          ? { spare: j.signs.sparePlants ?? 0 }
          : { days: measure(j.signs.daysToSpare ?? 0, "days") },
      ),
      say("cold-record.step.leave-some"),
    ],
  };
  const record = say("cold-record.step.record", {
    from: onDay(records.whole.firstDay),
    hours: measure(records.whole.hoursBelow, "hours"),
    degreeHours: measure(records.whole.degreeHours, "C-hours"),
    floor: measure(thresholds.floorC, "C"),
    spell: measure(records.whole.longestSpellH, "hours"),
    minimum: measure(hours.lowestMinimumC, "C"),
    frosts: records.whole.frostDays,
    missing: hours.missing,
  });
  return [...byDecision[decision], record].map((text) => ({ text }));
}

/** Whether feed is held back, by the same word as the rule feeding's. */
function feedSaid(j: Judged): Message {
  if (j.thresholds.phase === "overwintered") return say("cold-record.step.wood");
  if (saysHoldFeedBack(j)) return say("cold-record.step.hold-back");
  return say("cold-record.step.new-leaf", { day: onDay(j.signs.newLeafOn ?? j.today) });
}

/** What would have to be known before "start again" can be said. */
function lackingSaid(signs: Signs): Message[] {
  return [
    ...(signs.sparePlants === null ? [say("cold-record.step.count-spares")] : []),
    ...(signs.timeLacks === null ? [] : [say(`cold-record.step.lacks-${signs.timeLacks}`)]),
  ];
}

/**
 * Shares of a planting's worth (cp) that acting can still save: dead seedlings that can be replaced, most of it; after
 * frost, or a heavy dose of cold, what replacing them in time would save by the odds that they are lost.
 */
function stakesOf(state: PlantingState, j: Judged): AdviceBody["stakes"] {
  const { decision, thresholds, records, signs, today } = j;
  const tomorrowNoon = instantAt(addDays(today, 1), 12, state.site.timeZone);
  if (decision === "carry-on") return { harm: 0, reason: say("cold-record.stakes.none"), actBy: null };
  if (decision === "warmer-nights") return { harm: 0.1, reason: say("cold-record.stakes.slow"), actBy: null };
  if (decision === "keep-what-lives") {
    return { harm: 0.1, reason: say("cold-record.stakes.kept"), actBy: null };
  }
  if (decision === "start-again") {
    return { harm: 0.8, reason: say("cold-record.stakes.season"), actBy: tomorrowNoon };
  }
  if (!areSeedlings(thresholds)) {
    return { harm: 0.1, reason: say("cold-record.stakes.grown"), actBy: tomorrowNoon };
  }
  const harm = records.watched.frostDays > 0 || isSpoiled(signs) ? 0.6 : 0.3;
  return { harm, reason: say("cold-record.stakes.look"), actBy: tomorrowNoon };
}

function limitsOf({ hours, thresholds, records }: Judged): Message[] {
  return [
    say("cold-record.limit.practice"),
    ...(hours.reconstructed > 0 ? [say("cold-record.limit.reconstructed")] : []),
    ...(hours.estimatedUnder.length > 0 ? [say("cold-record.limit.cover")] : []),
    ...(records.whole.missingHours > 0
      ? [say("cold-record.limit.gaps", { hours: measure(records.whole.missingHours, "hours") })]
      : []),
    ...(thresholds.phase === "established" ? [say("cold-record.limit.established")] : []),
    ...(thresholds.phase === "overwintered" ? [say("cold-record.limit.overwintered")] : []),
  ];
}

function wouldChange({ hours, signs, thresholds, records }: Judged): Message[] {
  const spoiled = isSpoiled(signs);
  return [
    ...(hours.measured === 0 ? [say("cold-record.change.measure")] : []),
    ...(spoiled || !isBeyond(records.watched, thresholds)
      ? []
      : [say("cold-record.change.signs", { days: measure(WARM_DAYS_TO_JUDGE, "days") })]),
    ...(spoiled && canStartAgain(signs) === null ? [say("cold-record.change.spare")] : []),
  ];
}

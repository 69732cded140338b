import { cautionsFor } from "../../cautions/register.ts";
import { addDays, instantAt, localDay } from "../../core/days.ts";
import type { AdviceBody, AnswerBody, NeedsMoreBody, Rule, Stakes } from "../../core/rule.ts";
import { Working } from "../../core/working.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Message, onDay, say, wordOf } from "../../text/message.ts";
import { SEASON_DAYS } from "../../water/stages.ts";
import { type Manures, manuresOf } from "./given.ts";
import { harvestFrom, type Interval, intervalOf, lastDayToSpread } from "./interval.ts";
import { judge, shareBefore, type Timing } from "./judge.ts";
import { type FirstPick, firstPickOf } from "./pick.ts";
import { stepsOf } from "./steps.ts";

/** From setting out to the first picking, shortest and longest that seed lists print (common practice). */
const FIRST_PICK_AFTER_DAYS = { low: 55, high: 110 } as const;
/** At stake where nobody knows when the first picking comes, and where the date is kept anyway (common practice). */
const HARM_UNKNOWN = 0.3;
const HARM_OF_WATCHING = 0.02;

/** Raw manure before harvest: from when may be picked, and until when may still be spread? */
export const manureTimingRule: Rule<"planting"> = {
  id: "manure-timing",
  version: 1,
  question: "How long before harvest may raw manure be given?",
  subject: "planting",
  needs: [
    "manure that was given, with its day and whether it was composted to the rule",
    "manure in the shed, with its animal and analysis",
    "days to maturity of the seed list, or the day of the first picking",
    "certification of the bed; stakes",
  ],
  run,
};

const no = (reason: Message): AnswerBody => ({ kind: "does-not-apply", reason });

function run(state: PlantingState): AnswerBody {
  const today = localDay(state.asOf, state.site.timeZone);
  const { endedOn } = state.planting;
  if (endedOn !== undefined && endedOn <= today) return no(say("manure-timing.not.ended"));
  const manures = manuresOf(state, today);
  if (manures.rawGiven.length === 0 && manures.rawAtHand.length === 0) return nothingRaw(manures);
  const w = new Working();
  const interval = intervalOf(state);
  const pick = firstPickOf(state, today);
  const timing = judge(state, manures, interval, pick, today, w);
  if (timing === "passed") {
    const last = manures.rawGiven.at(-1)?.application.on ?? today;
    return no(say("manure-timing.not.passed", { day: onDay(harvestFrom(last, interval)) }));
  }
  if (timing === "standing") return no(say("manure-timing.not.standing"));
  if (timing === "open") return missingPick(state, interval, today, w);
  return adviceFrom(state, timing, w);
}

const nothingRaw = (manures: Manures): AnswerBody =>
  manures.compostedGiven.length + manures.compostedAtHand.length > 0
    ? no(say("manure-timing.not.composted"))
    : no(say("manure-timing.not.none"));

/** When the first fruit is ripe is not known: how far the last day moves between quick and slow peppers. */
function missingPick(state: PlantingState, interval: Interval, today: string, w: Working): NeedsMoreBody {
  const { plannedSetOutOn, daysToMaturity } = state.planting;
  const out = plannedSetOutOn ?? today;
  const moves = {
    early: onDay(lastDayToSpread(addDays(out, FIRST_PICK_AFTER_DAYS.low), interval)),
    late: onDay(lastDayToSpread(addDays(out, FIRST_PICK_AFTER_DAYS.high), interval)),
  };
  const field = daysToMaturity === undefined ? "planting.daysToMaturity" : "planting.plannedSetOutOn";
  const missing: NeedsMoreBody["missing"] = [
    {
      field,
      measure: say(
        daysToMaturity === undefined ? "manure-timing.missing.maturity" : "manure-timing.missing.set-out",
      ),
      couldMove: say("manure-timing.missing.moves", moves),
    },
  ];
  return { kind: "needs-more", missing, working: w.lines, estimated: w.estimated };
}

function adviceFrom(state: PlantingState, t: Timing, w: Working): AdviceBody {
  const { interval, manures } = t;
  if ([...manures.rawGiven, ...manures.rawAtHand].some((m) => m.assumed)) {
    w.estimate("composted", "nobody said it was composted: taken as raw manure", { key: "common-practice" });
  }
  if (state.planting.staked === undefined) {
    w.estimate("staked", "not stated: fruit is taken to hang near the soil", { key: "common-practice" });
  }
  const steps = stepsOf(state, t, w);
  return {
    kind: "advice",
    decision: { code: t.code, text: decisionText(t) },
    steps,
    window: windowOf(t),
    stakes: stakesOf(state, t),
    working: w.lines,
    estimated: w.estimated,
    evidence: [
      "manure-timing.interval",
      "manure-timing.germs-last",
      "manure-timing.low-fruit",
      "manure-timing.no-interval",
      "manure-timing.composting",
      "manure-timing.nitrate",
      "manure-timing.ammonia",
      "manure-timing.release",
    ],
    grade: "moderate",
    limits: [
      say(`manure-timing.limit.${interval.rule}`),
      say("manure-timing.limit.worked-in"),
      ...(t.pick?.how === "reckoned" ? [say("manure-timing.limit.maturity")] : []),
      ...(t.pick ? [] : [say("manure-timing.limit.no-pick")]),
      ...(interval.touching ? [] : [say("manure-timing.limit.upright")]),
    ],
    cautions: cautionsFor("manure-raw", "nitrate-leaching", "nutrient-law", "grade-varies", "organic-dust"),
    wouldChange: wouldChangeOf(state, t),
    cases: [],
    expected: null,
    amounts: { rawApplications: manures.rawGiven.length, days: interval.days },
    charts: [],
  };
}

function decisionText(t: Timing): Message {
  const [atHand] = t.manures.rawAtHand;
  return say(`manure-timing.decision.${t.code}`, {
    from: onDay(t.harvestFrom ?? t.today),
    pick: onDay(t.pick?.day ?? t.today),
    by: onDay(t.spreadUntil ?? t.today),
    what: wordOf(`material.${atHand?.material.kind ?? t.last?.kind ?? "manure"}`),
    days: t.interval.days,
  });
}

function windowOf(t: Timing): AdviceBody["window"] {
  if (t.harvestFrom !== undefined) {
    return { from: t.today, to: t.harvestFrom, endsBy: say("manure-timing.ends.harvest") };
  }
  const to = t.code === "spread-by" ? (t.spreadUntil ?? null) : null;
  return { from: t.today, to, endsBy: say("manure-timing.ends.spread") };
}

const lastDayOf = ({ planting }: PlantingState, pick: FirstPick): string =>
  addDays(planting.setOutOn ?? planting.plannedSetOutOn ?? pick.day, SEASON_DAYS);

/** The fruit that ripens before it may be picked. */
function stakesOf(state: PlantingState, t: Timing): Stakes {
  const { timeZone } = state.site;
  const tomorrow = addDays(t.today, 1);
  if (t.code === "spread-by") {
    return {
      harm: HARM_OF_WATCHING,
      reason: say("manure-timing.stakes.spread"),
      actBy: instantAt(t.spreadUntil ?? t.today, 18, timeZone),
    };
  }
  if (t.code === "clear-at-harvest") {
    return { harm: HARM_OF_WATCHING, reason: say("manure-timing.stakes.clear"), actBy: null };
  }
  const blockedTo = t.harvestFrom ?? harvestFrom(t.today, t.interval);
  const held = t.pick ? shareBefore(blockedTo, t.pick.day, lastDayOf(state, t.pick)) : HARM_UNKNOWN;
  const presses = t.harvestFrom !== undefined;
  const pickDay = t.pick && t.pick.day > tomorrow ? t.pick.day : tomorrow;
  return {
    harm: held,
    reason: say(presses ? "manure-timing.stakes.held" : "manure-timing.stakes.would-hold"),
    actBy: presses && t.pick ? instantAt(pickDay, 7, timeZone) : null,
  };
}

function wouldChangeOf(state: PlantingState, t: Timing): Message[] {
  const assumed = [...t.manures.rawGiven, ...t.manures.rawAtHand].some((m) => m.assumed);
  return [
    ...(assumed ? [say("manure-timing.change.composted")] : []),
    ...(t.pick ? [] : [say("manure-timing.change.maturity")]),
    ...(t.pick?.how === "reckoned" ? [say("manure-timing.change.pick")] : []),
    ...(t.interval.touching && state.planting.staked !== true ? [say("manure-timing.change.staked")] : []),
    ...(t.interval.rule === "office-days" ? [say("manure-timing.change.office")] : []),
  ];
}

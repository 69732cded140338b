import { cautionsFor } from "../../cautions/register.ts";
import { addDays, instantAt, localDay } from "../../core/days.ts";
import type { AdviceBody, AnswerBody, Rule } from "../../core/rule.ts";
import type { InForce } from "../../evidence/choices.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Message, onDay, say } from "../../text/message.ts";
import { climatologyYears } from "../../warmth/climatologyYears.ts";
import {
  refuseFahrenheit,
  refuseFahrenheitReadings,
  refuseFahrenheitYears,
} from "../../warmth/plausibleTemperatures.ts";
import { leafChart } from "./chart.ts";
import { decide, type Verdict } from "./decide.ts";
import { type Fitness, fitnessOf } from "./fit.ts";
import { type LeafWindow, leafWindowOf } from "./leaves.ts";
import { bothReadings, inForceSaid, readingInForce, seasonTable } from "./reading.ts";
import { type Season, seasonOf } from "./season.ts";
import { stepsOf } from "./steps.ts";
import { AHEAD_DAYS, LEAVES } from "./thresholds.ts";
import { workingOf } from "./working.ts";

/** Should the tips of these plants be taken out? */
export const toppingRule: Rule<"planting"> = {
  id: "topping",
  version: 1,
  question: "Should the tips of these plants be taken out?",
  subject: "planting",
  needs: [
    "count of true leaves",
    "whether they are hardened, checked by cold or sick",
    "days to maturity, or this farm's earlier first picks",
    "at least eight years of daily minima and maxima",
    "which reading the office follows",
  ],
  run: runTopping,
};

/** Notes after which a tip is no longer there to be taken, or bears. */
const TOO_FAR = ["buds-visible", "first-flower", "fruit-set", "mature-green", "colouring", "first-pick"];
/** The window that closes is all that is lost by not doing it (cp). */
const HARM_OF_MISSING = 0.02;

function runTopping(state: PlantingState): AnswerBody {
  const today = localDay(state.asOf, state.site.timeZone);
  const { planting, notes } = state;
  if (planting.endedOn !== undefined && planting.endedOn <= today) return no("topping.not.ended");
  if (planting.sownOn > today) return no("topping.not.unsown");
  if (planting.overwintered) return no("topping.not.overwintered");
  const seen = notes.filter((n) => n.on <= today);
  const taken = seen.find((n) => n.kind === "tip-taken");
  if (taken) return noSaid(say("topping.not.taken", { day: onDay(taken.on) }));
  if (seen.some((n) => TOO_FAR.includes(n.kind))) return no("topping.not.buds");
  refuseFahrenheitReadings(state.plantTemperatures);
  if (state.climatology) refuseFahrenheitYears(state.climatology);
  refuseFahrenheit(state.weather, "weather", state.climatology && climatologyYears(state.climatology));
  const window = leafWindowOf(state, today);
  if (window === null) return noSaid(say("topping.not.no-start"));
  if (window.at === "past") return noSaid(say("topping.not.past", { to: LEAVES.to }));
  if (window.at === "before" && (window.opens ?? "9999") > addDays(today, AHEAD_DAYS)) {
    return window.opens === null
      ? no("topping.not.no-warmth")
      : noSaid(say("topping.not.early", { day: onDay(window.opens), from: LEAVES.from }));
  }
  const season = seasonOf(state, window.forecast.growth);
  const reading = readingInForce(state);
  const fitness = fitnessOf(state, today);
  const verdict = decide(state, reading, fitness, window, season);
  return adviceFrom(state, today, { reading, fitness, window, season, verdict });
}

const noSaid = (reason: Message): AnswerBody => ({ kind: "does-not-apply", reason });
const no = (key: string): AnswerBody => noSaid(say(key));

interface Answered {
  reading: InForce;
  fitness: Fitness;
  window: LeafWindow;
  season: Season;
  verdict: Verdict;
}

function adviceFrom(state: PlantingState, today: string, a: Answered): AdviceBody {
  const { verdict, window, season, reading } = a;
  const acts = verdict.code === "half-bed" || verdict.code === "take";
  const w = workingOf(reading, a.fitness, window, season);
  const from = window.opens !== null && window.opens > today ? window.opens : today;
  const to = window.closes !== null && window.closes > from ? window.closes : null;
  const chart = leafChart(window, today);
  return {
    kind: "advice",
    decision: {
      code: verdict.code,
      text: say(`topping.decision.${verdict.code}`, { plants: verdict.plants }),
    },
    steps: stepsOf(state, verdict, window, season),
    window: { from, to, endsBy: say("topping.ends", { to: LEAVES.to }) },
    stakes: {
      harm: acts ? HARM_OF_MISSING : 0,
      reason: say(`topping.stakes.${acts ? "window" : "none"}`),
      actBy: acts && to !== null ? instantAt(to, 18, state.site.timeZone) : null,
    },
    working: w.lines,
    estimated: w.estimated,
    evidence: [
      "topping.practice",
      "topping.chitwan",
      "topping.baitadi",
      "topping.lamjung",
      "topping.lalitpur",
      "topping.shoot-pruned",
      "topping.potted-delay",
      "topping.stems",
      "topping.gap",
      "topping.who-not",
    ],
    grade: gradeOf(a),
    limits: limitsOf(a),
    cautions: cautionsFor("clean-cut"),
    wouldChange: wouldChange(a),
    cases: [],
    expected: verdict.code === "leave" ? null : { kind: "look", date: from },
    amounts: { plants: verdict.plants },
    charts: chart ? [chart] : [],
    table: [bothReadings(reading), seasonTable(season)],
  };
}

/** Trials of chilli in warm places speak weakly here; what rests on how plants look, or on the office's custom, is practice. */
function gradeOf({ verdict, reading }: Answered): AdviceBody["grade"] {
  if (reading.option === "practice") return "practice";
  return ["no-time", "time-enough", "published", "season-unknown"].includes(verdict.reasons[0] ?? "")
    ? "weak"
    : "practice";
}

function limitsOf({ reading, fitness, season, window }: Answered): Message[] {
  return [
    inForceSaid(reading),
    say("topping.limit.gap"),
    say("topping.limit.warm-trials"),
    say("topping.limit.delay"),
    say("topping.limit.leaf-heat"),
    ...(season.chanceTaken === null ? [say("topping.limit.no-years")] : []),
    ...(season.ripe === "mature-green" ? [say("topping.limit.green")] : []),
    ...(fitness.coldKnown ? [] : [say("topping.limit.cold-unknown")]),
    ...(window.forecast.growth.notes.odd.length > 0 ? [say("topping.limit.odd-notes")] : []),
  ];
}

function wouldChange({ season, fitness, window, verdict }: Answered): Message[] {
  const prior = window.forecast.growth.prior.from;
  return [
    ...(window.at === "open" ? [] : [say("topping.change.count")]),
    ...(fitness.unfit.includes("unhardened") ? [say("topping.change.hardened")] : []),
    ...(season.chanceTaken === null ? [say("topping.change.years")] : []),
    ...(prior === "table" ? [say("topping.change.days")] : []),
    ...(verdict.reasons.includes("containers") ? [] : [say("topping.change.trial")]),
  ];
}

import { cautionsFor } from "../../cautions/register.ts";
import { daysBetween, instantAt, localDay } from "../../core/days.ts";
import type { AdviceBody, AnswerBody, NeedsMoreBody, Rule } from "../../core/rule.ts";
import type { PlantingState } from "../../states/states.ts";
import { isPungent } from "../../tables/pickStages.ts";
import { type Message, measure, onDay, say } from "../../text/message.ts";
import { climatologyYears } from "../../warmth/climatologyYears.ts";
import { refuseUnweighable } from "../set-out/door.ts";
import { AHEAD_DAYS, EVEN, type Reading, type RipeCode, readingOf } from "./reading.ts";
import { ripeCharts, ripeTables } from "./show.ts";
import { stepsOf } from "./steps.ts";
import { workingOf } from "./working.ts";

/** When is this planting's fruit picked, and how is it kept? */
export const ripeRule: Rule<"planting"> = {
  id: "ripe",
  version: 1,
  question: "When is this planting's fruit picked, and how is it kept?",
  subject: "planting",
  needs: [
    "when its fruit is picked: green or in colour",
    "notes of first flower, mature green and colour; what was picked",
    "days of weather since setting out and years of daily minima and maxima",
    "forecast at most a day old; sprays with their labels' intervals",
  ],
  run,
};

function run(state: PlantingState): AnswerBody {
  const { planting } = state;
  const today = localDay(state.asOf, state.site.timeZone);
  if (planting.endedOn !== undefined && planting.endedOn <= today) return no(say("ripe.not.ended"));
  if (planting.sownOn > today) return no(say("ripe.not.unsown"));
  refuseUnweighable(state, state.climatology && climatologyYears(state.climatology));
  const r = readingOf(state, today);
  if (r.picking) return adviceFrom(state, r);
  if (planting.overwintered) return no(say("ripe.not.overwintered"));
  const likely = (r.at === "green" ? r.green : r.colour)?.dates.likely ?? null;
  const out = planting.setOutOn !== undefined && planting.setOutOn <= today;
  if (!out && likely !== null && daysBetween(today, likely) > AHEAD_DAYS) {
    return no(say("ripe.not.too-early", { likely: onDay(likely) }));
  }
  if (r.growth === null) return missing("weather");
  if (likely === null && r.autumn === null) return missing("climatology");
  return adviceFrom(state, r);
}

const no = (reason: Message): AnswerBody => ({ kind: "does-not-apply", reason });

const missing = (field: "weather" | "climatology"): NeedsMoreBody => ({
  kind: "needs-more",
  missing: [{ field, measure: say(`ripe.missing.${field}`), couldMove: say(`ripe.missing.${field}-moves`) }],
  working: [],
  estimated: [],
});

function adviceFrom(state: PlantingState, r: Reading): AdviceBody {
  const w = workingOf(r);
  const day = lookOn(r);
  return {
    kind: "advice",
    decision: { code: r.code, text: decisionOf(r) },
    steps: stepsOf(r),
    window: {
      from: day,
      to: lastDay(r),
      endsBy: say(`ripe.ends.${r.code === "frost" || r.code === "frost-closed" ? "frost" : "else"}`),
    },
    stakes: {
      // What nobody may go in for is not to be saved.
      harm: r.shutAtFrost ? 0 : HARM[r.code],
      reason: say(`ripe.stakes.${r.code}`),
      actBy: actBy(state, r),
    },
    working: w.lines,
    estimated: [...w.estimated, ...estimatedOf(r)],
    evidence: [
      "ripe.first-fruit",
      "ripe.pick-stage",
      "ripe.freezing",
      "ripe.storage",
      "ripe.storage-longer",
      "ripe.chilling",
      "ripe.breaker",
      "ripe.colouring",
      "ripe.ethylene",
    ],
    grade: "weak",
    limits: limitsOf(r),
    cautions: cautionsFor(
      ...(isPungent(state.planting) ? ["hot-fruit"] : []),
      ...(r.harvestFrom === null ? [] : ["harvest-interval"]),
      ...(r.frostNight ? ["frosted-fruit"] : []),
    ),
    wouldChange: wouldChangeOf(state, r),
    cases: [],
    expected: { kind: "look", date: day },
    amounts: {},
    charts: ripeCharts(r),
    table: ripeTables(r),
  };
}

/** Fruit of size that freezes is lost; a picking missed a week is softer and slows the next (cp); planning presses nothing. */
const HARM: Readonly<Record<RipeCode, number>> = {
  frost: 0.3,
  "frost-closed": 0.3,
  closed: 0,
  pick: 0.05,
  look: 0.05,
  wait: 0,
  "pick-green": 0.02,
  "none-before-frost": 0.02,
};

/** Fruit is in, or covered, by the end of the afternoon before the frost. */
const EVENING_HOUR = 17;

function actBy(state: PlantingState, r: Reading): string | null {
  const { timeZone } = state.site;
  if (r.shutAtFrost) return null;
  if (r.frostNight && (r.code === "frost" || r.code === "frost-closed")) {
    return instantAt(r.frostNight.evening, EVENING_HOUR, timeZone);
  }
  return r.code === "pick" ? instantAt(lookOn(r), EVENING_HOUR, timeZone) : null;
}

/** The first day on which somebody has something to do; a label's day comes before any other. */
function lookOn(r: Reading): string {
  const target = r.at === "green" ? r.green : r.colour;
  const planned = r.picking ? r.nextPick : (target?.dates.low ?? r.today);
  const day = [r.today, r.code === "frost" ? r.today : planned].toSorted().at(-1) as string;
  return r.code !== "frost-closed" && r.harvestFrom !== null && r.harvestFrom > day ? r.harvestFrom : day;
}

const lastDay = (r: Reading): string | null => {
  if (r.frostNight) return r.frostNight.evening >= lookOn(r) ? r.frostNight.evening : null;
  const frost = r.autumn?.dates.likely ?? null;
  return frost !== null && frost >= lookOn(r) ? frost : null;
};

function decisionOf(r: Reading): Message {
  const target = r.at === "green" ? r.green : r.colour;
  const { low, likely, high } = target?.dates ?? {};
  const stage = { word: `ripe.at.${r.at}` };
  switch (r.code) {
    case "frost":
    case "frost-closed":
      return say(`ripe.decision.${r.shutAtFrost ? "frost-shut" : r.code}`, {
        evening: onDay(r.frostNight?.evening ?? r.today),
        ...(r.harvestFrom !== null && { from: onDay(r.harvestFrom) }),
      });
    case "closed":
      return say("ripe.decision.closed", { from: onDay(r.harvestFrom ?? r.today) });
    case "pick":
      return say(r.nextPick === r.today ? "ripe.decision.pick-now" : "ripe.decision.pick-on", {
        day: onDay(lookOn(r)),
        stage,
      });
    case "look":
      return say("ripe.decision.look", { stage });
    case "pick-green":
      return say("ripe.decision.pick-green", {
        share: measure(100 * (r.colourBefore ?? 0), "pct"),
        green: onDay(r.green?.dates.likely ?? r.today),
      });
    case "none-before-frost":
      return say("ripe.decision.none-before-frost", { share: measure(100 * (r.greenBefore ?? 0), "pct") });
    case "wait": {
      if (!low || !likely) return say("ripe.decision.wait-none", { stage });
      const days = { stage, low: onDay(low), likely: onDay(likely) };
      return high
        ? say("ripe.decision.wait", { ...days, high: onDay(high) })
        : say("ripe.decision.wait-open", days);
    }
  }
}

const estimatedOf = (r: Reading) =>
  r.atKnown
    ? []
    : [
        {
          input: "planting.pickAt",
          how: `${r.at}, as its market type is picked`,
          source: { key: "common-practice" },
        },
      ];

function limitsOf(r: Reading): Message[] {
  const share = r.at === "colour" ? r.colourBefore : r.greenBefore;
  return [
    ...(share !== null && share >= EVEN && !r.picking
      ? [say("ripe.limit.share", { stage: { word: `ripe.at.${r.at}` }, share: measure(100 * share, "pct") })]
      : []),
    ...(r.growth === null ? [say("ripe.limit.no-dates")] : []),
    ...(r.autumn === null ? [say("ripe.limit.no-frost")] : []),
    say("ripe.limit.fruit"),
    say("ripe.limit.storage"),
    say("ripe.limit.ethylene"),
  ];
}

function wouldChangeOf(state: PlantingState, r: Reading): Message[] {
  return [
    ...(r.atKnown ? [] : [say("ripe.change.pick-at")]),
    say("ripe.change.note"),
    ...(state.forecast ? [] : [say("ripe.change.forecast")]),
    ...(state.climatology ? [] : [say("ripe.missing.climatology")]),
  ];
}

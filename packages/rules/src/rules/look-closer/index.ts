import { cautionsFor } from "../../cautions/register.ts";
import { addDays, instantAt, localDay } from "../../core/days.ts";
import type { AdviceBody, AnswerBody, Rule, Stakes } from "../../core/rule.ts";
import { Working } from "../../core/working.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Message, measure, onDay, say, wordsOf } from "../../text/message.ts";
import { climatologyYears } from "../../warmth/climatologyYears.ts";
import { refuseFahrenheit } from "../../warmth/plausibleTemperatures.ts";
import { cluesOf } from "./clues.ts";
import { type Ranking, rankingOf } from "./ranking.ts";
import { causeNamed, cluesTable, pointsChart, pointsLines } from "./show.ts";
import { OLD_AFTER_DAYS, type Picture, pictureOf } from "./signs.ts";
import { stepsOf } from "./steps.ts";
import { type Fortnight, fortnightOf, WEATHER_DAYS } from "./weather.ts";
import { weighAll } from "./weigh.ts";

/** Days after which a sick bed is looked at again; one that can spread in days, the next day (cp). */
const LOOK_AGAIN_DAYS = 3;
/** Share at risk by what it may be (cp): a disease that takes a bed, a pest or virus, all else. */
const HARM = { urgent: 0.3, living: 0.1, else: 0.05 } as const;
const EVENING_HOUR = 20;

/** What may be wrong with these plants? */
export const lookCloserRule: Rule<"planting"> = {
  id: "look-closer",
  version: 2,
  question: "What may be wrong with these plants?",
  subject: "planting",
  needs: [
    "signs with plant part, pattern in the bed and how fast they came",
    "daily weather of the fortnight before them",
    "what was sprayed, fed, limed and watered",
    "soil and water tests",
    "what stood in the bed and what was sick in it",
    "photographs",
  ],
  run,
};

const no = (key: string): AnswerBody => ({ kind: "does-not-apply", reason: say(key) });

function run(state: PlantingState): AnswerBody {
  const today = localDay(state.asOf, state.site.timeZone);
  const { planting } = state;
  if (planting.endedOn !== undefined && planting.endedOn <= today) return no("look-closer.not.ended");
  if (planting.sownOn > today) return no("look-closer.not.unsown");
  const picture = pictureOf(state, today);
  if (picture === null) return no("look-closer.not.no-signs");
  if (picture === "unnamed") return unnamed();
  refuseFahrenheit(state.weather, "weather", state.climatology && climatologyYears(state.climatology));
  const w = new Working();
  w.line("n", "signs weighed", [...picture.signs].toSorted().join(", "), picture.signs.size, "signs");
  const fortnight = fortnightOf(state, picture.firstOn, w);
  const clues = cluesOf(state, today, picture.firstOn);
  const ranking = rankingOf(weighAll(state, today, picture, fortnight, clues));
  pointsLines(w, ranking);
  return adviceFrom(state, today, picture, fortnight, ranking, w);
}

/** Somebody saw that plants are sick, and not how. */
const unnamed = (): AnswerBody => ({
  kind: "needs-more",
  missing: [
    {
      field: "signs",
      measure: say("look-closer.missing.signs"),
      couldMove: say("look-closer.missing.move"),
    },
  ],
  working: [],
  estimated: [],
});

function adviceFrom(
  state: PlantingState,
  today: string,
  picture: Picture,
  fortnight: Fortnight,
  ranking: Ranking,
  w: Working,
): AdviceBody {
  const { kind, first, second, named, together } = ranking;
  const urgent = together.some(({ cause }) => cause.urgent);
  const again = addDays(today, urgent ? 1 : LOOK_AGAIN_DAYS);
  const code =
    kind === "unclear"
      ? "unclear"
      : kind === "several"
        ? named.map(({ cause }) => cause.id).join("-or-")
        : first.cause.id;
  return {
    kind: "advice",
    decision: {
      code,
      text:
        kind === "several" && named.length > 2
          ? say("look-closer.decision.several-more", {
              count: named.length,
              causes: wordsOf(named.map((one) => causeNamed(one).word)),
            })
          : say(`look-closer.decision.${kind}`, { first: causeNamed(first), second: causeNamed(second) }),
    },
    steps: stepsOf(state, picture, ranking),
    window: { from: today, to: again, endsBy: say("look-closer.ends") },
    stakes: stakesOf(state, today, ranking, urgent),
    working: w.lines,
    estimated: w.estimated,
    evidence: [
      "look-closer.points",
      "look-closer.patterns",
      "look-closer.pests",
      "look-closer.broad-mites-cool",
      "look-closer.broad-mites-house",
      "look-closer.diseases",
      "look-closer.verticillium-cool",
      "look-closer.verticillium-warm",
      "look-closer.viruses",
      "look-closer.food",
      "look-closer.weather-damage",
      "look-closer.drift",
      "look-closer.sample",
      "look-closer.re-entry",
      "look-closer.pre-harvest",
    ],
    grade: "weak",
    limits: limitsOf(picture, fortnight),
    cautions: cautionsFor(
      "possibilities-only",
      ...(together.some(({ cause }) => cause.id === "herbicide-drift") ? ["drift-fruit"] : []),
      ...((state.sprays ?? []).length > 0 ? ["label-intervals"] : []),
    ),
    wouldChange: wouldChange(picture, fortnight),
    cases: [],
    expected: { kind: "look", date: today },
    amounts: { signs: picture.signs.size },
    charts: [pointsChart(ranking)],
    table: [cluesTable(ranking)],
  };
}

function stakesOf(state: PlantingState, today: string, { together }: Ranking, urgent: boolean): Stakes {
  const living = together.some(({ cause }) =>
    ["insects", "leaves", "fruit", "whole-plant"].includes(cause.sample),
  );
  const risk = urgent ? "urgent" : living ? "living" : "else";
  return {
    harm: HARM[risk],
    reason: say(`look-closer.stakes.${risk}`),
    actBy: instantAt(addDays(today, urgent ? 1 : LOOK_AGAIN_DAYS), EVENING_HOUR, state.site.timeZone),
  };
}

function limitsOf(picture: Picture, { sheltered, daysKnown }: Fortnight): Message[] {
  return [
    say("look-closer.limit.points"),
    say("look-closer.limit.two-at-once"),
    ...(picture.ageDays > OLD_AFTER_DAYS
      ? [say("look-closer.limit.old", { day: onDay(picture.lastOn), age: measure(picture.ageDays, "days") })]
      : []),
    ...(picture.setAside > 0
      ? [
          say("look-closer.limit.set-aside", {
            signs: picture.setAside,
            gap: measure(OLD_AFTER_DAYS, "days"),
          }),
        ]
      : []),
    ...(sheltered ? [say("look-closer.limit.sheltered")] : []),
    ...(!sheltered && daysKnown < WEATHER_DAYS
      ? [say("look-closer.limit.weather", { known: daysKnown, days: WEATHER_DAYS })]
      : []),
  ];
}

function wouldChange(picture: Picture, { daysKnown }: Fortnight): Message[] {
  return [
    say("look-closer.change.laboratory"),
    say("look-closer.change.sign"),
    ...(picture.patterns.size === 0 ? [say("look-closer.change.pattern")] : []),
    ...(daysKnown === 0 ? [say("look-closer.change.weather")] : []),
  ];
}

import { cautionsFor } from "../../cautions/register.ts";
import { addDays, instantAt, localDay } from "../../core/days.ts";
import type { AdviceBody, AnswerBody, Rule, Stakes } from "../../core/rule.ts";
import { coversOn } from "../../states/standing.ts";
import type { PlantingState } from "../../states/states.ts";
import { DAY_LIMITS, NIGHT_LIMITS } from "../../tables/heatLimits.ts";
import { type Message, measure, onDay, say } from "../../text/message.ts";
import { calciumOf } from "./calcium.ts";
import { heatCharts } from "./chart.ts";
import { refuseUnweighable, signsOf, standingOf } from "./door.ts";
import { heatOf, isHot } from "./heat.ts";
import { DAYS_AHEAD, heatHours } from "./hours.ts";
import { type Code, type Judged, judge } from "./judge.ts";
import { stepsOf } from "./steps.ts";
import { evennessOf } from "./water.ts";
import { heatWorking } from "./working.ts";

/** Share of the fruit at risk in a hot week without shade or even water, and of what is still to set (cp). */
const HARM_AHEAD = 0.1;
/** Flowers and fruit already lost are not in it; a look is (cp). */
const HARM_OF_LOOKING = 0.02;
/** Share of the fortnight that must be known before heat is ruled out (cp). */
const ENOUGH_KNOWN = 0.8;
/** Hours of the clock: shade hangs before the sun bites; a day's watering still helps in the evening. */
const SHADE_HOUR = 8;
const EVENING_HOUR = 20;

/** Flowers dropping, sunscald, blossom-end rot: was it the heat, and what helps? */
export const tooHotRule: Rule<"planting"> = {
  id: "too-hot",
  version: 1,
  question: "Is it too hot for flowers and fruit here, and what helps?",
  subject: "planting",
  needs: [
    "temperatures measured at the plants, else daily minima and maxima of the site",
    "a forecast, with moisture of the air where it says it",
    "notes of dropped flowers, sunscald, end rot and wilting at dawn",
    "what was watered and when, rain, covers and mulch with dates",
    "soil and water tests with calcium",
  ],
  run,
};

function run(state: PlantingState): AnswerBody {
  const today = localDay(state.asOf, state.site.timeZone);
  const signs = signsOf(state, today);
  const standing = standingOf(state, today, signs);
  if (standing !== "noted" && standing !== "by-days") return no(say(`too-hot.not.${standing}`));
  refuseUnweighable(state, today);
  const hours = heatHours(state, today);
  const j: Judged = {
    state,
    today,
    signs,
    byDays: standing === "by-days",
    hours,
    past: heatOf(hours.known.filter((h) => !h.isAhead)),
    ahead: heatOf(hours.known.filter((h) => h.isAhead)),
    water: evennessOf(state, today),
    calcium: calciumOf(state, today),
  };
  const code = judge(j);
  return code === null ? withoutHeat(j) : adviceFrom(j, code);
}

const no = (reason: Message): AnswerBody => ({ kind: "does-not-apply", reason });

/** No heat by what is known: an answer where enough is known of the plants' own air, else a question. */
function withoutHeat(j: Judged): AnswerBody {
  const { known, goneH, unknownHouse } = j.hours;
  const own = known.filter((h) => !h.isAhead && !h.underCover).length;
  const covered = unknownHouse || coversOn(j.state.bed, j.today).length > 0;
  if (own >= ENOUGH_KNOWN * goneH && (own > 0 || (known.length > 0 && !covered))) {
    const most = (isDay: boolean) =>
      Math.max(...known.filter((h) => h.isDay === isDay).map((h) => h.temperatureC));
    const foretold = known.some((h) => h.day > j.today);
    return no(
      say(foretold ? "too-hot.not.cool" : "too-hot.not.cool-so-far", {
        maxDay: measure(most(true), "C"),
        maxNight: measure(most(false), "C"),
        day: measure(DAY_LIMITS[1].limitC, "C"),
        night: measure(NIGHT_LIMITS[1].limitC, "C"),
      }),
    );
  }
  const w = heatWorking(j);
  return {
    kind: "needs-more",
    missing: [
      {
        field: covered ? "plantTemperatures" : "weather",
        measure: say(covered ? "too-hot.missing.inside" : "too-hot.missing.outside"),
        couldMove: say("too-hot.missing.move"),
      },
    ],
    working: w.lines,
    estimated: w.estimated,
  };
}

function adviceFrom(j: Judged, code: Code): AdviceBody {
  const { today, ahead, past, hours } = j;
  const w = heatWorking(j);
  const measuredAll = hours.known.length > 0 && hours.known.every((h) => h.origin === "measured");
  return {
    kind: "advice",
    decision: {
      code,
      text: say(`too-hot.decision.${code}`, {
        day: onDay(ahead.firstHotDay ?? today),
        max: measure(ahead.maxC ?? past.maxC ?? 0, "C"),
        hours: measure(past.day[1]?.hours ?? 0, "hours"),
        limit: measure(DAY_LIMITS[1].limitC, "C"),
        nightLimit: measure(NIGHT_LIMITS[1].limitC, "C"),
        low: measure(DAY_LIMITS[0].limitC, "C"),
      }),
    },
    steps: stepsOf(j),
    window: { from: today, to: addDays(today, DAYS_AHEAD - 1), endsBy: say("too-hot.ends") },
    stakes: stakesOf(j, code),
    working: w.lines,
    estimated: w.estimated,
    evidence: [
      "too-hot.day",
      "too-hot.day-later",
      "too-hot.day-earlier",
      "too-hot.night",
      "too-hot.night-cooler",
      "too-hot.pollen-hotter",
      "too-hot.heavy-fruit",
      "too-hot.cold-nights",
      "too-hot.cold-sets",
      "too-hot.sunscald",
      "too-hot.end-rot-water",
      "too-hot.end-rot-calcium",
      "too-hot.sprays-help",
      "too-hot.sprays-do-not",
      "too-hot.moist-air",
      "too-hot.hours",
    ],
    grade: "weak",
    limits: limitsOf(j, measuredAll),
    cautions: cautionsFor("worker-heat", "cover-overheats", "shade-that-stays"),
    wouldChange: [
      ...(measuredAll ? [] : [say("too-hot.change.measure")]),
      say("too-hot.change.count"),
      ...(j.water === null ? [say("too-hot.change.water")] : []),
    ],
    cases: [],
    expected: null,
    amounts: {
      hotHoursAhead: ahead.day[1]?.hours ?? 0,
      hotNightsAhead: ahead.hotNights,
    },
    charts: heatCharts(hours),
  };
}

function limitsOf({ hours, past, ahead }: Judged, measuredAll: boolean): Message[] {
  return [
    say("too-hot.limit.sources", {
      dayLow: measure(DAY_LIMITS[0].limitC, "C"),
      dayHigh: measure(DAY_LIMITS[2].limitC, "C"),
      nightLow: measure(NIGHT_LIMITS[0].limitC, "C"),
      nightHigh: measure(NIGHT_LIMITS[2].limitC, "C"),
    }),
    say("too-hot.limit.dose"),
    ...(hours.known.some((h) => h.underCover) ? [say("too-hot.limit.cover")] : []),
    ...(hours.known.length === 0 ? [say("too-hot.limit.blind")] : []),
    ...(measuredAll || hours.known.length === 0 ? [] : [say("too-hot.limit.air")]),
    ...(past.maxVpdKpa === null && ahead.maxVpdKpa === null
      ? [say("too-hot.limit.no-vpd")]
      : [say("too-hot.limit.vpd")]),
  ];
}

/** What falls has fallen; at stake are the fruit and flowers of the days to come. */
function stakesOf({ state, today, ahead }: Judged, code: Code): Stakes {
  const at = (day: string, hour: number) => instantAt(day, hour, state.site.timeZone);
  if (isHot(ahead)) {
    const first = ahead.firstHotDay ?? today;
    const shadeBy = at(first, SHADE_HOUR);
    const actBy = Date.parse(shadeBy) > Date.parse(state.asOf) ? shadeBy : at(first, EVENING_HOUR);
    return { harm: HARM_AHEAD, reason: say("too-hot.stakes.ahead"), actBy };
  }
  if (code === "end-rot" || code === "sunscald" || code === "wilting") {
    return {
      harm: HARM_AHEAD,
      reason: say("too-hot.stakes.fruit"),
      actBy: at(addDays(today, 1), EVENING_HOUR),
    };
  }
  return { harm: HARM_OF_LOOKING, reason: say("too-hot.stakes.past"), actBy: null };
}

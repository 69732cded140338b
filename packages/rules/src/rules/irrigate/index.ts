import { cautionsFor } from "../../cautions/register.ts";
import { addDays, instantAt } from "../../core/days.ts";
import type { AdviceBody, AnswerBody, Case, Rule, Stakes } from "../../core/rule.ts";
import { coversOn, mulchOn } from "../../states/standing.ts";
import type { ValveState } from "../../states/states.ts";
import { PEPPER_WATER } from "../../tables/cropCoefficients.ts";
import { type Message, measure, onDay, say } from "../../text/message.ts";
import { availableWaterOf } from "../../water/availableWater.ts";
import { nextDay } from "../../water/balance.ts";
import type { Demand } from "../../water/demand.ts";
import { isPlastic } from "../../water/rainReaches.ts";
import { SEASON_DAYS } from "../../water/stages.ts";
import { soilWaterChart } from "./chart.ts";
import { checkForecastAge, checkRecords } from "./checks.ts";
import { missingSoil, missingWeather } from "./needs.ts";
import {
  demandOfZone,
  readValve,
  readZone,
  settingOf,
  type ValveReading,
  type ValveSetting,
} from "./readings.ts";
import { stepsFor } from "./steps.ts";
import { netIfDone, openWaterings } from "./unanswered.ts";
import { writeWorking } from "./working.ts";

/** Evening hour until which watering that day still helps. */
const LAST_HOUR = 20;
const DROUGHT_DAYS = 7;

/** How much water to give through one valve, when, and for how long. */
export const irrigateRule: Rule<"valve"> = {
  id: "irrigate",
  version: 1,
  question: "How much water does this valve need to give, and when?",
  subject: "valve",
  needs: [
    "daily temperatures since setting out, with rain, humidity, wind and sun where known",
    "soil texture, or field capacity and wilting point",
    "setting-out day, cover and mulch of each bed",
    "the valve's flow and efficiency, and what was watered",
  ],
  run,
};

function run(state: ValveState): AnswerBody {
  checkRecords(state);
  checkForecastAge(state.forecast, state.asOf);
  const setting = settingOf(state);
  if (setting.zones.length === 0) {
    return { kind: "does-not-apply", reason: say("irrigate.no-plants") };
  }
  const entries = setting.zones.map((entry) => ({
    entry,
    demand: demandOfZone(setting, entry.zone),
    available: availableWaterOf(entry.zone.bed, `zones.${entry.index}.bed`),
  }));
  const holes = entries.map(({ demand }) => missingWeather(setting, demand)).find((m) => m !== undefined);
  if (holes) return { kind: "needs-more", missing: [holes], working: [], estimated: [] };
  const known = entries.flatMap((e) => (e.demand ? [{ ...e, demand: e.demand }] : []));
  const soilMissing = known
    .filter((e) => e.available === undefined)
    .map((e) => missingSoil(setting, e.entry, e.demand));
  if (soilMissing.length > 0) {
    return { kind: "needs-more", missing: soilMissing, working: [], estimated: [] };
  }
  const ready = known.flatMap((e) => (e.available ? [{ ...e, available: e.available }] : []));
  const read = (unconfirmed: ReadonlyMap<string, number>) =>
    readValve(
      setting,
      ready.map((e) => readZone(setting, e.entry, e.demand, e.available, unconfirmed)),
    );
  const open = openWaterings(setting);
  const reading = read(new Map());
  const demand = ready.find((e) => e.entry.index === reading.governing.index)?.demand;
  if (!demand) throw new Error("the governing zone is one of the zones read");
  const ifDone = open.length > 0 ? read(netIfDone(open, setting)) : undefined;
  return adviceFrom(setting, reading, demand, ifDone);
}

function adviceFrom(
  setting: ValveSetting,
  reading: ValveReading,
  demand: Demand,
  ifDone: ValveReading | undefined,
): AdviceBody {
  const { state, today, openDay } = setting;
  const { governing } = reading;
  const working = writeWorking(setting, reading, demand);
  const due = reading.code === "water-now" ? today : (reading.nextDay ?? null);
  return {
    kind: "advice",
    decision: { code: reading.code, text: decisionText(reading) },
    steps: [...(ifDone ? [{ text: say("irrigate.step.unanswered") }] : []), ...stepsFor(setting, reading)],
    window: {
      from: reading.code === "water-now" ? today : openDay,
      to: due,
      endsBy: say(reading.code === "water-now" ? "irrigate.ends.water" : "irrigate.ends.wait"),
    },
    stakes: stakesOf(setting, reading),
    working: working.lines,
    estimated: working.estimated,
    evidence: [
      "irrigate.penman-monteith",
      "irrigate.pepper-kc",
      "irrigate.root-zone",
      "irrigate.mulch",
      "irrigate.lower-depletion",
      "irrigate.under-watering-georgia",
    ],
    grade: "moderate",
    limits: limitsOf(setting),
    cautions: cautionsFor("water-too-much", "water-quality", ...electricCaution(state)),
    wouldChange: wouldChangeOf(setting, reading),
    cases: ifDone ? casesOf(setting, reading, ifDone) : [],
    expected:
      reading.code === "water-now"
        ? { kind: "watering", date: today, minutes: Math.min(2880, reading.minutes), netMm: reading.netMm }
        : null,
    amounts: {
      netMm: reading.netMm,
      grossMm: reading.grossMm,
      litres: reading.litres,
      minutes: reading.minutes,
    },
    charts: [soilWaterChart(setting, governing)],
  };
}

const electricCaution = (state: ValveState): string[] =>
  state.valve.method === "hand" ? [] : ["water-pump"];

function decisionText(r: ValveReading): Message {
  if (r.code === "water-now") {
    return say("irrigate.decision.water-now", {
      minutes: measure(r.minutes, "minutes"),
      net: measure(r.netMm, "mm"),
      litres: measure(r.litres, "L"),
    });
  }
  if (r.nextDay === undefined) return say("irrigate.decision.wait-long");
  return say(r.code === "hold" ? "irrigate.decision.hold" : "irrigate.decision.wait", {
    day: onDay(r.nextDay),
  });
}

/** Of the available water; from there plants wilt by day, drop flowers and may not come back (common practice). */
const WILTING_SHARE = 0.9;
/** What such a bed or pot stands to lose (common practice). */
const HARM_OF_WILTING = 0.5;

/**
 * What a week without water costs from the day it is due: FAO-56's yield response to the share of the season's water
 * that is then missing (the week counts by its days). Much more where the plants would wilt.
 */
function stakesOf(setting: ValveSetting, r: ValveReading): Stakes {
  const { plan, today: open } = r.governing;
  const from = dryFrom(setting, r);
  if (!from) return { harm: 0, reason: say("irrigate.stakes.none"), actBy: null };
  let { depletionMm } = from;
  let wanted = 0;
  let had = 0;
  let wilts = false;
  for (let i = 0; i < DROUGHT_DAYS; i++) {
    const d = nextDay(plan, { ...open, day: addDays(from.day, i), rainMm: 0 }, depletionMm, 0);
    wanted += d.etcMm;
    had += d.etcAdjMm;
    depletionMm = d.depletionMm;
    wilts ||= depletionMm >= WILTING_SHARE * d.tawMm;
  }
  const short = wanted > 0 ? 1 - had / wanted : 0;
  const slow = Math.max(0, (PEPPER_WATER.ky.value * short * DROUGHT_DAYS) / SEASON_DAYS);
  return {
    harm: Math.min(1, wilts ? HARM_OF_WILTING + slow : slow),
    reason: say(wilts ? "irrigate.stakes.wilting" : "irrigate.stakes", {
      days: DROUGHT_DAYS,
      share: measure(100 * (1 - short), "pct"),
    }),
    actBy: instantAt(from.day, LAST_HOUR, setting.state.site.timeZone),
  };
}

/** The day the next watering is due and what is missing that morning; undefined where none comes within the horizon. */
function dryFrom({ today }: ValveSetting, { code, governing }: ValveReading) {
  if (code === "water-now") return { day: today, depletionMm: governing.depletionMm };
  return code === "hold" ? (governing.dueWithRain ?? governing.due) : governing.due;
}

function limitsOf({ zones, today, state }: ValveSetting): Message[] {
  const limits = [say("irrigate.limit.single"), say("irrigate.limit.hot-peppers")];
  if (zones.some(({ zone }) => mulchOn(zone.bed, today) !== "none")) limits.push(say("irrigate.limit.mulch"));
  if (zones.some(({ zone }) => coversOn(zone.bed, today).length > 0))
    limits.push(say("irrigate.limit.cover"));
  if (zones.some(({ zone }) => zone.bed.kind === "containers")) limits.push(say("irrigate.limit.container"));
  const thirsty = zones.some(({ zone }) => isPlastic(mulchOn(zone.bed, today)));
  if (thirsty && state.valve.method === "sprinkler") limits.push(say("irrigate.limit.sprinkler-plastic"));
  return limits;
}

function wouldChangeOf(setting: ValveSetting, r: ValveReading): Message[] {
  const changes = [say("irrigate.change.dig"), say("irrigate.change.rain")];
  const { low, high, how, m3PerM3 } = r.governing.available;
  if (how !== "measured") {
    changes.push(
      say("irrigate.change.soil", {
        low: measure((r.governing.today.rawMm * low) / m3PerM3, "mm"),
        high: measure((r.governing.today.rawMm * high) / m3PerM3, "mm"),
      }),
    );
  }
  if (setting.state.valve.method !== "hand") changes.push(say("irrigate.change.flow"));
  return changes;
}

function casesOf(setting: ValveSetting, ifNot: ValveReading, ifDone: ValveReading): Case[] {
  const open = openWaterings(setting);
  const day = onDay(open.at(-1)?.due ?? setting.today);
  return [
    {
      when: say("irrigate.case.done", { day }),
      decision: decisionText(ifDone),
      steps: stepsFor(setting, ifDone),
    },
    {
      when: say("irrigate.case.not-done", { day }),
      decision: decisionText(ifNot),
      steps: stepsFor(setting, ifNot),
    },
  ];
}

import { cautionsFor } from "../../cautions/register.ts";
import type { AdviceBody, AnswerBody, Case, Rule } from "../../core/rule.ts";
import type { ValveState } from "../../states/states.ts";
import { type Message, measure, onDay, say } from "../../text/message.ts";
import { availableWaterOf } from "../../water/availableWater.ts";
import type { Demand } from "../../water/demand.ts";
import { topSoilOf } from "../../water/topSoil.ts";
import { chartsOf } from "./chart.ts";
import { checkForecastAge, checkRecords } from "./checks.ts";
import { readValve, type ValveReading } from "./decide.ts";
import { limitsOf, wouldChangeOf } from "./limits.ts";
import { missingSoil, missingWeather } from "./needs.ts";
import { demandOfZone, settingOf, type ValveSetting } from "./setting.ts";
import { stakesOf } from "./stakes.ts";
import { stepsFor } from "./steps.ts";
import { netIfDone, openWaterings } from "./unanswered.ts";
import { writeWorking } from "./working.ts";
import { readZone } from "./zoneReading.ts";

/**
 * How much water to give through one valve, when, and for how long.
 *
 * Version 2: the dual crop coefficient instead of the single one, which stays for containers; soil sensors, salt, the
 * chance of rain, and a dry spell on purpose.
 *
 * Version 3: no container is told more than it holds where another bed sets the time of the valve.
 */
export const irrigateRule: Rule<"valve"> = {
  id: "irrigate",
  version: 3,
  question: "How much water does this valve need to give, and when?",
  subject: "valve",
  needs: [
    "daily temperatures since setting out, with rain, humidity, wind and sun where known",
    "soil texture, or field capacity and wilting point",
    "setting-out day, cover and mulch of each bed",
    "the valve's flow and efficiency, and what was watered",
    "where there are any: soil sensors, ground cover seen, soil and water tests, the chance of rain",
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
    top: topSoilOf(entry.zone.bed),
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
      ready.map((e) => readZone(setting, e.entry, e.demand, e, unconfirmed)),
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
      "irrigate.dual",
      "irrigate.ground-cover",
      "irrigate.root-zone",
      "irrigate.mulch",
      "irrigate.lower-depletion",
      "irrigate.under-plastic",
      "irrigate.tension-start",
      "irrigate.salt",
      "irrigate.leaching",
      "irrigate.under-watering-georgia",
    ],
    grade: "moderate",
    limits: limitsOf(setting, reading),
    cautions: cautionsFor(
      "water-too-much",
      "water-quality",
      ...electricCaution(state),
      ...riskCautions(setting, reading),
    ),
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
    charts: chartsOf(setting, reading.governing),
  };
}

/** Washing salt down and keeping plants dry on purpose bring their own. */
const riskCautions = ({ drought }: ValveSetting, { leaching }: ValveReading): string[] => [
  ...((leaching?.share ?? 0) > 0 ? ["salt-leaching", "nitrate-leaching"] : []),
  ...(drought.kind === "held" ? ["stress-mites-end-rot", "worker-heat", "hot-fruit"] : []),
];

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

import { cautionsFor } from "../../cautions/register.ts";
import { instantAt } from "../../core/days.ts";
import type { AdviceBody, AnswerBody, NeedsMoreBody, Rule, Stakes } from "../../core/rule.ts";
import { Working } from "../../core/working.ts";
import { adjustedDepletionFraction } from "../../quantities/water/rootZone.ts";
import type { ValveState } from "../../states/states.ts";
import { PEPPER_WATER } from "../../tables/cropCoefficients.ts";
import { type Message, measure, say } from "../../text/message.ts";
import { widestAvailableWater } from "../../water/availableWater.ts";
import type { Demand } from "../../water/demand.ts";
import { SEASON_DAYS } from "../../water/stages.ts";
import { checkForecastAge, checkRecords } from "../irrigate/checks.ts";
import { heldLineOf } from "../irrigate/heldLine.ts";
import { type Asked, askOf } from "./ask.ts";
import { lineChart, yieldChart } from "./chart.ts";
import { pungencyEvidence } from "./evidence.ts";
import { lineOfZone, recentDemand, startOf, writeLine, type ZoneLine } from "./line.ts";
import { yieldLossOf } from "./loss.ts";
import { type SensorLine, sensorLineOf } from "./sensors.ts";
import { type Signs, signsOf } from "./signs.ts";
import { holdSteps, stopSteps, trySteps } from "./steps.ts";

/** Evening hour until which watering that day still helps. */
const LAST_HOUR = 20;
/** A week more of drought on plants that show it: fruit with end rot, scalded or dropped (common practice). */
const HARM_OF_GOING_ON = 0.1;
const WEEK_DAYS = 7;

/** What can stress do for pungency, and at what price? */
export const hotterRule: Rule<"valve"> = {
  id: "hotter",
  version: 2,
  question: "The grower wants more pungency: what can stress do, and at what price?",
  subject: "valve",
  needs: [
    "a deficit asked for, with its first day, and a valve that waters nothing else",
    "fruit set noted, and notes of wilting, end rot, sunscald and mites",
    "daily temperatures and a forecast",
    "soil texture, or field capacity and wilting point",
    "yield goal and price, for what it is worth",
  ],
  run,
};

function run(state: ValveState): AnswerBody {
  const asked = askOf(state);
  if (typeof asked === "string") return { kind: "does-not-apply", reason: say(`hotter.not.${asked}`) };
  checkRecords(state);
  checkForecastAge(state.forecast, state.asOf);
  const w = new Working();
  const demand = recentDemand(asked);
  const held = demand && heldLineOf(state);
  const lines = demand ? asked.zones.map((entry) => lineOfZone(asked, entry, demand, undefined, held)) : [];
  const known = lines.filter((z) => z !== undefined);
  const [shortest] = known.toSorted((a, b) => a.cycleDays - b.cycleDays);
  const governing = known.find((z) => z.index === held?.governing) ?? shortest;
  const sensors = known.map((z) => ({
    z,
    says: sensorLineOf(asked, z, z === governing ? w : new Working()),
  }));
  const signs = signsOf(
    asked,
    sensors.some(({ says }) => says.tooDry),
    w,
  );
  if (signs.stop.length > 0) return stopAdvice(asked, signs, w);
  if (signs.hold.length > 0) return holdAdvice(asked, signs, w);
  if (!demand) return needsMore(missingWeather(), w);
  const blind = asked.zones.find((_, i) => lines[i] === undefined);
  if (!governing || blind) return needsMore(missingSoil(asked, blind ?? asked.zones[0], demand), w);
  const sensor = sensors.find(({ z }) => z === governing)?.says;
  if (!sensor) throw new Error("the governing zone is one of the zones read");
  return tryAdvice(asked, known, governing, sensor, demand, w);
}

type Missing = NeedsMoreBody["missing"][number];

const needsMore = (missing: Missing, w: Working): NeedsMoreBody => ({
  kind: "needs-more",
  missing: [missing],
  working: w.lines,
  estimated: w.estimated,
});

/** How far the line moves between the demand of a cool and of a thirsty summer day [mm a day]. */
const COOL_ETC_MM = 3;
const THIRSTY_ETC_MM = 6;

function missingWeather(): Missing {
  const p = (etcMm: number) => adjustedDepletionFraction(PEPPER_WATER.depletionFraction.value, etcMm);
  return {
    field: "weather",
    measure: say("hotter.missing.weather"),
    couldMove: say("hotter.missing.weather-moves", {
      cool: measure(COOL_ETC_MM, "mm"),
      thirsty: measure(THIRSTY_ETC_MM, "mm"),
      less: measure(100 * (1 - p(THIRSTY_ETC_MM) / p(COOL_ETC_MM)), "pct"),
    }),
  };
}

/** How far the line moves between the soils of FAO-56 Table 19 that hold least and most. */
function missingSoil(asked: Asked, entry: Asked["zones"][number], demand: Demand): Missing {
  const { low, high } = widestAvailableWater();
  const lineAt = (m3PerM3: number) => {
    const line = lineOfZone(asked, entry, demand, { m3PerM3, how: "texture", low, high });
    return measure(line?.on(line.start).lineMm ?? 0, "mm");
  };
  return {
    field: `zones.${entry.index}.bed.soil.texture`,
    measure: say("hotter.missing.soil"),
    couldMove: say("hotter.missing.soil-moves", { low: lineAt(low), high: lineAt(high) }),
  };
}

const EVIDENCE = [
  "hotter.direction",
  "hotter.reversals",
  "hotter.no-change",
  "hotter.guide",
  "hotter.ky",
  "hotter.ky-kapija",
  "hotter.early-deficit",
  "hotter.stage",
  "hotter.no-loss",
  "hotter.heat",
  "hotter.cold",
  "hotter.line",
];
/** What goes with withholding water on purpose, whoever wants it. */
export const WITHHOLDING_CAUTIONS = ["hot-fruit", "worker-heat", "stress-mites-end-rot"];

/** What every advice of this rule shares. */
function body(asked: Asked, w: Working) {
  return {
    kind: "advice",
    working: w.lines,
    estimated: w.estimated,
    evidence: EVIDENCE,
    grade: "weak",
    cautions: cautionsFor(...WITHHOLDING_CAUTIONS),
    cases: [],
    expected: null,
    window: { from: startOf(asked), to: asked.to ?? null, endsBy: say("hotter.ends") },
  } as const satisfies Partial<AdviceBody>;
}

function stopAdvice(asked: Asked, signs: Signs, w: Working): AdviceBody {
  return {
    ...body(asked, w),
    decision: { code: "stop", text: say("hotter.decision.stop") },
    steps: stopSteps(signs),
    window: { from: asked.today, to: null, endsBy: say("hotter.ends.signs") },
    stakes: goingOn(asked),
    limits: [say("hotter.limit.cause")],
    wouldChange: [say("hotter.change.look")],
    amounts: {},
    charts: [],
  };
}

/** A week more of it: Ky on that week's shortfall, and what the signs already cost. */
function goingOn({ etShare, today, state }: Asked): Stakes {
  const slow = (PEPPER_WATER.ky.value * (1 - etShare) * WEEK_DAYS) / SEASON_DAYS;
  return {
    harm: HARM_OF_GOING_ON + slow,
    reason: say("hotter.stakes.stop"),
    actBy: instantAt(today, LAST_HOUR, state.site.timeZone),
  };
}

function holdAdvice(asked: Asked, signs: Signs, w: Working): AdviceBody {
  const begun = asked.from <= asked.today;
  return {
    ...body(asked, w),
    decision: { code: "hold-off", text: say("hotter.decision.hold-off") },
    steps: holdSteps(signs),
    window: { from: asked.today, to: null, endsBy: say("hotter.ends.signs") },
    stakes: begun ? goingOn(asked) : { harm: 0, reason: say("hotter.stakes.none"), actBy: null },
    limits: [
      ...(signs.hold.includes("cold") ? [say("hotter.limit.cold")] : []),
      ...(signs.hold.includes("heat") ? [say("hotter.limit.heat")] : []),
    ],
    wouldChange: [say("hotter.change.look")],
    amounts: {},
    charts: [],
  };
}

function tryAdvice(
  asked: Asked,
  zones: ZoneLine[],
  governing: ZoneLine,
  sensor: SensorLine,
  demand: Demand,
  w: Working,
): AdviceBody {
  const evidence = pungencyEvidence(governing.zone.planting, w);
  writeLine(w, asked, governing, demand);
  const loss = yieldLossOf(asked, governing, zones, w);
  const code = evidence.tested ? "try-half" : "not-by-default";
  return {
    ...body(asked, w),
    decision: {
      code,
      text: say(`hotter.decision.${code}`, {
        line: measure(governing.on(governing.start).lineMm, "mm"),
        loss: measure(loss.lossPct, "pct"),
      }),
    },
    steps: trySteps(asked, evidence, governing, loss, sensor),
    stakes: { harm: 0, reason: say("hotter.stakes.none"), actBy: null },
    limits: limitsOf(asked, zones, loss.seasonShare, evidence.type.fromMemory > 0),
    wouldChange: [
      say("hotter.change.trial"),
      ...(governing.available.how === "measured" ? [] : [soilMoves(governing)]),
      ...(sensor.paired ? [] : [say("hotter.change.pair")]),
    ],
    amounts: {
      depletionMm: governing.on(governing.start).lineMm,
      etShare: asked.etShare,
      lossPct: loss.lossPct,
    },
    charts: [lineChart(asked, governing), yieldChart(asked, loss)],
  };
}

/** The line is in proportion to what the soil holds. */
function soilMoves({ available, on, start }: ZoneLine): Message {
  const { lineMm } = on(start);
  return say("hotter.change.soil", {
    low: measure((lineMm * available.low) / available.m3PerM3, "mm"),
    high: measure((lineMm * available.high) / available.m3PerM3, "mm"),
  });
}

function limitsOf({ state }: Asked, zones: ZoneLine[], seasonShare: number, fromMemory: boolean): Message[] {
  return [
    say("hotter.limit.no-percentage"),
    say("hotter.limit.cultivar"),
    ...(seasonShare < 1 ? [say("hotter.limit.part-season")] : []),
    ...(fromMemory ? [say("hotter.limit.memory")] : []),
    ...(zones.some(({ zone }) => zone.bed.kind === "containers") ? [say("hotter.limit.containers")] : []),
    ...(zones.some(({ zone }) => zone.bed.covers.length > 0) ? [say("hotter.limit.cover")] : []),
    ...(state.forecast ? [] : [say("hotter.limit.no-forecast")]),
    say("hotter.limit.heat"),
  ];
}

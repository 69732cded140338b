import { addDays } from "../../core/days.ts";
import type { Step } from "../../core/rule.ts";
import type { Working } from "../../core/working.ts";
import type { Forecast } from "../../states/parts.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Message, measure, onDay, say, wordOf } from "../../text/message.ts";
import { harvestFrom, INTERVAL_DAYS } from "./interval.ts";
import type { Timing } from "./judge.ts";
import { nitrogenStep } from "./nitrogen.ts";

/** Rain within these days is looked at before manure is spread, from this much on (common practice). */
const RAIN_WITHIN_DAYS = 7;
const RAIN_TO_WAIT_FOR_MM = 10;

/** 131 to 170 F. Source: 7 CFR 205.203(c)(2), as quoted. */
const COMPOST_C = { low: 55, high: 76.7 } as const;

/** One inch of water beyond what the soil holds can take 20 to 30 lb of nitrate-N an acre (SN-910). */
const INCH_MM = 25.4;
const LEACHED_KG_PER_HA = { low: 22.4, high: 33.6 } as const;

/** What to do, the harvest first, then the spreading, then the nitrogen. */
export function stepsOf(state: PlantingState, t: Timing, w: Working): Step[] {
  const messages: Message[] = [...harvestSteps(state, t), ...spreadSteps(state, t), ...compostSteps(t)];
  const [atHand] = t.manures.rawAtHand;
  const mayStillSpread = t.code === "spread-by";
  return [
    ...messages.map((text) => ({ text })),
    ...(atHand && mayStillSpread ? [nitrogenStep(atHand.material, w)] : []),
    {
      text: say("manure-timing.step.nitrate", {
        inch: measure(INCH_MM, "mm"),
        low: measure(LEACHED_KG_PER_HA.low, "kg/ha"),
        high: measure(LEACHED_KG_PER_HA.high, "kg/ha"),
      }),
    },
  ];
}

function harvestSteps(state: PlantingState, t: Timing): Message[] {
  const { last, harvestFrom: from, interval, pick } = t;
  if (!last || from === undefined) return [];
  const given = onDay(last.application.on);
  const { setOutOn } = state.planting;
  const onCrop = setOutOn !== undefined && last.application.on >= setOutOn;
  const { days, touching } = interval;
  const other = { days: INTERVAL_DAYS.clear, touching: false, rule: interval.rule };
  return [
    say("manure-timing.step.counted", { given, from: onDay(from), days }),
    ...(last.assumed
      ? [say("manure-timing.step.assumed-raw", { what: wordOf(`material.${last.kind}`) })]
      : []),
    ...(t.code === "picked-too-early" && pick
      ? [say(`manure-timing.step.broken-${interval.rule}`, { pick: onDay(pick.day), from: onDay(from) })]
      : []),
    ...(onCrop ? [say("manure-timing.step.on-crop", { given })] : []),
    ...(touching && state.planting.staked === true
      ? [
          say("manure-timing.step.staked", {
            from: onDay(harvestFrom(last.application.on, other)),
            days: other.days,
          }),
        ]
      : []),
    ...(t.code === "hold-harvest" ? [say("manure-timing.step.early-fruit", { from: onDay(from) })] : []),
    ...(touching ? [] : [say("manure-timing.step.low-fruit", { days: INTERVAL_DAYS.touching })]),
    say(`manure-timing.step.rule-${interval.rule}`, { days }),
  ];
}

function spreadSteps(state: PlantingState, t: Timing): Message[] {
  const { rawAtHand } = t.manures;
  const [atHand] = rawAtHand;
  if (!atHand) return [];
  const what = wordOf(`material.${atHand.material.kind}`);
  const assumed = rawAtHand.find((m) => m.assumed);
  const steps: Message[] = [];
  if (assumed) {
    const kind = wordOf(`material.${assumed.material.kind}`);
    steps.push(say("manure-timing.step.assumed-raw-shed", { what: kind }));
  }
  if (t.standing) {
    steps.push(say("manure-timing.step.not-on-crop", { what }));
  } else if (t.spreadUntil !== undefined && t.spreadUntil >= t.today && t.pick) {
    steps.push(
      say("manure-timing.step.spread-by", {
        what,
        day: onDay(t.spreadUntil),
        pick: onDay(t.pick.day),
        days: t.interval.days,
      }),
      say("manure-timing.step.work-in"),
      ...rainStep(state.forecast, t.today),
    );
  } else if (t.spreadUntil !== undefined && t.pick) {
    const from = onDay(harvestFrom(t.today, t.interval));
    steps.push(say("manure-timing.step.compost-instead", { what, from, pick: onDay(t.pick.day) }));
  }
  if (!t.last) steps.push(say(`manure-timing.step.rule-${t.interval.rule}`, { days: t.interval.days }));
  return steps;
}

/** Rain to come takes nitrate and germs along. */
function rainStep(forecast: Forecast | undefined, today: string): Message[] {
  const to = addDays(today, RAIN_WITHIN_DAYS);
  const days = (forecast?.days ?? []).filter((d) => d.date >= today && d.date <= to);
  const rainMm = days.reduce((sum, d) => sum + (d.rainMm ?? 0), 0);
  const last = days
    .map((d) => d.date)
    .toSorted()
    .at(-1);
  return rainMm >= RAIN_TO_WAIT_FOR_MM && last !== undefined
    ? [say("manure-timing.step.rain", { rain: measure(rainMm, "mm"), day: onDay(last) })]
    : [];
}

const compostSteps = ({ manures }: Timing): Message[] =>
  manures.compostedGiven.length + manures.compostedAtHand.length > 0
    ? [
        say("manure-timing.step.compost-record", {
          low: measure(COMPOST_C.low, "C"),
          high: measure(COMPOST_C.high, "C"),
        }),
      ]
    : [];

import type { Step } from "../../core/rule.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Message, measure, onDay, say, wordOf } from "../../text/message.ts";
import type { Verdict } from "./decide.ts";
import type { LeafWindow } from "./leaves.ts";
import type { Season } from "./season.ts";
import { ACCEPTED_RISK, DELAY_DAYS, LEAVES } from "./thresholds.ts";

const percent = (share: number | null) => measure(100 * (share ?? 0), "pct");

/** Why, how, what to expect, and how to try it. */
export function stepsOf(state: PlantingState, v: Verdict, window: LeafWindow, season: Season): Step[] {
  const acts = v.code === "half-bed" || v.code === "take";
  const steps: Message[] = [
    ...v.reasons.map((reason) =>
      say(`topping.because.${reason}`, {
        from: LEAVES.from,
        to: LEAVES.to,
        chance: percent(season.chanceTaken),
        left: percent(season.chanceLeft),
        wanted: percent(1 - ACCEPTED_RISK),
        leaves: window.forecast.now.likely,
      }),
    ),
    ...(v.code === "wait" ? windowSaid(window) : []),
    ...(acts ? howSaid(v) : []),
    ...(acts || v.reasons.includes("no-time") || v.reasons.includes("season-unknown") ? [expectSaid()] : []),
    ...halfBedSaid(state, v),
    ...(acts ? [say("topping.step.note")] : []),
  ];
  return steps.map((text) => ({ text }));
}

const windowSaid = ({ opens, closes }: LeafWindow): Message[] =>
  opens === null || closes === null
    ? []
    : [
        say("topping.step.window", {
          opens: onDay(opens),
          closes: onDay(closes),
          from: LEAVES.from,
          to: LEAVES.to,
        }),
      ];

const howSaid = ({ plants }: Verdict): Message[] => [
  say("topping.step.when", { from: LEAVES.from, to: LEAVES.to }),
  say("topping.step.how", { plants }),
  say("topping.step.clean"),
];

const expectSaid = (): Message =>
  say("topping.step.expect", {
    days: measure(DELAY_DAYS.counted, "days"),
    other: measure(DELAY_DAYS.other, "days"),
  });

/** Offered wherever fit plants stand in the ground, also where the answer is no for want of time. */
function halfBedSaid({ planting }: PlantingState, { code, reasons, half }: Verdict): Message[] {
  const offered = code !== "leave" || reasons.includes("no-time") || reasons.includes("season-unknown");
  if (!offered) return [];
  const begins = wordOf(`topping.half-bed.${code}`);
  if (half) {
    const { pairs, plantsPerStrip, plantsEachWay } = half;
    return [say("topping.step.half-bed", { begins, pairs, plantsPerStrip, plantsEachWay })];
  }
  const each = Math.floor(planting.plants / 2);
  return each < 1 ? [] : [say("topping.step.every-other", { begins, each })];
}

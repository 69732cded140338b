import { type Message, measure, onDay, say } from "../../text/message.ts";
import { DRAINED_PCT } from "./drain.ts";
import type { PotReading } from "./judge.ts";
import { howOften, volume } from "./say.ts";

/** Air from here on heats dark pots beyond what roots like (common practice). */
const HOT_DAY_C = 32;

/** How much, how often, how much should run out, and shade for the pots on hot days. */
export function waterSteps(r: PotReading): Message[] {
  const { usual, mildest, thirstiest, potted, demand, drain, given } = r;
  const perPlant = (litresPerPot: number) => volume(litresPerPot / potted.plantsPerPot);
  const daily = (w: PotReading["usual"]) => (w.grossL * w.timesADay) / w.everyDays;
  const hottest = demand.days.find((d) => d.etcMm === demand.mostMm);
  const { often, count } = howOften(usual);
  return [
    say(`containers.step.water-${often}`, {
      ...count,
      plant: perPlant(usual.grossL),
      pot: volume(usual.grossL),
      all: volume(given.allLPerDay),
    }),
    say("containers.step.range", {
      least: perPlant(daily(mildest)),
      most: perPlant(daily(thirstiest)),
    }),
    ...(thirstiest.timesADay > usual.timesADay && hottest
      ? [
          say(
            demand.how === "forecast" ? "containers.step.thirstiest" : "containers.step.thirstiest-recent",
            {
              day: onDay(hottest.day),
              times: thirstiest.timesADay,
              plant: perPlant(thirstiest.grossL),
            },
          ),
        ]
      : []),
    drainStep(drain, r),
    ...(demand.hottestC !== undefined && demand.hottestC >= HOT_DAY_C
      ? [say("containers.step.hot", { c: measure(demand.hottestC, "C") })]
      : []),
  ];
}

function drainStep({ drainedPct, toDrain }: PotReading["drain"], r: PotReading): Message {
  const wanted = {
    share: measure(100 * toDrain, "pct"),
    out: volume(r.usual.grossL * toDrain),
    low: measure(DRAINED_PCT.low, "pct"),
    high: measure(DRAINED_PCT.high, "pct"),
  };
  if (drainedPct === undefined) return say("containers.step.drain-unknown", wanted);
  const seen = { ...wanted, seen: measure(drainedPct.value, "pct"), day: onDay(drainedPct.on) };
  if (drainedPct.value < DRAINED_PCT.low) return say("containers.step.drain-dry", seen);
  return say(
    drainedPct.value > DRAINED_PCT.high ? "containers.step.drain-wasteful" : "containers.step.drain-right",
    seen,
  );
}

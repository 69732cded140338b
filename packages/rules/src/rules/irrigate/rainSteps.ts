import type { Step } from "../../core/rule.ts";
import { measure, onDay, say } from "../../text/message.ts";
import type { ValveReading } from "./decide.ts";
import type { ValveSetting } from "./setting.ts";

/** What the forecast's rain was weighed as, and what it amounts to. */
export function rainSteps({ state, openDay }: ValveSetting, { rain, code }: ValveReading): Step[] {
  if (rain) {
    const about = { rain: measure(rain.rainMm, "mm"), day: onDay(rain.day) };
    if (rain.staysOut === undefined) {
      const key = rain.holds ? "irrigate.step.rain-no-chance" : "irrigate.step.rain-no-chance-water";
      return [{ text: say(key, about) }];
    }
    const weighed = {
      ...about,
      stays: measure(100 * rain.staysOut, "pct"),
      accepted: measure(100 * rain.accepted, "pct"),
      got: measure(100 * (1 - rain.loss.short), "pct"),
      risk: measure(100 * rain.staysOut * rain.loss.harm, "pct"),
    };
    if (rain.holds) return [{ text: say("irrigate.step.rain-hold", weighed) }];
    const key = rain.loss.wilts ? "irrigate.step.rain-wilts" : "irrigate.step.rain-too-unsure";
    return [{ text: say(key, weighed) }];
  }
  const rainy = (state.forecast?.days ?? []).filter((d) => d.date >= openDay && (d.rainMm ?? 0) > 0);
  const last = rainy.at(-1);
  if (!last) return [];
  const total = rainy.reduce((sum, d) => sum + (d.rainMm ?? 0), 0);
  const key = code === "water-now" ? "irrigate.step.forecast-not-enough" : "irrigate.step.forecast";
  return [{ text: say(key, { rain: measure(total, "mm"), day: onDay(last.date) }) }];
}

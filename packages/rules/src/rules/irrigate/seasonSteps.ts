import type { Step } from "../../core/rule.ts";
import { measure, onDay, say } from "../../text/message.ts";
import type { ValveReading } from "./decide.ts";
import { type OverYears, seasonTotal } from "./seasonTotal.ts";
import type { ValveSetting } from "./setting.ts";

/** The season's water so far, and what is still to come to the end of the stages. */
export function seasonSteps(setting: ValveSetting, { governing }: ValveReading): Step[] {
  const total = seasonTotal(setting, governing);
  const soFar = say("irrigate.step.season", {
    used: measure(total.usedMm, "mm"),
    given: measure(total.givenMm, "mm"),
    rain: measure(total.rainMm, "mm"),
    drained: measure(total.drainedMm, "mm"),
  });
  if (!total.ahead) return [{ text: soFar }];
  const mm = (name: string, v: OverYears) => ({
    [name]: measure(v.mean, "mm"),
    [`${name}Low`]: measure(v.low, "mm"),
    [`${name}High`]: measure(v.high, "mm"),
  });
  const ahead = say("irrigate.step.season-ahead", {
    end: onDay(total.endOn),
    years: total.ahead.years,
    ...mm("use", total.ahead.useMm),
    ...mm("water", total.ahead.irrigationMm),
  });
  return [{ text: soFar }, { text: ahead }];
}

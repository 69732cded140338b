import { daysBetween, instantAt } from "../../core/days.ts";
import type { Stakes } from "../../core/rule.ts";
import { measure, say } from "../../text/message.ts";
import type { ValveReading } from "./decide.ts";
import { lossOf } from "./rainHold.ts";
import type { ValveSetting } from "./setting.ts";

/** Evening hour until which watering that day still helps. */
const LAST_HOUR = 20;
const DROUGHT_DAYS = 7;

/** What a week without water costs from the day it is due. */
export function stakesOf(setting: ValveSetting, r: ValveReading): Stakes {
  const from = dryFrom(setting, r);
  if (!from) return { harm: 0, reason: say("irrigate.stakes.none"), actBy: null };
  const loss = lossOf(r.governing, from.depletionMm, DROUGHT_DAYS, daysBetween(setting.openDay, from.day));
  return {
    harm: loss.harm,
    reason: say(loss.wilts ? "irrigate.stakes.wilting" : "irrigate.stakes", {
      days: DROUGHT_DAYS,
      share: measure(100 * (1 - loss.short), "pct"),
    }),
    actBy: instantAt(from.day, LAST_HOUR, setting.state.site.timeZone),
  };
}

/** The day the next watering is due and what is missing that morning; undefined where none comes within the horizon. */
function dryFrom({ today }: ValveSetting, { code, governing }: ValveReading) {
  if (code === "water-now") return { day: today, depletionMm: governing.depletionMm };
  return code === "hold" ? (governing.dueWithRain ?? governing.due) : governing.due;
}

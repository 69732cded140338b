import { median } from "../../core/median.ts";
import type { Step } from "../../core/rule.ts";
import type { Working } from "../../core/working.ts";
import type { ShedPlan } from "../../food/blend/plan.ts";
import type { ShedState } from "../../states/states.ts";
import { type Message, measure, say } from "../../text/message.ts";
import { money } from "./words.ts";

const MINUTES_PER_HOUR = 60;

/** What giving the plan takes. */
interface GivingLabour {
  /** Each material at least once to each planting: feeding says how often. */
  givings: number;
  /** Null where nobody on this farm wrote down what a giving took. */
  hours: number | null;
  /** Null where the office has no wage set, or the hours are not known. */
  money: number | null;
  records: number;
}

/** The least that giving a plan takes, by the median of what givings took on this farm: no published hours stand in for it. */
export function labourOf({ givingMinutes = [], settings }: ShedState, plan: ShedPlan): GivingLabour {
  const givings = plan.plantings.reduce(
    (sum, { allotment }) => sum + allotment.materials.filter((m) => m.kg > 0).length,
    0,
  );
  const each = median(givingMinutes);
  const hours = each === null ? null : (givings * each) / MINUTES_PER_HOUR;
  const { labourPerHour } = settings;
  return {
    givings,
    hours,
    money: hours === null || labourPerHour === undefined ? null : hours * labourPerHour,
    records: givingMinutes.length,
  };
}

export function labourSteps({ givings, hours, money: wages }: GivingLabour, materialsCost: number): Step[] {
  if (hours === null || givings === 0) return [];
  const params = { givings, hours: measure(hours, "hours") };
  if (wages === null) return [{ text: say("shed.step.hours", params) }];
  const sum = money(materialsCost + wages);
  return [{ text: say("shed.step.labour", { ...params, wages: money(wages), sum }) }];
}

export function labourLines(w: Working, { givings, hours, money: wages, records }: GivingLabour): void {
  if (hours === null) return;
  w.line("k", "givings", "each material at least once to each planting", givings, "1");
  w.line("h", "hours to give it", `k × median of ${records} givings on this farm`, hours, "h");
  if (wages !== null) w.line("C_h", "money of the hours", "h × wage", wages, "money");
}

export const labourLacks = ({ givings, hours, money: wages }: GivingLabour): Message[] => {
  if (givings === 0) return [];
  if (hours === null) return [say("shed.change.lacks-hours")];
  return wages === null ? [say("shed.change.lacks-wage")] : [];
};

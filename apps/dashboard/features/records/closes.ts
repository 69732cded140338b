import type { Spray } from "@pith/contract";
import { addDays } from "@pith/rules";
import { dayAt, dayText, instantText } from "../../format/dates.ts";

/** Until when one spraying closes its bed by the two intervals of its label; null where an interval is nought. */
export function closesOf({ at, reEntryHours, preHarvestDays }: Spray, zone: string | undefined) {
  const opens = new Date(Date.parse(at) + reEntryHours * 3_600_000).toISOString();
  return {
    workFrom: reEntryHours > 0 ? instantText(opens, zone) : null,
    pickingFrom: preHarvestDays > 0 ? dayText(addDays(dayAt(at, zone), preHarvestDays)) : null,
  };
}

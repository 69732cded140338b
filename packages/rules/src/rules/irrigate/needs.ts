import { addDays, daysBetween } from "../../core/days.ts";
import type { NeedsMoreBody } from "../../core/rule.ts";
import { measure, onDay, say } from "../../text/message.ts";
import { widestAvailableWater } from "../../water/availableWater.ts";
import type { Demand } from "../../water/demand.ts";
import { topSoilOf } from "../../water/topSoil.ts";
import type { ZoneReading } from "./reading.ts";
import { bedOf, type Entry, type ValveSetting } from "./setting.ts";
import { readZone } from "./zoneReading.ts";

type Missing = NeedsMoreBody["missing"][number];

/** Days without weather over which the book is not carried (common practice). */
const LONGEST_BRIDGE_DAYS = 3;

/** What a hole in the weather leaves open; undefined where there is none that matters. */
export function missingWeather(setting: ValveSetting, demand: Demand | undefined): Missing | undefined {
  if (!demand) {
    return {
      field: "weather",
      measure: say("irrigate.missing.weather"),
      couldMove: say("irrigate.missing.weather-none"),
    };
  }
  const lastMeasured = demand.days.findLast((d) => d.measured);
  const silentDays = lastMeasured ? daysBetween(lastMeasured.day, addDays(setting.openDay, -1)) : 0;
  const gap = Math.max(demand.longestGapDays, silentDays);
  if (gap <= LONGEST_BRIDGE_DAYS) return undefined;
  const measured = demand.days.filter((d) => d.measured).map((d) => d.et0Mm);
  return {
    field: "weather",
    measure: say("irrigate.missing.weather"),
    couldMove: say("irrigate.missing.weather-gap", {
      days: gap,
      limit: LONGEST_BRIDGE_DAYS,
      low: measure(gap * Math.min(...measured), "mm"),
      high: measure(gap * Math.max(...measured), "mm"),
    }),
  };
}

const nextWatering = (r: ZoneReading, setting: ValveSetting) => ({
  day: onDay(r.due?.day ?? addDays(setting.openDay, 21)),
  net: measure(r.due?.depletionMm ?? r.depletionMm, "mm"),
});

/** How far the answer moves between the soils of FAO-56 Table 19 that hold least and most. */
export function missingSoil(setting: ValveSetting, entry: Entry, demand: Demand): Missing {
  const { low, high } = widestAvailableWater();
  const readAt = (m3PerM3: number, texture: "sand" | "clay") => {
    const available = { m3PerM3, how: "texture", low, high } as const;
    const top = topSoilOf({ ...entry.zone.bed, soil: { texture } });
    return nextWatering(readZone(setting, entry, demand, { available, top }, new Map()), setting);
  };
  const light = readAt(low, "sand");
  const heavy = readAt(high, "clay");
  const { fieldCapacity, wiltingPoint } = entry.zone.bed.soil;
  const half =
    fieldCapacity !== undefined ? "wiltingPoint" : wiltingPoint !== undefined ? "fieldCapacity" : "texture";
  return {
    field: `zones.${entry.index}.bed.soil.${half}`,
    measure: say("irrigate.missing.soil", { bed: bedOf(setting, entry.zone.bed) }),
    couldMove: say("irrigate.missing.soil-moves", {
      early: light.day,
      earlyNet: light.net,
      late: heavy.day,
      lateNet: heavy.net,
    }),
  };
}

import type { ValveState } from "../../states/states.ts";
import { availableWaterOf } from "../../water/availableWater.ts";
import { topSoilOf } from "../../water/topSoil.ts";
import { readValve } from "./decide.ts";
import { missingWeather } from "./needs.ts";
import type { OpenDay } from "./reading.ts";
import { demandOfZone, settingOf } from "./setting.ts";
import { readZone } from "./zoneReading.ts";

/** What a valve that keeps a dry spell waters by: **hotter** says the same numbers for it. */
export interface HeldLine {
  /** The day they are of: the first that the book does not hold yet. */
  day: string;
  /** The zone that is short first. */
  governing: number;
  /** By the zone's place on the valve. */
  zones: ReadonlyMap<number, OpenDay>;
}

/** Undefined where no dry spell is held today, or where the valve's book cannot be written. */
export function heldLineOf(state: ValveState): HeldLine | undefined {
  const setting = settingOf(state);
  if (setting.drought.kind !== "held") return undefined;
  const readings = setting.zones.flatMap((entry) => {
    const demand = demandOfZone(setting, entry.zone);
    const available = availableWaterOf(entry.zone.bed, `zones.${entry.index}.bed`);
    if (!demand || !available || missingWeather(setting, demand)) return [];
    return [readZone(setting, entry, demand, { available, top: topSoilOf(entry.zone.bed) }, new Map())];
  });
  if (readings.length < setting.zones.length) return undefined;
  return {
    day: setting.openDay,
    governing: readValve(setting, readings).governing.index,
    zones: new Map(readings.map((r) => [r.index, r.today])),
  };
}

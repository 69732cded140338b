import { localDay } from "../../core/days.ts";
import type { AvailableWater } from "../../water/availableWater.ts";
import type { SeasonBook } from "../../water/season.ts";
import { type SensorWord, sensorWords } from "../../water/soilSensor.ts";
import { rootZoneDepthM } from "../../water/zone.ts";
import type { Ahead, ShortDay, ZoneReading } from "./reading.ts";
import { type ValveSetting, waterAllowedOn } from "./setting.ts";

/** What the sensors of a zone say today. */
export function wordsOf(
  setting: ValveSetting,
  { zone, days, season, closed }: Ahead,
  book: SeasonBook,
  available: AvailableWater,
): SensorWord[] {
  const { state, today } = setting;
  if (!zone.soilWater || zone.soilWater.length === 0) return [];
  const last = Math.max(0, closed - 1);
  return sensorWords(zone.soilWater, {
    asOf: state.asOf,
    rootDepthM: rootZoneDepthM(zone, today, today),
    inContainers: zone.bed.kind === "containers",
    tawMm: season.tawMm[last] as number,
    fieldCapacity: available.fieldCapacity,
    texture: zone.bed.soil.texture,
    deficit: waterAllowedOn(setting, zone, today) !== undefined,
    driedSinceMm: (at) => {
      const since = localDay(at, state.site.timeZone);
      const from = days.findIndex((d) => d.day >= since);
      let dried = 0;
      for (let i = Math.max(0, from); i < closed && from >= 0; i++) {
        dried +=
          (book.etcAdjMm[i] as number) - (season.rainMm[i] as number) - (season.irrigationMm[i] as number);
      }
      return dried;
    },
  });
}

/** Tension starts or holds a watering and says no depth: due today, or not before tomorrow. */
export function byTension(r: ZoneReading, says: "water" | "wait"): Partial<ZoneReading> {
  const today = r.days[r.closed]?.day ?? "";
  const tomorrow = r.days[r.closed + 1]?.day ?? "";
  if (says === "water") {
    // How much is the book's to say, and a day's use where it has nothing missing: then the sensor is asked again.
    const depletionMm = Math.max(r.depletionMm, r.today.etcMm);
    const now = { day: today, depletionMm };
    return { due: now, dueWithRain: now, earliest: now, latest: now };
  }
  const later = (d: ShortDay | undefined) =>
    d && d.day <= today ? { day: tomorrow, depletionMm: d.depletionMm + r.today.etcMm } : d;
  return {
    due: later(r.due),
    dueWithRain: later(r.dueWithRain),
    earliest: later(r.earliest),
    latest: later(r.latest),
  };
}

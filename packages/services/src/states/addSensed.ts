import type { plantings, plantTemperatures, sites, soilWaterReadings, Tx } from "@pith/db";
import { addDays, localDay, type WeatherDay } from "@pith/rules";
import type { listBeds } from "../farms/listBeds.ts";
import type { OfFarm } from "../farms/ofFarm.ts";
import { type SensedAir, sensedAir, sensedSoilWater, withSensed } from "../sensors/sensed.ts";

/** What of a farm's facts sensors have a word in. */
interface Told {
  asOf: string;
  sites: Map<string, { row: typeof sites.$inferSelect; today: string; weather: WeatherDay[] }>;
  beds: Awaited<ReturnType<typeof listBeds>>;
  plantings: (typeof plantings.$inferSelect)[];
  temperatures: (typeof plantTemperatures.$inferSelect)[];
  soilWater: Pick<typeof soilWaterReadings.$inferSelect, "bedId" | "at" | "kind" | "depthCm" | "value">[];
}

/** A sensor's word of the soil is read as far back as a hand's. */
const SOIL_WATER_DAYS = 60;

/**
 * What sensors measured, put beside what people and stations wrote down: a site's open series fill weather days that no
 * station filled, air under a cover is the air at the plants that stand under it, and water in a bed's soil is read with
 * what was read by hand. Flags and sums are as far as they were settled last.
 */
export async function addSensed<F extends Told>(tx: Tx, at: OfFarm, facts: F, since: string): Promise<F> {
  for (const site of facts.sites.values()) {
    const days = await withSensed(tx, { ...at, siteId: site.row.id }, site.weather, {
      from: since,
      to: site.today,
      today: site.today,
    });
    site.weather = days.map(({ day }) => day);
  }
  const air = facts.plantings.length === 0 ? [] : await sensedAir(tx, at, since, facts.asOf);
  const soil = await sensedSoilWater(tx, at, addDays(facts.asOf.slice(0, 10), -SOIL_WATER_DAYS), facts.asOf);
  return {
    ...facts,
    temperatures: inOrder(facts.temperatures, atPlants(at, facts, air)),
    soilWater: inOrder(facts.soilWater, soil),
  };
}

/** A reading is a planting's where it stands in that bed since, and that cover stood over it on the day. */
function atPlants(at: OfFarm, facts: Told, air: SensedAir[]): Told["temperatures"] {
  if (air.length === 0) return [];
  return facts.plantings.flatMap((planting) => {
    const { setOutOn } = planting;
    const bed = facts.beds.find((b) => b.id === planting.bedId);
    const site = bed && facts.sites.get(bed.siteId);
    if (setOutOn === null || !site) return [];
    return air.flatMap(({ bedId, cover, at: instant, temperatureC }) => {
      if (bedId !== bed.id) return [];
      const day = localDay(instant, site.row.timeZone);
      const stood = bed.covers.some((c) => c.cover === cover && c.from <= day && (c.to ?? day) >= day);
      return day >= setOutOn && stood ? [{ ...at, plantingId: planting.id, at: instant, temperatureC }] : [];
    });
  });
}

const inOrder = <T extends { at: string }>(told: T[], sensed: T[]): T[] =>
  sensed.length === 0 ? told : [...told, ...sensed].sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));

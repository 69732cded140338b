import { addDays, localDay } from "../../core/days.ts";
import type { PlantingState } from "../../states/states.ts";
import { type ColdCheck, coldCheckOf } from "../../warmth/coldCheck.ts";
import { isUnderPlastic } from "../../water/rainReaches.ts";
import { thresholdsOf } from "../cold-record/thresholds.ts";
import { HARDENED_BY_BED_DAYS, SICK_SIGNS, STUNTED_SIGNS, WET_MM } from "./thresholds.ts";

/** Why a plant's tip is not to be taken today, whoever is for taking it. */
export type Unfit = "sick" | "checked" | "unhardened" | "wet";

/** How the plants are. */
export interface Fitness {
  unfit: Unfit[];
  cold: ColdCheck;
  floorC: number;
  allowedDegreeHours: number;
  /** Whether any temperature of the last fortnight at the plants is known. */
  coldKnown: boolean;
  rainMm: number | null;
}

/** Sick, checked by cold, unhardened or wet plants. Signs do not wear off: a virus stays. */
export function fitnessOf(state: PlantingState, today: string): Fitness {
  const { planting, notes, site, bed, settings } = state;
  const { floorC, allowedDegreeHours, allowedNights } = thresholdsOf(state, today);
  const out = planting.setOutOn !== undefined && planting.setOutOn <= today;
  const signs = (state.signs ?? []).filter((s) => s.on <= today);
  const seen = notes.filter((n) => n.on <= today);
  // The open air's cold says nothing of plants still raised inside.
  const weather = out ? state.weather.filter((d) => d.date >= (planting.setOutOn as string)) : [];
  const cold = coldCheckOf({ notes, weather, site, bed, today, floorC });
  const measured = coldNightsMeasured(state, floorC, today);
  const checked =
    cold.noted ||
    signs.some((s) => STUNTED_SIGNS.has(s.sign)) ||
    cold.degreeHours > (settings.setOutAllowedDegreeHours ?? allowedDegreeHours) ||
    (cold.lowestC ?? 1) <= 0 ||
    measured.nights > allowedNights ||
    measured.frost;
  const sick = seen.some((n) => n.kind === "disease-signs") || signs.some((s) => SICK_SIGNS.has(s.sign));
  const hardened =
    seen.some((n) => n.kind === "hardened") ||
    (out && addDays(planting.setOutOn as string, HARDENED_BY_BED_DAYS) <= today);
  const rainMm = out && !isUnderPlastic(bed, today) ? rainOn(state, today) : null;
  return {
    unfit: [
      ...(sick ? (["sick"] as const) : []),
      ...(checked ? (["checked"] as const) : []),
      ...(hardened ? [] : (["unhardened"] as const)),
      ...((rainMm ?? 0) >= WET_MM ? (["wet"] as const) : []),
    ],
    cold,
    floorC,
    allowedDegreeHours,
    coldKnown: cold.knownDays > 0 || measured.known,
    rainMm,
  };
}

const FORTNIGHT = 14;

/** Days of the last fortnight on which a thermometer at the plants read below the floor. */
function coldNightsMeasured(
  { plantTemperatures, site }: PlantingState,
  floorC: number,
  today: string,
): { nights: number; frost: boolean; known: boolean } {
  const from = addDays(today, -FORTNIGHT);
  const recent = plantTemperatures
    .map((r) => ({ day: localDay(r.at, site.timeZone), temperatureC: r.temperatureC }))
    .filter((r) => r.day >= from && r.day <= today);
  const below = new Set(recent.filter((r) => r.temperatureC < floorC).map((r) => r.day));
  return {
    nights: below.size,
    frost: recent.some((r) => r.temperatureC <= 0),
    known: recent.length > 0,
  };
}

/** Rain of a day, as recorded and as forecast: the larger. Null where neither says. */
function rainOn({ weather, forecast }: PlantingState, day: string): number | null {
  const said = [...weather, ...(forecast?.days ?? [])].flatMap((d) =>
    d.date === day && d.rainMm !== undefined ? [d.rainMm] : [],
  );
  return said.length === 0 ? null : Math.max(...said);
}

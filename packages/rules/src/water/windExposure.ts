import { daysBetween } from "../core/days.ts";
import { Working } from "../core/working.ts";
import { windAt2mMPerS } from "../quantities/climate/windAt2m.ts";
import { kcOnDay } from "../quantities/water/cropCoefficient.ts";
import type { Site, WeatherDay } from "../states/parts.ts";
import { mulchOn } from "../states/standing.ts";
import { basalCurve, basalLevels } from "./basal.ts";
import { et0OfDay } from "./demand.ts";
import { mulchedKc } from "./mulchedKc.ts";
import { isUnderPlastic } from "./rainReaches.ts";
import { STAGES } from "./stages.ts";
import { seenCovers } from "./zone.ts";
import { standOf, type ZoneGround } from "./zoneSeason.ts";

/** Still air, as far as eq. 62 and 70 are stated [m/s]. Source: FAO-56 p. 123. */
const STILL_M_PER_S = 1;
const WEEK_DAYS = 7;
const STANDARD_HEIGHT_M = 2;

/** A day's crop coefficient without bare-soil evaporation, and what the plants would ask for, at one wind. */
interface AtWind {
  windAt2mMPerS: number;
  kc: number;
  et0Mm: number;
  etcMm: number;
}

/**
 * What the last measured day would have asked for in still air and in the windiest week of the book, the rest of its
 * weather as it was: the wind works in ET0 (eq. 6) and, by the height of the plants, in the coefficient (eq. 70). Undefined
 * without a week of measured wind, and under plastic.
 */
export function windExposure(
  ground: ZoneGround,
  weather: WeatherDay[],
  site: Site,
): { still: AtWind; windy: AtWind; day: string } | undefined {
  const measured = weather
    .filter(
      (w) =>
        w.date >= ground.zone.setOutOn &&
        w.windMPerS !== undefined &&
        w.tMaxC !== undefined &&
        w.tMinC !== undefined,
    )
    .toSorted((a, b) => (a.date < b.date ? -1 : 1));
  const last = measured.at(-1);
  if (!last || measured.length < WEEK_DAYS || isUnderPlastic(ground.zone.bed, last.date)) return undefined;
  const winds = measured.map((w) => windAt2mMPerS(w.windMPerS ?? 0, w.windHeightM ?? STANDARD_HEIGHT_M));
  let windiest = 0;
  for (let i = WEEK_DAYS; i <= winds.length; i++) {
    const week = winds.slice(i - WEEK_DAYS, i);
    windiest = Math.max(windiest, week.reduce((a, b) => a + b, 0) / WEEK_DAYS);
  }
  const at = (wind: number): AtWind => {
    const kc = coefficientAt(ground, last.date, wind);
    const blown = { ...last, windMPerS: wind, windHeightM: STANDARD_HEIGHT_M };
    const et0Mm = et0OfDay(blown, site, new Working()) ?? 0;
    return { windAt2mMPerS: wind, kc, et0Mm, etcMm: kc * et0Mm };
  };
  return { still: at(STILL_M_PER_S), windy: at(windiest), day: last.date };
}

function coefficientAt(ground: ZoneGround, day: string, wind: number): number {
  const { zone, today, top } = ground;
  const stand = { ...standOf(ground), windAt2mMPerS: wind };
  const mulch = mulchOn(zone.bed, day);
  const age = daysBetween(zone.setOutOn, day);
  if (!top) return kcOnDay(STAGES, mulchedKc({ ...stand, mulch }), age);
  return basalCurve(stand, zone.setOutOn, seenCovers(zone, today), basalLevels(stand, mulch))(age).kcb;
}

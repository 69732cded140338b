import { addDays, daysBetween } from "../../core/days.ts";
import { fao56 } from "../../quantities/cite.ts";
import { kcOnDay } from "../../quantities/water/cropCoefficient.ts";
import type { WeatherDay } from "../../states/parts.ts";
import { mulchOn } from "../../states/standing.ts";
import type { PlantingState } from "../../states/states.ts";
import { basalCurve, basalLevels } from "../../water/basal.ts";
import { type Demand, demandOf } from "../../water/demand.ts";
import { mulchedKc } from "../../water/mulchedKc.ts";
import { isUnderPlastic } from "../../water/rainReaches.ts";
import { STAGES } from "../../water/stages.ts";
import { heightM, type StandingZone, seenCovers } from "../../water/zone.ts";

/** Days looked ahead, or back where no forecast came. */
export const DAYS_LOOKED_AT = 7;
/** Weather that ended longer ago says nothing of the next days (common practice, as for a valve's book). */
const RECENT_DAYS = 3;

/** A stand in containers, as its own state has it and a valve's state too. */
interface Stand {
  state: Pick<PlantingState, "site" | "bed" | "planting" | "notes" | "weather" | "forecast">;
  today: string;
  setOutOn: string;
}

/** One day's demand of the stand. */
export interface PotDay {
  day: string;
  et0Mm: number;
  kc: number;
  etcMm: number;
}

/** What the plants will ask for in the next days. */
export interface PotDemand {
  how: "forecast" | "recent";
  days: PotDay[];
  meanMm: number;
  leastMm: number;
  mostMm: number;
  /** The hottest of these days; undefined where none has its maximum. */
  hottestC: number | undefined;
  /** Somebody saw how much of the ground the plants cover. */
  coverSeen: boolean;
  air: Demand;
}

const hasExtremes = (w: WeatherDay): boolean => w.tMaxC !== undefined && w.tMinC !== undefined;

/** The days whose weather stands for the next ones: those of the forecast, else the latest measured. */
function daysRead({ state, today }: Stand): { how: PotDemand["how"]; days: WeatherDay[] } | undefined {
  const last = addDays(today, DAYS_LOOKED_AT - 1);
  const ahead = (state.forecast?.days ?? []).filter(
    (d) => hasExtremes(d) && d.date >= today && d.date <= last,
  );
  if (ahead.length > 0) return { how: "forecast", days: ahead };
  const measured = state.weather.filter(hasExtremes).toSorted((a, b) => (a.date < b.date ? -1 : 1));
  const newest = measured.at(-1)?.date;
  if (newest === undefined || daysBetween(newest, today) > RECENT_DAYS) return undefined;
  const first = addDays(newest, 1 - DAYS_LOOKED_AT);
  return { how: "recent", days: measured.filter((d) => d.date >= first) };
}

/**
 * The demand of the next days: reference evapotranspiration by the forecast, else by the latest measured days; times pepper's
 * single coefficient by stage, as a valve's book takes it for containers. Where somebody saw the cover, its basal part is
 * that of the cover seen, and what evaporates besides stays the stages'. Undefined where no weather is near enough.
 */
export function demandAhead(stand: Stand): PotDemand | undefined {
  const { state, today, setOutOn } = stand;
  const read = daysRead(stand);
  const dates = read?.days.map((d) => d.date).toSorted();
  const [first, last] = [dates?.[0], dates?.at(-1)];
  if (!read || first === undefined || last === undefined) return undefined;
  const air = demandOf(read.days, state.site, first, last, (day) => isUnderPlastic(state.bed, day));
  if (!air) return undefined;
  const zone: StandingZone = { bed: state.bed, planting: state.planting, notes: state.notes, setOutOn };
  const kcAt = coefficients(zone, today, air);
  const days = air.days.map((d): PotDay => {
    // Past weather stands for days to come: the plants are those of today.
    const kc = kcAt(daysBetween(setOutOn, read.how === "forecast" ? d.day : today));
    return { day: d.day, et0Mm: d.et0Mm, kc, etcMm: kc * d.et0Mm };
  });
  const etc = days.map((d) => d.etcMm);
  const maxima = read.days.flatMap((d) => (d.tMaxC === undefined ? [] : [d.tMaxC]));
  return {
    how: read.how,
    days,
    meanMm: etc.reduce((a, b) => a + b, 0) / etc.length,
    leastMm: Math.min(...etc),
    mostMm: Math.max(...etc),
    hottestC: maxima.length > 0 ? Math.max(...maxima) : undefined,
    coverSeen: seenCovers(zone, today).length > 0,
    air,
  };
}

/** Where the coefficient of a container stand comes from. */
export const KC_SOURCE = fao56("Table 12, eq. 62, 66; cover seen: eq. 97");

/** Kc by days since setting out. */
function coefficients(zone: StandingZone, today: string, air: Demand): (age: number) => number {
  const stand = {
    staked: zone.planting.staked ?? false,
    heightM: heightM(zone, today),
    rhMinPct: air.rhMinPct,
    windAt2mMPerS: air.windAt2mMPerS,
  };
  const mulch = mulchOn(zone.bed, today);
  const single = mulchedKc({ ...stand, mulch });
  const levels = basalLevels(stand, mulch);
  const seen = basalCurve(stand, zone.setOutOn, seenCovers(zone, today), levels);
  const evaporation = (age: number) => kcOnDay(STAGES, single, age) - kcOnDay(STAGES, levels, age);
  return (age) => seen(age).kcb + evaporation(age);
}

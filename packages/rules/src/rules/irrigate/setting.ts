import { addDays, daysBetween, localDay } from "../../core/days.ts";
import { Working } from "../../core/working.ts";
import type { Bed } from "../../states/parts.ts";
import type { ValveState } from "../../states/states.ts";
import { bedNamed } from "../../text/message.ts";
import { type Demand, type DemandDay, demandOf, et0OfDay } from "../../water/demand.ts";
import { bedAreaM2 } from "../../water/ground.ts";
import { isUnderPlastic } from "../../water/rainReaches.ts";
import { ecOfWater } from "../../water/salt.ts";
import { SEASON_DAYS } from "../../water/stages.ts";
import { type Wetting, wettingOf } from "../../water/wetting.ts";
import type { StandingZone } from "../../water/zone.ts";
import { type Drought, droughtOf, isDryOn } from "./drought.ts";

/** How far ahead the next watering is looked for. */
export const HORIZON_DAYS = 21;
const MEAN_OVER_DAYS = 7;

export interface Entry {
  zone: StandingZone;
  index: number;
}

/** What every reading of one valve shares. */
export interface ValveSetting {
  state: ValveState;
  today: string;
  /** First day the books do not hold yet. */
  openDay: string;
  zones: Entry[];
  areaM2: number;
  wetting: Wetting;
  /** Of the water, where a test still holds [dS/m]. */
  ecwDsPerM: number | undefined;
  drought: Drought;
}

/** A bed for a message: by its number among the valve's beds where no name may stand. */
export const bedOf = (setting: ValveSetting, bed: Bed) =>
  bedNamed(bed.id, [...new Set(setting.zones.map(({ zone }) => zone.bed.id))].indexOf(bed.id) + 1);

/** How many beds the valve waters; several plantings may share one. */
export const bedCount = (setting: ValveSetting): number =>
  new Set(setting.zones.map(({ zone }) => zone.bed.id)).size;

/** What a bed gets of the water through the valve: its share of the ground. */
export const litresOfBed = ({ areaM2 }: ValveSetting, bed: Bed, litres: number): number =>
  (litres * bedAreaM2(bed)) / areaM2;

/** The share of full water that a zone is allowed on a day of a dry spell that is held; undefined where full water is due. */
export const waterAllowedOn = (
  { drought }: ValveSetting,
  zone: StandingZone,
  day: string,
): number | undefined => (drought.kind === "held" && isDryOn(zone, day) ? drought.etShare : undefined);

/** The plants that stand on the valve today, and the ground they take. */
export function settingOf(state: ValveState): ValveSetting {
  const today = localDay(state.asOf, state.site.timeZone);
  const openDay = state.weather.some((w) => w.date === today) ? addDays(today, 1) : today;
  const zones = state.zones.flatMap((zone, index) => {
    const { setOutOn, endedOn } = zone.planting;
    if (setOutOn === undefined || setOutOn > today) return [];
    if (endedOn !== undefined && endedOn <= today) return [];
    return [{ zone: { ...zone, setOutOn }, index }];
  });
  const beds = new Map(zones.map(({ zone }) => [zone.bed.id, zone.bed]));
  const areaM2 = [...beds.values()].reduce((sum, bed) => sum + bedAreaM2(bed), 0);
  return {
    state,
    today,
    openDay,
    zones,
    areaM2,
    wetting: wettingOf(state.valve),
    ecwDsPerM: ecOfWater(state.waterTests ?? [], today),
    drought: droughtOf(
      state,
      zones.map(({ zone }) => zone),
      today,
    ),
  };
}

/** The day a zone's book opens: setting out, or the first weather after it. */
function bookOpensOn(zone: StandingZone, state: ValveState): string | undefined {
  const measured = state.weather.filter(
    (w) => w.tMaxC !== undefined && w.tMinC !== undefined && w.date >= zone.setOutOn,
  );
  return measured.map((w) => w.date).toSorted()[0];
}

/** Litres of one watering. */
const litresOf = (w: { minutes?: number; litres?: number }, flowLPerH: number): number =>
  w.litres ?? ((w.minutes ?? 0) / 60) * flowLPerH;

/** Net depth of each day's watering over the valve's ground. */
export function netMmByDay(setting: ValveSetting, extra: ReadonlyMap<string, number>): Map<string, number> {
  const { state, areaM2 } = setting;
  const sums = new Map(extra);
  for (const w of state.waterings) {
    const net = (litresOf(w, state.valve.flowLPerH) * state.valve.efficiency) / areaM2;
    sums.set(w.on, (sums.get(w.on) ?? 0) + net);
  }
  return sums;
}

/** The demand from the day a zone's book opens to the last closed day; undefined where no day was measured. */
export function demandOfZone(setting: ValveSetting, zone: StandingZone): Demand | undefined {
  const from = bookOpensOn(zone, setting.state);
  const to = addDays(setting.openDay, -1);
  return from === undefined || from > to
    ? undefined
    : demandOf(setting.state.weather, setting.state.site, from, to, (day) => isUnderPlastic(zone.bed, day));
}

/** The last day of the printed stages of a zone. */
export const stagesEndOn = (zone: StandingZone): string => addDays(zone.setOutOn, SEASON_DAYS);

/**
 * The days to come, to the horizon or the end of the stages, whichever is later: the forecast's ET0 and rain where it
 * reaches, else the mean ET0 of the last seven measured days and no rain.
 */
export function daysAhead(setting: ValveSetting, zone: StandingZone, demand: Demand): DemandDay[] {
  const { openDay, state } = setting;
  const recent = demand.days.flatMap((d) => (d.measured ? [d.et0Mm] : [])).slice(-MEAN_OVER_DAYS);
  const meanEt0 = recent.reduce((a, b) => a + b, 0) / recent.length;
  const byDay = new Map(state.forecast?.days.map((d) => [d.date, d]));
  const estimates = new Working();
  const length = Math.max(HORIZON_DAYS, daysBetween(openDay, stagesEndOn(zone)));
  return Array.from({ length }, (_, i) => {
    const day = addDays(openDay, i);
    const w = byDay.get(day);
    return {
      day,
      et0Mm: et0OfDay(w, state.site, estimates, isUnderPlastic(zone.bed, day)) ?? meanEt0,
      rainMm: w?.rainMm ?? 0,
      measured: false,
    };
  });
}

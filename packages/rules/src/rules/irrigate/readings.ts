import { addDays, daysBetween, localDay } from "../../core/days.ts";
import { Working } from "../../core/working.ts";
import { runTime } from "../../quantities/water/runTime.ts";
import type { Bed, Forecast } from "../../states/parts.ts";
import type { ValveState } from "../../states/states.ts";
import { bedNamed } from "../../text/message.ts";
import type { AvailableWater } from "../../water/availableWater.ts";
import { type BalanceDay, nextDay, runBalance, type ZonePlan } from "../../water/balance.ts";
import { type Demand, type DemandDay, demandOf, et0OfDay } from "../../water/demand.ts";
import { bedAreaM2 } from "../../water/ground.ts";
import { planOf, type StandingZone } from "../../water/zone.ts";

/** How far ahead the next watering is looked for. */
const HORIZON_DAYS = 21;
const MEAN_OVER_DAYS = 7;
const SPREAD_OVER_DAYS = 14;

/** A zone's book up to now, and when it will be short. */
export interface ZoneReading {
  zone: StandingZone;
  index: number;
  available: AvailableWater;
  plan: ZonePlan;
  book: BalanceDay[];
  /** Missing at the start of the first day not yet in the book, with what was watered since. */
  depletionMm: number;
  /** The first day not yet in the book, as it would run without water. */
  today: BalanceDay;
  /** First day whose evening finds it short, if no rain falls. */
  due: ShortDay | undefined;
  /** The same with the forecast's rain. */
  dueWithRain: ShortDay | undefined;
  /** The same in the hottest, and in the coolest, of recent weather. */
  earliest: ShortDay | undefined;
  latest: ShortDay | undefined;
  /** The first short day where only so much were missing now, without rain. */
  dueFrom: (depletionMm: number) => ShortDay | undefined;
}

/** A day whose evening finds the root zone short, and what is missing that morning. */
interface ShortDay {
  day: string;
  depletionMm: number;
}

/** What every reading of one valve shares. */
export interface ValveSetting {
  state: ValveState;
  today: string;
  /** First day the books do not hold yet. */
  openDay: string;
  zones: { zone: StandingZone; index: number }[];
  areaM2: number;
}

/** A bed for a message: by its number among the valve's beds where no name may stand. */
export const bedOf = (setting: ValveSetting, bed: Bed) =>
  bedNamed(bed.id, [...new Set(setting.zones.map(({ zone }) => zone.bed.id))].indexOf(bed.id) + 1);

/** How many beds the valve waters; several plantings may share one. */
export const bedCount = (setting: ValveSetting): number =>
  new Set(setting.zones.map(({ zone }) => zone.bed.id)).size;

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
  return { state, today, openDay, zones, areaM2 };
}

/** The day a zone's book opens: setting out, or the first weather after it. */
function bookOpensOn(zone: StandingZone, state: ValveState): string | undefined {
  const measured = state.weather.filter(
    (w) => w.tMaxC !== undefined && w.tMinC !== undefined && w.date >= zone.setOutOn,
  );
  const first = measured.map((w) => w.date).toSorted()[0];
  return first;
}

/** Litres of one watering. */
const litresOf = (w: { minutes?: number; litres?: number }, flowLPerH: number): number =>
  w.litres ?? ((w.minutes ?? 0) / 60) * flowLPerH;

/** Net depth of each day's watering over the valve's ground. */
function netMmByDay(setting: ValveSetting, extra: ReadonlyMap<string, number>): Map<string, number> {
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
    : demandOf(setting.state.weather, setting.state.site, from, to);
}

/** The days to come: the forecast's ET0 and rain where it reaches, else one ET0 throughout and no rain. */
function daysAhead(setting: ValveSetting, forecast: Forecast | undefined, et0Mm: number): DemandDay[] {
  const { openDay, state } = setting;
  const byDay = new Map(forecast?.days.map((d) => [d.date, d]));
  const estimates = new Working();
  return Array.from({ length: HORIZON_DAYS }, (_, i) => {
    const day = addDays(openDay, i);
    const w = byDay.get(day);
    return {
      day,
      et0Mm: et0OfDay(w, state.site, estimates) ?? et0Mm,
      rainMm: w?.rainMm ?? 0,
      measured: false,
    };
  });
}

const withoutRain = (days: DemandDay[]): DemandDay[] => days.map((d) => ({ ...d, rainMm: 0 }));

function firstShort(plan: ZonePlan, startMm: number, days: DemandDay[]): ShortDay | undefined {
  let depletionMm = startMm;
  for (const d of days) {
    const next = nextDay(plan, d, depletionMm, 0);
    if (next.depletionMm > next.rawMm) return { day: d.day, depletionMm };
    depletionMm = next.depletionMm;
  }
  return undefined;
}

/** A zone's reading with a given available water, and with waterings nobody confirmed (net mm by day) or without. */
export function readZone(
  setting: ValveSetting,
  entry: { zone: StandingZone; index: number },
  demand: Demand,
  available: AvailableWater,
  unconfirmed: ReadonlyMap<string, number>,
): ZoneReading {
  const { openDay, today, state } = setting;
  const plan = planOf(entry.zone, available.m3PerM3, demand, today);
  const net = netMmByDay(setting, unconfirmed);
  const book = runBalance(plan, demand.days, (day) => net.get(day) ?? 0);
  const lastMm = book.at(-1)?.depletionMm ?? 0;
  const sinceMm = daysBetween(today, openDay) === 0 ? (net.get(today) ?? 0) : 0;
  const depletionMm = Math.max(0, lastMm - sinceMm);
  const et0 = demand.days.filter((d) => d.measured).map((d) => d.et0Mm);
  const recent = et0.slice(-MEAN_OVER_DAYS);
  const spread = et0.slice(-SPREAD_OVER_DAYS);
  const meanEt0 = recent.reduce((a, b) => a + b, 0) / recent.length;
  const expected = daysAhead(setting, state.forecast, meanEt0);
  const dry = withoutRain(expected);
  const steady = (et0Mm: number) => dry.map((d) => ({ ...d, et0Mm }));
  const [openDemand] = dry;
  if (!openDemand) throw new Error("the horizon has at least one day");
  return {
    ...entry,
    available,
    plan,
    book,
    depletionMm,
    today: nextDay(plan, openDemand, depletionMm, 0),
    due: firstShort(plan, depletionMm, dry),
    dueWithRain: firstShort(plan, depletionMm, expected),
    earliest: firstShort(plan, depletionMm, steady(Math.max(...spread))),
    latest: firstShort(plan, depletionMm, steady(Math.min(...spread))),
    dueFrom: (startMm) => firstShort(plan, startMm, dry),
  };
}

/** Net depth to give on the open day: what is missing, and where the root zone cannot bridge a day, that day's use too. */
function netNeededMm(r: ZoneReading): { netMm: number; rounds: number } {
  const small = r.today.rawMm < r.today.etcMm;
  const netMm = r.depletionMm + (small ? r.today.etcMm : 0);
  return { netMm, rounds: small ? Math.max(1, Math.ceil(netMm / r.today.rawMm)) : 1 };
}

/** The decision for the whole valve. */
export interface ValveReading {
  code: "water-now" | "wait" | "hold";
  governing: ZoneReading;
  zones: ZoneReading[];
  netMm: number;
  grossMm: number;
  litres: number;
  minutes: number;
  rounds: number;
  /** Day of the next watering where none is due now; undefined beyond the horizon. */
  nextDay: string | undefined;
}

const LATE = "9999-12-31";
const dueDay = (r: ZoneReading) => r.due?.day ?? LATE;
const share = (r: ZoneReading) => r.depletionMm / r.today.rawMm;

/** The zone that is short first decides; among equals the one with most of its ready water gone. */
export function readValve(setting: ValveSetting, zones: ZoneReading[]): ValveReading {
  const { state, today, areaM2 } = setting;
  const [governing] = zones.toSorted((a, b) =>
    dueDay(a) === dueDay(b) ? share(b) - share(a) : dueDay(a) < dueDay(b) ? -1 : 1,
  );
  if (!governing) throw new Error("a valve's reading has at least one zone");
  const dueNow = dueDay(governing) <= today || governing.depletionMm >= governing.today.rawMm;
  const { netMm, rounds } = netNeededMm(governing);
  const stillComfortable =
    governing.depletionMm < governing.today.rawMm && governing.today.rawMm >= governing.today.etcMm;
  const rainBridges = stillComfortable && zones.every((z) => (z.dueWithRain?.day ?? LATE) > today);
  if (!dueNow || rainBridges) {
    const next = rainBridges && dueNow ? governing.dueWithRain : governing.due;
    return {
      code: dueNow ? "hold" : "wait",
      governing,
      zones,
      netMm: 0,
      grossMm: 0,
      litres: 0,
      minutes: 0,
      rounds: 1,
      nextDay: next?.day,
    };
  }
  const run = runTime({
    netMm,
    efficiency: state.valve.efficiency,
    areaM2,
    flowLPerH: state.valve.flowLPerH,
  });
  return { code: "water-now", governing, zones, netMm, ...run, rounds, nextDay: today };
}

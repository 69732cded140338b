import { localDay } from "../../core/days.ts";
import { adjustedDepletionFraction } from "../../quantities/water/rootZone.ts";
import type { AvailableWater } from "../../water/availableWater.ts";
import { deficitDepletionMm } from "../../water/deficitDepletion.ts";
import type { Demand, DemandDay } from "../../water/demand.ts";
import { type Salinity, salinityOf } from "../../water/salt.ts";
import {
  newBook,
  runSeason,
  type Season,
  type SeasonBook,
  type SoilStart,
  startOf,
} from "../../water/season.ts";
import { contentDepletionMm, type SensorWord, sensorWords } from "../../water/soilSensor.ts";
import type { TopSoil } from "../../water/topSoil.ts";
import { rootZoneDepthM, type StandingZone } from "../../water/zone.ts";
import { seasonOf, type ZoneGround } from "../../water/zoneSeason.ts";
import {
  daysAhead,
  type Entry,
  HORIZON_DAYS,
  netMmByDay,
  type ValveSetting,
  waterAllowedOn,
} from "./setting.ts";

const SPREAD_OVER_DAYS = 14;

/** A day whose evening finds the root zone short, and what is missing that morning. */
interface ShortDay {
  day: string;
  depletionMm: number;
}

/** One day to come, as it would run without water. */
interface OpenDay {
  et0Mm: number;
  kcb: number;
  ke: number;
  etcMm: number;
  tawMm: number;
  rawMm: number;
  depletionFraction: number;
  /** What may be missing that evening before water is due: RAW, or what a deficit on purpose lets it go to. */
  triggerMm: number;
}

/** A zone's book up to now, and when it will be short. */
export interface ZoneReading {
  zone: StandingZone;
  index: number;
  available: AvailableWater;
  top: TopSoil | undefined;
  salinity: Salinity | undefined;
  ground: ZoneGround;
  /** The book's days and the days to come; the first `closed` are the book's. */
  days: DemandDay[];
  closed: number;
  season: Season;
  book: SeasonBook;
  /** The start of the first day not yet in the book, with what was watered since. */
  start: SoilStart;
  depletionMm: number;
  /** What the book alone has missing; differs from `depletionMm` where a sensor decides. */
  bookDepletionMm: number;
  sensors: SensorWord[];
  decidedBy: "book" | "water-content" | "tension-kpa";
  today: OpenDay;
  /** First day whose evening finds it short, if no rain falls. */
  due: ShortDay | undefined;
  /** The same with the forecast's rain. */
  dueWithRain: ShortDay | undefined;
  /** The same in the hottest, and in the coolest, of recent weather. */
  earliest: ShortDay | undefined;
  latest: ShortDay | undefined;
}

type Ahead = Pick<ZoneReading, "zone" | "days" | "season" | "closed">;

/** The days to come without rain, or at one ET0 throughout. */
function variant(season: Season, closed: number, change: { rain: boolean; et0Mm?: number }): Season {
  const rainMm = change.rain ? season.rainMm : season.rainMm.slice().fill(0, closed);
  const et0Mm = change.et0Mm === undefined ? season.et0Mm : season.et0Mm.slice().fill(change.et0Mm, closed);
  return { ...season, rainMm, et0Mm };
}

/** What may be missing on the evening of day `i` of a book before water is due. */
export function triggerMm(setting: ValveSetting, r: Ahead, book: SeasonBook, i: number): number {
  const rawMm = book.rawMm[i] as number;
  const etShare = waterAllowedOn(setting, r.zone, r.days[i]?.day ?? "");
  const etcMmPerDay = book.etcMm[i] as number;
  if (etShare === undefined || etcMmPerDay <= 0) return rawMm;
  return deficitDepletionMm({
    tawMm: r.season.tawMm[i] as number,
    depletionFractionTable: r.season.depletionFractionTable,
    etcMmPerDay,
    etShare,
  });
}

/** The days to come from a start, as a book of the whole season whose first `closed` days stay empty. */
export function runAhead(
  r: Pick<ZoneReading, "season" | "closed">,
  start: SoilStart,
  days: number,
  change: { rain: boolean; et0Mm?: number },
): SeasonBook {
  const season = variant(r.season, r.closed, change);
  const ahead = newBook(r.closed + days);
  runSeason(season, ahead, r.closed, r.closed + days, start);
  return ahead;
}

/** The first day to come whose evening finds the zone short. */
export function firstShort(
  setting: ValveSetting,
  r: Ahead,
  start: SoilStart,
  change: { rain: boolean; et0Mm?: number },
): ShortDay | undefined {
  const ahead = runAhead(r, start, HORIZON_DAYS, change);
  for (let i = r.closed; i < r.closed + HORIZON_DAYS; i++) {
    if ((ahead.depletionMm[i] as number) > triggerMm(setting, r, ahead, i)) {
      const morning = i === r.closed ? start.depletionMm : (ahead.depletionMm[i - 1] as number);
      return { day: r.days[i]?.day ?? "", depletionMm: morning };
    }
  }
  return undefined;
}

function openDayOf(setting: ValveSetting, r: Ahead, start: SoilStart): OpenDay {
  const i = r.closed;
  const ahead = runAhead(r, start, 1, { rain: false });
  const et0Mm = r.season.et0Mm[i] as number;
  const etcMm = ahead.etcMm[i] as number;
  return {
    et0Mm,
    kcb: r.season.kcb[i] as number,
    ke: et0Mm > 0 ? (ahead.evaporationMm[i] as number) / et0Mm : 0,
    etcMm,
    tawMm: r.season.tawMm[i] as number,
    rawMm: ahead.rawMm[i] as number,
    depletionFraction: adjustedDepletionFraction(r.season.depletionFractionTable, etcMm),
    triggerMm: triggerMm(setting, r, ahead, i),
  };
}

/** Less what was watered on the open day before now. */
const wateredSince = (start: SoilStart, netMm: number, wettedFraction: number): SoilStart => ({
  ...start,
  depletionMm: Math.max(0, start.depletionMm - netMm),
  wateredTopMm: Math.max(0, start.wateredTopMm - netMm / wettedFraction),
});

/** A zone's reading with a given available water, and with waterings nobody confirmed (net mm by day) or without. */
export function readZone(
  setting: ValveSetting,
  entry: Entry,
  demand: Demand,
  soil: { available: AvailableWater; top: TopSoil | undefined },
  unconfirmed: ReadonlyMap<string, number>,
): ZoneReading {
  const { openDay, today, state, wetting } = setting;
  const { zone } = entry;
  const salinity = salinityOf(zone.soilTests ?? [], state.waterTests ?? [], today);
  const ground: ZoneGround = {
    zone,
    today,
    availableM3PerM3: soil.available.m3PerM3,
    top: soil.top,
    wetting,
    saltKs: salinity?.saltKs ?? 1,
    rhMinPct: demand.rhMinPct,
    windAt2mMPerS: demand.windAt2mMPerS,
  };
  const days = [...demand.days, ...daysAhead(setting, zone, demand)];
  const closed = demand.days.length;
  const net = netMmByDay(setting, unconfirmed);
  const season = seasonOf(ground, days, (day) => (day < openDay ? (net.get(day) ?? 0) : 0));
  const book = newBook(closed);
  runSeason(season, book, 0, closed, startOf(book, 0));
  const netToday = openDay === today ? (net.get(today) ?? 0) : 0;
  const evening = startOf(book, closed);
  const bookStart = wateredSince(evening, netToday, wetting.wettedFraction);

  const part = { zone, days, season, closed };
  const sensors = wordsOf(setting, part, book, soil.available);
  const word = sensors.find((s) => s.used);
  const content = contentDepletionMm(sensors);
  const start = content === undefined ? bookStart : startBySensor(setting, content, evening, netToday);
  const et0 = demand.days.flatMap((d) => (d.measured ? [d.et0Mm] : [])).slice(-SPREAD_OVER_DAYS);
  const reading: ZoneReading = {
    ...entry,
    available: soil.available,
    top: soil.top,
    salinity,
    ground,
    ...part,
    book,
    start,
    depletionMm: start.depletionMm,
    bookDepletionMm: bookStart.depletionMm,
    sensors,
    decidedBy: word?.kind ?? "book",
    today: openDayOf(setting, part, start),
    due: firstShort(setting, part, start, { rain: false }),
    dueWithRain: firstShort(setting, part, start, { rain: true }),
    earliest: firstShort(setting, part, start, { rain: false, et0Mm: Math.max(...et0) }),
    latest: firstShort(setting, part, start, { rain: false, et0Mm: Math.min(...et0) }),
  };
  return word?.used && word.kind === "tension-kpa"
    ? { ...reading, ...byTension(reading, word.says) }
    : reading;
}

function wordsOf(
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

/** Water content stands for the root zone; what was watered today is taken as given after it was read. */
const startBySensor = (
  { wetting }: ValveSetting,
  depletionMm: number,
  evening: SoilStart,
  netToday: number,
): SoilStart => wateredSince({ ...evening, depletionMm }, netToday, wetting.wettedFraction);

/** Tension starts or holds a watering and says no depth: due today, or not before tomorrow. */
function byTension(r: ZoneReading, says: "water" | "wait"): Partial<ZoneReading> {
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

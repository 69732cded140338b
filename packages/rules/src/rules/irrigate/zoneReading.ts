import { adjustedDepletionFraction } from "../../quantities/water/rootZone.ts";
import type { AvailableWater } from "../../water/availableWater.ts";
import { deficitDepletionMm } from "../../water/deficitDepletion.ts";
import type { Demand } from "../../water/demand.ts";
import { salinityOf } from "../../water/salt.ts";
import {
  newBook,
  runSeason,
  type Season,
  type SeasonBook,
  type SoilStart,
  startOf,
} from "../../water/season.ts";
import { contentDepletionMm } from "../../water/soilSensor.ts";
import type { TopSoil } from "../../water/topSoil.ts";
import { seasonOf, type ZoneGround } from "../../water/zoneSeason.ts";
import type { Ahead, OpenDay, ShortDay, ZoneReading } from "./reading.ts";
import {
  daysAhead,
  type Entry,
  HORIZON_DAYS,
  netMmByDay,
  type ValveSetting,
  waterAllowedOn,
} from "./setting.ts";
import { byTension, wordsOf } from "./zoneSensors.ts";

const SPREAD_OVER_DAYS = 14;

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
  // Water content stands for the root zone; what was watered today is taken as given after it was read.
  const start =
    content === undefined
      ? bookStart
      : wateredSince({ ...evening, depletionMm: content }, netToday, wetting.wettedFraction);
  const recent = demand.days.flatMap((d) => (d.measured ? [d.et0Mm] : [])).slice(-SPREAD_OVER_DAYS);
  const et0Span = { highMm: Math.max(...recent), lowMm: Math.min(...recent) };
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
    et0Span,
    earliest: firstShort(setting, part, start, { rain: false, et0Mm: et0Span.highMm }),
    latest: firstShort(setting, part, start, { rain: false, et0Mm: et0Span.lowMm }),
  };
  return word?.used && word.kind === "tension-kpa"
    ? { ...reading, ...byTension(reading, word.says) }
    : reading;
}

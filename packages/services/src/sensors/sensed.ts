import type { Quantity } from "@pith/contract";
import { readingDays, readingHours, readings, series, type Tx } from "@pith/db";
import { addDays, type SoilWaterReading, type WeatherDay, WeatherDaySchema } from "@pith/rules";
import { and, asc, eq, gt, gte, inArray, isNotNull, isNull, lt, lte, sql } from "drizzle-orm";
import type { OfFarm } from "../farms/ofFarm.ts";
import { UNUSABLE } from "./flags.ts";

/** What sensors measured, as the rules take it in: weather of a site, air at the plants, water in the soil. */

type SeriesRow = typeof series.$inferSelect;
type DayRow = typeof readingDays.$inferSelect;

/** A day's extremes and means are known where so many of its hours were read; a sum, where all but two (cp). */
const HOURS_FOR_EXTREMES = 20;
const HOURS_FOR_A_SUM = 22;
/** W/m2 over a day in MJ/m2 (FAO-56 Table 3). */
const MJ_PER_DAY = 0.0864;

/** Fields that stand or fall together, so that a maximum of one thermometer never meets the minimum of another. */
const GROUPS: Partial<
  Record<
    Quantity,
    { hours: number; fields: (keyof WeatherDay)[]; say: (d: DayRow, s: SeriesRow) => Partial<WeatherDay> }
  >
> = {
  "air-temperature": {
    hours: HOURS_FOR_EXTREMES,
    fields: ["tMaxC", "tMinC"],
    say: (d) => ({ tMaxC: d.highest ?? undefined, tMinC: d.lowest ?? undefined }),
  },
  "relative-humidity": {
    hours: HOURS_FOR_EXTREMES,
    fields: ["rhMaxPct", "rhMinPct", "rhMeanPct", "dewPointC"],
    say: (d) => ({
      rhMaxPct: d.highest ?? undefined,
      rhMinPct: d.lowest ?? undefined,
      rhMeanPct: d.mean ?? undefined,
    }),
  },
  rain: { hours: HOURS_FOR_A_SUM, fields: ["rainMm"], say: (d) => ({ rainMm: d.total ?? undefined }) },
  "wind-speed": {
    hours: HOURS_FOR_EXTREMES,
    fields: ["windMPerS", "windHeightM"],
    // Wind of an unknown height says nothing.
    say: (d, s) => (s.heightM === null ? {} : { windMPerS: d.mean ?? undefined, windHeightM: s.heightM }),
  },
  "solar-radiation": {
    hours: HOURS_FOR_EXTREMES,
    fields: ["rsMjPerM2Day", "sunshineH"],
    say: (d) => ({ rsMjPerM2Day: d.mean === null ? undefined : Math.max(0, d.mean * MJ_PER_DAY) }),
  },
};

/** A day of weather, and which of its fields a sensor of the site measured. */
interface SensedDay {
  day: WeatherDay;
  fromSensors: string[];
}

/**
 * A site's days, filled from its series in the open where no station says anything of the kind: what was imported wins,
 * group by group. Only days that are over, and hardly interrupted. Of two series of a kind the one that read more is taken.
 */
export async function withSensed(
  tx: Tx,
  at: OfFarm & { siteId: string },
  known: WeatherDay[],
  { from, to, today }: { from: string; to: string; today: string },
): Promise<SensedDay[]> {
  const days = new Map(known.map((day) => [day.date, { day, fromSensors: [] as string[] }]));
  const rows = await tx
    .select({ series, day: readingDays })
    .from(readingDays)
    .innerJoin(series, and(eq(series.officeId, readingDays.officeId), eq(series.id, readingDays.seriesId)))
    .where(
      and(
        eq(readingDays.officeId, at.officeId),
        eq(series.farmId, at.farmId),
        eq(series.siteId, at.siteId),
        isNull(series.bedId),
        gte(readingDays.day, from),
        lte(readingDays.day, to),
        lt(readingDays.day, today),
      ),
    )
    // The one that read most comes first.
    .orderBy(
      asc(readingDays.day),
      sql`${readingDays.readings} - ${readingDays.flagged} desc`,
      asc(series.id),
    );
  for (const { series: s, day: d } of rows) {
    const group = GROUPS[s.quantity as Quantity];
    if (!group || d.hours < group.hours) continue;
    const before = days.get(d.day) ?? { day: { date: d.day }, fromSensors: [] };
    if (group.fields.some((field) => before.day[field] !== undefined)) continue;
    const said = Object.fromEntries(Object.entries(group.say(d, s)).filter(([, v]) => v !== undefined));
    // What the rules cannot take, a wrong unit that no flag found, is left out and not handed on.
    const filled = WeatherDaySchema.safeParse({ ...before.day, ...said });
    if (!filled.success || Object.keys(said).length === 0) continue;
    days.set(d.day, { day: filled.data, fromSensors: [...before.fromSensors, ...Object.keys(said)] });
  }
  return [...days.values()].sort((a, b) => (a.day.date < b.day.date ? -1 : 1));
}

/** Air under a cover of a bed. */
export interface SensedAir {
  bedId: string;
  cover: NonNullable<SeriesRow["cover"]>;
  at: string;
  temperatureC: number;
}

/** Readings one by one for so many days, by the hour before: a frost is a reading, heat of a season is hours. */
const ONE_BY_ONE_DAYS = 14;
/** What the rules take at the plants. */
const COLDEST_C = -50;
/** A sensor that reads oftener is taken by the hour throughout. */
const OFTEN_S = 300;

/** Air temperature that sensors under covers measured, oldest first. */
export async function sensedAir(tx: Tx, at: OfFarm, since: string, asOf: string): Promise<SensedAir[]> {
  const all = await seriesIn(tx, at, ["air-temperature"]);
  const covered = all.filter((s) => s.bedId !== null && s.cover !== null);
  const found: SensedAir[] = [];
  for (const s of covered) {
    const of = { bedId: s.bedId as string, cover: s.cover as SensedAir["cover"] };
    const turn =
      s.expectedEveryS < OFTEN_S ? asOf : `${addDays(asOf.slice(0, 10), -ONE_BY_ONE_DAYS)}T00:00:00Z`;
    for (const h of await hoursOf(tx, s, `${since}T00:00:00Z`, turn, asOf)) {
      found.push({ ...of, at: h.at, temperatureC: h.value });
    }
    const single = await tx
      .select({ at: readings.at, temperatureC: readings.value })
      .from(readings)
      .where(
        and(
          eq(readings.officeId, at.officeId),
          eq(readings.seriesId, s.id),
          gte(readings.at, turn),
          lte(readings.at, asOf),
          sql`${readings.flags} & ${UNUSABLE} = 0`,
        ),
      );
    found.push(...single.map((r) => ({ ...of, ...r })));
  }
  return found.filter((r) => r.temperatureC >= COLDEST_C).sort((a, b) => (a.at < b.at ? -1 : 1));
}

const SOIL_KINDS: Partial<Record<Quantity, SoilWaterReading["kind"]>> = {
  "soil-tension": "tension-kpa",
  "soil-water": "water-content",
};
/** Every hour for so many days; before, every sixth: what is older is for pairing one sensor with another. */
const EVERY_HOUR_DAYS = 3;
const SPARSE_H = 6;

/** Tension and water content that sensors in beds read, by the hour, oldest first. */
export async function sensedSoilWater(tx: Tx, at: OfFarm, since: string, asOf: string) {
  const found: (SoilWaterReading & { bedId: string })[] = [];
  const recent = `${addDays(asOf.slice(0, 10), -EVERY_HOUR_DAYS)}T00:00:00.000Z`;
  for (const s of await seriesIn(tx, at, ["soil-tension", "soil-water"])) {
    const kind = SOIL_KINDS[s.quantity as Quantity];
    if (!kind || s.bedId === null || s.depthCm === null) continue;
    for (const { at: hour, value } of await hoursOf(tx, s, `${since}T00:00:00Z`, asOf, asOf)) {
      if (hour < recent && new Date(hour).getUTCHours() % SPARSE_H !== 0) continue;
      found.push({ bedId: s.bedId, at: hour, kind, depthCm: s.depthCm, value });
    }
  }
  return found;
}

const seriesIn = (tx: Tx, at: OfFarm, quantities: Quantity[]): Promise<SeriesRow[]> =>
  tx
    .select()
    .from(series)
    .where(
      and(
        eq(series.officeId, at.officeId),
        eq(series.farmId, at.farmId),
        inArray(series.quantity, quantities),
        isNotNull(series.bedId),
      ),
    )
    .orderBy(asc(series.id));

/** Means of hours that begin in a stretch, each said of its middle; an hour whose middle is to come is left out. */
async function hoursOf(tx: Tx, s: SeriesRow, from: string, to: string, asOf: string) {
  const rows = await tx
    .select({ hour: readingHours.hour, mean: readingHours.mean })
    .from(readingHours)
    .where(
      and(
        eq(readingHours.officeId, s.officeId),
        eq(readingHours.seriesId, s.id),
        gte(readingHours.hour, from),
        lt(readingHours.hour, to),
        isNotNull(readingHours.mean),
        gt(readingHours.readings, readingHours.flagged),
      ),
    )
    .orderBy(asc(readingHours.hour));
  return rows
    .map(({ hour, mean }) => ({
      at: new Date(Date.parse(hour) + 1_800_000).toISOString(),
      value: mean as number,
    }))
    .filter((h) => h.at <= new Date(asOf).toISOString());
}

import {
  advisories,
  applications,
  bedHistory,
  bedPlans,
  drainReadings,
  fieldNotes,
  harvests,
  offices,
  photos,
  plantings,
  plantTemperatures,
  plantTests,
  signs,
  sites,
  soilTests,
  soilWaterReadings,
  sprays,
  structures,
  type Tx,
  trials,
  trialValues,
  valves,
  waterings,
  waterTests,
  weatherDays,
  works,
} from "@pith/db";
import {
  addDays,
  type Climatology,
  type Forecast,
  type Guide,
  localDay,
  type Settings,
  SettingsSchema,
  type WeatherDay,
} from "@pith/rules";
import { and, asc, count, desc, eq, gte, inArray, isNotNull, isNull, lte, ne, sql } from "drizzle-orm";
import { listBeds } from "../farms/listBeds.ts";
import { listMaterials } from "../farms/listMaterials.ts";
import type { OfFarm } from "../farms/ofFarm.ts";
import { ownGuides } from "../guides/ownGuides.ts";
import { latestForecast } from "../weather/latestForecast.ts";
import { addSensed } from "./addSensed.ts";
import { forecastPart, weatherPart } from "./parts.ts";

/** Weather further back than this no rule reads. */
export const WEATHER_DAYS = 400;
/** A sensor's word of how wet the soil is does not hold longer; the rest is for pairing it with another. */
const SOIL_WATER_DAYS = 60;
/** Fewer years say too little of a climate to be one (rules-catalogue.md, set-out). */
const FEWEST_CLIMATE_YEARS = 8;
/** As many as a planting's state can hold. */
export const MOST_PLANT_TEMPERATURES = 20_000;

export interface SiteFacts {
  row: typeof sites.$inferSelect;
  /** The site's local day. */
  today: string;
  /** Oldest first, of the last {@link WEATHER_DAYS} days. */
  weather: WeatherDay[];
  /** As the rules read it; the same for every planting there, so that what it makes is made once. */
  forecast: Forecast | undefined;
  climatology: Climatology | undefined;
}

/** An issued advice that nobody answered, with when the next of its kind replaced it, if one did. */
export type OpenAdvisory = Pick<
  typeof advisories.$inferSelect,
  "ruleId" | "subjectId" | "issuedAt" | "expected"
> & { replacedAt: string | null };

/** A planting of an earlier season: what stood in the bed, and how long its variety took on this farm. */
export type ClearedPlanting = Pick<
  typeof plantings.$inferSelect,
  "id" | "bedId" | "varietyName" | "sownOn" | "setOutOn" | "pickAt"
> & { firstPickOn: string | null };

/** A trial is spoken of as long after its end. */
const TRIAL_DAYS = 400;

/** Everything of a farm that states are assembled from, read once. */
export interface FarmFacts {
  farmId: string;
  asOf: string;
  settings: Settings;
  /** The office's own, in use. */
  guides: Guide[];
  sites: Map<string, SiteFacts>;
  valves: (typeof valves.$inferSelect)[];
  beds: Awaited<ReturnType<typeof listBeds>>;
  /** Those that were not cleared. */
  plantings: (typeof plantings.$inferSelect)[];
  materials: Awaited<ReturnType<typeof listMaterials>>;
  notes: (typeof fieldNotes.$inferSelect)[];
  /** Oldest first, of the last {@link WEATHER_DAYS} days, those to plantings that were cleared included. */
  applications: (typeof applications.$inferSelect)[];
  /** Newest first. */
  plantTests: (typeof plantTests.$inferSelect)[];
  /** Newest first. */
  drainReadings: (typeof drainReadings.$inferSelect)[];
  waterings: (typeof waterings.$inferSelect)[];
  soilTests: (typeof soilTests.$inferSelect)[];
  structures: (typeof structures.$inferSelect)[];
  /** Newest first. */
  waterTests: (typeof waterTests.$inferSelect)[];
  /** Oldest first, of the last {@link SOIL_WATER_DAYS} days. */
  soilWater: Pick<typeof soilWaterReadings.$inferSelect, "bedId" | "at" | "kind" | "depthCm" | "value">[];
  temperatures: (typeof plantTemperatures.$inferSelect)[];
  /** Oldest first. */
  signs: (typeof signs.$inferSelect)[];
  /** How many photographs each sign has. */
  photos: Map<string, number>;
  /** Oldest first, of the last {@link WEATHER_DAYS} days. */
  sprays: (typeof sprays.$inferSelect)[];
  /** Oldest first, of plantings that stand. */
  harvests: (typeof harvests.$inferSelect)[];
  /** Oldest first. */
  works: (typeof works.$inferSelect)[];
  bedHistory: (typeof bedHistory.$inferSelect)[];
  /** Plantings that were cleared, with the day of their first pick where one is known. */
  cleared: ClearedPlanting[];
  bedPlans: (typeof bedPlans.$inferSelect)[];
  /** Not ended longer than {@link TRIAL_DAYS} days. */
  trials: (typeof trials.$inferSelect)[];
  trialValues: (typeof trialValues.$inferSelect)[];
  unanswered: OpenAdvisory[];
}

/** Reads a farm's facts as they are known at an instant. */
export async function readFacts(tx: Tx, at: OfFarm, asOf: string): Promise<FarmFacts> {
  const { officeId, farmId } = at;
  const since = addDays(asOf.slice(0, 10), -WEATHER_DAYS);
  const [office] = await tx
    .select({ settings: offices.settings })
    .from(offices)
    .where(eq(offices.id, officeId));
  const standing = await tx
    .select()
    .from(plantings)
    .where(and(eq(plantings.officeId, officeId), eq(plantings.farmId, farmId), isNull(plantings.endedOn)))
    // What was set out first is fed first; the shed is shared in this order.
    .orderBy(sql`${plantings.setOutOn} asc nulls last`, asc(plantings.sownOn), asc(plantings.id));
  const ids = standing.map((p) => p.id);
  const none = ids.length === 0;
  const told: FarmFacts = {
    farmId,
    asOf,
    settings: SettingsSchema.parse(office?.settings ?? {}),
    guides: (await ownGuides(tx, officeId)).map(({ guide }) => guide as Guide),
    sites: await readSites(tx, at, asOf, since),
    valves: await tx
      .select()
      .from(valves)
      .where(and(eq(valves.officeId, officeId), eq(valves.farmId, farmId)))
      .orderBy(asc(valves.id)),
    beds: await listBeds(tx, at),
    plantings: standing,
    materials: await listMaterials(tx, at),
    notes: none
      ? []
      : await tx
          .select()
          .from(fieldNotes)
          .where(and(eq(fieldNotes.officeId, officeId), inArray(fieldNotes.plantingId, ids)))
          .orderBy(asc(fieldNotes.onDay), asc(fieldNotes.recordedAt), asc(fieldNotes.id)),
    applications: await tx
      .select()
      .from(applications)
      .where(
        and(
          eq(applications.officeId, officeId),
          eq(applications.farmId, farmId),
          gte(applications.onDay, since),
        ),
      )
      .orderBy(asc(applications.onDay), asc(applications.id)),
    plantTests: none
      ? []
      : await tx
          .select()
          .from(plantTests)
          .where(and(eq(plantTests.officeId, officeId), inArray(plantTests.plantingId, ids)))
          .orderBy(desc(plantTests.sampledOn), asc(plantTests.id)),
    drainReadings: none
      ? []
      : await tx
          .select()
          .from(drainReadings)
          .where(and(eq(drainReadings.officeId, officeId), inArray(drainReadings.plantingId, ids)))
          .orderBy(desc(drainReadings.onDay), asc(drainReadings.id)),
    waterings: await tx
      .select()
      .from(waterings)
      .where(and(eq(waterings.officeId, officeId), eq(waterings.farmId, farmId), gte(waterings.onDay, since)))
      .orderBy(asc(waterings.onDay), asc(waterings.id)),
    soilTests: await tx
      .select()
      .from(soilTests)
      .where(and(eq(soilTests.officeId, officeId), eq(soilTests.farmId, farmId)))
      .orderBy(desc(soilTests.sampledOn), asc(soilTests.id)),
    structures: await tx
      .select()
      .from(structures)
      .where(and(eq(structures.officeId, officeId), eq(structures.farmId, farmId)))
      .orderBy(asc(structures.id)),
    waterTests: await tx
      .select()
      .from(waterTests)
      .where(and(eq(waterTests.officeId, officeId), eq(waterTests.farmId, farmId)))
      .orderBy(desc(waterTests.sampledOn), asc(waterTests.id)),
    soilWater: await tx
      .select()
      .from(soilWaterReadings)
      .where(
        and(
          eq(soilWaterReadings.officeId, officeId),
          eq(soilWaterReadings.farmId, farmId),
          lte(soilWaterReadings.at, asOf),
          gte(soilWaterReadings.at, `${addDays(asOf.slice(0, 10), -SOIL_WATER_DAYS)}T00:00:00Z`),
        ),
      )
      .orderBy(asc(soilWaterReadings.at), asc(soilWaterReadings.id)),
    temperatures: none
      ? []
      : await tx
          .select()
          .from(plantTemperatures)
          .where(
            and(
              eq(plantTemperatures.officeId, officeId),
              inArray(plantTemperatures.plantingId, ids),
              lte(plantTemperatures.at, asOf),
              gte(plantTemperatures.at, `${since}T00:00:00Z`),
            ),
          )
          .orderBy(asc(plantTemperatures.at)),
    signs: none
      ? []
      : await tx
          .select()
          .from(signs)
          .where(and(eq(signs.officeId, officeId), inArray(signs.plantingId, ids)))
          .orderBy(asc(signs.onDay), asc(signs.recordedAt), asc(signs.id)),
    photos: new Map(
      (
        await tx
          .select({ signId: photos.signId, n: count() })
          .from(photos)
          .where(and(eq(photos.officeId, officeId), eq(photos.farmId, farmId)))
          .groupBy(photos.signId)
      ).map(({ signId, n }) => [signId, n]),
    ),
    sprays: await tx
      .select()
      .from(sprays)
      .where(
        and(
          eq(sprays.officeId, officeId),
          eq(sprays.farmId, farmId),
          lte(sprays.at, asOf),
          gte(sprays.at, `${since}T00:00:00Z`),
        ),
      )
      .orderBy(asc(sprays.at), asc(sprays.id)),
    harvests: none
      ? []
      : await tx
          .select()
          .from(harvests)
          .where(and(eq(harvests.officeId, officeId), inArray(harvests.plantingId, ids)))
          .orderBy(asc(harvests.onDay), asc(harvests.recordedAt), asc(harvests.id)),
    works: await tx
      .select()
      .from(works)
      .where(and(eq(works.officeId, officeId), eq(works.farmId, farmId)))
      .orderBy(asc(works.onDay), asc(works.recordedAt), asc(works.id)),
    bedHistory: await tx
      .select()
      .from(bedHistory)
      .where(and(eq(bedHistory.officeId, officeId), eq(bedHistory.farmId, farmId)))
      .orderBy(asc(bedHistory.season), asc(bedHistory.crop), asc(bedHistory.id)),
    cleared: await readCleared(tx, at),
    bedPlans: await tx
      .select()
      .from(bedPlans)
      .where(and(eq(bedPlans.officeId, officeId), eq(bedPlans.farmId, farmId)))
      .orderBy(asc(bedPlans.season), asc(bedPlans.id)),
    ...(await readTrials(tx, at, addDays(asOf.slice(0, 10), -TRIAL_DAYS))),
    unanswered: await readUnanswered(tx, at, since),
  };
  return addSensed(tx, at, told, since);
}

/** The first pick is a note of it, else the first harvest written down. */
async function readCleared(tx: Tx, { officeId, farmId }: OfFarm): Promise<ClearedPlanting[]> {
  const firstOf = (table: typeof fieldNotes | typeof harvests, only = sql`true`) => sql`(
    select min(on_day)::text from ${table} f
    where f.office_id = ${plantings.officeId} and f.planting_id = ${plantings.id} and ${only})`;
  return tx
    .select({
      id: plantings.id,
      bedId: plantings.bedId,
      varietyName: plantings.varietyName,
      sownOn: plantings.sownOn,
      setOutOn: plantings.setOutOn,
      pickAt: plantings.pickAt,
      firstPickOn: sql<string | null>`coalesce(
        ${firstOf(fieldNotes, sql`f.kind = 'first-pick'`)}, ${firstOf(harvests)})`,
    })
    .from(plantings)
    .where(and(eq(plantings.officeId, officeId), eq(plantings.farmId, farmId), isNotNull(plantings.endedOn)))
    .orderBy(asc(plantings.sownOn), asc(plantings.id));
}

async function readTrials(tx: Tx, { officeId, farmId }: OfFarm, since: string) {
  const rows = await tx
    .select()
    .from(trials)
    .where(
      and(
        eq(trials.officeId, officeId),
        eq(trials.farmId, farmId),
        sql`coalesce(${trials.endedOn}, 'infinity') >= ${since}::date`,
      ),
    )
    .orderBy(asc(trials.madeAt), asc(trials.id));
  const ids = rows.map((t) => t.id);
  const values =
    ids.length === 0
      ? []
      : await tx
          .select()
          .from(trialValues)
          .where(and(eq(trialValues.officeId, officeId), inArray(trialValues.trialId, ids)))
          .orderBy(asc(trialValues.plotId), asc(trialValues.responseId));
  return { trials: rows, trialValues: values };
}

async function readSites(tx: Tx, { officeId, farmId }: OfFarm, asOf: string, since: string) {
  const rows = await tx
    .select()
    .from(sites)
    .where(and(eq(sites.officeId, officeId), eq(sites.farmId, farmId)));
  const known = new Map<string, SiteFacts>();
  for (const row of rows) {
    const today = localDay(asOf, row.timeZone);
    const ofSite = and(eq(weatherDays.officeId, officeId), eq(weatherDays.siteId, row.id));
    const days = await tx
      .select()
      .from(weatherDays)
      .where(and(ofSite, gte(weatherDays.date, since), lte(weatherDays.date, today)))
      .orderBy(asc(weatherDays.date));
    const forecast = await latestForecast(tx, { officeId, siteId: row.id, today }, asOf);
    known.set(row.id, {
      row,
      today,
      weather: days.map(weatherPart),
      forecast: forecast && forecastPart(forecast),
      climatology: await readClimatology(tx, officeId, row, Number(today.slice(0, 4))),
    });
  }
  return known;
}

/**
 * Daily extremes of the whole years before this one, put together by the database into the compact form the rules read.
 * Undefined where they span fewer than {@link FEWEST_CLIMATE_YEARS} years.
 */
async function readClimatology(
  tx: Tx,
  officeId: string,
  site: typeof sites.$inferSelect,
  thisYear: number,
): Promise<Climatology | undefined> {
  const years = await tx.execute<{ year: number; tMinC: (number | null)[]; tMaxC: (number | null)[] }>(sql`
    with span as (
      select min(date) as first from weather_days
      where office_id = ${officeId} and site_id = ${site.id} and date < make_date(${thisYear}, 1, 1)
    )
    select extract(year from d)::int as year,
      json_agg(w.t_min_c order by d) as "tMinC", json_agg(w.t_max_c order by d) as "tMaxC"
    from span
    cross join generate_series(date_trunc('year', span.first), make_date(${thisYear}, 1, 1) - 1, interval '1 day') as d
    left join weather_days w on w.office_id = ${officeId} and w.site_id = ${site.id} and w.date = d::date
    where span.first > make_date(${thisYear} - 200, 1, 1)
    group by 1 order by 1`);
  if (years.length < FEWEST_CLIMATE_YEARS) return undefined;
  return {
    stationId: site.stationId ?? site.id,
    years: years.map(({ year, tMinC, tMaxC }) => ({ year, tMinC, tMaxC })),
  };
}

/** Answering moves the status on, so what still says issued, read or superseded was never answered. */
async function readUnanswered(tx: Tx, { officeId, farmId }: OfFarm, since: string): Promise<OpenAdvisory[]> {
  const rows = await tx
    .select({
      ruleId: advisories.ruleId,
      subjectId: advisories.subjectId,
      issuedAt: advisories.issuedAt,
      expected: advisories.expected,
      status: advisories.status,
      replacedAt: sql<string | null>`lead(${advisories.issuedAt}) over (
        partition by ${advisories.ruleId}, ${advisories.subjectId} order by ${advisories.ledgerSeq})`,
    })
    .from(advisories)
    .where(
      and(
        eq(advisories.officeId, officeId),
        eq(advisories.farmId, farmId),
        ne(advisories.status, "withdrawn"),
        gte(advisories.issuedAt, `${since}T00:00:00Z`),
      ),
    )
    .orderBy(asc(advisories.ledgerSeq));
  return rows
    .filter(({ status }) => ["issued", "read", "superseded", "expired"].includes(status))
    .map(({ status: _, replacedAt, ...row }) => ({
      ...row,
      replacedAt: replacedAt === null ? null : new Date(replacedAt).toISOString(),
    }));
}

import {
  advisories,
  applications,
  farms,
  harvests,
  materialLots,
  materials,
  offices,
  plantings,
  sites,
  soilTests,
  sprays,
  type Tx,
  valves,
  waterings,
  waterTests,
  works,
} from "@pith/db";
import { addDays, type Language } from "@pith/rules";
import { and, asc, eq, gte, lte, notInArray } from "drizzle-orm";
import type { PgColumn } from "drizzle-orm/pg-core";
import { listBeds } from "../farms/listBeds.ts";
import type { OfFarm } from "../farms/ofFarm.ts";
import type { Season } from "./season.ts";

/** What was given or sprayed so long before a season can still bear on its harvests: the longest interval there is. */
const REACHES_BACK_DAYS = 366;
/** Sites lie up to 14 hours ahead of Greenwich and 12 behind. */
const OFFSET_DAYS = 1;

type OfFarmTable = { officeId: PgColumn; farmId: PgColumn };

export type SeasonFacts = Awaited<ReturnType<typeof gatherSeason>> & { language: Language };

/** Everything written down of a farm that a season's record is made of, oldest first. */
export async function gatherSeason(tx: Tx, { officeId, farmId }: OfFarm, season: Season) {
  const since = addDays(season.from, -REACHES_BACK_DAYS);
  const { to } = season;
  const of = (t: OfFarmTable) => and(eq(t.officeId, officeId), eq(t.farmId, farmId));
  const dated = (t: OfFarmTable & { onDay: PgColumn }) =>
    and(eq(t.officeId, officeId), eq(t.farmId, farmId), gte(t.onDay, since), lte(t.onDay, to));
  const sampled = (t: typeof soilTests | typeof waterTests) =>
    and(eq(t.officeId, officeId), eq(t.farmId, farmId), gte(t.sampledOn, since), lte(t.sampledOn, to));
  return {
    season,
    farm: (
      await tx
        .select()
        .from(farms)
        .where(and(eq(farms.officeId, officeId), eq(farms.id, farmId)))
    )[0],
    settings: (
      await tx.select({ settings: offices.settings }).from(offices).where(eq(offices.id, officeId))
    )[0]?.settings,
    sites: await tx.select().from(sites).where(of(sites)).orderBy(asc(sites.name), asc(sites.id)),
    valves: await tx.select().from(valves).where(of(valves)).orderBy(asc(valves.name)),
    beds: await listBeds(tx, { officeId, farmId }),
    plantings: await tx
      .select()
      .from(plantings)
      .where(of(plantings))
      .orderBy(asc(plantings.sownOn), asc(plantings.id)),
    materials: await tx.select().from(materials).where(of(materials)),
    deliveries: await tx.select().from(materialLots).where(of(materialLots)),
    applications: await tx
      .select()
      .from(applications)
      .where(dated(applications))
      .orderBy(asc(applications.onDay), asc(applications.recordedAt), asc(applications.id)),
    waterings: await tx
      .select()
      .from(waterings)
      .where(dated(waterings))
      .orderBy(asc(waterings.onDay), asc(waterings.recordedAt), asc(waterings.id)),
    harvests: await tx
      .select()
      .from(harvests)
      .where(dated(harvests))
      .orderBy(asc(harvests.onDay), asc(harvests.recordedAt), asc(harvests.id)),
    works: await tx
      .select()
      .from(works)
      .where(dated(works))
      .orderBy(asc(works.onDay), asc(works.recordedAt), asc(works.id)),
    sprays: await tx
      .select()
      .from(sprays)
      .where(
        and(
          eq(sprays.officeId, officeId),
          eq(sprays.farmId, farmId),
          gte(sprays.at, `${addDays(since, -OFFSET_DAYS)}T00:00:00Z`),
          lte(sprays.at, `${addDays(to, 1 + OFFSET_DAYS)}T00:00:00Z`),
        ),
      )
      .orderBy(asc(sprays.at), asc(sprays.id)),
    soilTests: await tx
      .select()
      .from(soilTests)
      .where(sampled(soilTests))
      .orderBy(asc(soilTests.sampledOn), asc(soilTests.id)),
    waterTests: await tx
      .select()
      .from(waterTests)
      .where(sampled(waterTests))
      .orderBy(asc(waterTests.sampledOn), asc(waterTests.id)),
    open: await tx
      .select({
        id: advisories.id,
        issuedAt: advisories.issuedAt,
        subjectKind: advisories.subjectKind,
        subjectId: advisories.subjectId,
        expected: advisories.expected,
        rendered: advisories.rendered,
      })
      .from(advisories)
      .where(
        and(
          eq(advisories.officeId, officeId),
          eq(advisories.farmId, farmId),
          notInArray(advisories.status, ["done", "not-done", "cannot", "withdrawn", "superseded"]),
        ),
      )
      .orderBy(asc(advisories.issuedAt), asc(advisories.id)),
  };
}

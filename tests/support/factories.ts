import { randomUUID } from "node:crypto";
import {
  beds,
  type Db,
  farms,
  materials,
  memberships,
  offices,
  plantings,
  sites,
  type Tx,
  valves,
  withOffice,
} from "@pith/db";

/**
 * Rows for tests, through the same door as everything else. Each takes the row it hangs on, and what should differ from
 * an ordinary one: `makePlanting(db, bed, { plants: 12 })`.
 */

type Row<T extends { $inferSelect: unknown }> = T["$inferSelect"];
type Over<T extends { $inferInsert: unknown }> = Partial<T["$inferInsert"]>;

/** Does something as the whole office: a lead of all farms. */
export const asOffice = <T>(db: Db, officeId: string, work: (tx: Tx) => Promise<T>): Promise<T> =>
  withOffice(db, { officeId, role: "lead", farmIds: "*", userId: null }, work);

export function makeOffice(db: Db, over: Over<typeof offices> = {}): Promise<Row<typeof offices>> {
  const id = over.id ?? randomUUID();
  return asOffice(db, id, (tx) =>
    one(
      tx
        .insert(offices)
        .values({ name: "Office of Aldertarn County", county: "Aldertarn", ...over, id })
        .returning(),
    ),
  );
}

export const makeAgent = (db: Db, office: { id: string }, over: Over<typeof memberships> = {}) =>
  asOffice(db, office.id, (tx) =>
    one(
      tx
        .insert(memberships)
        .values({ officeId: office.id, userId: randomUUID(), role: "agent", name: "Agent", ...over })
        .returning(),
    ),
  );

export const makeFarm = (db: Db, office: { id: string }, over: Over<typeof farms> = {}) =>
  asOffice(db, office.id, (tx) =>
    one(
      tx
        .insert(farms)
        .values({ officeId: office.id, name: "Low Fell", ...over })
        .returning(),
    ),
  );

type OfFarm = { officeId: string; farmId: string };
type Farm = { officeId: string; id: string };

/** A farmer of this farm. */
export const makeFarmer = (db: Db, farm: Farm, over: Over<typeof memberships> = {}) =>
  asOffice(db, farm.officeId, (tx) =>
    one(
      tx
        .insert(memberships)
        .values({
          officeId: farm.officeId,
          userId: randomUUID(),
          role: "farmer",
          farmIds: [farm.id],
          name: "Farmer",
          ...over,
        })
        .returning(),
    ),
  );

export const makeSite = (db: Db, farm: Farm, over: Over<typeof sites> = {}) =>
  asOffice(db, farm.officeId, (tx) =>
    one(
      tx
        .insert(sites)
        .values({
          officeId: farm.officeId,
          farmId: farm.id,
          name: "Home ground",
          latitudeDeg: 47.5,
          longitudeDeg: -93.1,
          elevationM: 410,
          timeZone: "America/Chicago",
          ...over,
        })
        .returning(),
    ),
  );

type InFarm = OfFarm & { id: string };

export const makeValve = (db: Db, site: InFarm, over: Over<typeof valves> = {}) =>
  asOffice(db, site.officeId, (tx) =>
    one(
      tx
        .insert(valves)
        .values({
          officeId: site.officeId,
          farmId: site.farmId,
          siteId: site.id,
          name: "Valve 1",
          method: "drip",
          flowLPerH: 600,
          efficiency: 0.9,
          ...over,
        })
        .returning(),
    ),
  );

export const makeBed = (db: Db, site: InFarm, over: Over<typeof beds> = {}) =>
  asOffice(db, site.officeId, (tx) =>
    one(
      tx
        .insert(beds)
        .values({
          officeId: site.officeId,
          farmId: site.farmId,
          siteId: site.id,
          name: "Bed 1",
          kind: "ground",
          lengthM: 30,
          widthM: 0.9,
          spacingM: 1.8,
          soil: { texture: "sandy-loam" },
          ...over,
        })
        .returning(),
    ),
  );

export const makePlanting = (db: Db, bed: InFarm, over: Over<typeof plantings> = {}) =>
  asOffice(db, bed.officeId, (tx) =>
    one(
      tx
        .insert(plantings)
        .values({
          officeId: bed.officeId,
          farmId: bed.farmId,
          bedId: bed.id,
          varietyName: "Tarn Early",
          species: "annuum",
          marketType: "bell",
          sownOn: "2026-03-20",
          plants: 130,
          rowsPerBed: 2,
          plantSpacingM: 0.45,
          feeding: { method: "banded", credits: [] },
          ...over,
        })
        .returning(),
    ),
  );

export const makeMaterial = (db: Db, farm: Farm, over: Over<typeof materials> = {}) =>
  asOffice(db, farm.officeId, (tx) =>
    one(
      tx
        .insert(materials)
        .values({
          officeId: farm.officeId,
          farmId: farm.id,
          kind: "calcium-nitrate",
          name: "Calcium nitrate 15.5-0-0",
          nPct: 15.5,
          p2o5Pct: 0,
          k2oPct: 0,
          soluble: true,
          ...over,
        })
        .returning(),
    ),
  );

async function one<T>(rows: Promise<T[]>): Promise<T> {
  const [row] = await rows;
  if (!row) throw new Error("nothing was inserted");
  return row;
}

import type { Records } from "@pith/contract";
import { beds, plantings, sites, sprays, type Tx } from "@pith/db";
import { addDays, instantAt, localDay, refuse, type Spray, sprayIntervals } from "@pith/rules";
import { and, asc, eq, inArray } from "drizzle-orm";
import { found } from "../errors.ts";
import type { OfFarm } from "../farms/ofFarm.ts";
import { sprayPart } from "../states/parts.ts";

/** Beds that the labels of what was sprayed there keep closed, to work and to harvest. */

interface SprayedBed {
  bedId: string;
  timeZone: string;
  sprays: Spray[];
}

async function sprayedBeds(tx: Tx, { officeId, farmId }: OfFarm, bedIds?: string[]): Promise<SprayedBed[]> {
  const rows = await tx
    .select({ spray: sprays, timeZone: sites.timeZone })
    .from(sprays)
    .innerJoin(beds, and(eq(beds.officeId, sprays.officeId), eq(beds.id, sprays.bedId)))
    .innerJoin(sites, and(eq(sites.officeId, beds.officeId), eq(sites.id, beds.siteId)))
    .where(
      and(eq(sprays.officeId, officeId), eq(sprays.farmId, farmId), bedIds && inArray(sprays.bedId, bedIds)),
    )
    .orderBy(asc(sprays.at), asc(sprays.id));
  const known = new Map<string, SprayedBed>();
  for (const { spray, timeZone } of rows) {
    const bed = known.get(spray.bedId) ?? { bedId: spray.bedId, timeZone, sprays: [] };
    bed.sprays.push(sprayPart(spray));
    known.set(spray.bedId, bed);
  }
  return [...known.values()];
}

/** Which beds are closed at an instant, and until when. */
export async function closedBeds(
  tx: Tx,
  at: OfFarm,
  asOf: string,
  bedIds?: string[],
): Promise<Records["closed"]> {
  return (await sprayedBeds(tx, at, bedIds))
    .map(({ bedId, timeZone, sprays }) => ({ bedId, ...sprayIntervals(sprays, timeZone, asOf) }))
    .filter(({ reEntryUntil, harvestFrom }) => reEntryUntil !== null || harvestFrom !== null);
}

/** Refuses a harvest that falls into the pre-harvest interval of a spray given before it or on its day. */
export async function requireHarvestOpen(tx: Tx, at: OfFarm, bedId: string, on: string): Promise<void> {
  const [bed] = await sprayedBeds(tx, at, [bedId]);
  if (!bed) return;
  const before = bed.sprays.filter((s) => localDay(s.at, bed.timeZone) <= on);
  const midnight = Date.parse(instantAt(addDays(on, 1), 0, bed.timeZone));
  const { harvestFrom } = sprayIntervals(before, bed.timeZone, new Date(midnight - 1).toISOString());
  if (harvestFrom !== null && harvestFrom > on) {
    refuse(
      "on",
      "lies in the pre-harvest interval of what was sprayed on this bed",
      `${harvestFrom} or later, as the label says`,
      on,
    );
  }
}

/** Refuses work on a day that a re-entry interval closes from its first hour to its last. */
export async function requireWorkOpen(tx: Tx, at: OfFarm, bedId: string, on: string): Promise<void> {
  const [bed] = await sprayedBeds(tx, at, [bedId]);
  if (!bed) return;
  const dawn = instantAt(on, 0, bed.timeZone);
  const { reEntryUntil } = sprayIntervals(bed.sprays, bed.timeZone, dawn);
  const night = instantAt(addDays(on, 1), 0, bed.timeZone);
  if (reEntryUntil !== null && Date.parse(reEntryUntil) >= Date.parse(night)) {
    refuse(
      "on",
      "lies in the re-entry interval of what was sprayed on this bed",
      `${localDay(reEntryUntil, bed.timeZone)} or later, as the label says`,
      on,
    );
  }
}

/** The bed a planting stands in. */
export async function bedOfPlanting(
  tx: Tx,
  { officeId, farmId }: OfFarm,
  plantingId: string,
): Promise<string> {
  const [row] = await tx
    .select({ bedId: plantings.bedId })
    .from(plantings)
    .where(and(eq(plantings.officeId, officeId), eq(plantings.farmId, farmId), eq(plantings.id, plantingId)));
  return found(row, "planting").bedId;
}

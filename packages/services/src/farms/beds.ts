import { type Bed, farmRoutes } from "@pith/contract";
import { bedCovers, bedMulches, beds, type Tx } from "@pith/db";
import { BedSchema, parseAtTheDoor, refuse } from "@pith/rules";
import { and, asc, eq } from "drizzle-orm";
import { bedPart } from "../states/parts.ts";
import type { BodyOf } from "../wellFormed.ts";
import { belongsHere } from "./belongsHere.ts";
import { type OfFarm, type Thing, verbsOf } from "./things.ts";

type Value = BodyOf<typeof farmRoutes.beds.add>;

/** A farm's beds with what stood over and lay on them. */
export async function listBeds(tx: Tx, { officeId, farmId }: OfFarm): Promise<Bed[]> {
  const rows = await tx
    .select()
    .from(beds)
    .where(and(eq(beds.officeId, officeId), eq(beds.farmId, farmId)))
    .orderBy(asc(beds.position), asc(beds.name), asc(beds.id));
  const covers = await tx
    .select()
    .from(bedCovers)
    .where(and(eq(bedCovers.officeId, officeId), eq(bedCovers.farmId, farmId)))
    .orderBy(asc(bedCovers.fromDay), asc(bedCovers.cover));
  const mulches = await tx
    .select()
    .from(bedMulches)
    .where(and(eq(bedMulches.officeId, officeId), eq(bedMulches.farmId, farmId)))
    .orderBy(asc(bedMulches.fromDay), asc(bedMulches.mulch));
  return rows.map(({ officeId: _, farmId: __, position: ___, ...bed }) => ({
    ...bed,
    covers: covers
      .filter((c) => c.bedId === bed.id)
      .map(({ cover, fromDay, toDay }) => ({ cover, from: fromDay, to: toDay })),
    mulches: mulches
      .filter((m) => m.bedId === bed.id)
      .map(({ mulch, fromDay, toDay }) => ({ mulch, from: fromDay, to: toDay })),
  }));
}

const bed: Thing<Bed, Value> = {
  one: "bed",
  routes: farmRoutes.beds,
  list: listBeds,
  save: async (tx, at, id, { covers, mulches, ...value }) => {
    await tx
      .insert(beds)
      .values({ ...at, id, ...value })
      .onConflictDoUpdate({ target: [beds.officeId, beds.id], set: value });
    await tx.delete(bedCovers).where(and(eq(bedCovers.officeId, at.officeId), eq(bedCovers.bedId, id)));
    await tx.delete(bedMulches).where(and(eq(bedMulches.officeId, at.officeId), eq(bedMulches.bedId, id)));
    if (covers.length > 0) {
      await tx
        .insert(bedCovers)
        .values(covers.map(({ cover, from, to }) => ({ ...at, bedId: id, cover, fromDay: from, toDay: to })));
    }
    if (mulches.length > 0) {
      await tx
        .insert(bedMulches)
        .values(
          mulches.map(({ mulch, from, to }) => ({ ...at, bedId: id, mulch, fromDay: from, toDay: to })),
        );
    }
  },
  check: async (tx, at, id, value) => {
    parseAtTheDoor(BedSchema, bedPart({ id, ...value }));
    checkPeriods(
      "covers",
      value.covers.map(({ cover, from, to }) => ({ what: cover, from, to })),
    );
    checkPeriods(
      "mulches",
      value.mulches.map(({ mulch, from, to }) => ({ what: mulch, from, to })),
    );
    await belongsHere(tx, at, "site", "siteId", value.siteId);
    await belongsHere(tx, at, "valve", "valveId", value.valveId);
  },
};

function checkPeriods(field: string, periods: { what: string; from: string; to: string | null }[]): void {
  for (const [i, { what, from, to }] of periods.entries()) {
    if (to !== null && to < from)
      refuse(`${field}.${i}.to`, "must not be before from", `${from} or later`, to);
    if (periods.slice(0, i).some((p) => p.what === what && p.from === from)) {
      refuse(`${field}.${i}.from`, "is listed twice for the same day", "one entry", from);
    }
  }
}

export const { add: addBed, change: changeBed } = verbsOf(bed);

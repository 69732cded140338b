import { type Bed, farmRoutes } from "@pith/contract";
import { bedCovers, bedMulches, beds } from "@pith/db";
import { BedSchema, parseAtTheDoor, refuse } from "@pith/rules";
import { and, eq } from "drizzle-orm";
import { bedPart } from "../states/parts.ts";
import type { BodyOf } from "../wellFormed.ts";
import { belongsHere } from "./belongsHere.ts";
import { listBeds } from "./listBeds.ts";
import { type Thing, verbsOf } from "./things.ts";

type Value = BodyOf<typeof farmRoutes.beds.add>;

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

export const { get: getBed, add: addBed, change: changeBed } = verbsOf(bed);

import { farmRoutes, type Valve } from "@pith/contract";
import { type Tx, valves } from "@pith/db";
import { and, asc, eq } from "drizzle-orm";
import type { BodyOf } from "../wellFormed.ts";
import { belongsHere } from "./belongsHere.ts";
import type { OfFarm } from "./ofFarm.ts";
import { type Thing, verbsOf } from "./things.ts";

/** A farm's valves. */
export async function listValves(tx: Tx, { officeId, farmId }: OfFarm): Promise<Valve[]> {
  const rows = await tx
    .select()
    .from(valves)
    .where(and(eq(valves.officeId, officeId), eq(valves.farmId, farmId)))
    .orderBy(asc(valves.name), asc(valves.id));
  return rows.map(({ officeId: _, farmId: __, ...valve }) => valve);
}

const valve: Thing<Valve, BodyOf<typeof farmRoutes.valves.add>> = {
  one: "valve",
  routes: farmRoutes.valves,
  list: listValves,
  save: (tx, at, id, value) =>
    tx
      .insert(valves)
      .values({ ...at, id, ...value })
      .onConflictDoUpdate({ target: [valves.officeId, valves.id], set: value }),
  check: (tx, at, _id, value) => belongsHere(tx, at, "site", "siteId", value.siteId),
};

export const { get: getValve, add: addValve, change: changeValve } = verbsOf(valve);

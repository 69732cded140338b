import { type Delivery, recordRoutes } from "@pith/contract";
import { materialLots, materials, type Tx } from "@pith/db";
import { and, desc, eq } from "drizzle-orm";
import { nowOf } from "../context.ts";
import { belongsHere } from "../farms/belongsHere.ts";
import type { OfFarm } from "../farms/ofFarm.ts";
import { type RecordKind, verbsOf } from "./record.ts";
import { moveStock } from "./stock.ts";

/** A delivery with what is left of it; null where the stock was not counted. */
export type DeliveryWithRest = Delivery & { leftKg: number | null };

/**
 * Deliveries of a farm's shed, newest first. The oldest is used first, so what a material's stock still holds is of its
 * newest deliveries.
 */
export async function listDeliveries(tx: Tx, { officeId, farmId }: OfFarm): Promise<DeliveryWithRest[]> {
  const rows = await tx
    .select()
    .from(materialLots)
    .where(and(eq(materialLots.officeId, officeId), eq(materialLots.farmId, farmId)))
    .orderBy(desc(materialLots.receivedOn), desc(materialLots.recordedAt), desc(materialLots.id));
  const stocks = await tx
    .select({ id: materials.id, stockKg: materials.stockKg })
    .from(materials)
    .where(and(eq(materials.officeId, officeId), eq(materials.farmId, farmId)));
  const unassigned = new Map(stocks.map(({ id, stockKg }) => [id, stockKg]));
  return rows.map(({ id, materialId, receivedOn, lot, kg, pricePerKg, bestBefore }) => {
    const held = unassigned.get(materialId) ?? null;
    const leftKg = held === null ? null : Math.min(held, kg);
    if (held !== null && leftKg !== null) unassigned.set(materialId, held - leftKg);
    return { id, materialId, receivedOn, lot, kg, pricePerKg, bestBefore, leftKg };
  });
}

/** What was last paid is what more of it costs, until somebody says otherwise. */
async function priceFromNewest(tx: Tx, at: OfFarm, materialId: string): Promise<void> {
  const [newest] = (await listDeliveries(tx, at)).filter(
    (d) => d.materialId === materialId && d.pricePerKg !== null,
  );
  if (!newest) return;
  await tx
    .update(materials)
    .set({ pricePerKg: newest.pricePerKg })
    .where(
      and(eq(materials.officeId, at.officeId), eq(materials.farmId, at.farmId), eq(materials.id, materialId)),
    );
}

const delivery: RecordKind<Delivery, typeof materialLots> = {
  one: "delivery",
  route: recordRoutes.deliveries.add,
  table: materialLots,
  check: (tx, at, { materialId }) => belongsHere(tx, at, "material", "materialId", materialId),
  async add(tx, ctx, farmId, value) {
    const id = globalThis.crypto.randomUUID();
    const at = { officeId: ctx.officeId, farmId };
    await tx
      .insert(materialLots)
      .values({ ...at, id, ...value, recordedBy: ctx.actor.userId, recordedAt: nowOf(ctx) });
    await moveStock(tx, at, value.materialId, value.kg);
    await priceFromNewest(tx, at, value.materialId);
    return { id, ...value };
  },
  async removed(tx, ctx, { farmId, materialId, kg }) {
    const at = { officeId: ctx.officeId, farmId };
    await moveStock(tx, at, materialId, -kg);
    await priceFromNewest(tx, at, materialId);
  },
};

export const { add: addDelivery, remove: removeDelivery } = verbsOf(delivery);

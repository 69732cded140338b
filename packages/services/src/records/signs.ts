import { type Photo, recordRoutes, type Sign } from "@pith/contract";
import { photos, signs, type Tx } from "@pith/db";
import { and, asc, desc, eq } from "drizzle-orm";
import { nowOf } from "../context.ts";
import { belongsHere } from "../farms/belongsHere.ts";
import type { OfFarm } from "../farms/ofFarm.ts";
import { eraseText, keepText, readTexts } from "../texts.ts";
import { earlier } from "./pages.ts";
import { type RecordKind, verbsOf } from "./record.ts";

type Row = typeof signs.$inferSelect;

/** Signs of a farm, or of one planting, newest first, with the photographs of each. */
export async function listSigns(
  tx: Tx,
  { officeId, farmId }: OfFarm,
  plantingId: string | undefined,
  most: number,
  before: string | undefined,
): Promise<(Sign & { photos: Photo[] })[]> {
  const rows = await tx
    .select()
    .from(signs)
    .where(
      and(
        eq(signs.officeId, officeId),
        eq(signs.farmId, farmId),
        plantingId === undefined ? undefined : eq(signs.plantingId, plantingId),
        earlier(signs.onDay, before),
      ),
    )
    .orderBy(desc(signs.onDay), desc(signs.recordedAt))
    .limit(most);
  const words = await readTexts(
    tx,
    officeId,
    rows.map((r) => r.textId),
  );
  const pictures = await tx
    .select({
      id: photos.id,
      signId: photos.signId,
      mediaType: photos.mediaType,
      recordedAt: photos.recordedAt,
    })
    .from(photos)
    .where(and(eq(photos.officeId, officeId), eq(photos.farmId, farmId)))
    .orderBy(asc(photos.recordedAt), asc(photos.id));
  return rows.map((row) => ({
    ...viewOf(row, row.textId === null ? null : (words.get(row.textId) ?? null)),
    photos: pictures.filter((p) => p.signId === row.id),
  }));
}

const viewOf = (row: Row, text: string | null): Sign =>
  ({
    id: row.id,
    plantingId: row.plantingId,
    on: row.onDay,
    sign: row.sign,
    part: row.part,
    pattern: row.pattern,
    speed: row.speed,
    plantsPct: row.plantsPct,
    text,
  }) as Sign;

const sign: RecordKind<Sign, typeof signs> = {
  one: "sign",
  route: recordRoutes.signs.add,
  table: signs,
  check: (tx, at, { plantingId }) => belongsHere(tx, at, "planting", "plantingId", plantingId),
  async add(tx, ctx, farmId, { on, text, ...value }) {
    const id = globalThis.crypto.randomUUID();
    const kept = await keepText(tx, ctx, farmId, text);
    await tx.insert(signs).values({
      officeId: ctx.officeId,
      farmId,
      id,
      onDay: on,
      ...value,
      textId: kept?.id ?? null,
      recordedBy: ctx.actor.userId,
      recordedAt: nowOf(ctx),
    });
    return { id, on, text, ...value };
  },
  async removed(tx, ctx, { textId }) {
    if (textId) await eraseText(tx, ctx, textId);
  },
};

export const { add: addSign, remove: removeSign } = verbsOf(sign);

import { type Photo, recordRoutes } from "@pith/contract";
import { photos, signs } from "@pith/db";
import { refuse } from "@pith/rules";
import { and, count, eq } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, forOffice, nowOf, requireOwnFarm } from "../context.ts";
import { adviseFarm } from "../drafts/adviseFarm.ts";
import { found, ServiceError } from "../errors.ts";
import { lockFarm } from "../farms/requireFarm.ts";
import { bodyOf } from "../wellFormed.ts";

const MOST_BYTES = 4_000_000;
/** Of one sign. */
const MOST_PHOTOS = 10;

/** The first bytes of each kind of picture; WebP names itself four bytes on. */
const MAGIC = {
  "image/jpeg": [0xff, 0xd8, 0xff],
  "image/png": [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a],
  "image/webp": [0x52, 0x49, 0x46, 0x46],
} as const;

/** Attaches a photograph to a sign. It stays outside the ledger: states and entries count it, no more. */
export async function addPhoto(ctx: Ctx, farmId: string, signId: string, raw: unknown): Promise<Photo> {
  requireOwnFarm(ctx, farmId);
  const { mediaType, dataBase64 } = bodyOf(recordRoutes.photos.add, raw);
  const bytes = Uint8Array.from(atob(dataBase64), (c) => c.charCodeAt(0));
  if (bytes.length > MOST_BYTES) {
    refuse("dataBase64", "holds too large a picture", "at most 4 MB", `${bytes.length} bytes`);
  }
  const webp = mediaType !== "image/webp" || String.fromCharCode(...bytes.slice(8, 12)) === "WEBP";
  if (!webp || MAGIC[mediaType].some((byte, i) => bytes[i] !== byte)) {
    refuse("dataBase64", `is no ${mediaType} picture`, "a picture of the kind that mediaType names");
  }
  return forOffice(ctx, async (tx) => {
    await lockFarm(tx, ctx, farmId);
    const [sign] = await tx
      .select({ id: signs.id })
      .from(signs)
      .where(and(eq(signs.officeId, ctx.officeId), eq(signs.farmId, farmId), eq(signs.id, signId)));
    found(sign, "sign");
    const [held] = await tx
      .select({ n: count() })
      .from(photos)
      .where(and(eq(photos.officeId, ctx.officeId), eq(photos.signId, signId)));
    if ((held?.n ?? 0) >= MOST_PHOTOS) {
      throw new ServiceError("conflict", `A sign keeps at most ${MOST_PHOTOS} photographs.`);
    }
    const id = globalThis.crypto.randomUUID();
    const recordedAt = nowOf(ctx);
    await tx.insert(photos).values({
      officeId: ctx.officeId,
      farmId,
      id,
      signId,
      mediaType,
      bytes,
      recordedBy: ctx.actor.userId,
      recordedAt,
    });
    await recordAudit(tx, ctx, { action: "photo.add", entity: "photos", entityId: id });
    await adviseFarm(tx, ctx, farmId);
    return { id, signId, mediaType, recordedAt };
  });
}

/** A photograph's bytes. */
export async function getPhoto(
  ctx: Ctx,
  farmId: string,
  id: string,
): Promise<{ mediaType: Photo["mediaType"]; bytes: Uint8Array<ArrayBuffer> }> {
  requireOwnFarm(ctx, farmId);
  const [row] = await forOffice(ctx, (tx) =>
    tx
      .select({ mediaType: photos.mediaType, bytes: photos.bytes })
      .from(photos)
      .where(and(eq(photos.officeId, ctx.officeId), eq(photos.farmId, farmId), eq(photos.id, id))),
  );
  const { mediaType, bytes } = found(row, "photograph");
  return { mediaType, bytes: new Uint8Array(bytes) };
}

/** Takes a photograph back: a farmer their own, an agent any. */
export async function removePhoto(ctx: Ctx, farmId: string, id: string): Promise<{ done: true }> {
  requireOwnFarm(ctx, farmId);
  return forOffice(ctx, async (tx) => {
    await lockFarm(tx, ctx, farmId);
    const ofPhoto = and(eq(photos.officeId, ctx.officeId), eq(photos.farmId, farmId), eq(photos.id, id));
    const [row] = await tx.select({ recordedBy: photos.recordedBy }).from(photos).where(ofPhoto);
    const { recordedBy } = found(row, "photograph");
    if (ctx.actor.role === "farmer" && recordedBy !== ctx.actor.userId) {
      throw new ServiceError("forbidden", "Only who took this photograph, or an agent, may take it back.");
    }
    await tx.delete(photos).where(ofPhoto);
    await recordAudit(tx, ctx, { action: "photo.remove", entity: "photos", entityId: id });
    await adviseFarm(tx, ctx, farmId);
    return { done: true as const };
  });
}

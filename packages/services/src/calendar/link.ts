import { privateLinks, withUser } from "@pith/db";
import { and, eq, isNull } from "drizzle-orm";
import { type Ctx, inOffice, nowOf } from "../context.ts";
import { newLinkSecret } from "../delivery/secrets.ts";
import { notFound } from "../errors.ts";
import { requireFarm } from "../farms/requireFarm.ts";
import { sha256Hex } from "../ledger/canonical.ts";

/** The address of one person's calendar of one farm. It lets in whoever has it, so it is shown once and kept as a hash. */

const standing = (ctx: Ctx, farmId: string) =>
  and(
    eq(privateLinks.officeId, ctx.officeId),
    eq(privateLinks.userId, ctx.actor.userId),
    eq(privateLinks.farmId, farmId),
    eq(privateLinks.kind, "calendar"),
    isNull(privateLinks.revokedAt),
  );

export async function getCalendarLink(
  ctx: Ctx,
  farmId: string,
): Promise<{ link: { madeAt: string; lastUsedAt: string | null } | null }> {
  await inOffice(ctx, (tx) => requireFarm(tx, ctx, farmId));
  const [row] = await withUser(ctx.db, ctx.actor.userId, (tx) =>
    tx
      .select({ madeAt: privateLinks.madeAt, lastUsedAt: privateLinks.lastUsedAt })
      .from(privateLinks)
      .where(standing(ctx, farmId)),
  );
  return { link: row ?? null };
}

/** A new address; the one before stops in the same moment. */
export async function makeCalendarLink(ctx: Ctx, farmId: string): Promise<{ path: string }> {
  await inOffice(ctx, (tx) => requireFarm(tx, ctx, farmId));
  const secret = newLinkSecret();
  const secretSha256 = await sha256Hex(secret);
  const at = nowOf(ctx);
  await withUser(ctx.db, ctx.actor.userId, async (tx) => {
    await tx.update(privateLinks).set({ revokedAt: at }).where(standing(ctx, farmId));
    await tx.insert(privateLinks).values({
      officeId: ctx.officeId,
      userId: ctx.actor.userId,
      farmId,
      kind: "calendar",
      secretSha256,
      madeAt: at,
    });
  });
  return { path: `/v1/calendars/${secret}.ics` };
}

export async function revokeCalendarLink(ctx: Ctx, farmId: string): Promise<{ done: true }> {
  await inOffice(ctx, (tx) => requireFarm(tx, ctx, farmId));
  const gone = await withUser(ctx.db, ctx.actor.userId, (tx) =>
    tx
      .update(privateLinks)
      .set({ revokedAt: nowOf(ctx) })
      .where(standing(ctx, farmId))
      .returning({ id: privateLinks.id }),
  );
  if (gone.length === 0) throw notFound("calendar address");
  return { done: true };
}

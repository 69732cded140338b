import { idempotencyKeys, onceOnly, type Tx } from "@pith/db";
import { and, eq, isNull, lt } from "drizzle-orm";
import { type Ctx, inOffice, nowOf } from "../context.ts";

/** How long a key is remembered, and how long a request without an end counts as under way (both common practice). */
const KEY_LASTS_HOURS = 24;
const UNDER_WAY_SECONDS = 120;

/** What stands of a request with this key. */
export type Begun =
  /** Nothing yet: do it, holding this claim. */
  | { kind: "go"; claim: string }
  /** It was answered; `sealed` is the answer. */
  | { kind: "answered"; sealed: string }
  /** It is being done by another try, or was until just now. */
  | { kind: "under-way" }
  /** The key came with another request. */
  | { kind: "other-request" }
  /** It was done, but the server fell before the answer was kept. */
  | { kind: "answer-lost" };

/**
 * Puts the request's row down before anything is done, or says what stands there already. A try that ended without a word
 * is taken over once its time is up, if the mark on its row says that it changed nothing; should it wake again, it has
 * lost its claim and can commit nothing.
 */
export function beginRequest(ctx: Ctx, keySha256: string, requestSha256: string): Promise<Begun> {
  const claim = globalThis.crypto.randomUUID();
  const mine = thisKey(ctx, keySha256);
  return inOffice(ctx, async (tx): Promise<Begun> => {
    await tx
      .delete(idempotencyKeys)
      .where(and(mine, lt(idempotencyKeys.createdAt, before(ctx, KEY_LASTS_HOURS * 3600))));
    const [fresh] = await tx
      .insert(idempotencyKeys)
      .values({
        officeId: ctx.officeId,
        userId: ctx.actor.userId,
        key: keySha256,
        requestSha256,
        claim,
        createdAt: nowOf(ctx),
      })
      .onConflictDoNothing()
      .returning({ claim: idempotencyKeys.claim });
    if (fresh) return { kind: "go", claim };
    const [known] = await tx.select().from(idempotencyKeys).where(mine);
    if (!known) return { kind: "under-way" };
    if (known.requestSha256 !== requestSha256) return { kind: "other-request" };
    if (known.response) return { kind: "answered", sealed: String(known.response.sealed) };
    if (Date.parse(known.createdAt) > ctx.now().getTime() - UNDER_WAY_SECONDS * 1000)
      return { kind: "under-way" };
    if (known.effect) return { kind: "answer-lost" };
    return (await takeOver(tx, ctx, keySha256, known.claim, claim))
      ? { kind: "go", claim }
      : { kind: "under-way" };
  });
}

/** Waits for a transaction of the earlier try that is just committing, and then sees its mark. */
async function takeOver(tx: Tx, ctx: Ctx, keySha256: string, from: string, claim: string): Promise<boolean> {
  const taken = await tx
    .update(idempotencyKeys)
    .set({ claim, createdAt: nowOf(ctx) })
    .where(
      and(
        thisKey(ctx, keySha256),
        eq(idempotencyKeys.claim, from),
        eq(idempotencyKeys.effect, false),
        isNull(idempotencyKeys.response),
      ),
    )
    .returning({ claim: idempotencyKeys.claim });
  return taken.length > 0;
}

/** The same person at work, with everything they change marked on the request's key. */
export const heldBy = (ctx: Ctx, keySha256: string, claim: string): Ctx => ({
  ...ctx,
  db: onceOnly(ctx.db, { keySha256, claim }),
});

/** The answer stands for the next try. */
export const keepAnswer = (ctx: Ctx, keySha256: string, claim: string, sealed: string): Promise<void> =>
  inOffice(ctx, async (tx) => {
    await tx
      .update(idempotencyKeys)
      .set({ response: { sealed } })
      .where(and(thisKey(ctx, keySha256), eq(idempotencyKeys.claim, claim)));
  });

/** It was refused and changed nothing: the key is free again, so that the next try is a first one. */
export const letGo = (ctx: Ctx, keySha256: string, claim: string): Promise<void> =>
  inOffice(ctx, async (tx) => {
    await tx
      .delete(idempotencyKeys)
      .where(
        and(thisKey(ctx, keySha256), eq(idempotencyKeys.claim, claim), eq(idempotencyKeys.effect, false)),
      );
  });

const thisKey = ({ officeId, actor }: Ctx, keySha256: string) =>
  and(
    eq(idempotencyKeys.officeId, officeId),
    eq(idempotencyKeys.userId, actor.userId),
    eq(idempotencyKeys.key, keySha256),
  );

const before = (ctx: Ctx, seconds: number): string =>
  new Date(ctx.now().getTime() - seconds * 1000).toISOString();

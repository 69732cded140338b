import { type Tx, texts } from "@pith/db";
import { and, eq, inArray } from "drizzle-orm";
import type { Ctx } from "./context.ts";
import { randomSalt, saltedHash } from "./ledger/canonical.ts";

/** People's own words, kept apart so that they can be erased; the ledger holds their salted hash. */

/** Keeps a text; null where nothing was said. */
export async function keepText(
  tx: Tx,
  ctx: Ctx,
  farmId: string,
  words: string | null,
): Promise<{ id: string; sha256: string } | null> {
  if (words === null || words === "") return null;
  const id = globalThis.crypto.randomUUID();
  const salt = randomSalt();
  await tx.insert(texts).values({ officeId: ctx.officeId, id, farmId, salt, bytes: words });
  return { id, sha256: await saltedHash(salt, words) };
}

/** The words of the given texts that were not erased. */
export async function readTexts(
  tx: Tx,
  officeId: string,
  ids: readonly (string | null)[],
): Promise<Map<string, string>> {
  const wanted = ids.filter((id) => id !== null);
  if (wanted.length === 0) return new Map();
  const rows = await tx
    .select({ id: texts.id, words: texts.bytes })
    .from(texts)
    .where(and(eq(texts.officeId, officeId), inArray(texts.id, wanted)));
  return new Map(rows.flatMap(({ id, words }) => (words === null ? [] : [[id, words] as const])));
}

/** Erases a text with its salt: the ledger's hash of it still stands and says nothing any more. */
export async function eraseText(tx: Tx, ctx: Ctx, id: string): Promise<void> {
  await tx
    .update(texts)
    .set({ salt: null, bytes: null, erasedAt: ctx.now().toISOString() })
    .where(and(eq(texts.officeId, ctx.officeId), eq(texts.id, id)));
}

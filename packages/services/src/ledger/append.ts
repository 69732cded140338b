import { ledgerEntries, ledgerHeads, ledgerStates, type Tx } from "@pith/db";
import type { State } from "@pith/rules";
import { eq } from "drizzle-orm";
import { type Ctx, nowOf } from "../context.ts";
import { type EntryBody, type EntryFacts, NO_HASH } from "./body.ts";
import { canonicalText, sha256Hex } from "./canonical.ts";
import { rulesManifest, runtimeName } from "./origin.ts";

/** Keeps a state under its hash, once. */
export async function keepState(tx: Tx, officeId: string, state: State): Promise<string> {
  const text = canonicalText(state);
  const sha256 = await sha256Hex(text);
  await tx.insert(ledgerStates).values({ officeId, sha256, state: text }).onConflictDoNothing();
  return sha256;
}

/**
 * Appends one entry to the office's chain, in the caller's transaction, and hands its number back. Everything that
 * needs no number is written before; what does is written by `write` with number and instant in hand, so that both stand
 * alike in entry and row and that the head's row,
 * the one place where a whole office waits for each other, is the last lock taken and is held the shortest.
 */
export async function append(
  tx: Tx,
  ctx: Ctx,
  facts: EntryFacts,
  write: (entry: { seq: number; at: string }) => Promise<void>,
): Promise<number> {
  const { officeId } = ctx;
  const manifest = await rulesManifest();
  const head = await lockHead(tx, officeId);
  const seq = head.seq + 1;
  const body: EntryBody = {
    v: 2,
    office: officeId,
    seq,
    at: nowOf(ctx),
    actor: ctx.actor.userId,
    ...facts,
    rulesManifest: manifest,
    rulesBundle: ctx.ledger?.rulesBundle ?? null,
    runtime: runtimeName(),
    prev: head.hash,
  };
  const text = canonicalText(body);
  const hash = await sha256Hex(text);
  await tx.insert(ledgerEntries).values({
    officeId,
    seq,
    farmId: body.farm,
    kind: body.kind,
    body: text,
    prevHash: body.prev,
    hash,
    at: body.at,
  });
  await write({ seq, at: body.at });
  await tx.update(ledgerHeads).set({ seq, hash }).where(eq(ledgerHeads.officeId, officeId));
  return seq;
}

async function lockHead(tx: Tx, officeId: string): Promise<{ seq: number; hash: string }> {
  const locked = () => tx.select().from(ledgerHeads).where(eq(ledgerHeads.officeId, officeId)).for("update");
  const [head] = await locked();
  if (head) return head;
  // The office's first entry. Two firsts at once: the second waits here and then finds the first one's head.
  await tx.insert(ledgerHeads).values({ officeId, seq: 0, hash: NO_HASH }).onConflictDoNothing();
  const [begun] = await locked();
  if (!begun) throw new Error("the head of the ledger could not be locked");
  return begun;
}

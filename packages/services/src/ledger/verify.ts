import {
  advisories,
  answers,
  ledgerCheckpoints,
  ledgerEntries,
  ledgerHeads,
  ledgerOrigins,
  ledgerStates,
  type Tx,
  texts,
} from "@pith/db";
import { and, asc, eq, gt, inArray, or } from "drizzle-orm";
import type { BesideRows } from "./beside.ts";
import { type ChainSource, type EntryRow, namedIn, type Walked, walkChain } from "./chain.ts";
import { readCheckpoint } from "./checkpoint.ts";

/** Walks an office's chain in the database, with the checkpoints that the office keeps beside it. */
export async function verifyChain(tx: Tx, officeId: string): Promise<Walked> {
  const kept = await tx
    .select({ document: ledgerCheckpoints.document })
    .from(ledgerCheckpoints)
    .where(eq(ledgerCheckpoints.officeId, officeId))
    .orderBy(asc(ledgerCheckpoints.madeAt));
  const checkpoints = kept.flatMap(({ document }) => readCheckpoint(document) ?? []);
  return walkChain(await chainIn(tx, officeId), checkpoints);
}

/** An office's chain as it lies in the database. */
export async function chainIn(tx: Tx, officeId: string): Promise<ChainSource> {
  return {
    officeId,
    origins: await tx.select().from(ledgerOrigins).where(eq(ledgerOrigins.officeId, officeId)),
    entriesAfter: (seq, limit) =>
      tx
        .select()
        .from(ledgerEntries)
        .where(and(eq(ledgerEntries.officeId, officeId), gt(ledgerEntries.seq, seq)))
        .orderBy(asc(ledgerEntries.seq))
        .limit(limit),
    stateText: async (sha256) => {
      const [stored] = await tx
        .select({ state: ledgerStates.state })
        .from(ledgerStates)
        .where(and(eq(ledgerStates.officeId, officeId), eq(ledgerStates.sha256, sha256)));
      return stored?.state;
    },
    beside: (page) => besideIn(tx, officeId, page),
    head: async () => (await tx.select().from(ledgerHeads).where(eq(ledgerHeads.officeId, officeId)))[0],
  };
}

const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;

async function besideIn(tx: Tx, officeId: string, page: EntryRow[]): Promise<BesideRows> {
  if (page.length === 0) return { advisories: [], answers: [], texts: new Map() };
  const seqs = page.map((row) => row.seq);
  // What is no id any more names nothing; that its entry was changed, its hash says.
  const withdrawn = page
    .flatMap((row) => (row.kind === "withdrawn" ? namedIn(row.body, "advisory") : []))
    .filter((id) => UUID.test(id));
  const advised = await tx
    .select()
    .from(advisories)
    .where(
      and(
        eq(advisories.officeId, officeId),
        or(
          inArray(advisories.ledgerSeq, seqs),
          withdrawn.length > 0 ? inArray(advisories.id, withdrawn) : undefined,
        ),
      ),
    );
  const answered = await tx
    .select()
    .from(answers)
    .where(and(eq(answers.officeId, officeId), inArray(answers.ledgerSeq, seqs)));
  const textIds = [
    ...advised.flatMap((a) => [a.noteTextId, a.withdrawnTextId]),
    ...answered.map((a) => a.reasonTextId),
  ].filter((id) => id !== null);
  return { advisories: advised, answers: answered, texts: await textsIn(tx, officeId, textIds) };
}

/** People's words with their salts. */
export async function textsIn(tx: Tx, officeId: string, ids: string[]): Promise<BesideRows["texts"]> {
  if (ids.length === 0) return new Map();
  const rows = await tx
    .select({ id: texts.id, salt: texts.salt, bytes: texts.bytes })
    .from(texts)
    .where(and(eq(texts.officeId, officeId), inArray(texts.id, ids)));
  return new Map(rows.map(({ id, ...text }) => [id, text]));
}

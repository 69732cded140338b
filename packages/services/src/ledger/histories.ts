import { ledgerHistories, ledgerHistoryEntries, ledgerStates, type Tx } from "@pith/db";
import { and, asc, count, desc, eq } from "drizzle-orm";
import { type Ctx, forOffice, inOffice } from "../context.ts";
import { found } from "../errors.ts";
import type { EntryBody } from "./body.ts";
import { readCheckpoint } from "./checkpoint.ts";
import { type HistoryVerdict, verifyHistory } from "./history.ts";
import { textsIn } from "./verify.ts";
import { summaryOf } from "./wireEntry.ts";

/** What other offices' ledgers say of farms that moved here. A farmer sees those of their farms. */
export async function listHistories(ctx: Ctx) {
  return inOffice(ctx, async (tx) => {
    const rows = await tx
      .select()
      .from(ledgerHistories)
      .where(eq(ledgerHistories.officeId, ctx.officeId))
      .orderBy(desc(ledgerHistories.takenInAt), asc(ledgerHistories.id));
    const counts = await tx
      .select({ id: ledgerHistoryEntries.historyId, entries: count() })
      .from(ledgerHistoryEntries)
      .where(eq(ledgerHistoryEntries.officeId, ctx.officeId))
      .groupBy(ledgerHistoryEntries.historyId);
    return { histories: rows.map((row) => viewOf(row, counts.find((c) => c.id === row.id)?.entries ?? 0)) };
  });
}

/** Its entries, oldest first. */
export async function getHistory(ctx: Ctx, id: string) {
  return inOffice(ctx, async (tx) => {
    const { history, entries } = await readHistory(tx, ctx, id);
    return {
      ...viewOf(history, entries.length),
      list: entries.map(({ seq, hash, body }) => {
        const { at, kind, ...rest } = JSON.parse(body) as EntryBody;
        return { seq, at, kind, hash, summary: summaryOf({ at, kind, ...rest }) };
      }),
    };
  });
}

/** Holds every entry against the checkpoint of the office that it came from. */
export async function verifyKeptHistory(ctx: Ctx, id: string): Promise<HistoryVerdict> {
  // Seen as the person first; the states that the entries name are the office's to read.
  await inOffice(ctx, (tx) => readHistory(tx, ctx, id));
  return forOffice(ctx, async (tx) => {
    const { history, entries } = await readHistory(tx, ctx, id);
    return verifyHistory({
      history,
      entries,
      stateText: async (sha256) => {
        const [stored] = await tx
          .select({ state: ledgerStates.state })
          .from(ledgerStates)
          .where(and(eq(ledgerStates.officeId, ctx.officeId), eq(ledgerStates.sha256, sha256)));
        return stored?.state;
      },
      texts: await textsIn(
        tx,
        ctx.officeId,
        entries.flatMap(({ textId }) => textId ?? []),
      ),
    });
  });
}

async function readHistory(tx: Tx, { officeId }: Ctx, id: string) {
  const [history] = await tx
    .select()
    .from(ledgerHistories)
    .where(and(eq(ledgerHistories.officeId, officeId), eq(ledgerHistories.id, id)));
  const entries = await tx
    .select()
    .from(ledgerHistoryEntries)
    .where(and(eq(ledgerHistoryEntries.officeId, officeId), eq(ledgerHistoryEntries.historyId, id)))
    .orderBy(asc(ledgerHistoryEntries.seq));
  return { history: found(history, "history"), entries };
}

function viewOf(row: typeof ledgerHistories.$inferSelect, entries: number) {
  const { id, farmId, fromOffice, fromOfficeName, takenInAt } = row;
  const checkpoint = found(readCheckpoint(row.checkpoint), "checkpoint");
  return { id, farmId, fromOffice, fromOfficeName, takenInAt, entries, checkpoint };
}

import { adviceRoutes, type LedgerEntry } from "@pith/contract";
import { advisories, ledgerEntries, type Tx } from "@pith/db";
import { and, desc, eq, inArray, lt } from "drizzle-orm";
import { z } from "zod";
import { type Ctx, inOffice, requireAgent } from "../context.ts";
import { cursorOf, pageOf, placeAfter } from "../cursor.ts";
import { requireFarm } from "../farms/requireFarm.ts";
import { queryOf } from "../wellFormed.ts";
import type { Verdict } from "./chain.ts";
import { saidIn } from "./rendered.ts";
import { type Replay, replay } from "./replay.ts";
import { verifyChain } from "./verify.ts";
import { wireEntry } from "./wireEntry.ts";

/** The ledger, newest first. */
export async function listLedger(
  ctx: Ctx,
  rawQuery: unknown,
): Promise<{ entries: LedgerEntry[]; next: string | null }> {
  requireAgent(ctx);
  const { farmId, before, after, limit = 100 } = queryOf(adviceRoutes.listLedger, rawQuery);
  const from = after === undefined ? undefined : placeAfter(z.tuple([z.int()]), after)[0];
  return inOffice(ctx, async (tx) => {
    if (farmId !== undefined) await requireFarm(tx, ctx, farmId);
    const rows = await tx
      .select()
      .from(ledgerEntries)
      .where(
        and(
          eq(ledgerEntries.officeId, ctx.officeId),
          farmId === undefined ? undefined : eq(ledgerEntries.farmId, farmId),
          before === undefined ? undefined : lt(ledgerEntries.seq, before),
          from === undefined ? undefined : lt(ledgerEntries.seq, from),
        ),
      )
      .orderBy(desc(ledgerEntries.seq))
      .limit(limit + 1);
    const page = pageOf(rows, limit, (last) => cursorOf(last.seq));
    const entries = page.rows.map((row) => wireEntry(row, ctx.language));
    return { entries: await inWordsOf(tx, ctx, entries), next: page.next };
  });
}

/** What was decided, in the reader's language as it was issued in it; the entry itself holds its first words alone. */
async function inWordsOf(
  tx: Tx,
  { officeId, language }: Ctx,
  entries: LedgerEntry[],
): Promise<LedgerEntry[]> {
  const ids = entries.flatMap((e) => (e.kind === "issued" && e.advisoryId ? [e.advisoryId] : []));
  if (language === undefined || language === "en" || ids.length === 0) return entries;
  const rows = await tx
    .select({ id: advisories.id, rendered: advisories.rendered })
    .from(advisories)
    .where(and(eq(advisories.officeId, officeId), inArray(advisories.id, ids)));
  const said = new Map(rows.map(({ id, rendered }) => [id, saidIn(rendered, language).decision]));
  return entries.map((entry) =>
    entry.kind === "issued"
      ? { ...entry, summary: said.get(entry.advisoryId ?? "") ?? entry.summary }
      : entry,
  );
}

/** Walks the office's chain. */
export async function verifyLedger(ctx: Ctx): Promise<Verdict> {
  requireAgent(ctx);
  const { root: _, ...verdict } = await inOffice(ctx, (tx) => verifyChain(tx, ctx.officeId));
  return verdict;
}

/** Computes an entry again from its stored inputs. */
export async function replayEntry(ctx: Ctx, seq: number): Promise<Replay> {
  requireAgent(ctx);
  return inOffice(ctx, (tx) => replay(tx, ctx.officeId, seq, ctx.ledger));
}

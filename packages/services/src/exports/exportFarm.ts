import type { Checkpoint } from "@pith/contract";
import { advisories, answers, ledgerEntries, type Tx } from "@pith/db";
import { and, asc, eq, isNotNull, lte, sql } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, requireAgent, requireLead } from "../context.ts";
import { requireFarm } from "../farms/requireFarm.ts";
import { canonicalText } from "../ledger/canonical.ts";
import { namedIn } from "../ledger/chain.ts";
import { signChain } from "../ledger/checkpoints.ts";
import { entryLevels, proofOf } from "../ledger/merkle.ts";
import { inSnapshot, officeName } from "./exportOffice.ts";
import { rowsOf, type Table, tablesOf } from "./rows.ts";
import { type Exported, MOVED, STAYS } from "./tables.ts";
import { type Write, writeExport } from "./writeExport.ts";

const STATES = "ledger_states";

/**
 * One farm, to be taken in by another office. Its part of the ledger goes along as a history: each entry with the proof
 * that it belongs to the chain whose checkpoint is signed here. The farm stays as it is until it is put away.
 */
export async function exportFarm(ctx: Ctx, farmId: string, write: Write): Promise<void> {
  requireAgent(ctx);
  await inOffice(ctx, (tx) => requireFarm(tx, ctx, farmId));
  requireLead(ctx);
  const signed = await signChain(ctx);
  await inOffice(ctx, (tx) =>
    recordAudit(tx, ctx, { action: "farm.export", entity: "farms", entityId: farmId }),
  );
  await inSnapshot(ctx, async (tx) => {
    const tables = await tablesOf(tx, [...MOVED, STATES]);
    await writeExport(
      ctx,
      {
        kind: "farm",
        officeName: await officeName(tx, ctx.officeId),
        farm: farmId,
        tables: Object.fromEntries([...tables.values()].map(({ name, columns }) => [name, columns])),
        leftOut: STAYS,
        checkpoint: signed?.checkpoint ?? null,
      },
      everyRow(tx, ctx, farmId, tables, signed?.checkpoint ?? null),
      write,
    );
  });
}

async function* everyRow(
  tx: Tx,
  ctx: Ctx,
  farmId: string,
  tables: Map<string, Table>,
  checkpoint: Checkpoint | null,
) {
  const table = (name: Exported) => {
    const known = tables.get(name);
    if (!known) throw new Error(`there is no table ${name}`);
    return known;
  };
  const history = checkpoint && (await historyOf(tx, ctx, farmId, checkpoint));
  for (const name of MOVED) {
    const where = name === "farms" ? sql`id = ${farmId}` : sql`farm_id = ${farmId}`;
    for await (const rows of rowsOf(tx, table(name), where)) yield { table: name, rows };
    // After what came with the farm from offices before: so the oldest stands first.
    if (name === "ledger_histories" && history) yield { table: name, rows: [JSON.stringify(history.row)] };
    if (name === "ledger_history_entries" && history) {
      yield { table: name, rows: history.entries.map((entry) => JSON.stringify(entry)) };
    }
  }
  const named = new Set(history?.states ?? []);
  const came = await tx.execute<{ body: string }>(
    sql`select body from ledger_history_entries where farm_id = ${farmId}`,
  );
  for (const { body } of came) for (const state of namedIn(body, "state")) named.add(state);
  for (const sha256 of named) {
    for await (const rows of rowsOf(tx, table(STATES), sql`sha256 = ${sha256}`))
      yield { table: STATES, rows };
  }
}

/** The farm's part of this office's chain, up to what the checkpoint signs; none where nothing was ever issued to it. */
async function historyOf(tx: Tx, ctx: Ctx, farmId: string, checkpoint: Checkpoint) {
  const { officeId } = ctx;
  const all = await tx
    .select({ seq: ledgerEntries.seq, hash: ledgerEntries.hash })
    .from(ledgerEntries)
    .where(and(eq(ledgerEntries.officeId, officeId), lte(ledgerEntries.seq, checkpoint.seq)))
    .orderBy(asc(ledgerEntries.seq));
  const own = await tx
    .select({ seq: ledgerEntries.seq, hash: ledgerEntries.hash, body: ledgerEntries.body })
    .from(ledgerEntries)
    .where(
      and(
        eq(ledgerEntries.officeId, officeId),
        eq(ledgerEntries.farmId, farmId),
        lte(ledgerEntries.seq, checkpoint.seq),
      ),
    )
    .orderBy(asc(ledgerEntries.seq));
  if (own.length === 0) return null;
  const levels = entryLevels(all.map((entry) => entry.hash));
  const textIds = await textsOfEntries(tx, officeId, farmId);
  const id = globalThis.crypto.randomUUID();
  return {
    row: {
      office_id: officeId,
      id,
      farm_id: farmId,
      from_office: officeId,
      from_office_name: await officeName(tx, officeId),
      checkpoint: canonicalText(checkpoint),
      // Filled in by whoever takes it in.
      taken_in_at: null,
      taken_in_by: null,
    },
    entries: own.map(({ seq, hash, body }) => ({
      office_id: officeId,
      history_id: id,
      farm_id: farmId,
      seq,
      body,
      hash,
      proof: proofOf(levels, seq - 1),
      text_id: textIds(seq, body),
    })),
    states: own.flatMap(({ body }) => namedIn(body, "state")),
  };
}

/** Which words of a person belong to an entry. */
async function textsOfEntries(tx: Tx, officeId: string, farmId: string) {
  const issued = await tx
    .select({
      id: advisories.id,
      seq: advisories.ledgerSeq,
      note: advisories.noteTextId,
      why: advisories.withdrawnTextId,
    })
    .from(advisories)
    .where(and(eq(advisories.officeId, officeId), eq(advisories.farmId, farmId)));
  const answered = await tx
    .select({ seq: answers.ledgerSeq, reason: answers.reasonTextId })
    .from(answers)
    .where(and(eq(answers.officeId, officeId), eq(answers.farmId, farmId), isNotNull(answers.reasonTextId)));
  const bySeq = new Map<number, string | null>([
    ...issued.map(({ seq, note }) => [seq, note] as const),
    ...answered.map(({ seq, reason }) => [seq, reason] as const),
  ]);
  const withdrawn = new Map(issued.map(({ id, why }) => [id, why]));
  return (seq: number, body: string): string | null => {
    if (JSON.parse(body).kind !== "withdrawn") return bySeq.get(seq) ?? null;
    return withdrawn.get(namedIn(body, "advisory")[0] ?? "") ?? null;
  };
}

import { farms, ledgerStates, type Tx } from "@pith/db";
import { and, eq } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, nowOf, requireLead } from "../context.ts";
import { adviseFarm } from "../drafts/adviseFarm.ts";
import { ServiceError } from "../errors.ts";
import type { Imported } from "./importOffice.ts";
import { insertRows, knownTables, mustKnowZones, whileImporting } from "./insertRows.ts";
import { type ExportText, type ReadExport, readExport, refuse } from "./readExport.ts";
import { makeRoomForReadings } from "./roomForReadings.ts";
import { type Exported, MOVED } from "./tables.ts";
import { typed } from "./typedRows.ts";
import { verifyHistories } from "./verifyExport.ts";

/**
 * Takes in a farm that another office exported: a new farm of this office with its records, and what the old ledger says
 * of it as a history that is read and checked and never goes on. Everything is checked first, then written at once.
 */
export async function takeInFarm(ctx: Ctx, text: ExportText): Promise<Imported & { farmId: string }> {
  requireLead(ctx);
  const read = await readExport(text, "farm");
  const { farm: farmId, office, checkpoint, keyId } = read.header;
  if (farmId === null) refuse("it does not say which farm it is of");
  if (office === ctx.officeId) throw new ServiceError("conflict", "This farm is of this office already.");
  const verdicts = await verifyHistories(read);
  const broken = verdicts.find((verdict) => !verdict.whole);
  if (broken) refuse(`its ledger is broken at entry ${broken.firstBroken?.seq}: ${broken.firstBroken?.why}`);
  for (const history of typed(read, "ledger_histories")) {
    const own = history.takenInAt === null;
    if (own && JSON.parse(history.checkpoint).signature !== checkpoint?.signature) {
      refuse("its history is not held against the checkpoint in its first line");
    }
  }
  mustBeOfFarm(read, farmId);
  mustKnowZones(read);
  const { file, readingsLeftOut } = await makeRoomForReadings(ctx, read);

  return whileImporting(ctx, async (tx) => {
    const tables = await knownTables(tx, file, [...MOVED, "ledger_states"]);
    const there = await tx
      .select({ id: farms.id })
      .from(farms)
      .where(and(eq(farms.officeId, ctx.officeId), eq(farms.id, farmId)));
    if (there.length > 0) throw new ServiceError("conflict", "This farm was taken in already.");
    const rows: Record<string, number> = {};
    for (const [name, columns] of tables) {
      const incoming = (file.rows.get(name) ?? []).map((row) => arriving(ctx, name, row));
      if (name === "ledger_states") rows[name] = await keepStates(tx, ctx, file);
      else rows[name] = await insertRows(tx, ctx.officeId, name, columns, incoming, { moving: true });
    }
    await recordAudit(tx, ctx, {
      action: "farm.take-in",
      entity: "farms",
      entityId: farmId,
      detail: { from: office, at: file.header.at, keyId, ...(readingsLeftOut > 0 && { readingsLeftOut }) },
    });
    await adviseFarm(tx, ctx, farmId);
    const entries = verdicts.reduce((sum, verdict) => sum + verdict.entries, 0);
    return { farmId, rows, readingsLeftOut, entries, keyId };
  });
}

/** Another farm's rows must not ride along. */
function mustBeOfFarm({ rows }: ReadExport, farmId: string): void {
  for (const [table, list] of rows) {
    if (table === "ledger_states") continue;
    for (const text of list) {
      const row = JSON.parse(text) as Record<string, unknown>;
      if ((table === "farms" ? row.id : row.farm_id) !== farmId)
        refuse(`a row of ${table} is of another farm`);
    }
  }
}

function arriving(ctx: Ctx, name: Exported, row: string): string {
  if (name !== "ledger_histories") return row;
  const history = JSON.parse(row) as Record<string, unknown>;
  if (history.taken_in_at !== null) return row;
  return JSON.stringify({ ...history, taken_in_at: nowOf(ctx), taken_in_by: ctx.actor.userId });
}

/** A state is kept once under its hash, whoever's entry names it. */
async function keepStates(tx: Tx, ctx: Ctx, file: ReadExport): Promise<number> {
  let kept = 0;
  for (const { sha256, state } of typed(file, "ledger_states")) {
    const done = await tx
      .insert(ledgerStates)
      .values({ officeId: ctx.officeId, sha256, state })
      .onConflictDoNothing()
      .returning();
    kept += done.length;
  }
  return kept;
}

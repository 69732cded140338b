import { ledgerOrigins, offices, type Tx } from "@pith/db";
import { eq, sql } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, nowOf, requireLead } from "../context.ts";
import { ServiceError } from "../errors.ts";
import { insertRows, knownTables, mustKnowZones, whileImporting } from "./insertRows.ts";
import { type ExportText, type ReadExport, readExport, refuse } from "./readExport.ts";
import { makeRoomForReadings } from "./roomForReadings.ts";
import { quoted } from "./rows.ts";
import { EXPORTED, type Exported } from "./tables.ts";
import { verifyExported, verifyHistories } from "./verifyExport.ts";

export interface Imported {
  /** Written, by table. */
  rows: Record<string, number>;
  /** Of times that no series keeps any more, or not yet. */
  readingsLeftOut: number;
  entries: number;
  keyId: string;
}

/** What a new office has before anything is in it: itself, its people, and who made it. */
const THERE_ALREADY: readonly Exported[] = ["offices", "memberships", "audit_log"];

/**
 * Takes in the export of an office into one that is empty. Everything is checked first, the whole ledger too; then all rows
 * are written in one transaction. Ids stay what they are, except the office's own. The chain goes on from where it was.
 */
export async function importOffice(ctx: Ctx, text: ExportText): Promise<Imported> {
  requireLead(ctx);
  const read = await readExport(text, "office");
  const { whole, firstBroken, entries, checkpoints } = await verifyExported(read);
  if (!whole) refuse(`its ledger is broken at entry ${firstBroken?.seq}: ${firstBroken?.why}`);
  const fallen = checkpoints.find((c) => !c.holds);
  if (fallen) refuse(`its checkpoint of ${fallen.at} does not hold: ${fallen.why}`);
  const history = (await verifyHistories(read)).find((h) => !h.whole);
  if (history) refuse(`its history of a farm is broken: ${history.firstBroken?.why}`);

  mustKnowZones(read);
  const { file, readingsLeftOut } = await makeRoomForReadings(ctx, read);

  return whileImporting(ctx, async (tx) => {
    // Two at once: the second waits here and then finds the office filled.
    await tx.select({ id: offices.id }).from(offices).where(eq(offices.id, ctx.officeId)).for("update");
    const tables = await knownTables(tx, file, EXPORTED);
    await mustBeEmpty(tx);
    const rows: Record<string, number> = {};
    for (const [name, columns] of tables) {
      const incoming = file.rows.get(name) ?? [];
      if (name === "offices") rows[name] = await takeSettings(tx, ctx, incoming[0]);
      else if (name !== "memberships" && name !== "former_people") {
        rows[name] = await insertRows(tx, ctx.officeId, name, columns, incoming);
      }
    }
    rows.former_people = await takePeople(tx, ctx, file);
    if (entries > 0 && file.header.office !== ctx.officeId) await nameOrigin(tx, ctx, file, entries);
    await recordAudit(tx, ctx, {
      action: "office.import",
      entity: "offices",
      entityId: ctx.officeId,
      detail: {
        from: file.header.office,
        at: file.header.at,
        keyId: file.header.keyId,
        ...(readingsLeftOut > 0 && { readingsLeftOut }),
      },
    });
    return { rows, readingsLeftOut, entries, keyId: file.header.keyId };
  });
}

async function mustBeEmpty(tx: Tx): Promise<void> {
  for (const name of EXPORTED.filter((each) => !THERE_ALREADY.includes(each))) {
    const [row] = await tx.execute(sql`select 1 from ${sql.raw(quoted(name))} limit 1`);
    if (row) throw new ServiceError("conflict", `This office is not empty: it has rows in ${name}.`);
  }
}

async function takeSettings(tx: Tx, ctx: Ctx, row: string | undefined): Promise<number> {
  if (row === undefined) refuse("it does not say what the office is called");
  const done = await tx.execute(sql`
    update offices o set name = r.name, county = r.county, units = r.units, settings = r.settings,
      created_at = r.created_at
    from json_populate_record(null::offices, ${row}::json) r where o.id = ${ctx.officeId} returning 1`);
  return done.length;
}

/**
 * The people of the old office come as people who have left: named for what they issued and answered. A file may name any
 * user of this server, so nobody comes to belong to an office by it; the lead invites them anew.
 */
async function takePeople(tx: Tx, ctx: Ctx, { rows }: ReadExport): Promise<number> {
  const named = ["memberships", "former_people"].flatMap((table) =>
    (rows.get(table) ?? []).map((text) => {
      const { user_id, name, left_at = nowOf(ctx) } = JSON.parse(text) as Record<string, unknown>;
      return JSON.stringify({ user_id, name, left_at, taken_in: true });
    }),
  );
  const columns = ["office_id", "user_id", "name", "left_at", "taken_in"];
  const onConflict = "on conflict (office_id, user_id) do nothing";
  return insertRows(tx, ctx.officeId, "former_people", columns, named, { onConflict });
}

/** Which office's name the entries bear that came. */
async function nameOrigin(tx: Tx, ctx: Ctx, { header }: ReadExport, entries: number): Promise<void> {
  await tx
    .insert(ledgerOrigins)
    .values({
      officeId: ctx.officeId,
      lastSeq: entries,
      fromOffice: header.office,
      signature: header.checkpoint?.signature ?? "",
      takenInAt: nowOf(ctx),
      takenInBy: ctx.actor.userId,
    })
    // It came back to an office it had gone out from.
    .onConflictDoNothing();
}

import { type Import, importRoutes } from "@pith/contract";
import { forecasts, imports, soilTests, type Tx } from "@pith/db";
import { and, desc, eq, getTableColumns, sql } from "drizzle-orm";
import { z } from "zod";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, nowOf, requireAgent } from "../context.ts";
import { At, cursorOf, exactly, pageOf, placeAfter } from "../cursor.ts";
import { adviseFarm } from "../drafts/adviseFarm.ts";
import { found, ServiceError } from "../errors.ts";
import { lockFarm, requireFarm } from "../farms/requireFarm.ts";
import { queryOf } from "../wellFormed.ts";
import { compareWithStored } from "./duplicates.ts";
import { rememberColumns } from "./labMappings.ts";
import { Stopped, step, type Watch } from "./progress.ts";
import { type ImportRow, mappingOf, wireImport } from "./wire.ts";

/** An import again, with every refused row. */
export async function getImport(ctx: Ctx, farmId: string, importId: string): Promise<Import> {
  requireAgent(ctx);
  return inOffice(ctx, async (tx) => wireImport(await theImport(tx, ctx, farmId, importId), ctx.language));
}

/** The farm's imports, newest first, without their rows. */
export async function listImports(ctx: Ctx, farmId: string, rawQuery: unknown) {
  requireAgent(ctx);
  const { after, limit = 100 } = queryOf(importRoutes.listImports, rawQuery);
  const from = after === undefined ? undefined : placeAfter(z.tuple([At, z.uuid()]), after);
  return inOffice(ctx, async (tx) => {
    await requireFarm(tx, ctx, farmId);
    const more = await tx
      .select({ ...getTableColumns(imports), exactly: exactly(imports.createdAt) })
      .from(imports)
      .where(
        and(
          eq(imports.officeId, ctx.officeId),
          eq(imports.farmId, farmId),
          from && sql`(${imports.createdAt}, ${imports.id}) < (${from[0]}::timestamptz, ${from[1]}::uuid)`,
        ),
      )
      .orderBy(desc(imports.createdAt), desc(imports.id))
      .limit(limit + 1);
    const { rows, next } = pageOf(more, limit, (last) => cursorOf(last.exactly, last.id));
    return {
      next,
      imports: rows.map(({ id, kind, fileName, status, createdAt, acceptedCount, refusedCount }) => ({
        id,
        kind,
        fileName,
        status,
        createdAt,
        acceptedCount,
        refusedCount,
      })),
    };
  });
}

/**
 * Stores the accepted rows, advises again what depends on them, and says so in the audit: one transaction. Whoever
 * watches hears how far it is; when they hang up before the end, nothing is stored.
 */
export async function saveImport(ctx: Ctx, farmId: string, importId: string, watch?: Watch): Promise<Import> {
  requireAgent(ctx);
  return inOffice(ctx, async (tx) => {
    await lockFarm(tx, ctx, farmId);
    const row = await theImport(tx, ctx, farmId, importId, "update");
    requireStaged(row);
    const mapping = mappingOf(row);
    if (mapping.questions.length > 0) {
      throw new ServiceError("conflict", "The file still has open questions; answer them and read it again.");
    }
    if (row.acceptedCount === 0) throw new ServiceError("conflict", "No row of the file can be stored.");
    const meanwhile = await store[row.kind](tx, ctx, row, watch);
    const stored = row.acceptedCount - meanwhile.length;
    const [saved] = await tx
      .update(imports)
      .set({
        status: "saved",
        savedAt: nowOf(ctx),
        acceptedCount: stored,
        duplicateCount: row.duplicateCount + meanwhile.length,
        mapping: { ...mapping, duplicates: [...(mapping.duplicates ?? []), ...meanwhile] } as never,
      })
      .where(one(ctx, importId))
      .returning();
    if (row.kind === "soil-tests" && mapping.lab) {
      await rememberColumns(tx, ctx, mapping.lab.name, mapping.columns);
    }
    await recordAudit(tx, ctx, {
      action: "import.save",
      entity: "imports",
      entityId: importId,
      detail: { kind: row.kind, accepted: stored, refused: row.refusedCount },
    });
    await step(watch, { phase: "advising", done: row.acceptedCount, of: row.acceptedCount });
    await adviseFarm(tx, ctx, farmId);
    if (watch?.signal.aborted) throw new Stopped();
    return wireImport(found(saved, "import"), ctx.language);
  });
}

/** Puts a preview away. */
export async function discardImport(ctx: Ctx, farmId: string, importId: string): Promise<{ done: true }> {
  requireAgent(ctx);
  return inOffice(ctx, async (tx) => {
    requireStaged(await theImport(tx, ctx, farmId, importId, "update"));
    await tx.update(imports).set({ status: "discarded" }).where(one(ctx, importId));
    return { done: true as const };
  });
}

const one = (ctx: Ctx, importId: string) => and(eq(imports.officeId, ctx.officeId), eq(imports.id, importId));

async function theImport(
  tx: Tx,
  ctx: Ctx,
  farmId: string,
  importId: string,
  lock?: "update",
): Promise<ImportRow> {
  const query = tx
    .select()
    .from(imports)
    .where(and(one(ctx, importId), eq(imports.farmId, farmId)));
  const [row] = lock ? await query.for(lock) : await query;
  return found(row, "import");
}

function requireStaged(row: ImportRow): void {
  if (row.status !== "staged") throw new ServiceError("conflict", `This import was ${row.status} already.`);
}

/** Stores an import's rows; answers with those that were stored by somebody else since they were read. */
type Store = (tx: Tx, ctx: Ctx, row: ImportRow, watch: Watch | undefined) => Promise<Import["duplicates"]>;

const WEATHER_COLUMNS = {
  t_max_c: "tMaxC",
  t_min_c: "tMinC",
  rain_mm: "rainMm",
  rh_max_pct: "rhMaxPct",
  rh_min_pct: "rhMinPct",
  rh_mean_pct: "rhMeanPct",
  dew_point_c: "dewPointC",
  wind_m_per_s: "windMPerS",
  wind_height_m: "windHeightM",
  rs_mj_per_m2_day: "rsMjPerM2Day",
  sunshine_h: "sunshineH",
};
const list = (say: (column: string, field: string) => string) =>
  sql.raw(
    Object.entries(WEATHER_COLUMNS)
      .map(([column, field]) => say(column, field))
      .join(", "),
  );

/**
 * A day that comes again with other values replaces the earlier ones: stations correct themselves. What a file does not
 * say stays as it was: a gauge's file of rain leaves the thermometer's temperatures alone.
 */
const storeWeather: Store = async (tx, _ctx, row) => {
  const rows = sql`imports i, jsonb_to_recordset(i.accepted) as d(date date, ${list((_, f) => `"${f}" float8`)})`;
  const mine = sql`i.office_id = ${row.officeId} and i.id = ${row.id}`;
  const [crossed] = await tx.execute<{ date: string }>(sql`
    select d.date::text from ${rows}
    join weather_days w on w.office_id = ${row.officeId} and w.site_id = ${row.siteId} and w.date = d.date
    where ${mine} and coalesce(d."tMaxC", w.t_max_c) < coalesce(d."tMinC", w.t_min_c)
    order by d.date limit 1`);
  if (crossed) {
    throw new ServiceError(
      "conflict",
      `With what is stored already, the maximum of ${crossed.date} would be below its minimum; give both in one file.`,
    );
  }
  await tx.execute(sql`
    insert into weather_days (office_id, farm_id, site_id, import_id, date, ${list((c) => c)})
    select ${row.officeId}, ${row.farmId}, ${row.siteId}, ${row.id}, d.date, ${list((_, f) => `d."${f}"`)}
    from ${rows} where ${mine}
    on conflict (office_id, site_id, date) do update set import_id = excluded.import_id,
      ${list((c) => `${c} = coalesce(excluded.${c}, weather_days.${c})`)}`);
  return [];
};

const storeForecast: Store = async (tx, _ctx, row) => {
  await tx
    .insert(forecasts)
    .values({
      officeId: row.officeId,
      farmId: row.farmId,
      siteId: row.siteId ?? "",
      issuedAt: mappingOf(row).issuedAt ?? "",
      days: row.accepted,
      importId: row.id,
    })
    .onConflictDoNothing();
  return [];
};

/** Rows of one statement: a statement takes 65,535 values. */
const ROWS_A_STATEMENT = 500;

const storeSoilTests: Store = async (tx, ctx, row, watch) => {
  const rows = row.accepted.map(({ line, ...test }) => ({ line: Number(line), row: test }));
  const { fresh, duplicates, refused } = await compareWithStored(tx, ctx, row, rows);
  const [first] = refused;
  if (first) {
    throw new ServiceError(
      "conflict",
      `Since the file was read, line ${first.line} was stored by another import. ${first.reason}. Read the file again.`,
    );
  }
  for (let done = 0; done < fresh.length; done += ROWS_A_STATEMENT) {
    await step(watch, { phase: "storing", done, of: fresh.length });
    const some = fresh.slice(done, done + ROWS_A_STATEMENT);
    await tx.insert(soilTests).values(some.map((accepted) => soilTestRow(ctx, row, accepted.row)));
  }
  await step(watch, { phase: "storing", done: fresh.length, of: fresh.length });
  return duplicates;
};

function soilTestRow(ctx: Ctx, row: ImportRow, accepted: Record<string, unknown>) {
  const { bedId, sampledOn, depthCm, medium, labName, sampleRef, ...result } = accepted;
  return {
    officeId: ctx.officeId,
    farmId: row.farmId,
    bedId: bedId as string,
    sampledOn: sampledOn as string,
    depthCm: depthCm as number,
    medium: medium as typeof soilTests.$inferInsert.medium,
    labName: (labName as string | null) ?? null,
    sampleRef: sampleRef as string,
    result,
    importId: row.id,
  };
}

const store: Record<ImportRow["kind"], Store> = {
  weather: storeWeather,
  forecast: storeForecast,
  "soil-tests": storeSoilTests,
};

import { type Column, type Import, importRoutes } from "@pith/contract";
import { beds, imports, sites, type Tx } from "@pith/db";
import { and, eq } from "drizzle-orm";
import type { z } from "zod";
import type { Ctx } from "../context.ts";
import { inOffice, requireAgent } from "../context.ts";
import { found, ServiceError } from "../errors.ts";
import { requireFarm } from "../farms/requireFarm.ts";
import { bodyOf } from "../wellFormed.ts";
import { type CsvFile, readCsv } from "./csv.ts";
import { compareWithStored } from "./duplicates.ts";
import { rememberedColumns } from "./labMappings.ts";
import { Stopped, step, type Watch } from "./progress.ts";
import type { ReadFile } from "./reading.ts";
import { readSoilTests } from "./readSoilTests.ts";
import { readWeather } from "./readWeather.ts";
import { matchSoilColumn } from "./soilColumns.ts";
import { readStationDaily } from "./stationDaily.ts";
import { type Mapping, wireImport } from "./wire.ts";

type Request = z.infer<typeof importRoutes.ImportRequestSchema>;

const MAX_FORECAST_DAYS = 16;

/**
 * Reads a file and keeps what would be stored, beside it; the farm's records are not touched. Whoever watches hears how
 * far it is; when they hang up, nothing is kept.
 */
export async function previewImport(ctx: Ctx, farmId: string, raw: unknown, watch?: Watch): Promise<Import> {
  requireAgent(ctx);
  const request = bodyOf(importRoutes.previewImport, raw);
  return inOffice(ctx, async (tx) => {
    await requireFarm(tx, ctx, farmId);
    await requirePlaces(tx, ctx, farmId, request);
    const { lab, ...read } = await readRequest(tx, ctx, farmId, request, watch);
    const all = read.accepted.length;
    await step(watch, { phase: "comparing", done: 0, of: all });
    const compared = await compareWithStored(tx, ctx, request, read.accepted);
    await step(watch, { phase: "comparing", done: all, of: all });
    const byLine = (a: { line: number }, b: { line: number }) => a.line - b.line;
    const refused = [...read.refused, ...compared.refused].sort(byLine);
    const repeats = [...(read.repeated ?? []), ...compared.duplicates].sort(byLine);
    const mapping: Mapping = {
      columns: read.columns,
      questions: read.questions,
      issuedAt: request.issuedAt ?? null,
      lab,
      // Of a station's century every day may be stored already, which is said in one number.
      duplicates: request.kind === "soil-tests" ? repeats : [],
    };
    const [row] = await tx
      .insert(imports)
      .values({
        officeId: ctx.officeId,
        farmId,
        kind: request.kind,
        siteId: request.siteId ?? null,
        bedId: request.bedId ?? null,
        fileName: request.fileName,
        mapping: mapping as never,
        accepted: compared.fresh.map(({ line, row }) =>
          request.kind === "soil-tests" ? { line, ...row } : row,
        ),
        refused,
        acceptedCount: compared.fresh.length,
        refusedCount: refused.length,
        duplicateCount: repeats.length,
        createdBy: ctx.actor.userId,
      })
      .returning();
    if (watch?.signal.aborted) throw new Stopped();
    return wireImport(found(row, "import"), ctx.language);
  });
}

/** The site or bed that the file is about is one of this farm's. */
async function requirePlaces(tx: Tx, ctx: Ctx, farmId: string, request: Request): Promise<void> {
  if (request.kind !== "soil-tests" && !request.siteId) {
    throw missing("siteId", "says which site's weather it is");
  }
  if (request.kind === "forecast" && !request.issuedAt) {
    throw missing("issuedAt", "says when the forecast was issued");
  }
  if (request.siteId) {
    const mine = and(
      eq(sites.officeId, ctx.officeId),
      eq(sites.farmId, farmId),
      eq(sites.id, request.siteId),
    );
    found((await tx.select({ id: sites.id }).from(sites).where(mine))[0], "site");
  }
  if (request.bedId) {
    const mine = and(eq(beds.officeId, ctx.officeId), eq(beds.farmId, farmId), eq(beds.id, request.bedId));
    found((await tx.select({ id: beds.id }).from(beds).where(mine))[0], "bed");
  }
}

const missing = (field: string, why: string) =>
  new ServiceError("invalid", `${field} is missing: it ${why}.`, [
    { field, message: `is missing: it ${why}` },
  ]);

async function stationOf(tx: Tx, ctx: Ctx, siteId: string): Promise<string | null> {
  const [site] = await tx
    .select({ stationId: sites.stationId })
    .from(sites)
    .where(and(eq(sites.officeId, ctx.officeId), eq(sites.id, siteId)));
  return site?.stationId ?? null;
}

type Read = ReadFile & { lab: Import["lab"] };

async function readRequest(
  tx: Tx,
  ctx: Ctx,
  farmId: string,
  request: Request,
  watch: Watch | undefined,
): Promise<Read> {
  if (request.kind === "weather") {
    const daily = readStationDaily(request.csv, await stationOf(tx, ctx, request.siteId ?? ""));
    if (daily) return { ...daily, lab: null };
  }
  const file = readCsv(request.csv);
  if (request.kind === "soil-tests") return readLaboratory(tx, ctx, farmId, request, file, watch);
  const read = await readWeather(file, request.columns, watch);
  if (request.kind === "forecast" && read.accepted.length > MAX_FORECAST_DAYS) {
    throw new ServiceError("invalid", `A forecast has at most ${MAX_FORECAST_DAYS} days.`, [
      {
        field: "csv",
        message: `has ${read.accepted.length} days`,
        accepted: `at most ${MAX_FORECAST_DAYS}`,
      },
    ]);
  }
  return { ...read, lab: null };
}

async function readLaboratory(
  tx: Tx,
  ctx: Ctx,
  farmId: string,
  request: Request,
  file: CsvFile,
  watch: Watch | undefined,
): Promise<Read> {
  const named = await tx
    .select({ id: beds.id, name: beds.name })
    .from(beds)
    .where(and(eq(beds.officeId, ctx.officeId), eq(beds.farmId, farmId)));
  const bedsByName = new Map<string, string | null>();
  for (const { id, name } of named) {
    const key = name.trim().toLowerCase();
    bedsByName.set(key, bedsByName.has(key) ? null : id);
  }
  const name = request.labName || onlyLaboratoryIn(file);
  const before = name ? await rememberedColumns(tx, ctx, name) : null;
  const read = await readSoilTests(
    file,
    { now: request.columns, before: before?.columns },
    { bedsByName, bedId: request.bedId, depthCm: request.depthCm, labName: name ?? undefined },
    watch,
  );
  const readAsBefore = read.columns.filter((c) => before?.columns.some((b) => sameReading(b, c)));
  const lab = name && {
    name,
    readAsBefore: readAsBefore.map((c) => c.header),
    rememberedAt: before?.updatedAt ?? null,
  };
  return { ...read, lab: lab || null };
}

const sameReading = (a: Column, b: Column): boolean =>
  a.header === b.header &&
  a.field === b.field &&
  a.extractant === b.extractant &&
  (a.form ?? null) === (b.form ?? null) &&
  (a.basis ?? null) === (b.basis ?? null) &&
  (a.densityKgPerM3 ?? null) === (b.densityKgPerM3 ?? null) &&
  // The form of dates is each file's own.
  (a.unit === b.unit || a.field === "sampledOn");

/** The laboratory that a file names on every row; null where it names none or several. */
function onlyLaboratoryIn(file: CsvFile): string | null {
  const at = file.headers.findIndex((h) => matchSoilColumn(h).field === "labName");
  if (at < 0) return null;
  const names = new Set(file.rows.map((r) => (r.cells[at] ?? "").trim()).filter((n) => n !== ""));
  const [name] = names;
  return names.size === 1 && name !== undefined ? name.slice(0, 80) : null;
}

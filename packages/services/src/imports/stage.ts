import { type Import, importRoutes } from "@pith/contract";
import { beds, imports, sites, type Tx } from "@pith/db";
import { and, eq } from "drizzle-orm";
import type { z } from "zod";
import type { Ctx } from "../context.ts";
import { inOffice, requireAgent } from "../context.ts";
import { found, ServiceError } from "../errors.ts";
import { requireFarm } from "../farms/requireFarm.ts";
import { bodyOf } from "../wellFormed.ts";
import { readCsv } from "./csv.ts";
import { splitDuplicates } from "./duplicates.ts";
import type { ReadFile } from "./reading.ts";
import { readSoilTests } from "./readSoilTests.ts";
import { readWeather } from "./readWeather.ts";
import { readStationDaily } from "./stationDaily.ts";
import { wireImport } from "./wire.ts";

type Request = z.infer<typeof importRoutes.ImportRequestSchema>;

const MAX_FORECAST_DAYS = 16;

/** Reads a file and keeps what would be stored, beside it; the farm's records are not touched. */
export async function previewImport(ctx: Ctx, farmId: string, raw: unknown): Promise<Import> {
  requireAgent(ctx);
  const request = bodyOf(importRoutes.previewImport, raw);
  return inOffice(ctx, async (tx) => {
    await requireFarm(tx, ctx, farmId);
    await requirePlaces(tx, ctx, farmId, request);
    const read = await readRequest(tx, ctx, farmId, request);
    const rows = read.accepted.map((a) => a.row);
    const { fresh, duplicates } = await splitDuplicates(tx, ctx, request, rows);
    const [row] = await tx
      .insert(imports)
      .values({
        officeId: ctx.officeId,
        farmId,
        kind: request.kind,
        siteId: request.siteId ?? null,
        bedId: request.bedId ?? null,
        fileName: request.fileName,
        mapping: { columns: read.columns, questions: read.questions, issuedAt: request.issuedAt ?? null },
        accepted: fresh,
        refused: read.refused,
        acceptedCount: fresh.length,
        refusedCount: read.refused.length,
        duplicateCount: duplicates,
        createdBy: ctx.actor.userId,
      })
      .returning();
    return wireImport(found(row, "import"));
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

async function readRequest(tx: Tx, ctx: Ctx, farmId: string, request: Request): Promise<ReadFile> {
  if (request.kind === "weather") {
    const daily = readStationDaily(request.csv, await stationOf(tx, ctx, request.siteId ?? ""));
    if (daily) return daily;
  }
  const file = readCsv(request.csv);
  if (request.kind !== "soil-tests") {
    const read = readWeather(file, request.columns);
    if (request.kind === "forecast" && read.accepted.length > MAX_FORECAST_DAYS) {
      throw new ServiceError("invalid", `A forecast has at most ${MAX_FORECAST_DAYS} days.`, [
        {
          field: "csv",
          message: `has ${read.accepted.length} days`,
          accepted: `at most ${MAX_FORECAST_DAYS}`,
        },
      ]);
    }
    return read;
  }
  const named = await tx
    .select({ id: beds.id, name: beds.name })
    .from(beds)
    .where(and(eq(beds.officeId, ctx.officeId), eq(beds.farmId, farmId)));
  return readSoilTests(file, request.columns, {
    bedsByName: new Map(named.map((b) => [b.name.toLowerCase(), b.id])),
    bedId: request.bedId,
    depthCm: request.depthCm,
    labName: request.labName,
  });
}

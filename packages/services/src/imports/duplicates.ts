import { soilTests, type Tx, weatherDays } from "@pith/db";
import { and, eq, inArray } from "drizzle-orm";
import type { Ctx } from "../context.ts";
import type { ImportKind } from "./wire.ts";

type Row = Record<string, unknown>;

/** Takes out what is stored already: the same sample, or a day of the same site with the same values. */
export async function splitDuplicates(
  tx: Tx,
  ctx: Ctx,
  about: { kind: ImportKind; siteId?: string },
  rows: Row[],
): Promise<{ fresh: Row[]; duplicates: number }> {
  if (about.kind === "forecast" || rows.length === 0) return { fresh: rows, duplicates: 0 };
  const known =
    about.kind === "weather" ? await knownDays(tx, ctx, about.siteId ?? "") : await knownTests(tx, ctx, rows);
  const fresh = rows.filter((r) => !known(r));
  return { fresh, duplicates: rows.length - fresh.length };
}

async function knownDays(tx: Tx, ctx: Ctx, siteId: string) {
  const stored = await tx
    .select()
    .from(weatherDays)
    .where(and(eq(weatherDays.officeId, ctx.officeId), eq(weatherDays.siteId, siteId)));
  const byDate = new Map(stored.map((d) => [d.date, d as Row]));
  return (row: Row) => {
    const day = byDate.get(row.date as string);
    return day !== undefined && Object.entries(row).every(([name, value]) => day[name] === value);
  };
}

async function knownTests(tx: Tx, ctx: Ctx, rows: Row[]) {
  const bedIds = [...new Set(rows.map((r) => r.bedId as string))];
  const stored = await tx
    .select()
    .from(soilTests)
    .where(and(eq(soilTests.officeId, ctx.officeId), inArray(soilTests.bedId, bedIds)));
  const key = (r: Row) => [r.bedId, r.sampledOn, r.sampleRef, r.depthCm].join("|");
  const keys = new Set(stored.map((t) => key(t)));
  return (row: Row) => keys.has(key(row));
}

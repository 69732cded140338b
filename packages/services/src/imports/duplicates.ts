import type { Import } from "@pith/contract";
import { soilTests, type Tx, weatherDays } from "@pith/db";
import { and, eq, inArray } from "drizzle-orm";
import type { Ctx } from "../context.ts";
import type { ReadFile, Refusal } from "./reading.ts";
import { differenceOf, type SampleRow, sampleKey } from "./samples.ts";
import type { ImportKind } from "./wire.ts";

type Accepted = ReadFile["accepted"][number];

export interface Compared {
  fresh: Accepted[];
  /** Lines that say what is stored already. */
  duplicates: Import["duplicates"];
  /** Samples that are stored with other values: neither is taken for the right one. */
  refused: Refusal[];
}

/** Takes out what is stored already: the same sample, or a day of the same site with the same values. */
export async function compareWithStored(
  tx: Tx,
  ctx: Ctx,
  about: { kind: ImportKind; siteId?: string | null },
  rows: Accepted[],
): Promise<Compared> {
  if (about.kind === "forecast" || rows.length === 0) return { fresh: rows, duplicates: [], refused: [] };
  const compare =
    about.kind === "weather"
      ? await storedDays(tx, ctx, about.siteId ?? "")
      : await storedTests(tx, ctx, rows);
  const compared: Compared = { fresh: [], duplicates: [], refused: [] };
  for (const accepted of rows) {
    const found = compare(accepted.row);
    if (found === "new") compared.fresh.push(accepted);
    else if (found === "same") compared.duplicates.push({ line: accepted.line, sameAs: null });
    else {
      const value = String(accepted.row.sampleRef ?? "");
      compared.refused.push({ line: accepted.line, column: null, reason: found.reason, value });
    }
  }
  return compared;
}

type Compare = (row: Record<string, unknown>) => "new" | "same" | { reason: string };

async function storedDays(tx: Tx, ctx: Ctx, siteId: string): Promise<Compare> {
  const stored = await tx
    .select()
    .from(weatherDays)
    .where(and(eq(weatherDays.officeId, ctx.officeId), eq(weatherDays.siteId, siteId)));
  const byDate = new Map(stored.map((d) => [d.date, d as Record<string, unknown>]));
  return (row) => {
    const day = byDate.get(row.date as string);
    return day && Object.entries(row).every(([name, value]) => day[name] === value) ? "same" : "new";
  };
}

async function storedTests(tx: Tx, ctx: Ctx, rows: Accepted[]): Promise<Compare> {
  const bedIds = [...new Set(rows.map(({ row }) => row.bedId as string))];
  const stored = await tx
    .select()
    .from(soilTests)
    .where(and(eq(soilTests.officeId, ctx.officeId), inArray(soilTests.bedId, bedIds)));
  const byKey = new Map(stored.map((t) => [sampleKey({ ...t }), t]));
  return (row) => {
    const known = byKey.get(sampleKey(row as SampleRow));
    if (!known) return "new";
    const difference = differenceOf({ medium: known.medium, ...known.result }, row, "stored");
    return difference ? { reason: `This sample is stored already with other values: ${difference}` } : "same";
  };
}

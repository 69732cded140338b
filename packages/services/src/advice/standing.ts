import { advisories } from "@pith/db";
import { addDays, instantAt } from "@pith/rules";
import { and, gt, inArray, isNull, lte, not, or, type SQL } from "drizzle-orm";
import { type Ctx, nowOf } from "../context.ts";

/** Whether an advice still stands, by the clock of whoever reads it: no job need have run. */

type Status = typeof advisories.$inferSelect.status;

/** When the last day of its window has gone by at the site; null where it has no end. */
export const expiryOf = (windowTo: string | null, timeZone: string): string | null =>
  windowTo === null ? null : new Date(instantAt(addDays(windowTo, 1), 0, timeZone)).toISOString();

/** What a reader is told: an advice whose window has gone by without an answer has lapsed, whether that was written down or not. */
export const statusAt = (row: { status: Status; expiresAt: string | null }, now: Date): Status =>
  isWaiting(row.status) && row.expiresAt !== null && Date.parse(row.expiresAt) <= now.getTime()
    ? "expired"
    : row.status;

const WAITING = ["issued", "read"] as const satisfies Status[];
export const isWaiting = (status: Status): boolean => WAITING.some((one) => one === status);

/** Issued or read, and its window not gone by. */
export const standsOpen = (ctx: Ctx): SQL | undefined =>
  and(
    inArray(advisories.status, WAITING),
    or(isNull(advisories.expiresAt), gt(advisories.expiresAt, nowOf(ctx))),
  );

/** Issued or read, and its window gone by: not yet written down as expired. */
export const hasLapsed = (ctx: Ctx): SQL | undefined =>
  and(inArray(advisories.status, WAITING), lte(advisories.expiresAt, nowOf(ctx)));

export const standsOpenNoMore = (ctx: Ctx): SQL | undefined => {
  const open = standsOpen(ctx);
  return open && not(open);
};

import { refuse } from "@pith/rules";
import { type Column, sql } from "drizzle-orm";
import { z } from "zod";

/**
 * Where a page of a list ends: the sort key of its last row, so that the next page begins there whatever came or went in
 * the meantime. It is no secret and no authority: the next page is read by the same policies as the first.
 */
export const cursorOf = (...key: (string | number)[]): string =>
  btoa(JSON.stringify(key)).replace(/\+/g, "-").replace(/\//g, "_").replace(/=+$/, "");

/** The sort key that a page begins after; what no page ever said is refused by name. */
export function placeAfter<S extends z.ZodType>(shape: S, after: string): z.output<S> {
  const read = shape.safeParse(keyIn(after));
  if (!read.success) return refuse("after", "must be what `next` of the page before said", undefined, after);
  return read.data;
}

function keyIn(after: string): unknown {
  try {
    return JSON.parse(atob(after.replace(/-/g, "+").replace(/_/g, "/")));
  } catch {
    return undefined;
  }
}

/** Of one row more than was asked for: the page, and where the next one begins. */
export function pageOf<T>(
  rows: T[],
  limit: number,
  key: (last: T) => string,
): { rows: T[]; next: string | null } {
  const page = rows.slice(0, limit);
  const last = page.at(-1);
  return { rows: page, next: rows.length > limit && last !== undefined ? key(last) : null };
}

/** An instant to the microsecond, as the database compares it; what is read of it elsewhere is cut to the millisecond. */
export const exactly = (instant: Column) =>
  sql<string>`to_char(${instant} at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.US"Z"')`;

/** An instant in a cursor: of years that the database has. */
export const At = z.iso.datetime().refine((said) => said >= "1800" && said < "2201");

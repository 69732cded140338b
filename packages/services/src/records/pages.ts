import type { Records } from "@pith/contract";
import { addDays } from "@pith/rules";
import { type Column, lt, type SQL } from "drizzle-orm";

/** As many of each kind in a page as a season of a large farm holds. */
export const MOST = 1000;

/** Of the days before a page's; without one, of all. */
export const earlier = (column: Column, before: string | undefined): SQL | undefined =>
  before === undefined ? undefined : lt(column, before);

/** The day of a record, whatever its kind calls it. */
const dayOf = (row: object): string | undefined => {
  const dated = row as { on?: string; at?: string; sampledOn?: string; receivedOn?: string };
  return (dated.on ?? dated.sampledOn ?? dated.receivedOn ?? dated.at)?.slice(0, 10);
};

/**
 * A page ends between two days, the same for all kinds: where one of them holds more than a page does, what is older than
 * its last whole day waits for the next page, and `older` says where that begins.
 */
export function wholeDays(all: Omit<Records, "older">): Records {
  const cut = Object.values(all)
    .flatMap((rows) => (rows.length < MOST ? [] : (dayOf(rows[MOST - 1] ?? {}) ?? [])))
    .sort()
    .at(-1);
  if (cut === undefined) return { ...all, older: null };
  const older = addDays(cut, 1);
  const kept = <T extends object>(rows: T[]): T[] => {
    const newer = rows.filter((row) => (dayOf(row) ?? older) >= older);
    // More on one day than a page holds: the day is given as far as it goes.
    return newer.length === 0 && rows.length >= MOST ? rows : newer;
  };
  const page = Object.fromEntries(Object.entries(all).map(([kind, rows]) => [kind, kept<object>(rows)]));
  return { ...(page as Omit<Records, "older">), older };
}

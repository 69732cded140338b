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
 * its last whole day waits for the next page, and `older` says where that begins. Each page begins on an earlier day than
 * the one before, so that whoever reads on comes to an end.
 */
export function wholeDays(all: Omit<Records, "older">): Records {
  const older = Object.values(all)
    .flatMap((rows) => firstWholeDay(rows) ?? [])
    .sort()
    .at(-1);
  if (older === undefined) return { ...all, older: null };
  const kept = <T extends object>(rows: T[]): T[] => rows.filter((row) => (dayOf(row) ?? older) >= older);
  const page = Object.fromEntries(Object.entries(all).map(([kind, rows]) => [kind, kept<object>(rows)]));
  return { ...(page as Omit<Records, "older">), older };
}

/** The oldest day that a full page of a kind holds whole; undefined where the kind ends on it. */
function firstWholeDay(rows: object[]): string | undefined {
  if (rows.length < MOST) return undefined;
  const [newest, last] = [dayOf(rows[0] ?? {}), dayOf(rows[MOST - 1] ?? {})];
  // More on one day than a page holds: the day is given as far as it goes.
  return last === undefined || newest === last ? last : addDays(last, 1);
}

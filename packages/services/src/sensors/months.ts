import { type ActingSensor, type Db, withSensor } from "@pith/db";
import { sql } from "drizzle-orm";

/** Months that this process has seen a partition of. They are dropped long after nothing of them is taken any more. */
const seen = new WeakMap<Db, Set<number>>();

export const monthOf = (atMs: number): number => {
  const at = new Date(atMs);
  return at.getUTCFullYear() * 12 + at.getUTCMonth();
};
export const firstDayOf = (month: number): string =>
  `${Math.floor(month / 12)}-${String((month % 12) + 1).padStart(2, "0")}-01`;

/** Late readings may be of a month that nobody made ahead. In a transaction of its own: making one locks the whole. */
export async function ensureMonths(
  db: Db,
  key: ActingSensor,
  readings: readonly { atMs: number }[],
): Promise<void> {
  const known = seen.get(db) ?? new Set();
  seen.set(db, known);
  const wanted = new Set<number>();
  for (const { atMs } of readings) {
    const month = monthOf(atMs);
    if (!known.has(month)) wanted.add(month);
  }
  for (const month of wanted) {
    await withSensor(db, key, (tx) =>
      tx.execute(sql`select make_readings_month(${firstDayOf(month)}::date)`),
    );
    known.add(month);
  }
}

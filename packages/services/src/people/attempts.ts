import { createHmac } from "node:crypto";
import type { AuthDb } from "@pith/db";
import { sql } from "drizzle-orm";

/** At most so many within so long. */
export interface Limit {
  /** What is counted: a word for the header. */
  name: string;
  most: number;
  withinS: number;
  /** Whose count it is; kept as a keyed hash. */
  of: string;
}

export interface Standing {
  name: string;
  most: number;
  withinS: number;
  left: number;
  endsInS: number;
  over: boolean;
  /** This attempt was the first one too many. */
  justOver: boolean;
}

/**
 * Counts one attempt against each limit, in one statement, and says where each stands. The counts are in the database:
 * however many copies of the API run, they count together.
 */
export async function countAttempt(
  authDb: AuthDb,
  secret: string,
  now: Date,
  limits: readonly Limit[],
): Promise<Standing[]> {
  const at = now.toISOString();
  const keyed = limits.map((limit) => ({ limit, key: keyOf(secret, limit) }));
  // In one order, so that two attempts at once do not wait for each other crosswise.
  const rows = keyed
    .toSorted((a, b) => (a.key < b.key ? -1 : 1))
    .map(
      ({ key, limit }) =>
        sql`(${key}::text, 1, ${at}::timestamptz + ${limit.withinS}::int * interval '1 second')`,
    );
  await authDb.drizzle.execute(sql`
    delete from auth.attempts where key in (
      select key from auth.attempts where ends_at < ${at}::timestamptz - interval '1 day' limit 20 for update skip locked)`);
  const counted = await authDb.drizzle.execute<{ key: string; count: number; ends_in: number }>(sql`
    insert into auth.attempts as a (key, count, ends_at) values ${sql.join(rows, sql`, `)}
    on conflict (key) do update set
      count = case when a.ends_at <= ${at}::timestamptz then 1 else a.count + 1 end,
      ends_at = case when a.ends_at <= ${at}::timestamptz then excluded.ends_at else a.ends_at end
    returning key, count, ceil(extract(epoch from ends_at - ${at}::timestamptz))::int as ends_in`);
  const byKey = new Map([...counted].map((row) => [row.key, row]));
  return keyed.map(({ key, limit: { name, most, withinS } }) => {
    const { count, ends_in } = byKey.get(key) ?? { count: 1, ends_in: withinS };
    return {
      name,
      most,
      withinS,
      left: Math.max(0, most - count),
      endsInS: ends_in,
      over: count > most,
      justOver: count === most + 1,
    };
  });
}

/** Whoever got in starts anew. */
export async function forgetAttempts(authDb: AuthDb, secret: string, limit: Limit): Promise<void> {
  await authDb.drizzle.execute(sql`delete from auth.attempts where key = ${keyOf(secret, limit)}`);
}

const keyOf = (secret: string, { name, of }: Limit): string =>
  createHmac("sha256", secret).update(`attempts ${name} ${of}`).digest("base64url");

import { createHash } from "node:crypto";
import { readdir, readFile } from "node:fs/promises";
import postgres, { type Sql } from "postgres";
import { createQueue } from "./queue.ts";
import { appRole, authRole, createRoles, jobsRole, type Passwords } from "./roles.ts";

const folder = new URL("../migrations/", import.meta.url);

/** Chosen once and for all; two servers of ours that start at once take turns. */
const LOCK = 0x70697468;

/** Passwords are those that the roles `pith_app`, `pith_auth` and `pith_jobs` get. */
export interface MigrateOptions extends Passwords {
  /** Logs in as the owner: of the database, and with CREATEROLE, but it need not be a superuser. */
  adminUrl: string;
}

/**
 * Brings a database up to this code: creates or updates the three roles, runs the migrations that have not run yet,
 * each in one transaction, and brings the queue up to date as its own role. Running it again changes nothing but the passwords. Throws where a migration that has run
 * was edited since, or the database knows one that this code does not.
 */
export async function migrate({ adminUrl, ...passwords }: MigrateOptions): Promise<void> {
  const sql = postgres(adminUrl, { max: 1, onnotice: () => {}, fetch_types: false });
  try {
    await sql`select pg_advisory_lock(${LOCK})`;
    await createRoles(sql, passwords);
    await applyMissing(sql);
    await createQueue(jobsUrl(adminUrl, passwords.jobsPassword));
  } finally {
    await sql.end({ timeout: 5 });
  }
}

async function applyMissing(sql: Sql): Promise<void> {
  await sql`create schema if not exists pith_migrations`;
  await sql`create table if not exists pith_migrations.applied (
    name text primary key, sha256 text not null, applied_at timestamptz not null default now())`;
  const applied = new Map(
    (await sql<{ name: string; sha256: string }[]>`select name, sha256 from pith_migrations.applied`).map(
      (row) => [row.name, row.sha256],
    ),
  );
  const names = (await readdir(folder)).filter((name) => name.endsWith(".sql")).sort();
  for (const known of applied.keys()) {
    if (!names.includes(known)) {
      throw new Error(
        `The database has run migration ${known}, which this version does not know; use a newer one.`,
      );
    }
  }
  for (const name of names) {
    const text = await readFile(new URL(name, folder), "utf8");
    const sha256 = createHash("sha256").update(text).digest("hex");
    const ran = applied.get(name);
    if (ran === sha256) continue;
    if (ran) throw new Error(`Migration ${name} was edited after it had run; add a new one instead.`);
    await sql.begin(async (tx) => {
      await tx.unsafe(text);
      await tx`insert into pith_migrations.applied (name, sha256) values (${name}, ${sha256})`;
    });
  }
}

/** The address at which services log in, from the owner's. */
export const appUrl = (adminUrl: string, password: string): string => as(adminUrl, appRole, password);

/** The address at which the sign-in library logs in, from the owner's. */
export const authUrl = (adminUrl: string, password: string): string => as(adminUrl, authRole, password);

/** The address at which the worker logs in, from the owner's. */
export const jobsUrl = (adminUrl: string, password: string): string => as(adminUrl, jobsRole, password);

function as(adminUrl: string, role: string, password: string): string {
  const url = new URL(adminUrl);
  url.username = role;
  url.password = encodeURIComponent(password);
  return url.href;
}

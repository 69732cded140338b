import { drizzle, type PostgresJsDatabase } from "drizzle-orm/postgres-js";
import postgres from "postgres";
import { authTables } from "./schema/auth.ts";

/** A pool of connections as the unprivileged role. It can be closed; rows are reached through the doors only. */
export interface Db {
  close(): Promise<void>;
}

export interface PoolOptions {
  /** Connections kept at most. An edge function opens one for a request. */
  max: number;
  /** Off behind a pooler that hands a connection on after each transaction. On unless said. */
  prepare?: boolean;
}

/** A transaction. Whatever it reads and writes is what its office, role and farms allow. */
export type Tx = Parameters<Parameters<PostgresJsDatabase["transaction"]>[0]>[0];

const pools = new WeakMap<Db, PostgresJsDatabase>();

const connect = (url: string, { max, prepare = true }: PoolOptions) =>
  postgres(url, {
    max,
    prepare,
    // Drizzle reads arrays itself; asking the server for its types would cost each new connection a round trip.
    fetch_types: false,
    onnotice: () => {},
    connection: { application_name: "pith" },
  });

/** Opens the pool that services use. `url` logs in as `pith_app`. Connects at the first use. */
export function openDatabase(url: string, options: PoolOptions): Db {
  const client = connect(url, options);
  const db: Db = { close: () => client.end({ timeout: 5 }) };
  pools.set(db, drizzle(client));
  return db;
}

/** Opens the pool of the sign-in library. `url` logs in as `pith_auth`, which sees the schema `auth` and nothing else. */
export function openAuthDatabase(url: string, options: PoolOptions) {
  const client = connect(url, options);
  return {
    drizzle: drizzle(client, { schema: authTables }),
    tables: authTables,
    close: (): Promise<void> => client.end({ timeout: 5 }),
  };
}
export type AuthDb = ReturnType<typeof openAuthDatabase>;

/** The same pool under another handle, so that something can be remembered of one request's use of it. */
export function sameDatabase(db: Db): Db {
  const twin: Db = { close: () => db.close() };
  pools.set(twin, poolOf(db));
  return twin;
}

/** For the doors of this package alone. */
export function poolOf(db: Db): PostgresJsDatabase {
  const pool = pools.get(db);
  if (!pool) throw new Error("this database was not opened by openDatabase");
  return pool;
}

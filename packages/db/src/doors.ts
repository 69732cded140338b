import { sql } from "drizzle-orm";
import { markEffect } from "./once.ts";
import { type Db, poolOf, type Tx } from "./open.ts";

/**
 * As whom a transaction acts. A farmer or reader acts on the farms named; lead and agent, or a job of the office, on all
 * or some.
 */
export type Acting = {
  officeId: string;
  /** Null for a job of the office. */
  userId: string | null;
  /** The transaction may read only, whatever its role may write. A reader's always is. */
  readOnly?: boolean;
  /** It reads only, and all of it as things stood at its first query. */
  snapshot?: boolean;
  /** A lead's, to take in what another office exported: rows written by others, and a whole chain. */
  importing?: boolean;
} & (
  | { role: "lead" | "agent"; farmIds: "*" | readonly string[] }
  | { role: "farmer" | "reader"; farmIds: readonly string[] }
);

const ROLES: readonly string[] = ["lead", "agent", "farmer", "reader"] satisfies Acting["role"][];

/**
 * The one way to a tenant's rows: a transaction that sees and writes what this office, role and these farms may.
 * The settings end with the transaction, so a pooled connection leaks nothing.
 *
 * Throws before it connects where an id is not a UUID, or a farmer or reader asks for all farms. Writing what policy forbids
 * fails with SQLSTATE 42501 (in the error's `cause.code`); reading it gives no rows.
 */
export async function withOffice<T>(db: Db, acting: Acting, work: (tx: Tx) => Promise<T>): Promise<T> {
  const { officeId, role, farmIds, userId } = acting;
  mustBeUuid("officeId", officeId);
  if (userId !== null) mustBeUuid("userId", userId);
  if (!ROLES.includes(role)) throw new TypeError(`role must be one of ${ROLES.join(", ")}: ${role}`);
  if (farmIds !== "*") for (const id of farmIds) mustBeUuid("farmIds", id);
  else if (role === "farmer" || role === "reader") {
    throw new TypeError("farmIds must name a farmer's or a reader's farms; only lead and agent have all");
  }
  return transactionWith(
    db,
    {
      officeId,
      role,
      farmIds: farmIds === "*" ? "*" : farmIds.join(","),
      userId,
      importing: acting.importing ?? false,
    },
    work,
    {
      ...((acting.readOnly || acting.snapshot || role === "reader") && { accessMode: "read only" }),
      ...(acting.snapshot && { isolationLevel: "repeatable read" }),
    },
  );
}

/** Before the tenant is known: a transaction that can read this person's memberships, in every office, and no more. */
export async function withUser<T>(db: Db, userId: string, work: (tx: Tx) => Promise<T>): Promise<T> {
  mustBeUuid("userId", userId);
  return transactionWith(db, { officeId: "", role: "", farmIds: "", userId }, work);
}

interface Settings {
  officeId: string;
  role: string;
  farmIds: string;
  userId: string | null;
  importing?: boolean;
  /** A sensor's alone. */
  sensor?: { keyId: string; seriesIds: string };
  /** Of a key that was presented, before its office is known. */
  keySha256?: string;
}

/** For the doors of this package alone. */
export const transactionWith = <T>(
  db: Db,
  settings: Settings,
  work: (tx: Tx) => Promise<T>,
  config?: { accessMode?: "read only"; isolationLevel?: "repeatable read" },
): Promise<T> =>
  poolOf(db).transaction(
    async (tx) => {
      const { sensor, keySha256 } = settings;
      await tx.execute(sql`select
      set_config('app.office_id', ${settings.officeId}, true),
      set_config('app.role', ${settings.role}, true),
      set_config('app.farm_ids', ${settings.farmIds}, true),
      set_config('app.user_id', ${settings.userId ?? ""}, true)
      ${settings.importing ? sql`, set_config('app.importing', 'yes', true)` : sql``}
      ${sensor ? sql`, set_config('app.sensor_key', ${sensor.keyId}, true), set_config('app.series_ids', ${sensor.seriesIds}, true)` : sql``}
      ${keySha256 === undefined ? sql`` : sql`, set_config('app.key_sha256', ${keySha256}, true)`}`);
      try {
        const done = await work(tx);
        if (settings.officeId !== "" && config?.accessMode !== "read only") await markEffect(db, tx);
        return done;
      } catch (error) {
        // The driver would send ROLLBACK to a connection that is gone, which ends the process (porsager/postgres 1208).
        // Nothing is left to roll back, and the transaction is refused by the closing itself: do not settle before it.
        if (connectionIsGone(error)) return new Promise<never>(() => {});
        throw error;
      }
    }, // Drizzle would send an empty "set transaction", which is no SQL.
    config && Object.keys(config).length > 0 ? config : undefined,
  );

const GONE = ["CONNECTION_CLOSED", "CONNECTION_DESTROYED", "ECONNRESET", "EPIPE"];

/** After a FATAL error the server closes the connection itself. */
function connectionIsGone(error: unknown): boolean {
  const cause = error instanceof Error && error.cause instanceof Error ? error.cause : error;
  if (!(cause instanceof Error)) return false;
  const { code, severity } = cause as { code?: unknown; severity?: unknown };
  return severity === "FATAL" || GONE.some((gone) => gone === code);
}

const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/i;

/** For the doors of this package alone. */
export function mustBeUuid(field: string, value: string): void {
  if (!UUID.test(value)) throw new TypeError(`${field} must be a UUID: ${JSON.stringify(value)}`);
}

import { sql } from "drizzle-orm";
import { type Db, sameDatabase, type Tx } from "./open.ts";

/** One try of a request that must have its effect once: the hash of its key, and the claim it holds on it. */
export interface Once {
  keySha256: string;
  claim: string;
}

const tries = new WeakMap<Db, Once>();

/** The database for one request alone: whatever its transactions change is marked on its key as they commit. */
export function onceOnly(db: Db, once: Once): Db {
  const own = sameDatabase(db);
  tries.set(own, once);
  return own;
}

/** Another try of the same request has taken it over. Nothing of this one's transaction is kept. */
export class ClaimLost extends Error {
  constructor() {
    super("Another try of the same request has taken it over.");
    this.name = "ClaimLost";
  }
}

/** Before a transaction commits: what it changed is marked, or taken back where the claim is lost. */
export async function markEffect(db: Db, tx: Tx): Promise<void> {
  const once = tries.get(db);
  if (!once) return;
  const { keySha256, claim } = once;
  // A transaction that changed nothing has no id yet; it marks nothing and needs no claim.
  const [row] = await tx.execute<{ held: boolean }>(sql`
    with marked as (
      update idempotency_keys set effect = true
      where office_id = app_office() and user_id = app_user() and key = ${keySha256} and claim = ${claim}
        and pg_current_xact_id_if_assigned() is not null
      returning 1)
    select exists (select from marked) or pg_current_xact_id_if_assigned() is null as held`);
  if (!row?.held) throw new ClaimLost();
}

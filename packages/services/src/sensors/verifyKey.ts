import type { Quantity } from "@pith/contract";
import { type Db, sensorKeys, series, withPresentedKey, withSensor } from "@pith/db";
import { and, eq } from "drizzle-orm";
import { sha256Hex } from "../ledger/canonical.ts";

/** A series as far as the door must know it. */
export interface KnownSeries {
  id: string;
  quantity: Quantity;
  unit: string;
  keepMonths: number;
  retired: boolean;
}

/** A key that was found good, with the series it names by what devices call them. */
export interface VerifiedKey {
  officeId: string;
  farmId: string;
  keyId: string;
  seriesIds: string[];
  series: ReadonlyMap<string, KnownSeries>;
  endsAtMs: number;
  /** Written down once a minute and not with every batch. */
  usedAtMs: number;
}

/** A revoked key opens nothing within five seconds: a verified one is believed for three. */
const BELIEVED_MS = 3000;
/** Far more keys than one server's sensors have; above, the memory starts anew. */
const MOST_KEPT = 10_000;

interface Kept {
  key: VerifiedKey;
  readAtMs: number;
}
const kept = new WeakMap<Db, Map<string, Kept>>();

/**
 * The key whose secret was presented; undefined where there is none, or it was revoked or has ended. Verified keys are
 * kept in memory and believed for {@link BELIEVED_MS}; what is not known is asked of the database each time.
 */
export async function verifySensorKey(db: Db, secret: string, now: Date): Promise<VerifiedKey | undefined> {
  const sha256 = await sha256Hex(secret);
  const nowMs = now.getTime();
  const memory = kept.get(db) ?? new Map<string, Kept>();
  kept.set(db, memory);
  const known = memory.get(sha256);
  const ageMs = known ? nowMs - known.readAtMs : Number.POSITIVE_INFINITY;
  // A clock that was set back makes an entry of the future: not believed either.
  const key = known && ageMs >= 0 && ageMs < BELIEVED_MS ? known.key : await readKey(db, sha256);
  if (key === undefined) {
    memory.delete(sha256);
    return undefined;
  }
  if (key !== known?.key) {
    if (known) key.usedAtMs = Math.max(key.usedAtMs, known.key.usedAtMs);
    if (memory.size >= MOST_KEPT) memory.clear();
    memory.set(sha256, { key, readAtMs: nowMs });
  }
  return nowMs < key.endsAtMs ? key : undefined;
}

async function readKey(db: Db, sha256: string): Promise<VerifiedKey | undefined> {
  const [row] = await withPresentedKey(db, sha256, (tx) =>
    tx.select().from(sensorKeys).where(eq(sensorKeys.secretSha256, sha256)),
  );
  if (!row || row.revokedAt !== null) return undefined;
  const { officeId, farmId, id: keyId, seriesIds } = row;
  const named = await withSensor(db, { officeId, keyId, seriesIds }, (tx) =>
    tx
      .select()
      .from(series)
      .where(and(eq(series.officeId, officeId), eq(series.farmId, farmId))),
  );
  return {
    officeId,
    farmId,
    keyId,
    seriesIds,
    series: new Map(
      named.map(({ id, name, quantity, unit, keepMonths, retiredAt }) => [
        name,
        { id, quantity: quantity as Quantity, unit, keepMonths, retired: retiredAt !== null },
      ]),
    ),
    endsAtMs: row.endsAt === null ? Number.POSITIVE_INFINITY : Date.parse(row.endsAt),
    usedAtMs: row.lastUsedAt === null ? 0 : Date.parse(row.lastUsedAt),
  };
}

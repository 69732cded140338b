import { mustBeUuid, transactionWith } from "./doors.ts";
import type { Db, Tx } from "./open.ts";

/** As which key a transaction acts: in its office, on the series it names. It has no farms and is no person. */
export interface ActingSensor {
  officeId: string;
  keyId: string;
  seriesIds: readonly string[];
}

const NOBODY = { farmIds: "", userId: null };

/** A transaction that can append readings to the key's series and read those series again; nothing else of any farm. */
export async function withSensor<T>(
  db: Db,
  { officeId, keyId, seriesIds }: ActingSensor,
  work: (tx: Tx) => Promise<T>,
): Promise<T> {
  mustBeUuid("officeId", officeId);
  mustBeUuid("keyId", keyId);
  for (const id of seriesIds) mustBeUuid("seriesIds", id);
  return transactionWith(
    db,
    { ...NOBODY, officeId, role: "sensor", sensor: { keyId, seriesIds: seriesIds.join(",") } },
    work,
  );
}

/**
 * Before the office is known: a transaction that can read the sensor's key or the invitation whose secret has this
 * SHA-256, and no more.
 */
export async function withPresentedKey<T>(
  db: Db,
  sha256Hex: string,
  work: (tx: Tx) => Promise<T>,
): Promise<T> {
  if (!/^[0-9a-f]{64}$/.test(sha256Hex)) throw new TypeError("a presented key is its SHA-256 in hex");
  return transactionWith(db, { ...NOBODY, officeId: "", role: "", keySha256: sha256Hex }, work);
}

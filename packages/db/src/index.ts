/**
 * The database of Pith: typed tables and the doors to them. Nothing here reaches a tenant's row without an office.
 *
 *   openDatabase(url, { max, prepare? }): Db               pool as `pith_app`; `db.close()`
 *   withOffice(db, { officeId, role, farmIds, userId }, (tx) => ...)
 *                                                          one transaction inside one office, as agent or farmer
 *   withUser(db, userId, (tx) => ...)                      one transaction that reads this person's memberships
 *   withPresentedKey(db, sha256Hex, (tx) => ...)           one transaction that reads the key a sensor presented
 *   withSensor(db, { officeId, keyId, seriesIds }, ...)    one transaction that appends to the series a key names
 *   assertUnprivileged(db): Promise<void>                  refuses a role that row-level security does not hold
 *   openAuthDatabase(url, { max, prepare? }): { drizzle, close }   pool as `pith_auth`, for the sign-in library
 *   tables (offices, memberships, farms, ...), authTables  drizzle tables; operators come from drizzle-orm
 *   Db, Tx, Acting, AuthDb, PoolOptions                    types; rows are `typeof beds.$inferSelect`
 *
 * In `@pith/db/migrate`, for whoever may change the database itself:
 *   migrate({ adminUrl, appPassword, authPassword, jobsPassword }), appUrl(adminUrl, password), authUrl(...), jobsUrl(...)
 *
 * Instants come and go as RFC 3339 strings in UTC, calendar days as `YYYY-MM-DD`.
 * The ledger: lock the office's row of `ledgerHeads` last (`for update`; first entry: insert seq 0 and 64 zeros), insert the
 * entry with seq + 1 and that hash as `prevHash`, then move the head. An entry that does not continue the head is refused.
 */
export { assertUnprivileged } from "./assertUnprivileged.ts";
export { type Acting, withOffice, withUser } from "./doors.ts";
export { ClaimLost, onceOnly } from "./once.ts";
export { type AuthDb, type Db, openAuthDatabase, openDatabase, type PoolOptions, type Tx } from "./open.ts";
export * from "./schema/index.ts";
export { type ActingSensor, withPresentedKey, withSensor } from "./sensorDoor.ts";

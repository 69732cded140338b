import { sql } from "drizzle-orm";
import { bigint, boolean, jsonb, pgTable, text, uuid } from "drizzle-orm/pg-core";
import { bytea, instant, instantOrNow, officeId, ofOffice } from "./columns.ts";

/** The record that can only grow, and the erasable words that it holds no more than a hash of. */

/** People's own words. Erasing one removes salt and words; the ledger's hash of them still stands. */
export const texts = pgTable("texts", {
  ...ofOffice(),
  /** Null where it belongs to the office and not to a farm. */
  farmId: uuid("farm_id"),
  salt: bytea("salt"),
  bytes: text("bytes"),
  erasedAt: instant("erased_at"),
});

/** States that something was issued on, as canonical JSON under their own hash. */
export const ledgerStates = pgTable("ledger_states", {
  officeId: officeId(),
  sha256: text("sha256").notNull(),
  state: text("state").notNull(),
});

/** Where an office's chain ends. Locked last in every transaction that appends; begins at 0 and 64 zeros. */
export const ledgerHeads = pgTable("ledger_heads", {
  officeId: officeId(),
  seq: bigint("seq", { mode: "number" }).notNull(),
  hash: text("hash").notNull(),
});

export const ledgerEntries = pgTable("ledger_entries", {
  officeId: officeId(),
  seq: bigint("seq", { mode: "number" }).notNull(),
  farmId: uuid("farm_id"),
  kind: text("kind").notNull(),
  /** Canonical JSON, byte for byte what was hashed. */
  body: text("body").notNull(),
  prevHash: text("prev_hash").notNull(),
  hash: text("hash").notNull(),
  at: instant("at").notNull(),
});

/** Who changed what. */
export const auditLog = pgTable("audit_log", {
  ...ofOffice(),
  at: instantOrNow("at"),
  userId: uuid("user_id").default(sql`app_user()`),
  action: text("action").notNull(),
  entity: text("entity").notNull(),
  entityId: text("entity_id"),
  detail: jsonb("detail").$type<Record<string, unknown>>().notNull().default({}),
});

/** Answers to POSTs that carried a key, so that a repeated one is answered and not done twice. */
export const idempotencyKeys = pgTable("idempotency_keys", {
  officeId: officeId(),
  userId: uuid("user_id").notNull(),
  key: text("key").notNull(),
  /** Hash of the request: the same key with another request is refused. */
  requestSha256: text("request_sha256").notNull(),
  /** None while the request is under way, or where it ended before it could be kept. */
  response: jsonb("response").$type<Record<string, unknown>>(),
  /** The try that holds it. */
  claim: uuid("claim").notNull().default(sql`gen_random_uuid()`),
  /** Something was changed, in the same transaction as this was set. */
  effect: boolean("effect").notNull().default(false),
  createdAt: instantOrNow("created_at"),
});

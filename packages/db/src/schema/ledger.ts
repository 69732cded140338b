import { sql } from "drizzle-orm";
import { bigint, boolean, jsonb, pgTable, text, uuid } from "drizzle-orm/pg-core";
import { bytea, day, farmId, instant, instantOrNow, ofFarm, officeId, ofOffice } from "./columns.ts";

/** The record that can only grow, and the erasable words that it holds no more than a hash of. */

/** People's own words. Erasing one removes salt and words; the ledger's hash of them still stands. */
export const texts = pgTable("texts", {
  ...ofOffice(),
  /** Null where it belongs to the office and not to a farm. */
  farmId: uuid("farm_id"),
  salt: bytea("salt"),
  bytes: text("bytes"),
  erasedAt: instant("erased_at"),
  /** Null in rows older than the column. */
  writtenBy: uuid("written_by").default(sql`app_user()`),
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

/** What vouches for the chain from outside it: signed, to be kept by others. */
export const ledgerCheckpoints = pgTable("ledger_checkpoints", {
  ...ofOffice(),
  onDay: day("on_day").notNull(),
  seq: bigint("seq", { mode: "number" }).notNull(),
  /** What was signed, with its signature, as canonical JSON. */
  document: text("document").notNull(),
  madeAt: instantOrNow("made_at"),
});

/** From which office a chain came whole; its entries up to `lastSeq` name that office. */
export const ledgerOrigins = pgTable("ledger_origins", {
  officeId: officeId(),
  lastSeq: bigint("last_seq", { mode: "number" }).notNull(),
  fromOffice: uuid("from_office").notNull(),
  /** Of the export it came by. */
  signature: text("signature").notNull(),
  takenInAt: instantOrNow("taken_in_at"),
  takenInBy: uuid("taken_in_by").notNull(),
});

/** What another office's ledger says of a farm that moved here. */
export const ledgerHistories = pgTable("ledger_histories", {
  ...ofFarm(),
  fromOffice: uuid("from_office").notNull(),
  fromOfficeName: text("from_office_name").notNull(),
  checkpoint: text("checkpoint").notNull(),
  takenInAt: instantOrNow("taken_in_at"),
  takenInBy: uuid("taken_in_by").notNull(),
});

export const ledgerHistoryEntries = pgTable("ledger_history_entries", {
  officeId: officeId(),
  historyId: uuid("history_id").notNull(),
  farmId: farmId(),
  seq: bigint("seq", { mode: "number" }).notNull(),
  body: text("body").notNull(),
  hash: text("hash").notNull(),
  /** From the entry's hash to the root that the checkpoint signs. */
  proof: jsonb("proof").$type<string[]>().notNull(),
  textId: uuid("text_id"),
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

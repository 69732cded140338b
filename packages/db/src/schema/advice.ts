import { bigint, integer, jsonb, pgTable, text, uuid } from "drizzle-orm/pg-core";
import { day, instant, instantOrNow, number, ofFarm } from "./columns.ts";
import { ADVISORY_STATUSES, ANSWER_KINDS, FARMER_ANSWERS, SUBJECT_KINDS } from "./words.ts";

/** Drafts, what was issued, and what became of it. Answers are stored whole, as the rules gave them. */

const about = () => ({
  ruleId: text("rule_id").notNull(),
  ruleVersion: integer("rule_version").notNull(),
  subjectKind: text("subject_kind", { enum: SUBJECT_KINDS }).notNull(),
  subjectId: uuid("subject_id").notNull(),
  /** The plantings it is about: one for a planting, all on the valve, all in the bed. */
  plantingIds: uuid("planting_ids").array().notNull().default([]),
});

/** The one open draft of a rule for a subject. Agents only. Issuing it deletes it. */
export const drafts = pgTable("drafts", {
  ...ofFarm(),
  ...about(),
  kind: text("kind", { enum: ANSWER_KINDS }).notNull(),
  answer: jsonb("answer").$type<Record<string, unknown>>().notNull(),
  /** What the round shows of the answer, so that listing it need not read every answer whole. */
  summary: jsonb("summary").$type<Record<string, unknown>>().notNull().default({}),
  stateSha256: text("state_sha256").notNull(),
  decisionCode: text("decision_code"),
  harm: number("harm").notNull().default(0),
  actBy: instant("act_by"),
  /** The round is read in rising order of this. */
  orderKey: number("order_key").notNull(),
  madeAt: instantOrNow("made_at"),
  setAsideUntil: day("set_aside_until"),
});

/** Issued advice. What was said cannot be changed; only what became of it can. */
export const advisories = pgTable("advisories", {
  ...ofFarm(),
  ...about(),
  stateSha256: text("state_sha256").notNull(),
  answer: jsonb("answer").$type<Record<string, unknown>>().notNull(),
  /** The one rendering, by language, cautions inside. */
  rendered: jsonb("rendered").$type<Record<string, unknown>>().notNull(),
  expected: jsonb("expected").$type<Record<string, unknown>>(),
  noteTextId: uuid("note_text_id"),
  issuedBy: uuid("issued_by").notNull(),
  /** The second agent, where two were wanted. */
  confirmedBy: uuid("confirmed_by"),
  /** The permission it was issued on, where no agent issued it. */
  standingOrderId: uuid("standing_order_id"),
  standingOrderVersion: integer("standing_order_version"),
  issuedAt: instantOrNow("issued_at"),
  /** When its window has gone by at the site. Status `expired` follows later; readers go by this. */
  expiresAt: instant("expires_at"),
  ledgerSeq: bigint("ledger_seq", { mode: "number" }).notNull(),
  status: text("status", { enum: ADVISORY_STATUSES }).notNull().default("issued"),
  readAt: instant("read_at"),
  expiredAt: instant("expired_at"),
  supersededBy: uuid("superseded_by"),
  supersededAt: instant("superseded_at"),
  withdrawnAt: instant("withdrawn_at"),
  withdrawnBy: uuid("withdrawn_by"),
  withdrawnTextId: uuid("withdrawn_text_id"),
});

/** What a farmer, or an agent for them, answered. A second answer corrects the first and does not replace it. */
export const answers = pgTable("answers", {
  ...ofFarm(),
  advisoryId: uuid("advisory_id").notNull(),
  kind: text("kind", { enum: FARMER_ANSWERS }).notNull(),
  actual: jsonb("actual").$type<Record<string, unknown>>(),
  reasonTextId: uuid("reason_text_id"),
  answeredBy: uuid("answered_by").notNull(),
  answeredAt: instantOrNow("answered_at"),
  ledgerSeq: bigint("ledger_seq", { mode: "number" }).notNull(),
});

import { sql } from "drizzle-orm";
import { integer, jsonb, pgTable, text, uuid } from "drizzle-orm/pg-core";
import { day, instant, instantOrNow, ofFarm, officeId } from "./columns.ts";
import { SECOND_READERS } from "./words.ts";

/** How advice comes to be issued without, or by more than, one agent. */

/** A signed permission for one rule to issue on one farm by itself. Terms never change: others are a further version. */
export const standingOrders = pgTable("standing_orders", {
  ...ofFarm(),
  version: integer("version").notNull().default(1),
  ruleId: text("rule_id").notNull(),
  ruleVersion: integer("rule_version").notNull(),
  terms: jsonb("terms").$type<Record<string, unknown>>().notNull(),
  endsOn: day("ends_on").notNull(),
  signedBy: uuid("signed_by").notNull(),
  signedAt: instantOrNow("signed_at"),
  confirmedBy: uuid("confirmed_by"),
  confirmedAt: instant("confirmed_at"),
  pausedBy: uuid("paused_by"),
  pausedAt: instant("paused_at"),
  /** Revoked, or replaced by the next version. */
  endedBy: uuid("ended_by"),
  endedAt: instant("ended_at"),
});

/** One agent has read a draft and asks another to. */
export const secondReadings = pgTable("second_readings", {
  ...ofFarm(),
  draftId: uuid("draft_id").notNull(),
  /** The state whose answer was read: a draft made anew must be read again. */
  stateSha256: text("state_sha256").notNull(),
  noteTextId: uuid("note_text_id"),
  askedBy: uuid("asked_by").notNull(),
  askedAt: instantOrNow("asked_at"),
  sentBackBy: uuid("sent_back_by"),
  sentBackAt: instant("sent_back_at"),
  sentBackTextId: uuid("sent_back_text_id"),
});

/** Which advice an office wants two people for. Nothing stored means none. */
export const issuingSettings = pgTable("issuing_settings", {
  officeId: officeId(),
  secondReader: text("second_reader", { enum: SECOND_READERS }).notNull().default("never"),
  ruleIds: text("rule_ids").array().notNull().default([]),
  changedBy: uuid("changed_by").default(sql`app_user()`),
  changedAt: instantOrNow("changed_at"),
});

import { sql } from "drizzle-orm";
import { boolean, integer, pgTable, text, uuid } from "drizzle-orm/pg-core";
import { farmId, instant, instantOrNow, ofFarm, officeId, ofOffice } from "./columns.ts";
import { CHANNELS, DELIVERED, LINK_KINDS, TIMINGS } from "./words.ts";

/** How issued advice reaches people, and the office's own systems. */

/** One person's wishes in one office; nothing stored means the ordinary ones. */
export const deliveryPreferences = pgTable("delivery_preferences", {
  officeId: officeId(),
  userId: uuid("user_id").notNull(),
  mail: text("mail", { enum: TIMINGS }).notNull().default("at-once"),
  push: text("push", { enum: TIMINGS }).notNull().default("off"),
  text: text("text", { enum: TIMINGS }).notNull().default("off"),
  /** The address they sign in with, as it was when they last said how they want to be told. */
  mailTo: text("mail_to"),
  textTo: text("text_to"),
  /** Minutes after midnight of their clock. */
  dailyAtMinute: integer("daily_at_minute").notNull().default(360),
  quietFromMinute: integer("quiet_from_minute"),
  quietToMinute: integer("quiet_to_minute"),
  timeZone: text("time_zone").notNull().default("UTC"),
  language: text("language").$type<"en" | "es">().notNull().default("en"),
  changedAt: instantOrNow("changed_at"),
});

/** A browser that lets itself be told. */
export const pushSubscriptions = pgTable("push_subscriptions", {
  ...ofOffice(),
  userId: uuid("user_id").notNull(),
  endpoint: text("endpoint").notNull(),
  endpointSha256: text("endpoint_sha256").notNull(),
  p256dh: text("p256dh").notNull(),
  auth: text("auth").notNull(),
  addedAt: instantOrNow("added_at"),
});

/** The outbox. */
export const deliveries = pgTable("deliveries", {
  ...ofFarm(),
  advisoryId: uuid("advisory_id").notNull(),
  userId: uuid("user_id").notNull(),
  channel: text("channel", { enum: CHANNELS }).notNull(),
  /** The advice itself, to the farm; or that nobody there has read it, to the office. */
  about: text("about", { enum: ["advice", "unread"] }).notNull(),
  dueAt: instant("due_at").notNull(),
  state: text("state", { enum: DELIVERED }).notNull().default("waiting"),
  attempts: integer("attempts").notNull().default(0),
  /** Whoever sends it holds it so long. */
  claimedUntil: instant("claimed_until"),
  sentAt: instant("sent_at"),
  /** In our words. */
  outcome: text("outcome"),
  madeAt: instantOrNow("made_at"),
});

/** An issued advice with an hour to act by. */
export const warnings = pgTable("warnings", {
  officeId: officeId(),
  advisoryId: uuid("advisory_id").notNull(),
  farmId: farmId(),
  actBy: instant("act_by").notNull(),
  /** Unread by then, the farm is called. */
  callFrom: instant("call_from").notNull(),
  frost: boolean("frost").notNull(),
  toldAt: instant("told_at"),
  calledAt: instant("called_at"),
  calledBy: uuid("called_by"),
});

/** Addresses that let in whoever has them. */
export const privateLinks = pgTable("private_links", {
  ...ofOffice(),
  userId: uuid("user_id").notNull(),
  /** A calendar's. */
  farmId: uuid("farm_id"),
  kind: text("kind", { enum: LINK_KINDS }).notNull(),
  secretSha256: text("secret_sha256").notNull(),
  madeAt: instantOrNow("made_at"),
  lastUsedAt: instant("last_used_at"),
  revokedAt: instant("revoked_at"),
});

/** Where an office's own system wants to be told. */
export const webhookEndpoints = pgTable("webhook_endpoints", {
  ...ofOffice(),
  url: text("url").notNull(),
  events: text("events").array().notNull(),
  /** Sealed with a key that is not in the database. */
  secretSealed: text("secret_sealed").notNull(),
  /** The one before, which signs beside the new one for a while. */
  previousSealed: text("previous_sealed"),
  previousUntil: instant("previous_until"),
  addedBy: uuid("added_by").notNull().default(sql`app_user()`),
  addedAt: instantOrNow("added_at"),
  failingSince: instant("failing_since"),
  disabledAt: instant("disabled_at"),
  removedAt: instant("removed_at"),
});

/** What happened, as it is told: the same bytes and the same id at every attempt. */
export const webhookMessages = pgTable("webhook_messages", {
  ...ofOffice(),
  farmId: uuid("farm_id"),
  event: text("event").notNull(),
  body: text("body").notNull(),
  madeAt: instantOrNow("made_at"),
});

/** A message on its way to one endpoint. */
export const webhookSends = pgTable("webhook_sends", {
  ...ofOffice(),
  endpointId: uuid("endpoint_id").notNull(),
  messageId: uuid("message_id").notNull(),
  state: text("state", { enum: DELIVERED }).notNull().default("waiting"),
  attempts: integer("attempts").notNull().default(0),
  nextAt: instant("next_at").notNull(),
  claimedUntil: instant("claimed_until"),
});

export const webhookAttempts = pgTable("webhook_attempts", {
  ...ofOffice(),
  sendId: uuid("send_id").notNull(),
  endpointId: uuid("endpoint_id").notNull(),
  at: instant("at").notNull(),
  status: integer("status"),
  outcome: text("outcome").notNull(),
  tookMs: integer("took_ms").notNull(),
});

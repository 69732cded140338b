import { sql } from "drizzle-orm";
import { boolean, pgTable, text, uuid } from "drizzle-orm/pg-core";
import { instant, instantOrNow, officeId, ofOffice } from "./columns.ts";
import { ROLES } from "./words.ts";

/** Whom an office has asked in and who has not come yet. The token went out by mail; its hash is here. */
export const invitations = pgTable("invitations", {
  ...ofOffice(),
  email: text("email").notNull(),
  name: text("name").notNull(),
  role: text("role", { enum: ROLES }).notNull(),
  farmIds: uuid("farm_ids").array().notNull().default([]),
  tokenSha256: text("token_sha256").notNull(),
  invitedBy: uuid("invited_by").notNull().default(sql`app_user()`),
  invitedAt: instantOrNow("invited_at"),
  expiresAt: instant("expires_at").notNull(),
});

/** What those were called who belong to an office no longer. */
export const formerPeople = pgTable("former_people", {
  officeId: officeId(),
  userId: uuid("user_id").notNull(),
  name: text("name").notNull(),
  leftAt: instantOrNow("left_at"),
  /** An export that was taken in says so, and nobody else. */
  takenIn: boolean("taken_in").notNull().default(false),
});

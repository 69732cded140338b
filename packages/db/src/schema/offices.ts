import { sql } from "drizzle-orm";
import { boolean, jsonb, pgTable, text, uuid } from "drizzle-orm/pg-core";
import { instant, instantOrNow, ofOffice } from "./columns.ts";
import { ROLES, UNITS } from "./words.ts";

/** The tenant. Its own id is its key. */
export const offices = pgTable("offices", {
  id: uuid("id").notNull().defaultRandom(),
  name: text("name").notNull(),
  county: text("county").notNull(),
  units: text("units", { enum: UNITS }).notNull().default("metric"),
  settings: jsonb("settings").$type<Record<string, unknown>>().notNull().default({}),
  createdAt: instantOrNow("created_at"),
  /** Whether lead and agents must sign in with a second step. */
  secondStepForStaff: boolean("second_step_for_staff").notNull().default(false),
});

/** An office's own table for reading soil tests, with its source; the rules' guide. */
export const officeGuides = pgTable("office_guides", {
  ...ofOffice(),
  guide: jsonb("guide").$type<Record<string, unknown>>().notNull(),
  addedBy: uuid("added_by").notNull().default(sql`app_user()`),
  addedAt: instantOrNow("added_at"),
  retiredAt: instant("retired_at"),
});

/** What an office itself holds as evidence, each with where it came from. */
export const officeSources = pgTable("office_sources", {
  ...ofOffice(),
  source: jsonb("source").$type<Record<string, unknown>>().notNull(),
  addedBy: uuid("added_by").notNull().default(sql`app_user()`),
  addedAt: instantOrNow("added_at"),
  retiredAt: instant("retired_at"),
});

/** Who may act in an office, as what, and a farmer's farms. */
export const memberships = pgTable("memberships", {
  ...ofOffice(),
  userId: uuid("user_id").notNull(),
  role: text("role", { enum: ROLES }).notNull(),
  farmIds: uuid("farm_ids").array().notNull().default([]),
  name: text("name").notNull(),
  email: text("email"),
});

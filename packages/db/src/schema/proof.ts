import { integer, jsonb, pgTable, text, uuid } from "drizzle-orm/pg-core";
import { bytea, day, farmId, instant, instantOrNow, number, ofFarm, officeId, recorded } from "./columns.ts";
import type { PlanBlock, TrialPlan, TrialPlot } from "./shapes.ts";
import { MISSING_REASONS, PHOTO_TYPES, SPRAY_TARGETS } from "./words.ts";

/** What is seen on plants, sprayed, planned for the beds, and compared in trials. */

/** What somebody saw wrong with plants. */
export const signs = pgTable("signs", {
  ...ofFarm(),
  plantingId: uuid("planting_id").notNull(),
  onDay: day("on_day").notNull(),
  /** Words that grow with the rules, which check them at the door. */
  sign: text("sign").notNull(),
  part: text("part"),
  pattern: text("pattern"),
  speed: text("speed"),
  plantsPct: number("plants_pct"),
  textId: uuid("text_id"),
  ...recorded(),
});

export const photos = pgTable("photos", {
  ...ofFarm(),
  signId: uuid("sign_id").notNull(),
  mediaType: text("media_type", { enum: PHOTO_TYPES }).notNull(),
  bytes: bytea("bytes").notNull(),
  ...recorded(),
});

/** One spraying, with its label's product, registration and intervals as typed from it. */
export const sprays = pgTable("sprays", {
  ...ofFarm(),
  bedId: uuid("bed_id").notNull(),
  at: instant("at").notNull(),
  product: text("product").notNull(),
  registration: text("registration"),
  target: text("target", { enum: SPRAY_TARGETS }).notNull(),
  reEntryHours: number("re_entry_hours").notNull(),
  preHarvestDays: integer("pre_harvest_days").notNull(),
  minutesOfLabour: number("minutes_of_labour"),
  ...recorded(),
});

/** What stood in a bed in a season before. */
export const bedHistory = pgTable("bed_history", {
  ...ofFarm(),
  bedId: uuid("bed_id").notNull(),
  season: integer("season").notNull(),
  crop: text("crop").notNull(),
  disease: text("disease"),
  ...recorded(),
});

/** A season's plantings placed on the beds of one site. */
export const bedPlans = pgTable("bed_plans", {
  ...ofFarm(),
  siteId: uuid("site_id").notNull(),
  season: integer("season").notNull(),
  blocks: jsonb("blocks").$type<PlanBlock[]>().notNull().default([]),
  /** Grows with every change, so that two people do not overwrite each other. */
  version: integer("version").notNull().default(1),
  changedAt: instantOrNow("changed_at"),
});

export const trials = pgTable("trials", {
  ...ofFarm(),
  siteId: uuid("site_id").notNull(),
  name: text("name").notNull(),
  design: jsonb("design").$type<TrialPlan>().notNull(),
  plots: jsonb("plots").$type<TrialPlot[]>().notNull(),
  startedOn: day("started_on"),
  endedOn: day("ended_on"),
  madeAt: instantOrNow("made_at"),
});

/** One response of one plot, or why there is none. */
export const trialValues = pgTable("trial_values", {
  officeId: officeId(),
  farmId: farmId(),
  trialId: uuid("trial_id").notNull(),
  plotId: uuid("plot_id").notNull(),
  responseId: uuid("response_id").notNull(),
  onDay: day("on_day").notNull(),
  value: number("value"),
  missing: text("missing", { enum: MISSING_REASONS }),
  ...recorded(),
});

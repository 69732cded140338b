import { sql } from "drizzle-orm";
import { boolean, integer, jsonb, pgTable, text, uuid } from "drizzle-orm/pg-core";
import { day, farmId, instant, instantOrNow, number, ofFarm, officeId, recorded } from "./columns.ts";
import type { Json } from "./shapes.ts";
import {
  FORECAST_SOURCES,
  IMPORT_KINDS,
  IMPORT_STATUSES,
  MEDIA,
  PLANT_TEST_KINDS,
  SOIL_WATER_KINDS,
} from "./words.ts";

/** What came in from laboratories, stations and files. */

/** A file that was read: shown first, and only then saved, all or nothing. */
export const imports = pgTable("imports", {
  ...ofFarm(),
  kind: text("kind", { enum: IMPORT_KINDS }).notNull(),
  siteId: uuid("site_id"),
  bedId: uuid("bed_id"),
  fileName: text("file_name").notNull(),
  status: text("status", { enum: IMPORT_STATUSES }).notNull().default("staged"),
  /** How each column is read, and what must be answered first. */
  mapping: jsonb("mapping").$type<Json>().notNull(),
  accepted: jsonb("accepted").$type<Record<string, unknown>[]>().notNull(),
  refused: jsonb("refused").$type<Json[]>().notNull(),
  acceptedCount: integer("accepted_count").notNull(),
  refusedCount: integer("refused_count").notNull(),
  duplicateCount: integer("duplicate_count").notNull().default(0),
  createdBy: uuid("created_by").notNull(),
  createdAt: instantOrNow("created_at"),
  savedAt: instant("saved_at"),
});

/** One laboratory's result for one sample. The same sample is stored once. */
export const soilTests = pgTable("soil_tests", {
  ...ofFarm(),
  bedId: uuid("bed_id").notNull(),
  sampledOn: day("sampled_on").notNull(),
  depthCm: number("depth_cm").notNull(),
  medium: text("medium", { enum: MEDIA }).notNull(),
  labName: text("lab_name"),
  sampleRef: text("sample_ref").notNull(),
  /** pH, buffer pH, organic matter, CEC, EC and the nutrients' values as the rules read them. */
  result: jsonb("result").$type<Record<string, unknown>>().notNull(),
  importId: uuid("import_id"),
});

/** What a laboratory said of the water that is given: by a valve, or everywhere on a site. */
export const waterTests = pgTable("water_tests", {
  ...ofFarm(),
  siteId: uuid("site_id").notNull(),
  valveId: uuid("valve_id"),
  sampledOn: day("sampled_on").notNull(),
  labName: text("lab_name"),
  sampleRef: text("sample_ref"),
  /** Conductivity, pH, alkalinity and ions as the rules read them. */
  result: jsonb("result").$type<Record<string, unknown>>().notNull(),
  ...recorded(),
});

/** How an office reads the columns of a laboratory's files, once it has said so. */
export const labMappings = pgTable("lab_mappings", {
  officeId: officeId(),
  /** The laboratory's name in lower case. */
  lab: text("lab").notNull(),
  columns: jsonb("columns").$type<Json>().notNull(),
  updatedBy: uuid("updated_by").notNull().default(sql`app_user()`),
  updatedAt: instantOrNow("updated_at"),
});

/** What sap or leaves of a planting held. */
export const plantTests = pgTable("plant_tests", {
  ...ofFarm(),
  plantingId: uuid("planting_id").notNull(),
  sampledOn: day("sampled_on").notNull(),
  kind: text("kind", { enum: PLANT_TEST_KINDS }).notNull(),
  stage: text("stage").notNull(),
  labName: text("lab_name"),
  values: jsonb("values").$type<{ nutrient: string; unit: string; value: number }[]>().notNull(),
  ...recorded(),
});

/** What ran out of a planting's containers. */
export const drainReadings = pgTable("drain_readings", {
  ...ofFarm(),
  plantingId: uuid("planting_id").notNull(),
  onDay: day("on_day").notNull(),
  ecDSPerM: number("ec_ds_per_m"),
  ph: number("ph"),
  drainedPct: number("drained_pct"),
  ...recorded(),
});

/** What a soil sensor in a bed read: tension or volumetric water. */
export const soilWaterReadings = pgTable("soil_water_readings", {
  ...ofFarm(),
  bedId: uuid("bed_id").notNull(),
  at: instant("at").notNull(),
  kind: text("kind", { enum: SOIL_WATER_KINDS }).notNull(),
  depthCm: number("depth_cm").notNull(),
  value: number("value").notNull(),
  ...recorded(),
});

/** One day of weather in the open at a site's station. */
export const weatherDays = pgTable("weather_days", {
  officeId: officeId(),
  farmId: farmId(),
  siteId: uuid("site_id").notNull(),
  date: day("date").notNull(),
  tMaxC: number("t_max_c"),
  tMinC: number("t_min_c"),
  rainMm: number("rain_mm"),
  rhMaxPct: number("rh_max_pct"),
  rhMinPct: number("rh_min_pct"),
  rhMeanPct: number("rh_mean_pct"),
  dewPointC: number("dew_point_c"),
  windMPerS: number("wind_m_per_s"),
  windHeightM: number("wind_height_m"),
  rsMjPerM2Day: number("rs_mj_per_m2_day"),
  sunshineH: number("sunshine_h"),
  cloudPct: number("cloud_pct"),
  importId: uuid("import_id"),
});

/** A forecast as it was issued; its days are the rules' weather days. */
export const forecasts = pgTable("forecasts", {
  officeId: officeId(),
  farmId: farmId(),
  siteId: uuid("site_id").notNull(),
  issuedAt: instant("issued_at").notNull(),
  days: jsonb("days").$type<Record<string, unknown>[]>().notNull(),
  /** Hour by hour, where the service says them; the rules' forecast hours. */
  hours: jsonb("hours").$type<Record<string, unknown>[]>(),
  importId: uuid("import_id"),
  /** Service it was pulled from, and when; null where it came from a file. */
  source: text("source", { enum: FORECAST_SOURCES }),
  retrievedAt: instant("retrieved_at"),
});

/** How a site's forecast service is doing. One row a site, from the first time it was asked. */
export const weatherSources = pgTable("weather_sources", {
  officeId: officeId(),
  farmId: farmId(),
  siteId: uuid("site_id").notNull(),
  source: text("source", { enum: FORECAST_SOURCES }).notNull(),
  lastTriedAt: instant("last_tried_at").notNull(),
  lastSuccessAt: instant("last_success_at"),
  /** Failures one after another since the last success. */
  failures: integer("failures").notNull().default(0),
  failingSince: instant("failing_since"),
  /** A sentence for people. */
  lastError: text("last_error"),
  /** The service says that this way of asking it will end. */
  deprecated: boolean("deprecated").notNull().default(false),
  /** Not to be asked before. */
  nextDueAt: instant("next_due_at"),
  /** Somebody is asking it until then at the latest. */
  claimedUntil: instant("claimed_until"),
  /** Place that `since` is of: a site that moved asks anew. */
  askedFor: text("asked_for").notNull(),
  /** What the last answer came with, to be handed back. */
  since: text("since"),
});

/** A temperature measured at the plants, under whatever cover stands there. */
export const plantTemperatures = pgTable("plant_temperatures", {
  officeId: officeId(),
  farmId: farmId(),
  plantingId: uuid("planting_id").notNull(),
  at: instant("at").notNull(),
  temperatureC: number("temperature_c").notNull(),
});

import { integer, jsonb, pgTable, text, uuid } from "drizzle-orm/pg-core";
import { day, farmId, instant, instantOrNow, number, ofFarm, officeId } from "./columns.ts";
import type { Json } from "./shapes.ts";
import { IMPORT_KINDS, IMPORT_STATUSES, MEDIA } from "./words.ts";

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
  importId: uuid("import_id"),
});

/** A temperature measured at the plants, under whatever cover stands there. */
export const plantTemperatures = pgTable("plant_temperatures", {
  officeId: officeId(),
  farmId: farmId(),
  plantingId: uuid("planting_id").notNull(),
  at: instant("at").notNull(),
  temperatureC: number("temperature_c").notNull(),
});

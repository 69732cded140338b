import { sql } from "drizzle-orm";
import { integer, pgTable, smallint, text, uuid } from "drizzle-orm/pg-core";
import { day, farmId, instant, instantOrNow, number, ofFarm, officeId } from "./columns.ts";
import { SENSOR_COVERS } from "./words.ts";

/** What sensors send by themselves. */

/** One quantity at one place. Never deleted: what it measured stays readable until its readings are let go. */
export const series = pgTable("series", {
  ...ofFarm(),
  siteId: uuid("site_id").notNull(),
  /** Null where it stands in the open, for the whole site. */
  bedId: uuid("bed_id"),
  /** What it stands under in that bed. */
  cover: text("cover", { enum: SENSOR_COVERS }),
  /** What the device calls it. */
  name: text("name").notNull(),
  label: text("label").notNull(),
  quantity: text("quantity").notNull(),
  /** Unit of what it sends without saying a unit. */
  unit: text("unit").notNull(),
  depthCm: number("depth_cm"),
  heightM: number("height_m"),
  expectedEveryS: integer("expected_every_s").notNull(),
  silentAfterS: integer("silent_after_s").notNull(),
  /** Readings are let go after so many months; hours and days stay. */
  keepMonths: integer("keep_months").notNull().default(14),
  addedAt: instantOrNow("added_at"),
  retiredAt: instant("retired_at"),
});

/** What a device shows to be let in. The secret itself is nowhere. */
export const sensorKeys = pgTable("sensor_keys", {
  ...ofFarm(),
  name: text("name").notNull(),
  /** How it begins, so that people can tell keys apart. */
  prefix: text("prefix").notNull(),
  secretSha256: text("secret_sha256").notNull(),
  seriesIds: uuid("series_ids").array().notNull(),
  /** The key that this one takes the place of. */
  replaces: uuid("replaces"),
  createdBy: uuid("created_by").notNull().default(sql`app_user()`),
  createdAt: instantOrNow("created_at"),
  endsAt: instant("ends_at"),
  revokedAt: instant("revoked_at"),
  revokedBy: uuid("revoked_by"),
  lastUsedAt: instant("last_used_at"),
});

const ofSeries = () => ({ officeId: officeId(), farmId: farmId(), seriesId: uuid("series_id").notNull() });

/** One reading, as sent, in the quantity's own unit. In partitions of a month of `at`. */
export const readings = pgTable("readings", {
  ...ofSeries(),
  at: instant("at").notNull(),
  value: number("value").notNull(),
  /** Bits: 1 range, 2 spike, 4 stuck, 8 after a gap. */
  flags: smallint("flags").notNull().default(0),
  keyId: uuid("key_id"),
  receivedAt: instantOrNow("received_at"),
});

const summed = () => ({
  readings: integer("readings").notNull(),
  /** Left out of what follows: out of range, a spike or stuck. */
  flagged: integer("flagged").notNull(),
  lowest: number("lowest"),
  highest: number("highest"),
  mean: number("mean"),
  total: number("total"),
});

/** An hour of UTC of a series. */
export const readingHours = pgTable("reading_hours", {
  ...ofSeries(),
  hour: instant("hour").notNull(),
  ...summed(),
});

/** A day of a series, by its site's clock. */
export const readingDays = pgTable("reading_days", {
  ...ofSeries(),
  day: day("day").notNull(),
  /** Hours of the day with a usable reading. */
  hours: integer("hours").notNull(),
  ...summed(),
});

/** Days of UTC whose readings flags and aggregates do not know yet. */
export const readingsStale = pgTable("readings_stale", {
  ...ofSeries(),
  utcDay: day("utc_day").notNull(),
  markedAt: instantOrNow("marked_at"),
});

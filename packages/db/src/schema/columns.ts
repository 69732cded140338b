import { sql } from "drizzle-orm";
import { customType, date, doublePrecision, uuid } from "drizzle-orm/pg-core";

/** Columns that many tables share. Keys, checks and policies stand in migrations/, in SQL. */

const timestamptz = customType<{ data: string; driverData: string }>({
  dataType: () => "timestamp with time zone",
  fromDriver: (value) => new Date(value).toISOString(),
});

/** An instant, read and written as RFC 3339 in UTC: `2026-05-01T12:00:00.000Z`. */
export const instant = (name: string) => timestamptz(name);

/** An instant that is the start of the transaction where nothing else is said. */
export const instantOrNow = (name: string) => timestamptz(name).notNull().default(sql`now()`);

/** Raw bytes. */
export const bytea = customType<{ data: Uint8Array; driverData: Uint8Array }>({
  dataType: () => "bytea",
});

/** A calendar day, `YYYY-MM-DD`. */
export const day = (name: string) => date(name, { mode: "string" });

/** A measured or computed number; the unit is in the column's name. */
export const number = (name: string) => doublePrecision(name);

/** The tenant's key. No default: a row without an office must fail. */
export const officeId = () => uuid("office_id").notNull();
export const farmId = () => uuid("farm_id").notNull();

/** A row of an office. */
export const ofOffice = () => ({ officeId: officeId(), id: uuid("id").notNull().defaultRandom() });

/** A row of a farm of an office. */
export const ofFarm = () => ({ ...ofOffice(), farmId: farmId() });

/** Who wrote it down; the person in the transaction's settings where nothing else is said. */
export const recorded = () => ({
  recordedBy: uuid("recorded_by").default(sql`app_user()`),
  recordedAt: instantOrNow("recorded_at"),
});

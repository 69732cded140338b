import { boolean, jsonb, pgTable, text, uuid } from "drizzle-orm/pg-core";
import { day, number, ofFarm, recorded } from "./columns.ts";
import type { Cull } from "./shapes.ts";
import { NOTE_KINDS, WORK_TASKS } from "./words.ts";

/**
 * What was really done and seen. `advisoryId` names the issued advice whose "done" wrote the row, so that a second
 * answer can take the first one's record back. People's own words are in `texts`.
 */

export const fieldNotes = pgTable("field_notes", {
  ...ofFarm(),
  plantingId: uuid("planting_id").notNull(),
  onDay: day("on_day").notNull(),
  kind: text("kind", { enum: NOTE_KINDS }).notNull(),
  /** The count or measure where the kind has one. */
  value: number("value"),
  textId: uuid("text_id"),
  ...recorded(),
});

export const applications = pgTable("applications", {
  ...ofFarm(),
  /** Null where it went onto a bed in which nothing stands. */
  plantingId: uuid("planting_id"),
  bedId: uuid("bed_id").notNull(),
  materialId: uuid("material_id").notNull(),
  /** The material's grades on that day: what the shed says later does not change what was given. */
  nPct: number("n_pct").notNull(),
  p2o5Pct: number("p2o5_pct").notNull(),
  k2oPct: number("k2o_pct").notNull(),
  kind: text("kind"),
  composted: boolean("composted"),
  lot: text("lot"),
  amountKg: number("amount_kg").notNull(),
  areaM2: number("area_m2").notNull(),
  onDay: day("on_day").notNull(),
  minutesOfLabour: number("minutes_of_labour"),
  personTextId: uuid("person_text_id"),
  advisoryId: uuid("advisory_id"),
  ...recorded(),
});

export const waterings = pgTable("waterings", {
  ...ofFarm(),
  valveId: uuid("valve_id").notNull(),
  onDay: day("on_day").notNull(),
  minutes: number("minutes"),
  litres: number("litres"),
  /** The litres were read from a meter, not reckoned from minutes and flow. */
  metered: boolean("metered").notNull().default(false),
  /** Of a person, not of the valve. */
  minutesOfLabour: number("minutes_of_labour"),
  advisoryId: uuid("advisory_id"),
  ...recorded(),
});

/** Work on a bed that no other record speaks of, and what it took. */
export const works = pgTable("works", {
  ...ofFarm(),
  bedId: uuid("bed_id").notNull(),
  onDay: day("on_day").notNull(),
  task: text("task", { enum: WORK_TASKS }).notNull(),
  minutesOfLabour: number("minutes_of_labour").notNull(),
  ...recorded(),
});

export const harvests = pgTable("harvests", {
  ...ofFarm(),
  plantingId: uuid("planting_id").notNull(),
  onDay: day("on_day").notNull(),
  lot: text("lot"),
  kg: number("kg").notNull(),
  marketableKg: number("marketable_kg"),
  culls: jsonb("culls").$type<Cull[]>().notNull().default([]),
  hours: number("hours"),
  pricePerKg: number("price_per_kg"),
  ...recorded(),
});

import { boolean, integer, jsonb, pgTable, text, uuid } from "drizzle-orm/pg-core";
import {
  day,
  farmId,
  instant,
  instantOrNow,
  number,
  ofFarm,
  officeId,
  ofOffice,
  recorded,
} from "./columns.ts";
import type {
  BedContainers,
  BedPlace,
  BedSoil,
  DaysToMaturity,
  Deficit,
  Feeding,
  Heater,
  MaterialAnalysis,
  Propagation,
  StationOffset,
  Trays,
  WhatIf,
} from "./shapes.ts";
import {
  BASE_TEMPERATURE_FROM,
  BED_KINDS,
  CERTIFICATIONS,
  CERTIFIED_USES,
  COVERS,
  FORECAST_SOURCES,
  GLAZINGS,
  INNER_LAYERS,
  MARKET_TYPES,
  MATERIAL_KINDS,
  MULCHES,
  PICK_AT,
  SHADE_SIDES,
  SPECIES,
  UNITS,
  WATERING_METHODS,
} from "./words.ts";

/** A client. Put away by `archivedAt`, never deleted: what was issued to it stays. */
export const farms = pgTable("farms", {
  ...ofOffice(),
  name: text("name").notNull(),
  contactName: text("contact_name"),
  phone: text("phone"),
  email: text("email"),
  units: text("units", { enum: UNITS }).notNull().default("metric"),
  language: text("language").notNull().default("en"),
  createdAt: instantOrNow("created_at"),
  archivedAt: instant("archived_at"),
});

/** A place with one climate. */
export const sites = pgTable("sites", {
  ...ofFarm(),
  name: text("name").notNull(),
  latitudeDeg: number("latitude_deg").notNull(),
  longitudeDeg: number("longitude_deg").notNull(),
  elevationM: number("elevation_m").notNull(),
  timeZone: text("time_zone").notNull(),
  coastal: boolean("coastal").notNull().default(false),
  stationId: text("station_id"),
  stationOffset: jsonb("station_offset").$type<StationOffset>(),
  /** Service that its forecasts are pulled from; null where none is. */
  forecastSource: text("forecast_source", { enum: FORECAST_SOURCES }),
});

export const valves = pgTable("valves", {
  ...ofFarm(),
  siteId: uuid("site_id").notNull(),
  name: text("name").notNull(),
  method: text("method", { enum: WATERING_METHODS }).notNull(),
  flowLPerH: number("flow_l_per_h").notNull(),
  efficiency: number("efficiency").notNull(),
  /** Share of the ground it wets; null where the method's own is taken. */
  wettedFraction: number("wetted_fraction"),
});

/** A house or tunnel that plants stand in and that may be heated. */
export const structures = pgTable("structures", {
  ...ofFarm(),
  siteId: uuid("site_id").notNull(),
  name: text("name").notNull(),
  glazing: text("glazing", { enum: GLAZINGS }).notNull(),
  uWPerM2K: number("u_w_per_m2_k"),
  innerLayer: text("inner_layer", { enum: INNER_LAYERS }).notNull().default("none"),
  floorAreaM2: number("floor_area_m2").notNull(),
  coverAreaM2: number("cover_area_m2").notNull(),
  volumeM3: number("volume_m3").notNull(),
  airChangesPerH: number("air_changes_per_h"),
  heaters: jsonb("heaters").$type<Heater[]>().notNull().default([]),
  trays: jsonb("trays").$type<Trays>(),
  nightC: number("night_c"),
  heatedFrom: day("heated_from"),
  heatedTo: day("heated_to"),
});

/** A piece of ground or a set of containers with one soil and at most one valve. */
export const beds = pgTable("beds", {
  ...ofFarm(),
  siteId: uuid("site_id").notNull(),
  valveId: uuid("valve_id"),
  name: text("name").notNull(),
  kind: text("kind", { enum: BED_KINDS }).notNull(),
  lengthM: number("length_m").notNull(),
  widthM: number("width_m").notNull(),
  /** Bed centre to bed centre, alley included. */
  spacingM: number("spacing_m").notNull(),
  soil: jsonb("soil").$type<BedSoil>().notNull().default({}),
  containers: jsonb("containers").$type<BedContainers>(),
  certification: text("certification", { enum: CERTIFICATIONS }).notNull().default("none"),
  certifier: text("certifier"),
  position: integer("position").notNull().default(0),
  /** Where it lies on the farm's plan. */
  place: jsonb("place").$type<BedPlace>(),
  /** Rows that it takes. */
  planRows: integer("plan_rows"),
  shadedFrom: text("shaded_from", { enum: SHADE_SIDES }),
});

/** What stood over a bed, from a day, to a day or until now. */
export const bedCovers = pgTable("bed_covers", {
  officeId: officeId(),
  farmId: farmId(),
  bedId: uuid("bed_id").notNull(),
  cover: text("cover", { enum: COVERS }).notNull(),
  fromDay: day("from_day").notNull(),
  toDay: day("to_day"),
});

/** What lay on a bed, from a day, to a day or until now. */
export const bedMulches = pgTable("bed_mulches", {
  officeId: officeId(),
  farmId: farmId(),
  bedId: uuid("bed_id").notNull(),
  mulch: text("mulch", { enum: MULCHES }).notNull(),
  fromDay: day("from_day").notNull(),
  toDay: day("to_day"),
});

/** One variety in one bed in one season. */
export const plantings = pgTable("plantings", {
  ...ofFarm(),
  bedId: uuid("bed_id").notNull(),
  varietyName: text("variety_name").notNull(),
  species: text("species", { enum: SPECIES }).notNull(),
  marketType: text("market_type", { enum: MARKET_TYPES }).notNull(),
  sownOn: day("sown_on").notNull(),
  plannedSetOutOn: day("planned_set_out_on"),
  setOutOn: day("set_out_on"),
  endedOn: day("ended_on"),
  plants: integer("plants").notNull(),
  rowsPerBed: integer("rows_per_bed").notNull(),
  plantSpacingM: number("plant_spacing_m").notNull(),
  staked: boolean("staked").notNull().default(false),
  grafted: boolean("grafted").notNull().default(false),
  overwintered: boolean("overwintered").notNull().default(false),
  yieldGoalTPerHa: number("yield_goal_t_per_ha"),
  daysToMaturity: jsonb("days_to_maturity").$type<DaysToMaturity>(),
  baseTemperatureC: number("base_temperature_c"),
  baseTemperatureFrom: text("base_temperature_from", { enum: BASE_TEMPERATURE_FROM }),
  pickAt: text("pick_at", { enum: PICK_AT }),
  heightCm: number("height_cm"),
  pungent: boolean("pungent"),
  saveSeed: boolean("save_seed"),
  expectedPricePerKg: number("expected_price_per_kg"),
  propagation: jsonb("propagation").$type<Propagation>(),
  deficit: jsonb("deficit").$type<Deficit>(),
  feeding: jsonb("feeding").$type<Feeding>().notNull(),
  /** What the agent tried on it and made a draft of, until that is issued or let go. */
  whatIf: jsonb("what_if").$type<WhatIf>(),
});

/** What a grower has in the shed. */
export const materials = pgTable("materials", {
  ...ofFarm(),
  kind: text("kind", { enum: MATERIAL_KINDS }).notNull(),
  name: text("name").notNull(),
  nPct: number("n_pct").notNull(),
  p2o5Pct: number("p2o5_pct").notNull(),
  k2oPct: number("k2o_pct").notNull(),
  soluble: boolean("soluble").notNull(),
  bulkDensityKgPerL: number("bulk_density_kg_per_l"),
  certifiedUse: text("certified_use", { enum: CERTIFIED_USES }).notNull().default("unknown"),
  /** What a label or an analysis says beyond the three; the rules' own fields. */
  analysis: jsonb("analysis").$type<MaterialAnalysis>().notNull().default({}),
  certifiedProof: text("certified_proof"),
  certifiedProofUntil: day("certified_proof_until"),
  labelMostKgPerHa: number("label_most_kg_per_ha"),
  stockKg: number("stock_kg"),
  pricePerKg: number("price_per_kg"),
  canBuy: boolean("can_buy"),
  bagKg: number("bag_kg"),
});

/** A delivery into the shed. What is left of it follows from the stock: the oldest is used first. */
export const materialLots = pgTable("material_lots", {
  ...ofFarm(),
  materialId: uuid("material_id").notNull(),
  receivedOn: day("received_on").notNull(),
  lot: text("lot"),
  kg: number("kg").notNull(),
  pricePerKg: number("price_per_kg"),
  bestBefore: day("best_before"),
  ...recorded(),
});

import { createRoute, z } from "@hono/zod-openapi";
import {
  ANIMALS,
  ASH_ORIGINS,
  BASE_TEMPERATURE_FROM,
  BED_CERTIFICATIONS,
  CERTIFIED_USES,
  COVERS,
  FUELS,
  GLAZINGS,
  INNER_LAYERS,
  MARKET_TYPES,
  MATERIAL_KINDS,
  MULCHES,
  POTTING_MEDIA,
  SettingsSchema,
  SHADE_SIDES,
  SoilSchema,
  SPECIES,
  VALVE_METHODS,
} from "../rulesWords.ts";
import { body, Day, farmPath, Id, Instant, json, next, officePath, page, problems } from "../shapes.ts";
import { ForecastSourceSchema, SourceStateSchema } from "./weather.ts";

/** The client, its places, its ground and what stands on it. */

const name = z.string().trim().min(1).max(80);

export const OfficeSchema = z
  .object({ id: Id, name, county: z.string(), settings: SettingsSchema })
  .openapi("Office");

export const FarmSchema = z
  .object({
    id: Id,
    name,
    contactName: z.string().max(80).nullable(),
    phone: z.string().max(40).nullable(),
    email: z.email().nullable(),
    units: z.enum(["metric", "us"]),
    plantings: z.number().int().describe("plantings that stand now"),
    openDrafts: z.number().int(),
    unanswered: z.number().int().describe("issued and not yet answered"),
  })
  .openapi("Farm");

export const SiteSchema = z
  .object({
    id: Id,
    name,
    latitudeDeg: z.number().min(-90).max(90),
    longitudeDeg: z.number().min(-180).max(180),
    elevationM: z.number().min(-430).max(6000),
    timeZone: z.string().min(1).max(64),
    coastal: z.boolean(),
    stationId: z.string().max(40).nullable(),
    /** Service that its forecasts are pulled from; none where it is null or left out. */
    forecastSource: ForecastSourceSchema.nullable().optional(),
    stationOffset: z
      .object({ minC: z.number().min(-15).max(15), sdC: z.number().min(0).max(10), nights: z.int().min(1) })
      .nullable(),
    weather: z
      .object({ from: Day, to: Day, days: z.number().int(), forecastIssuedAt: Instant.nullable() })
      .nullable(),
    /** Its newest forecast, with the credit to show beside it; null where it came from a file. */
    forecast: z.object({ issuedAt: Instant, attribution: z.string().nullable() }).nullable(),
    /** How its forecast service is doing; null where none was asked yet. */
    sourceState: SourceStateSchema.nullable(),
  })
  .openapi("Site");

export const ValveSchema = z
  .object({
    id: Id,
    siteId: Id,
    name,
    method: z.enum(VALVE_METHODS),
    flowLPerH: z.number().min(1).max(1_000_000),
    efficiency: z.number().min(0.2).max(1),
    /** Share of the ground it wets; null or left out: the method's own. */
    wettedFraction: z.number().min(0.05).max(1).nullable().optional(),
  })
  .openapi("Valve");

export const StructureSchema = z
  .object({
    id: Id,
    siteId: Id,
    name,
    glazing: z.enum(GLAZINGS),
    uWPerM2K: z.number().min(0.5).max(12).nullable(),
    innerLayer: z.enum(INNER_LAYERS),
    floorAreaM2: z.number().min(0.5).max(100_000),
    coverAreaM2: z.number().min(1).max(300_000),
    volumeM3: z.number().min(0.3).max(600_000),
    airChangesPerH: z.number().min(0.1).max(20).nullable(),
    /** The first is what it is heated with now. A price is per kWh, litre or kg, as the fuel is sold. */
    heaters: z
      .array(
        z.object({
          fuel: z.enum(FUELS),
          efficiency: z.number().min(0.2).max(1).nullable(),
          outputW: z.number().min(100).max(5_000_000).nullable(),
          pricePerUnit: z.number().min(0).max(1000).nullable(),
        }),
      )
      .max(10),
    trays: z.object({ count: z.int().min(1).max(100_000), areaM2: z.number().min(0.01).max(5) }).nullable(),
    nightC: z.number().min(2).max(30).nullable(),
    heatedFrom: Day.nullable(),
    heatedTo: Day.nullable(),
  })
  .openapi("Structure");

const period = { from: Day, to: Day.nullable() };

export const BedSchema = z
  .object({
    id: Id,
    siteId: Id,
    valveId: Id.nullable(),
    name,
    kind: z.enum(["ground", "containers"]),
    lengthM: z.number().min(0.2).max(2000),
    widthM: z.number().min(0.1).max(200),
    spacingM: z.number().min(0.2).max(200),
    soil: SoilSchema,
    covers: z.array(z.object({ cover: z.enum(COVERS), ...period })).max(50),
    mulches: z.array(z.object({ mulch: z.enum(MULCHES), ...period })).max(50),
    certification: z.enum(BED_CERTIFICATIONS),
    certifier: z.string().max(80).nullable(),
    containers: z
      .object({
        count: z.int().min(1).max(100_000),
        volumeL: z.number().min(0.05).max(1000),
        medium: z.enum(POTTING_MEDIA).nullable().optional(),
      })
      .nullable(),
    /** Its first corner in metres from the plan's origin, and the bearing of its length; its width lies to the right. */
    place: z
      .object({
        eastM: z.number().min(-100_000).max(100_000),
        northM: z.number().min(-100_000).max(100_000),
        bearingDeg: z.number().min(0).max(360),
      })
      .nullable()
      .optional(),
    /** Rows that it takes; null or left out: as many as what stands in it. */
    planRows: z.int().min(1).max(40).nullable().optional(),
    shadedFrom: z.enum(SHADE_SIDES).nullable().optional(),
  })
  .openapi("Bed");

export const CreditSchema = z.object({
  kind: z.enum(["legume", "manure", "compost", "organic-matter", "irrigation-water", "soil-nitrate"]),
  nKgPerHaLow: z.number().min(0).max(500),
  nKgPerHaHigh: z.number().min(0).max(500),
});

export const PlantingSchema = z
  .object({
    id: Id,
    bedId: Id,
    varietyName: name,
    species: z.enum(SPECIES),
    marketType: z.enum(MARKET_TYPES),
    sownOn: Day,
    plannedSetOutOn: Day.nullable(),
    setOutOn: Day.nullable(),
    endedOn: Day.nullable(),
    plants: z.int().min(1).max(1_000_000),
    rowsPerBed: z.int().min(1).max(40),
    plantSpacingM: z.number().min(0.05).max(3),
    staked: z.boolean(),
    grafted: z.boolean(),
    overwintered: z.boolean(),
    yieldGoalTPerHa: z.number().min(0.5).max(250).nullable(),
    daysToMaturity: z
      .object({
        days: z.int().min(30).max(250),
        from: z.enum(["sowing", "transplanting"]),
        to: z.enum(["green", "colour"]),
      })
      .nullable(),
    baseTemperatureC: z.number().min(4).max(20).nullable().optional(),
    baseTemperatureFrom: z.enum(BASE_TEMPERATURE_FROM).nullable().optional(),
    /** Null or left out: as the market type is picked. */
    pickAt: z.enum(["green", "colour"]).nullable().optional(),
    heightCm: z.number().min(10).max(300).nullable().optional(),
    /** Null or left out: as the market type is. */
    pungent: z.boolean().nullable().optional(),
    saveSeed: z.boolean().nullable().optional(),
    expectedPricePerKg: z.number().min(0).max(10_000).nullable().optional(),
    propagation: z
      .object({
        mediumC: z.number().min(0).max(45).nullable(),
        germinationPct: z.number().min(1).max(100).nullable(),
        lossPct: z.number().min(0).max(95).nullable(),
        growingC: z.number().min(5).max(40).nullable(),
      })
      .nullable()
      .optional(),
    /** A water deficit held on purpose; null or left out where nobody asked for one. */
    deficit: z
      .object({ etShare: z.number().min(0.5).max(0.98).nullable(), from: Day, to: Day.nullable() })
      .nullable()
      .optional(),
    feeding: z.object({
      materialId: Id.nullable(),
      method: z.enum(["broadcast", "banded", "drip", "watered-in"]),
      credits: z.array(CreditSchema).max(10),
      organicOnly: z.boolean().optional(),
      /** The injector; a ratio of 100 means 1 part of stock in 100 parts of final solution. */
      fertigation: z
        .object({
          ratio: z.number().min(1).max(2000),
          tanks: z.int().min(1).max(2),
          tankL: z.number().min(1).max(20_000),
          tankC: z.number().min(0).max(50).nullable(),
        })
        .nullable()
        .optional(),
    }),
  })
  .openapi("Planting");

const pct = () => z.number().min(0).max(100).nullable().optional();

/** What a label or an analysis says of a material beyond N, P2O5 and K2O. */
const MaterialAnalysisSchema = z.object({
  caPct: pct(),
  mgPct: pct(),
  sPct: pct(),
  clPct: pct(),
  bPct: pct(),
  /** Of its nitrogen. */
  ammoniumPct: pct(),
  saltIndex: z.number().min(0).max(300).nullable().optional(),
  ccePct: z.number().min(-400).max(200).nullable().optional(),
  finenessPct: z.number().min(1).max(100).nullable().optional(),
  ashOf: z.enum(ASH_ORIGINS).nullable().optional(),
  manureOf: z.enum(ANIMALS).nullable().optional(),
  /** Composted to the applicable rule, not raw. */
  composted: z.boolean().nullable().optional(),
  dryMatterPct: z.number().min(0.5).max(100).nullable().optional(),
  /** Of fresh weight. */
  ammoniumNPct: z.number().min(0).max(20).nullable().optional(),
});

export const MaterialSchema = z
  .object({
    id: Id,
    kind: z.enum(MATERIAL_KINDS),
    name,
    nPct: z.number().min(0).max(100),
    p2o5Pct: z.number().min(0).max(100),
    k2oPct: z.number().min(0).max(100),
    soluble: z.boolean(),
    bulkDensityKgPerL: z.number().min(0.05).max(3).nullable(),
    analysis: MaterialAnalysisSchema.optional(),
    certifiedUse: z.enum(CERTIFIED_USES),
    /** The paper that proves it, and its last day. */
    certifiedProof: z.string().trim().min(1).max(120).nullable().optional(),
    certifiedProofUntil: Day.nullable().optional(),
    labelMostKgPerHa: z.number().min(0).max(100_000).nullable().optional(),
    stockKg: z.number().min(0).max(1_000_000).nullable(),
    /** Price at which more can be bought. */
    pricePerKg: z.number().min(0).max(10_000).nullable(),
    /** Null or left out: it can be bought where its price is known. */
    canBuy: z.boolean().nullable().optional(),
    bagKg: z.number().min(0.05).max(5000).nullable().optional(),
  })
  .openapi("Material");

export type Office = z.infer<typeof OfficeSchema>;
export type Farm = z.infer<typeof FarmSchema>;
export type Site = z.infer<typeof SiteSchema>;
export type Valve = z.infer<typeof ValveSchema>;
export type Bed = z.infer<typeof BedSchema>;
export type Planting = z.infer<typeof PlantingSchema>;
export type Structure = z.infer<typeof StructureSchema>;
export type Material = z.infer<typeof MaterialSchema>;

const NewFarm = FarmSchema.pick({ name: true, contactName: true, phone: true, email: true, units: true });
const NewSite = SiteSchema.omit({ id: true, weather: true, forecast: true, sourceState: true });
const NewValve = ValveSchema.omit({ id: true });
const NewBed = BedSchema.omit({ id: true });
const NewPlanting = PlantingSchema.omit({ id: true });
const NewStructure = StructureSchema.omit({ id: true });
const NewMaterial = MaterialSchema.omit({ id: true });

export const FarmDetailSchema = z
  .object({
    farm: FarmSchema,
    sites: z.array(SiteSchema),
    valves: z.array(ValveSchema),
    beds: z.array(BedSchema),
    plantings: z.array(PlantingSchema),
    materials: z.array(MaterialSchema),
    structures: z.array(StructureSchema),
  })
  .openapi("FarmDetail");
export type FarmDetail = z.infer<typeof FarmDetailSchema>;

const tags = ["farms"];

export const getOffice = createRoute({
  method: "get",
  path: "/v1/offices/{officeId}",
  tags,
  summary: "The office and its settings",
  request: { params: officePath },
  responses: { 200: json(OfficeSchema, "The office"), ...problems },
});

export const changeOfficeSettings = createRoute({
  method: "patch",
  path: "/v1/offices/{officeId}/settings",
  tags,
  summary: "Change floors, accepted risk and guide; open drafts are computed again",
  request: { params: officePath, body: body(SettingsSchema) },
  responses: { 200: json(OfficeSchema, "The office as it is now"), ...problems },
});

export const listFarms = createRoute({
  method: "get",
  path: "/v1/offices/{officeId}/farms",
  tags,
  summary: "The farms this person may see, by name; all of them unless a page is asked for",
  request: { params: officePath, query: z.object(page(1000)) },
  responses: { 200: json(z.object({ farms: z.array(FarmSchema), next }), "The farms"), ...problems },
});

export const addFarm = createRoute({
  method: "post",
  path: "/v1/offices/{officeId}/farms",
  tags,
  summary: "Add a client farm",
  request: { params: officePath, body: body(NewFarm) },
  responses: { 201: json(FarmSchema, "The farm"), ...problems },
});

export const getFarm = createRoute({
  method: "get",
  path: "/v1/offices/{officeId}/farms/{farmId}",
  tags,
  summary: "One farm with its sites, valves, beds, plantings and shed",
  request: { params: farmPath },
  responses: { 200: json(FarmDetailSchema, "The farm"), ...problems },
});

export const changeFarm = createRoute({
  method: "patch",
  path: "/v1/offices/{officeId}/farms/{farmId}",
  tags,
  summary: "Change a farm's name, contact or units",
  request: { params: farmPath, body: body(NewFarm.partial()) },
  responses: { 200: json(FarmSchema, "The farm"), ...problems },
});

/** Adding, reading and changing are alike for everything that belongs to a farm. */
const things = <P extends string, S extends z.ZodType, F extends z.ZodType, C extends z.ZodType>(
  one: string,
  path: P,
  answer: S,
  fresh: F,
  change: C,
) => ({
  add: createRoute({
    method: "post",
    path: `/v1/offices/{officeId}/farms/{farmId}/${path}`,
    tags,
    summary: `Add a ${one}`,
    request: { params: farmPath, body: body(fresh) },
    responses: { 201: json(answer, `The ${one}`), ...problems },
  }),
  get: createRoute({
    method: "get",
    path: `/v1/offices/{officeId}/farms/{farmId}/${path}/{id}`,
    tags,
    summary: `One ${one}, with the tag that a change to it names`,
    request: { params: farmPath.extend({ id: Id }) },
    responses: { 200: json(answer, `The ${one}`), ...problems },
  }),
  change: createRoute({
    method: "patch",
    path: `/v1/offices/{officeId}/farms/{farmId}/${path}/{id}`,
    tags,
    summary: `Change a ${one}; what depends on it is advised again`,
    request: { params: farmPath.extend({ id: Id }), body: body(change) },
    responses: { 200: json(answer, `The ${one}`), ...problems },
  }),
});

export const sites = things("site", "sites", SiteSchema, NewSite, NewSite.partial());
export const valves = things("valve", "valves", ValveSchema, NewValve, NewValve.partial());
export const beds = things("bed", "beds", BedSchema, NewBed, NewBed.partial());
export const structures = things(
  "house or tunnel",
  "structures",
  StructureSchema,
  NewStructure,
  NewStructure.partial(),
);
export const plantings = things("planting", "plantings", PlantingSchema, NewPlanting, NewPlanting.partial());
export const materials = things("material", "materials", MaterialSchema, NewMaterial, NewMaterial.partial());

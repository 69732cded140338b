import { createRoute, z } from "@hono/zod-openapi";
import {
  BED_PATTERNS,
  CROPS,
  NOTE_KINDS,
  PLANT_NUTRIENTS,
  PLANT_PARTS,
  PLANT_TEST_KINDS,
  PLANT_TEST_STAGES,
  SIGNS,
  SOIL_DISEASES,
  SOIL_WATER_KINDS,
  SPEEDS,
  SPRAY_TARGETS,
} from "../rulesWords.ts";
import { body, Day, DoneSchema, farmPath, Id, Instant, json, problems } from "../shapes.ts";

/** What was really done and seen. */

const minutesOfLabour = z.number().min(0).max(10_000).nullable();

export const NoteSchema = z
  .object({
    id: Id,
    plantingId: Id,
    on: Day,
    kind: z.enum(NOTE_KINDS),
    value: z.number().min(-50).max(1000).nullable(),
    text: z.string().max(2000).nullable(),
  })
  .openapi("FieldNote");

export const ApplicationSchema = z
  .object({
    id: Id,
    /** Null where it went onto a bed in which nothing stands; then the bed is named. */
    plantingId: Id.nullable(),
    bedId: Id.nullable().optional(),
    materialId: Id,
    on: Day,
    lot: z.string().max(60).nullable(),
    amountKg: z.number().min(0).max(1_000_000),
    areaM2: z.number().min(0.01).max(10_000_000),
    minutesOfLabour,
  })
  .openapi("Application");

export const WateringSchema = z
  .object({
    id: Id,
    valveId: Id,
    on: Day,
    minutes: z.number().min(0).max(2880).nullable(),
    litres: z.number().min(0).max(100_000_000).nullable(),
    /** Of a person, not of the valve. */
    minutesOfLabour: minutesOfLabour.optional(),
  })
  .openapi("Watering");

export const WORK_TASKS = [
  "setting-out",
  "covering",
  "airing",
  "topping",
  "hardening",
  "weeding",
  "other",
] as const;

/** Work on a bed that no other record speaks of: covering is putting a cover up or off, airing opening and closing it. */
export const WorkSchema = z
  .object({
    id: Id,
    bedId: Id,
    on: Day,
    task: z.enum(WORK_TASKS),
    minutesOfLabour: z.number().min(0).max(10_000),
  })
  .openapi("Work");

export const HarvestSchema = z
  .object({
    id: Id,
    plantingId: Id,
    on: Day,
    lot: z.string().max(60).nullable(),
    kg: z.number().min(0).max(1_000_000),
    marketableKg: z.number().min(0).max(1_000_000).nullable(),
    culls: z.array(
      z.object({
        cause: z.enum([
          "end-rot",
          "sunscald",
          "cracked",
          "misshapen",
          "insect",
          "disease",
          "too-small",
          "other",
        ]),
        kg: z.number().min(0).max(1_000_000),
      }),
    ),
    hours: z.number().min(0).max(1000).nullable(),
    pricePerKg: z.number().min(0).max(10_000).nullable(),
  })
  .openapi("Harvest");

/** Ions in mg/L, alkalinity as CaCO3. */
export const WaterTestSchema = z
  .object({
    id: Id,
    siteId: Id,
    /** The valve whose water it was; null: all water of the site. */
    valveId: Id.nullable(),
    sampledOn: Day,
    labName: z.string().max(80).nullable(),
    sampleRef: z.string().max(60).nullable(),
    ecDSPerM: z.number().min(0).max(50).nullable(),
    waterPh: z.number().min(2).max(12).nullable(),
    alkalinityMgCaCO3PerL: z.number().min(0).max(3000).nullable(),
    caMgPerL: z.number().min(0).max(5000).nullable(),
    mgMgPerL: z.number().min(0).max(5000).nullable(),
    naMgPerL: z.number().min(0).max(20_000).nullable(),
    clMgPerL: z.number().min(0).max(40_000).nullable(),
    bMgPerL: z.number().min(0).max(100).nullable(),
    nitrateNMgPerL: z.number().min(0).max(500).nullable(),
  })
  .openapi("WaterTest");

export const SoilWaterSchema = z
  .object({
    id: Id,
    bedId: Id,
    at: Instant,
    kind: z.enum(SOIL_WATER_KINDS),
    depthCm: z.number().min(1).max(200),
    /** kPa, or m3 of water in m3 of soil, as the kind says. */
    value: z.number().min(0).max(1500),
  })
  .openapi("SoilWaterReading");

/** A delivery into the shed. What is left of it follows from the material's stock: the oldest is used first. */
export const DeliverySchema = z
  .object({
    id: Id,
    materialId: Id,
    receivedOn: Day,
    lot: z.string().trim().min(1).max(60).nullable(),
    kg: z.number().min(0.001).max(1_000_000),
    pricePerKg: z.number().min(0).max(10_000).nullable(),
    bestBefore: Day.nullable(),
  })
  .openapi("Delivery");

/** Sap in mg/L; leaves in % of dry matter, micronutrients in mg/kg. */
export const PlantTestSchema = z
  .object({
    id: Id,
    plantingId: Id,
    sampledOn: Day,
    kind: z.enum(PLANT_TEST_KINDS),
    stage: z.enum(PLANT_TEST_STAGES),
    labName: z.string().max(80).nullable(),
    values: z
      .array(
        z.object({
          nutrient: z.enum(PLANT_NUTRIENTS),
          unit: z.enum(["mg/L", "%", "mg/kg"]),
          value: z.number().min(0).max(100_000),
        }),
      )
      .min(1)
      .max(20),
  })
  .openapi("PlantTest");

/** What ran out of the containers' bottoms after a watering. */
export const DrainReadingSchema = z
  .object({
    id: Id,
    plantingId: Id,
    on: Day,
    ecDSPerM: z.number().min(0).max(50).nullable(),
    ph: z.number().min(2).max(12).nullable(),
    drainedPct: z.number().min(0).max(100).nullable(),
  })
  .openapi("DrainReading");

/** What somebody saw wrong with plants. */
export const SignSchema = z
  .object({
    id: Id,
    plantingId: Id,
    on: Day,
    sign: z.enum(SIGNS),
    part: z.enum(PLANT_PARTS).nullable(),
    pattern: z.enum(BED_PATTERNS).nullable(),
    speed: z.enum(SPEEDS).nullable(),
    plantsPct: z.number().min(0).max(100).nullable(),
    text: z.string().max(2000).nullable(),
  })
  .openapi("Sign");

/** One spraying, its product, registration and intervals as typed from the label. */
export const SpraySchema = z
  .object({
    id: Id,
    bedId: Id,
    at: Instant,
    product: z.string().trim().min(1).max(120),
    registration: z.string().trim().min(1).max(60).nullable(),
    target: z.enum(SPRAY_TARGETS),
    reEntryHours: z.number().min(0).max(1440),
    preHarvestDays: z.int().min(0).max(365),
    minutesOfLabour: minutesOfLabour.optional(),
  })
  .openapi("Spray");

/** What stood in a bed in a season before. Plantings kept here count by themselves. */
export const BedHistorySchema = z
  .object({
    id: Id,
    bedId: Id,
    season: z.int().min(1900).max(2200),
    crop: z.enum(CROPS),
    disease: z.enum(SOIL_DISEASES).nullable(),
  })
  .openapi("BedHistory");

/** A photograph of a sign: at most 4 MB, JPEG, PNG or WebP. */
const PHOTO_TYPES = ["image/jpeg", "image/png", "image/webp"] as const;
const PhotoSchema = z
  .object({ id: Id, signId: Id, mediaType: z.enum(PHOTO_TYPES), recordedAt: Instant })
  .openapi("Photo");
const NewPhoto = z.object({
  mediaType: z.enum(PHOTO_TYPES),
  dataBase64: z.base64().min(1).max(5_400_000).describe("the file, at most 4 MB"),
});

export const SoilTestSchema = z
  .object({
    id: Id,
    bedId: Id,
    sampledOn: Day,
    depthCm: z.number(),
    medium: z.enum(["mineral-soil", "organic-soil", "potting-medium"]),
    labName: z.string().nullable(),
    sampleRef: z.string(),
    waterPh: z.number().nullable(),
    bufferPh: z.object({ method: z.string(), value: z.number() }).nullable(),
    organicMatterPct: z.number().nullable(),
    cecCmolPerKg: z.number().nullable(),
    ec: z.object({ dSPerM: z.number(), extraction: z.string().nullable() }).nullable(),
    values: z.array(
      z.object({ nutrient: z.string(), extractant: z.string().nullable(), mgPerKg: z.number() }),
    ),
  })
  .openapi("SoilTest");

export const WeatherDaySchema = z
  .object({
    date: Day,
    tMaxC: z.number().nullable(),
    tMinC: z.number().nullable(),
    rainMm: z.number().nullable(),
    rhMeanPct: z.number().nullable(),
    windMPerS: z.number().nullable(),
    rsMjPerM2Day: z.number().nullable(),
    /** Those that no station gave and a sensor of the site measured. */
    fromSensors: z.array(z.string()).optional(),
  })
  .openapi("WeatherDay");

export type Note = z.infer<typeof NoteSchema>;
export type Application = z.infer<typeof ApplicationSchema>;
export type Watering = z.infer<typeof WateringSchema>;
export type Work = z.infer<typeof WorkSchema>;
export type Harvest = z.infer<typeof HarvestSchema>;
export type WaterTest = z.infer<typeof WaterTestSchema>;
export type SoilWaterReading = z.infer<typeof SoilWaterSchema>;
export type Delivery = z.infer<typeof DeliverySchema>;
export type PlantTest = z.infer<typeof PlantTestSchema>;
export type DrainReading = z.infer<typeof DrainReadingSchema>;
export type Sign = z.infer<typeof SignSchema>;
export type Spray = z.infer<typeof SpraySchema>;
export type BedHistory = z.infer<typeof BedHistorySchema>;
export type Photo = z.infer<typeof PhotoSchema>;
export type SoilTest = z.infer<typeof SoilTestSchema>;
export type WeatherDay = z.infer<typeof WeatherDaySchema>;

export const RecordsSchema = z
  .object({
    notes: z.array(NoteSchema),
    applications: z.array(ApplicationSchema),
    waterings: z.array(WateringSchema),
    harvests: z.array(HarvestSchema),
    works: z.array(WorkSchema),
    soilTests: z.array(SoilTestSchema),
    waterTests: z.array(WaterTestSchema),
    soilWater: z.array(SoilWaterSchema),
    /** With what is left of each; null where the stock was not counted. */
    deliveries: z.array(DeliverySchema.extend({ leftKg: z.number().nullable() })),
    plantTests: z.array(PlantTestSchema),
    drainReadings: z.array(DrainReadingSchema),
    /** With the photographs taken of each. */
    signs: z.array(SignSchema.extend({ photos: z.array(PhotoSchema) })),
    sprays: z.array(SpraySchema),
    bedHistory: z.array(BedHistorySchema),
    /** Beds that a spray's label closes now, to work until an instant, to harvest until a day. */
    closed: z.array(z.object({ bedId: Id, reEntryUntil: Instant.nullable(), harvestFrom: Day.nullable() })),
    /**
     * Asked for `before` this day, what is older follows; null where this is all. At most 1,000 of a kind come at once, and
     * a page ends for all kinds where it ends for the fullest of those asked for.
     */
    older: Day.nullable(),
  })
  .openapi("Records");
export type Records = z.infer<typeof RecordsSchema>;

/** What a caller may ask for alone; which beds are closed is always said. */
const { closed: _, older: __, ...ofKinds } = RecordsSchema.shape;
export type KindOfRecords = keyof typeof ofKinds;
const KINDS = Object.keys(ofKinds) as [KindOfRecords, ...KindOfRecords[]];

/** In an address a list with commas between. */
const Kinds = z
  .preprocess(
    (said: string | readonly KindOfRecords[]) => (typeof said === "string" ? said.split(",") : said),
    z.array(z.enum(KINDS)).min(1).max(KINDS.length),
  )
  .openapi({
    param: { style: "form", explode: false },
    description: "only these, so that a page is not filled by others; the others come empty",
  });

const tags = ["records"];
const farm = "/v1/offices/{officeId}/farms/{farmId}" as const;

export const getRecords = createRoute({
  method: "get",
  path: `${farm}/records`,
  tags,
  summary:
    "Notes, applications, waterings, harvests, deliveries, sprays, signs, tests of soil, water, leaves and drains and soil sensors of a farm, newest first",
  request: {
    params: farmPath,
    query: z.object({ plantingId: Id.optional(), before: Day.optional(), kinds: Kinds.optional() }),
  },
  responses: { 200: json(RecordsSchema, "The records"), ...problems },
});

export const getWeather = createRoute({
  method: "get",
  path: `${farm}/sites/{siteId}/weather`,
  tags,
  summary: "Daily weather of a site",
  request: { params: farmPath.extend({ siteId: Id }), query: z.object({ from: Day, to: Day }) },
  responses: {
    200: json(
      z.object({
        days: z.array(WeatherDaySchema),
        forecast: z
          .object({
            issuedAt: Instant,
            days: z.array(WeatherDaySchema),
            /** The credit to show beside it; null where it came from a file. */
            attribution: z.string().nullable(),
          })
          .nullable(),
      }),
      "The days, oldest first; a day without a record is not in the list",
    ),
    ...problems,
  },
});

const record = <P extends string, S extends z.ZodObject>(one: string, path: P, schema: S) => ({
  add: createRoute({
    method: "post",
    path: `${farm}/${path}`,
    tags,
    summary: `Record a ${one}; what depends on it is advised again`,
    request: { params: farmPath, body: body(schema.omit({ id: true })) },
    responses: { 201: json(schema, `The ${one}`), ...problems },
  }),
  remove: createRoute({
    method: "delete",
    path: `${farm}/${path}/{id}`,
    tags,
    summary: `Take back a ${one} entered by mistake`,
    request: { params: farmPath.extend({ id: Id }) },
    responses: { 200: json(DoneSchema, "It is taken back"), ...problems },
  }),
});

export const notes = record("field note", "notes", NoteSchema);
export const applications = record("application", "applications", ApplicationSchema);
export const waterings = record("watering", "waterings", WateringSchema);
export const harvests = record("harvest", "harvests", HarvestSchema);
export const works = record("piece of work", "works", WorkSchema);
export const waterTests = record("water test", "water-tests", WaterTestSchema);
export const soilWater = record("soil sensor's reading", "soil-water", SoilWaterSchema);
export const deliveries = record("delivery", "deliveries", DeliverySchema);
export const plantTests = record("leaf or sap test", "plant-tests", PlantTestSchema);
export const drainReadings = record("drain reading", "drain-readings", DrainReadingSchema);
export const signs = record("sign", "signs", SignSchema);
export const sprays = record("spraying", "sprays", SpraySchema);
export const bedHistory = record("crop of a season before", "bed-history", BedHistorySchema);

const signPath = farmPath.extend({ signId: Id });
const photoPath = farmPath.extend({ id: Id });

export const photos = {
  add: createRoute({
    method: "post",
    path: `${farm}/signs/{signId}/photos`,
    tags,
    summary: "Attach a photograph to a sign",
    request: { params: signPath, body: body(NewPhoto) },
    responses: { 201: json(PhotoSchema, "The photograph, without its bytes"), ...problems },
  }),
  get: createRoute({
    method: "get",
    path: `${farm}/photos/{id}`,
    tags,
    summary: "A photograph",
    request: { params: photoPath },
    responses: {
      200: {
        description: "The picture",
        content: { "image/*": { schema: z.string().openapi({ format: "binary" }) } },
      },
      ...problems,
    },
  }),
  remove: createRoute({
    method: "delete",
    path: `${farm}/photos/{id}`,
    tags,
    summary: "Take back a photograph",
    request: { params: photoPath },
    responses: { 200: json(DoneSchema, "It is gone"), ...problems },
  }),
};

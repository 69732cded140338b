import { createRoute, z } from "@hono/zod-openapi";
import { QUANTITIES, READING_FLAGS, UNIT_NAMES } from "../sensorWords.ts";
import { body, Day, farmPath, Id, Instant, json, problems } from "../shapes.ts";

/** Series that sensors append to, the keys they do it with, and what they read. */

const tags = ["sensors"];
/** SenML names, so that a device's own name can be used as it is (RFC 8428 section 4.5.1). */
const seriesName = z
  .string()
  .max(200)
  .regex(/^[A-Za-z0-9][-A-Za-z0-9:./_]*$/, "must be letters, digits and - : . / _, a letter or digit first");

const NewSeries = z.object({
  siteId: Id,
  /** The bed it stands in; null where it stands in the open, for the whole site. */
  bedId: Id.nullable(),
  /** What it stands under there; null in the open. */
  cover: z.enum(["fleece", "low-tunnel", "high-tunnel", "heated-house"]).nullable(),
  name: seriesName,
  label: z.string().trim().min(1).max(80),
  quantity: z.enum(QUANTITIES),
  /** Unit of readings that say none. */
  unit: z.enum(UNIT_NAMES),
  /** Of a sensor in the soil. */
  depthCm: z.number().min(1).max(200).nullable(),
  /** Of a sensor above ground. */
  heightM: z.number().min(0.05).max(50).nullable(),
  expectedEveryS: z.int().min(1).max(86_400),
  /** Without a reading for so long, the farm goes to the top of the round. */
  silentAfterS: z.int().min(1).max(31_536_000),
  /** Readings are let go after so many months; hours and days are kept. */
  keepMonths: z.int().min(1).max(36),
});

export const SeriesSchema = NewSeries.extend({
  id: Id,
  addedAt: Instant,
  retiredAt: Instant.nullable(),
  /** The unit its readings are kept in. */
  keptIn: z.string(),
  /** Its newest reading, and when that came in. */
  last: z
    .object({ at: Instant, value: z.number(), flags: z.array(z.enum(READING_FLAGS)), receivedAt: Instant })
    .nullable(),
  /** Since when it says nothing; null while it speaks. */
  silentSince: Instant.nullable(),
}).openapi("Series");
export type Series = z.infer<typeof SeriesSchema>;

export const SensorKeySchema = z
  .object({
    id: Id,
    name: z.string(),
    /** How the secret begins. The rest is kept nowhere. */
    prefix: z.string(),
    seriesIds: z.array(Id),
    /** The key that it takes the place of. */
    replaces: Id.nullable(),
    createdAt: Instant,
    /** It opens nothing from then on; null where no end is set. */
    endsAt: Instant.nullable(),
    revokedAt: Instant.nullable(),
    /** To the minute. */
    lastUsedAt: Instant.nullable(),
  })
  .openapi("SensorKey");
export type SensorKey = z.infer<typeof SensorKeySchema>;

const ShownOnce = SensorKeySchema.extend({
  /** Shown now and never again. */
  secret: z.string(),
});

const seriesPath = farmPath.extend({ seriesId: Id });
const keyPath = farmPath.extend({ keyId: Id });
const SERIES = "/v1/offices/{officeId}/farms/{farmId}/series";
const KEYS = "/v1/offices/{officeId}/farms/{farmId}/sensor-keys";

export const listSeries = createRoute({
  method: "get",
  path: SERIES,
  tags,
  summary: "A farm's series, each with its last reading and how long it has been silent",
  request: { params: farmPath },
  responses: { 200: json(z.object({ series: z.array(SeriesSchema) }), "The series"), ...problems },
});

export const addSeries = createRoute({
  method: "post",
  path: SERIES,
  tags,
  summary: "Add a series: one quantity at one place",
  request: { params: farmPath, body: body(NewSeries) },
  responses: { 201: json(SeriesSchema, "The series"), ...problems },
});

export const changeSeries = createRoute({
  method: "patch",
  path: `${SERIES}/{seriesId}`,
  tags,
  summary: "Change how a series is called, where it stands or when it counts as silent, or retire it",
  request: {
    params: seriesPath,
    body: body(NewSeries.omit({ quantity: true }).partial().extend({ retired: z.boolean().optional() })),
  },
  responses: { 200: json(SeriesSchema, "The series as it is now"), ...problems },
});

export const listSensorKeys = createRoute({
  method: "get",
  path: KEYS,
  tags,
  summary: "A farm's sensor keys, with when each was last used",
  request: { params: farmPath },
  responses: { 200: json(z.object({ keys: z.array(SensorKeySchema) }), "The keys"), ...problems },
});

export const addSensorKey = createRoute({
  method: "post",
  path: KEYS,
  tags,
  summary:
    "Make a key that can append readings to the series named, and nothing else; its secret is shown once",
  request: {
    params: farmPath,
    body: body(
      z.object({
        name: z.string().trim().min(1).max(80),
        seriesIds: z.array(Id).min(1).max(500),
        endsAt: Instant.nullable(),
      }),
    ),
  },
  responses: { 201: json(ShownOnce, "The key with its secret"), ...problems },
});

export const changeSensorKey = createRoute({
  method: "patch",
  path: `${KEYS}/{keyId}`,
  tags,
  summary: "Change what a key is called, which series it names or when it ends",
  request: {
    params: keyPath,
    body: body(
      z
        .object({
          name: z.string().trim().min(1).max(80),
          seriesIds: z.array(Id).min(1).max(500),
          endsAt: Instant.nullable(),
        })
        .partial(),
    ),
  },
  responses: { 200: json(SensorKeySchema, "The key as it is now"), ...problems },
});

export const rotateSensorKey = createRoute({
  method: "post",
  path: `${KEYS}/{keyId}/rotate`,
  tags,
  summary: "Make a key that takes this one's place; the old one opens for as long as is said",
  request: {
    params: keyPath,
    body: body(z.object({ overlapHours: z.number().min(0).max(720).default(24) })),
  },
  responses: { 201: json(ShownOnce, "The new key with its secret"), ...problems },
});

export const revokeSensorKey = createRoute({
  method: "post",
  path: `${KEYS}/{keyId}/revoke`,
  tags,
  summary: "End a key at once: within five seconds it opens nothing",
  request: { params: keyPath, body: body(z.object({})) },
  responses: { 200: json(SensorKeySchema, "The key as it is now"), ...problems },
});

const Summed = {
  readings: z.int(),
  /** Left out of what follows: out of range, a spike or stuck. */
  flagged: z.int(),
  lowest: z.number().nullable(),
  highest: z.number().nullable(),
  mean: z.number().nullable(),
  total: z.number().nullable(),
};
const format = z.enum(["json", "csv"]).default("json");

export const getReadings = createRoute({
  method: "get",
  path: `${SERIES}/{seriesId}/readings`,
  tags,
  summary: "A series' readings as they were sent, oldest first, a page at a time",
  request: {
    params: seriesPath,
    query: z.object({
      from: Instant,
      to: Instant,
      /** The last instant of the page before. */
      after: Instant.optional(),
      limit: z.coerce.number().int().min(1).max(5000).default(1000),
      format,
    }),
  },
  responses: {
    200: json(
      z.object({
        unit: z.string(),
        readings: z.array(
          z.object({
            at: Instant,
            value: z.number(),
            flags: z.array(z.enum(READING_FLAGS)),
            receivedAt: Instant,
          }),
        ),
        /** What to ask for after; null where this was the last page. */
        next: Instant.nullable(),
      }),
      "A page of readings",
    ),
    ...problems,
  },
});

export const getReadingHours = createRoute({
  method: "get",
  path: `${SERIES}/{seriesId}/hours`,
  tags,
  summary: "A series by the hour, flagged readings left out",
  request: { params: seriesPath, query: z.object({ from: Instant, to: Instant, format }) },
  responses: {
    200: json(
      z.object({ unit: z.string(), hours: z.array(z.object({ hour: Instant, ...Summed })) }),
      "The hours",
    ),
    ...problems,
  },
});

export const getReadingDays = createRoute({
  method: "get",
  path: `${SERIES}/{seriesId}/days`,
  tags,
  summary: "A series by its site's own day, flagged readings left out",
  request: { params: seriesPath, query: z.object({ from: Day, to: Day, format }) },
  responses: {
    200: json(
      z.object({
        unit: z.string(),
        days: z.array(z.object({ day: Day, hours: z.int(), ...Summed })),
      }),
      "The days",
    ),
    ...problems,
  },
});

/** A batch as devices without SenML send it. */
const PlainBatch = z.object({
  readings: z
    .array(
      z.object({
        /** The series' name. */
        series: z.string(),
        /** Left out: now. */
        at: Instant.optional(),
        value: z.number(),
        /** Left out: the series' own. */
        unit: z.string().optional(),
      }),
    )
    .min(1)
    .max(5000),
});
const SenmlPack = z
  .array(z.record(z.string(), z.union([z.string(), z.number(), z.boolean()])))
  .min(1)
  .max(5000);

const VERDICTS = ["stored", "duplicate", "refused", "no-reading"] as const;
export const ReceiptSchema = z
  .object({
    stored: z.int(),
    duplicates: z.int(),
    refused: z.int(),
    /** One for each record, in the order in which they came. */
    verdicts: z.array(z.enum(VERDICTS)),
    /** Why, for each that was refused. */
    reasons: z.array(z.object({ record: z.int(), reason: z.string() })),
  })
  .openapi("Receipt");
export type Receipt = z.infer<typeof ReceiptSchema>;

export const postReadings = createRoute({
  method: "post",
  path: "/v1/readings",
  tags,
  summary:
    "Append readings with a sensor's key, as SenML JSON (RFC 8428) or plain JSON, gzip or not; each has its own verdict",
  security: [{ sensorKey: [] }],
  request: {
    body: {
      required: true,
      content: {
        "application/senml+json": { schema: SenmlPack },
        "application/json": { schema: PlainBatch },
      },
    },
  },
  responses: { 200: json(ReceiptSchema, "What became of each reading"), ...problems },
});

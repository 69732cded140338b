import { createRoute, z } from "@hono/zod-openapi";
import { ProblemSchema } from "../problem.ts";
import {
  body,
  DoneSchema,
  farmPath,
  Id,
  Instant,
  json,
  next,
  officePath,
  page,
  problems,
} from "../shapes.ts";

/** Files in: read, shown, and only then saved, all or nothing. */

export const ImportKindSchema = z.enum(["soil-tests", "weather", "forecast"]);

/**
 * Masses of soil that kg/ha and lb/acre are reckoned by. `usual-slice`: 2,000,000 lb an acre, of samples 6 to 7 in deep
 * only. `plough-slice`: the same whatever the depth. `slice-per-6-in`: as much for each 6 in. Else by depth and density.
 */
export const SOIL_MASS_BASES = [
  "usual-slice",
  "plough-slice",
  "slice-per-6-in",
  "depth-and-density",
] as const;

/** How one column is read. An answer to a question of the preview comes back in the same form. */
export const ColumnSchema = z
  .object({
    header: z.string().max(200),
    /** Field it is read into; null where it is left out. */
    field: z.string().max(60).nullable(),
    /** Unit as printed or as answered; null where the field has none or it is not known. */
    unit: z.string().max(30).nullable(),
    extractant: z.string().max(30).nullable(),
    /** Form of a nutrient that the file prints, such as P2O5; left out where it is the one stored. */
    form: z.string().max(10).nullable().optional(),
    /** What mass of soil the laboratory reckons kg/ha and lb/acre by. */
    basis: z.enum(SOIL_MASS_BASES).nullable().optional(),
    /** Density that it reckons with, where the basis is depth and density. */
    densityKgPerM3: z.number().min(100).max(2200).nullable().optional(),
  })
  .openapi("Column");

/** What is asked about columns of a file. The answer goes into each named column, at the place that `about` names. */
const QuestionSchema = z.object({
  /** The first of the columns asked about. */
  header: z.string(),
  /** Every column that the answer holds for. */
  headers: z.array(z.string()),
  /** `field`: the answer is the header to read; the others are left out. `density`: `densityKgPerM3`. */
  about: z.enum(["unit", "extractant", "form", "basis", "density", "field"]),
  ask: z.string(),
  /** `leave-out` as a unit, a form or an extractant leaves the column out. */
  choices: z.array(z.string()),
  /** A number is asked instead of a choice. */
  number: z.object({ unit: z.string(), low: z.number(), high: z.number() }).optional(),
});

export const ImportSchema = z
  .object({
    id: Id,
    kind: ImportKindSchema,
    fileName: z.string(),
    status: z.enum(["staged", "saved", "discarded"]),
    createdAt: Instant,
    columns: z.array(ColumnSchema),
    /** What must be answered before it can be saved: ambiguous units are asked, never guessed. */
    questions: z.array(QuestionSchema),
    /** Whose file it is, and which of its columns are read as the office read them the last time. */
    lab: z
      .object({
        name: z.string(),
        readAsBefore: z.array(z.string()),
        rememberedAt: Instant.nullable(),
      })
      .nullable(),
    acceptedCount: z.number().int(),
    refusedCount: z.number().int(),
    /** At most the first 50, as they will be stored. */
    accepted: z.array(z.record(z.string(), z.unknown())),
    /** Every one: line of the file, column where one is to blame, reason, and what stood there. */
    refused: z.array(
      z.object({
        line: z.number().int(),
        column: z.string().nullable(),
        reason: z.string(),
        value: z.string().nullable(),
      }),
    ),
    /** Rows that are stored already and will not be stored twice. */
    duplicateCount: z.number().int(),
    /** Every one of a laboratory's: its line, and the line it repeats; null where what it repeats is stored. */
    duplicates: z.array(z.object({ line: z.number().int(), sameAs: z.number().int().nullable() })),
  })
  .openapi("Import");
export type Import = z.infer<typeof ImportSchema>;
export type Column = z.infer<typeof ColumnSchema>;

/** One line of an answer that is asked for as `application/x-ndjson`: progress lines, then the result or the problem. */
export const ImportLineSchema = z
  .union([
    z.object({
      phase: z.enum(["reading", "comparing", "storing", "advising"]),
      /** Rows done of all rows. */
      done: z.number().int(),
      of: z.number().int(),
    }),
    z.object({ result: ImportSchema }),
    z.object({ problem: ProblemSchema }),
  ])
  .openapi("ImportLine");
export type ImportLine = z.infer<typeof ImportLineSchema>;

/** An import at once, or line by line with its progress. Hanging up before the end stores nothing. */
const withProgress = (description: string) => ({
  description: `${description}. Accept: application/x-ndjson asks for progress lines before it`,
  content: {
    "application/json": { schema: ImportSchema },
    "application/x-ndjson": { schema: ImportLineSchema },
  },
});

const tags = ["imports"];
const farm = "/v1/offices/{officeId}/farms/{farmId}" as const;

/** A station's whole record of more than a century is a large file; any other of this size is a mistake. */
export const MOST_CSV_LETTERS = {
  "soil-tests": 5_000_000,
  weather: 20_000_000,
  forecast: 5_000_000,
} as const;

const RequestSchema = z.object({
  kind: ImportKindSchema,
  fileName: z.string().min(1).max(200),
  /** The file's text: at most 20 MB of a station's weather, else 5 MB. */
  csv: z.string().min(1).max(MOST_CSV_LETTERS.weather),
  /** Which site's weather it is. */
  siteId: Id.optional(),
  /** Which bed the samples are from, where the file has no bed column. */
  bedId: Id.optional(),
  /** When a forecast was issued. */
  issuedAt: Instant.optional(),
  /** Said once for the whole file where the file does not say it itself. */
  depthCm: z.number().min(1).max(100).optional(),
  /** Whose file it is: its columns are read as the last time, and remembered when it is saved. */
  labName: z.string().trim().max(80).optional(),
  columns: z.array(ColumnSchema).max(200).optional(),
});

export const ImportRequestSchema = RequestSchema.refine((r) => r.csv.length <= MOST_CSV_LETTERS[r.kind], {
  path: ["csv"],
  error: "must be at most 5 MB of text; only a station's weather may be larger",
});

export const previewImport = createRoute({
  method: "post",
  path: `${farm}/imports`,
  tags,
  summary: "Read a file and show what would be stored; nothing is stored yet",
  request: { params: farmPath, body: body(ImportRequestSchema) },
  responses: { 201: withProgress("The preview"), ...problems },
});

export const getImport = createRoute({
  method: "get",
  path: `${farm}/imports/{importId}`,
  tags,
  summary: "A preview again, with every refused row",
  request: { params: farmPath.extend({ importId: Id }) },
  responses: { 200: json(ImportSchema, "The import"), ...problems },
});

export const listImports = createRoute({
  method: "get",
  path: `${farm}/imports`,
  tags,
  summary: "The farm's imports, newest first, without their rows",
  request: { params: farmPath, query: z.object(page(200)) },
  responses: {
    200: json(
      z.object({
        next,
        imports: z.array(
          ImportSchema.pick({
            id: true,
            kind: true,
            fileName: true,
            status: true,
            createdAt: true,
            acceptedCount: true,
            refusedCount: true,
          }),
        ),
      }),
      "The imports",
    ),
    ...problems,
  },
});

export const saveImport = createRoute({
  method: "post",
  path: `${farm}/imports/{importId}/save`,
  tags,
  summary: "Store the accepted rows in one transaction; what depends on them is advised again",
  request: { params: farmPath.extend({ importId: Id }) },
  responses: { 200: withProgress("The import, saved"), ...problems },
});

export const discardImport = createRoute({
  method: "delete",
  path: `${farm}/imports/{importId}`,
  tags,
  summary: "Put a preview away without storing anything",
  request: { params: farmPath.extend({ importId: Id }) },
  responses: { 200: json(DoneSchema, "It is put away"), ...problems },
});

export const getRefused = createRoute({
  method: "get",
  path: `${farm}/imports/{importId}/refused.csv`,
  tags,
  summary: "Every refused row as a CSV file: line, column, value, reason",
  request: { params: farmPath.extend({ importId: Id }) },
  responses: {
    200: { description: "The file", content: { "text/csv": { schema: z.string() } } },
    ...problems,
  },
});

export const LabMappingSchema = z
  .object({
    /** The laboratory's name in lower case. */
    lab: z.string(),
    columns: z.array(ColumnSchema),
    updatedAt: Instant,
  })
  .openapi("LabMapping");
export type LabMapping = z.infer<typeof LabMappingSchema>;

export const listLabMappings = createRoute({
  method: "get",
  path: "/v1/offices/{officeId}/lab-mappings",
  tags,
  summary: "How the columns of each laboratory's files are read, as it was said once",
  request: { params: officePath },
  responses: { 200: json(z.object({ labs: z.array(LabMappingSchema) }), "The laboratories"), ...problems },
});

export const forgetLabMapping = createRoute({
  method: "delete",
  path: "/v1/offices/{officeId}/lab-mappings/{lab}",
  tags,
  summary: "Forget how a laboratory's columns are read; its next file is asked about anew",
  request: { params: officePath.extend({ lab: z.string().min(1).max(80) }) },
  responses: { 200: json(DoneSchema, "It is forgotten"), ...problems },
});

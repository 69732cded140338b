import { createRoute, z } from "@hono/zod-openapi";
import { body, DoneSchema, farmPath, Id, Instant, json, problems } from "../shapes.ts";

/** Files in: read, shown, and only then saved, all or nothing. */

export const ImportKindSchema = z.enum(["soil-tests", "weather", "forecast"]);

/** How one column is read. An answer to a question of the preview comes back in the same form. */
export const ColumnSchema = z
  .object({
    header: z.string().max(200),
    /** Field it is read into; null where it is left out. */
    field: z.string().max(60).nullable(),
    /** Unit as printed or as answered; null where the field has none or it is not known. */
    unit: z.string().max(30).nullable(),
    extractant: z.string().max(30).nullable(),
  })
  .openapi("Column");

export const ImportSchema = z
  .object({
    id: Id,
    kind: ImportKindSchema,
    fileName: z.string(),
    status: z.enum(["staged", "saved", "discarded"]),
    createdAt: Instant,
    columns: z.array(ColumnSchema),
    /** What must be answered before it can be saved: ambiguous units are asked, never guessed. */
    questions: z.array(
      z.object({
        header: z.string(),
        /** Which of the column's two open places the answer goes to. */
        about: z.enum(["unit", "extractant"]),
        ask: z.string(),
        choices: z.array(z.string()),
      }),
    ),
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
  })
  .openapi("Import");
export type Import = z.infer<typeof ImportSchema>;
export type Column = z.infer<typeof ColumnSchema>;

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
  labName: z.string().max(80).optional(),
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
  responses: { 201: json(ImportSchema, "The preview"), ...problems },
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
  request: { params: farmPath },
  responses: {
    200: json(
      z.object({
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
  responses: { 200: json(ImportSchema, "The import, saved"), ...problems },
});

export const discardImport = createRoute({
  method: "delete",
  path: `${farm}/imports/{importId}`,
  tags,
  summary: "Put a preview away without storing anything",
  request: { params: farmPath.extend({ importId: Id }) },
  responses: { 200: json(DoneSchema, "It is put away"), ...problems },
});

import { createRoute, z } from "@hono/zod-openapi";
import { body, farmPath, Id, json, officePath, problems } from "../shapes.ts";

/** Everything an office owns as a file, in again, a farm from office to office, and a person out of the record. */

const tags = ["exports"];
const office = "/v1/offices/{officeId}" as const;
const LINES = "application/x-ndjson";

/** The form of an export: `docs/operations/export.md`. */
const lines = (description: string) => ({
  description,
  content: { [LINES]: { schema: z.string() } },
});
const linesIn = { required: true, content: { [LINES]: { schema: z.string() } } };

export const exportOffice = createRoute({
  method: "get",
  path: `${office}/export`,
  tags,
  summary:
    "Everything the office owns, one JSON document a line, with its SHA-256 signed in the last; for a lead",
  request: { params: officePath },
  responses: { 200: lines("The export"), ...problems },
});

export const exportOfficeAsCsv = createRoute({
  method: "get",
  path: `${office}/export.zip`,
  tags,
  summary: "The same as a zip of CSV files, one a table; for a lead",
  request: { params: officePath },
  responses: {
    200: { description: "The files", content: { "application/zip": { schema: z.string() } } },
    ...problems,
  },
});

const TakenInSchema = z.object({
  rows: z.record(z.string(), z.number().int()),
  /** Of times that no series keeps any more, or not yet. */
  readingsLeftOut: z.number().int(),
  entries: z.number().int(),
  keyId: z.string(),
});

export const importOffice = createRoute({
  method: "post",
  path: `${office}/import`,
  tags,
  summary: "Take in the export of an office, into one that is empty; all of it or nothing; for a lead",
  request: { params: officePath, body: linesIn },
  responses: {
    201: json(
      TakenInSchema,
      "How many rows of each table, how many entries of the ledger, and whose key had signed it. The old office's people come as people who have left",
    ),
    ...problems,
  },
});

export const exportFarm = createRoute({
  method: "get",
  path: `${office}/farms/{farmId}/export`,
  tags,
  summary: "One farm with its part of the ledger, to move it to another office; for a lead",
  request: { params: farmPath },
  responses: { 200: lines("The export"), ...problems },
});

export const takeInFarm = createRoute({
  method: "post",
  path: `${office}/moves`,
  tags,
  summary: "Take in a farm that another office exported; all of it or nothing; for a lead",
  request: { params: officePath, body: linesIn },
  responses: {
    201: json(
      TakenInSchema.extend({ farmId: Id }),
      "The farm, how many rows of each table came, how many entries, and whose key had signed it",
    ),
    ...problems,
  },
});

const ErasableSchema = z.object({
  userId: Id,
  /** Their name; of somebody whom only words that came with a farm name, that farm's. */
  name: z.string(),
  cameWithFarm: z.boolean(),
  /** Null for somebody who has left, or who came with a farm. */
  role: z.enum(["lead", "agent", "farmer", "reader"]).nullable(),
  /** How much of theirs would go. */
  texts: z.number().int(),
  photos: z.number().int(),
});

export const listErasable = createRoute({
  method: "get",
  path: `${office}/erasures`,
  tags,
  summary:
    "The people who could be erased, and how many words and photographs would go with each; for a lead",
  request: { params: officePath },
  responses: { 200: json(z.object({ people: z.array(ErasableSchema) }), "The people"), ...problems },
});

export const erasePerson = createRoute({
  method: "post",
  path: `${office}/erasures`,
  tags,
  summary:
    "Erase a person: name, e-mail, their words with the salts of their hashes, their photographs; for a lead, and for good",
  request: {
    params: officePath,
    body: body(
      z.object({
        userId: Id,
        /** The name that the list has for them, typed once more. */
        name: z.string().trim().min(1).max(200),
      }),
    ),
  },
  responses: {
    200: json(
      z.object({
        texts: z.number().int(),
        photos: z.number().int(),
        contacts: z.number().int(),
        /** Their sign-in went too, unless another office has them still. */
        signIn: z.boolean(),
      }),
      "How much was erased",
    ),
    ...problems,
  },
});

import { createRoute, z } from "@hono/zod-openapi";
import { body, Id, Instant, json, officePath, problems } from "../shapes.ts";

/** Work that is done in the background: what was wanted, how far it is, what failed. */

const tags = ["jobs"];
const path = "/v1/offices/{officeId}/runs";

export const RunStatusSchema = z.enum(["waiting", "running", "done", "failed", "overtaken"]);

export const RunSchema = z
  .object({
    id: Id,
    task: z.string(),
    /** Null where it is about the whole office. */
    farmId: Id.nullable(),
    farmName: z.string().nullable(),
    /** A person's name; null where the office's own clock wanted it, or whoever did has left. */
    wantedBy: z.string().nullable(),
    wantedAt: Instant,
    /** `failed`: given up until a lead has it done again; `overtaken`: failed, and has worked since. */
    status: RunStatusSchema,
    /** How often it was begun. */
    attempts: z.number().int(),
    /** While it waits: when it is done, or tried again. */
    dueAt: Instant.nullable(),
    startedAt: Instant.nullable(),
    endedAt: Instant.nullable(),
    /** How far it is, where it comes in parts. */
    progress: z.object({ done: z.number().int(), total: z.number().int() }).nullable(),
    /** Why it did not work the last time. */
    problem: z.string().nullable(),
  })
  .openapi("Run");
export type Run = z.infer<typeof RunSchema>;

export const listRuns = createRoute({
  method: "get",
  path,
  tags,
  summary: "Work in the background, newest first; by `status`, and from where the last page ended",
  request: {
    params: officePath,
    query: z.object({
      status: RunStatusSchema.optional(),
      after: z.string().max(100).optional(),
      limit: z.coerce.number().int().min(1).max(200).optional(),
    }),
  },
  responses: {
    200: json(
      z.object({
        runs: z.array(RunSchema),
        /** The `after` of the next page; null on the last. */
        next: z.string().nullable(),
      }),
      "The work of the office, kept for a week after it ended",
    ),
    ...problems,
  },
});

export const getRun = createRoute({
  method: "get",
  path: `${path}/{id}`,
  tags,
  summary: "How one piece of work is going",
  request: { params: officePath.extend({ id: Id }) },
  responses: { 200: json(RunSchema, "The work"), ...problems },
});

export const wantRun = createRoute({
  method: "post",
  path,
  tags,
  summary: "Have every farm of the office advised again, in the background",
  request: { params: officePath, body: body(z.object({ task: z.literal("advise-office") })) },
  responses: { 202: json(RunSchema, "It is wanted; ask for it by its id to see how it goes"), ...problems },
});

export const retryRun = createRoute({
  method: "post",
  path: `${path}/{id}/retry`,
  tags,
  summary: "Have what failed for good done again; for a lead",
  request: { params: officePath.extend({ id: Id }) },
  responses: { 202: json(RunSchema, "It waits again"), ...problems },
});

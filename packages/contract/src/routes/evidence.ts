import { createRoute, z } from "@hono/zod-openapi";
import { OfficeSourceSchema } from "../rulesWords.ts";
import { body, DoneSchema, farmPath, Id, Instant, json, officePath, problems } from "../shapes.ts";

/** An office's own evidence, and what would be worth measuring. */

export const OwnSourceSchema = z
  .object({ id: Id, addedAt: Instant, source: OfficeSourceSchema })
  .openapi("OfficeSource");
export type OwnSource = z.infer<typeof OwnSourceSchema>;

const tags = ["evidence"];

export const listOwnEvidence = createRoute({
  method: "get",
  path: "/v1/offices/{officeId}/evidence",
  tags,
  summary: "The office's own evidence, beside what is published",
  request: { params: officePath },
  responses: { 200: json(z.object({ sources: z.array(OwnSourceSchema) }), "Newest first"), ...problems },
});

export const addOwnEvidence = createRoute({
  method: "post",
  path: "/v1/offices/{officeId}/evidence",
  tags,
  summary: "Add evidence of the office's own, with its source, size, grade and limits",
  request: { params: officePath, body: body(z.object({ source: OfficeSourceSchema })) },
  responses: { 201: json(OwnSourceSchema, "As it is kept"), ...problems },
});

export const retireOwnEvidence = createRoute({
  method: "delete",
  path: "/v1/offices/{officeId}/evidence/{id}",
  tags,
  summary: "Put evidence of the office's own away",
  request: { params: officePath.extend({ id: Id }) },
  responses: { 200: json(DoneSchema, "It is put away"), ...problems },
});

/** One measurement that would narrow an answer, said for the farm's people. */
const WorthMeasuringSchema = z
  .object({
    ruleId: z.string(),
    subject: z.object({ kind: z.string(), id: z.string(), name: z.string() }),
    decision: z.string().nullable().describe("today's answer; null where none can be given yet"),
    measure: z.string(),
    how: z.string(),
    cost: z.enum(["free", "cheap", "laboratory"]),
    text: z.string().describe("what knowing it would narrow, and by how much"),
    /** Nothing can be said without it. */
    settles: z.boolean(),
    /** Share of the width of the answer that knowing it would be expected to take away, 0 to 1. */
    narrows: z.number().min(0).max(1),
    /** Share of the cases drawn in which knowing it would change the decision. */
    changes: z.number().min(0).max(1),
  })
  .openapi("WorthMeasuring");
export type WorthMeasuring = z.infer<typeof WorthMeasuringSchema>;

export const getWorthMeasuring = createRoute({
  method: "get",
  path: "/v1/offices/{officeId}/farms/{farmId}/worth-measuring",
  tags,
  summary: "For each answer on a farm, the one measurement that would narrow it most",
  request: { params: farmPath },
  responses: {
    200: json(z.object({ items: z.array(WorthMeasuringSchema) }), "The most worth first"),
    ...problems,
  },
});

import { createRoute, z } from "@hono/zod-openapi";
import { GuideSchema } from "../rulesWords.ts";
import { body, DoneSchema, Id, Instant, json, officePath, problems } from "../shapes.ts";

/** The tables that soil tests are read by: those held here, and an office's own. */

const GuideListingSchema = z
  .object({
    id: z.string(),
    title: z.string(),
    region: z.string(),
    extractants: z.array(z.string()),
    status: z.enum(["seen", "secondary", "memory", "office"]),
    source: z.object({ key: z.string(), locator: z.string().optional() }),
  })
  .openapi("GuideListing");

const OwnGuideSchema = z.object({ id: Id, addedAt: Instant, guide: GuideSchema }).openapi("OfficeGuide");

export const GuidesSchema = z
  .object({ held: z.array(GuideListingSchema), own: z.array(OwnGuideSchema) })
  .openapi("Guides");
export type Guides = z.infer<typeof GuidesSchema>;
export type OwnGuide = z.infer<typeof OwnGuideSchema>;

const tags = ["guides"];

export const getGuide = createRoute({
  method: "get",
  path: "/v1/guides/{guideId}",
  tags,
  summary: "One of the guides held here, whole, in the form in which an office gives its own",
  request: { params: z.object({ guideId: z.string().openapi({ example: "nj-mehlich-3" }) }) },
  responses: { 200: json(GuideSchema, "The guide"), ...problems },
});

export const listGuides = createRoute({
  method: "get",
  path: "/v1/offices/{officeId}/guides",
  tags,
  summary: "The guides held here, and the office's own",
  request: { params: officePath },
  responses: { 200: json(GuidesSchema, "The guides"), ...problems },
});

export const addGuide = createRoute({
  method: "post",
  path: "/v1/offices/{officeId}/guides",
  tags,
  summary:
    "Add a guide of the office's own; gaps, overlaps and a missing source are named and nothing is kept",
  request: {
    params: officePath,
    body: body(z.object({ guide: z.record(z.string(), z.unknown()) })),
  },
  responses: { 201: json(OwnGuideSchema, "The guide as it is kept"), ...problems },
});

export const retireGuide = createRoute({
  method: "delete",
  path: "/v1/offices/{officeId}/guides/{id}",
  tags,
  summary: "Put a guide of the office's own away; what was advised by it stays as it was",
  request: { params: officePath.extend({ id: Id }) },
  responses: { 200: json(DoneSchema, "It is put away"), ...problems },
});

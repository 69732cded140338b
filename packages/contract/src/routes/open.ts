import { createRoute, z } from "@hono/zod-openapi";
import { AnswerSchema, EstimatedSchema, SaidSchema, WorkingLineSchema } from "../answer.ts";
import { body, Id, json, problems } from "../shapes.ts";

/** What needs no office: numbers, rules, evidence, and who am I. */

const SourceRef = z.object({ key: z.string(), locator: z.string().optional() });

export const QuantityListingSchema = z
  .object({
    id: z.string(),
    question: z.string(),
    inputs: z.array(
      z.object({
        name: z.string(),
        required: z.boolean(),
        meaning: z.string(),
        unit: z.string(),
        min: z.number().optional(),
        max: z.number().optional(),
        words: z.array(z.string()).optional(),
      }),
    ),
    outputs: z.array(z.object({ name: z.string(), meaning: z.string(), unit: z.string() })),
    sources: z.array(SourceRef),
  })
  .openapi("Quantity");

export const QuantityAnswerSchema = z
  .object({
    value: z.record(z.string(), z.unknown()),
    working: z.array(WorkingLineSchema),
    estimated: z.array(EstimatedSchema),
    sources: z.array(SourceRef),
  })
  .openapi("QuantityAnswer");

export const listQuantities = createRoute({
  method: "get",
  path: "/v1/quantities",
  tags: ["numbers"],
  summary: "Every quantity: question, inputs with unit and range, outputs, sources",
  responses: { 200: json(z.object({ quantities: z.array(QuantityListingSchema) }), "The list"), ...problems },
});

export const computeQuantity = createRoute({
  method: "post",
  path: "/v1/quantities/{id}",
  tags: ["numbers"],
  summary: "One quantity with its working",
  request: {
    params: z.object({ id: z.string().openapi({ example: "saturation-vapour-pressure" }) }),
    body: body(z.record(z.string(), z.unknown()).openapi({ example: { temperatureC: 25 } })),
  },
  responses: { 200: json(QuantityAnswerSchema, "Value, working, what was estimated, sources"), ...problems },
});

export const SourceSchema = z
  .object({
    id: z.string(),
    cite: z.string(),
    kind: z.string(),
    year: z.number().optional(),
    url: z.string().optional(),
    doi: z.string().optional(),
    status: z.enum(["seen", "secondary", "memory", "practice"]),
  })
  .openapi("Source");

export const ClaimSchema = z
  .object({
    id: z.string(),
    rule: z.string(),
    finding: z.string(),
    sources: z.array(SourceRef),
    design: z.string(),
    size: z.string().nullable(),
    effect: z.string().nullable(),
    grade: z.enum(["strong", "moderate", "weak", "practice"]),
    limits: z.string(),
    conflicts: z.array(z.string()),
    wouldChange: z.string(),
  })
  .openapi("Claim");
export type Claim = z.infer<typeof ClaimSchema>;
export type Source = z.infer<typeof SourceSchema>;

export const listRules = createRoute({
  method: "get",
  path: "/v1/rules",
  tags: ["numbers"],
  summary:
    "Every rule: question, version, what it needs, the claims it leans on and their sources; in the language asked for",
  responses: {
    200: json(
      z.object({
        rules: z.array(
          z.object({
            id: z.string(),
            version: z.number().int(),
            question: z.string(),
            subject: z.string(),
            needs: z.array(z.string()),
            claims: z.array(ClaimSchema),
          }),
        ),
        sources: z.array(SourceSchema),
      }),
      "The rules",
    ),
    ...problems,
  },
});

export const adviseOnState = createRoute({
  method: "post",
  path: "/v1/advise",
  tags: ["numbers"],
  summary: "Every rule's answer for one subject's state; nothing is stored",
  request: { body: body(z.record(z.string(), z.unknown())) },
  responses: {
    200: json(z.object({ answers: z.array(AnswerSchema), said: z.array(SaidSchema) }), "The answers"),
    ...problems,
  },
});

/** Lead and agent belong to the office; farmer and reader to some of its farms, and a reader only reads. */
export const RoleSchema = z.enum(["lead", "agent", "farmer", "reader"]);
export type Role = z.infer<typeof RoleSchema>;

export const MeSchema = z
  .object({
    user: z.object({
      id: Id,
      name: z.string(),
      email: z.string(),
      /** Whether signing in takes a second step. */
      secondStep: z.boolean(),
    }),
    memberships: z.array(
      z.object({
        officeId: Id,
        officeName: z.string(),
        role: RoleSchema,
        /** Empty for lead and agent, who see every farm of the office. */
        farmIds: z.array(Id),
        /** The office asks its staff for a second step and this person has none: until then nothing there is theirs to see. */
        needsSecondStep: z.boolean(),
      }),
    ),
  })
  .openapi("Me");
export type Me = z.infer<typeof MeSchema>;

export const me = createRoute({
  method: "get",
  path: "/v1/me",
  tags: ["people"],
  summary: "Who is signed in, in which offices, as what",
  responses: { 200: json(MeSchema, "The person and their offices"), ...problems },
});

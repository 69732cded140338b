import { createRoute, z } from "@hono/zod-openapi";
import { AnswerSchema, SaidSchema } from "../answer.ts";
import { MISSING_REASONS, RESPONSE_KINDS, TRIAL_DESIGNS } from "../rulesWords.ts";
import { body, Day, DoneSchema, farmPath, Id, json, problems } from "../shapes.ts";
import { OwnSourceSchema } from "./evidence.ts";

/** Comparisons on a farm: from design through plots and numbers to a sentence. */

const name = z.string().trim().min(1).max(80);

const Named = z.object({ id: Id, name });
const FactorSchema = Named.extend({ levels: z.array(Named).min(2).max(12) });
const ResponseSchema = Named.extend({
  unit: z.string().trim().max(20),
  kind: z.enum(RESPONSE_KINDS),
  better: z.enum(["more", "less", "neither"]),
});
const PlotSchema = z.object({
  id: Id,
  number: z.int(),
  block: z.int().nullable(),
  levels: z.array(Id),
  bedId: Id,
  fromM: z.number(),
  lengthM: z.number(),
});

export const PlotValueSchema = z
  .object({
    plotId: Id,
    responseId: Id,
    on: Day,
    value: z.number().min(-1_000_000).max(10_000_000).nullable(),
    /** Why there is none. */
    missing: z.enum(MISSING_REASONS).nullable(),
  })
  .openapi("PlotValue");

export const TrialSchema = z
  .object({
    id: Id,
    siteId: Id,
    name,
    design: z.enum(TRIAL_DESIGNS),
    seed: z.int(),
    /** The first level of each is what is done now. */
    factors: z.array(FactorSchema),
    blocks: z.int(),
    responses: z.array(ResponseSchema),
    alpha: z.number(),
    plots: z.array(PlotSchema),
    startedOn: Day.nullable(),
    endedOn: Day.nullable(),
  })
  .openapi("Trial");
export type Trial = z.infer<typeof TrialSchema>;
export type PlotValue = z.infer<typeof PlotValueSchema>;

const TrialDetailSchema = z
  .object({ trial: TrialSchema, values: z.array(PlotValueSchema), answer: AnswerSchema, said: SaidSchema })
  .openapi("TrialDetail");
export type TrialDetail = z.infer<typeof TrialDetailSchema>;

const NewTrial = z.object({
  siteId: Id,
  name,
  design: z.enum(TRIAL_DESIGNS),
  factors: z
    .array(z.object({ name, levels: z.array(z.object({ name })).min(2).max(12) }))
    .min(1)
    .max(3),
  blocks: z.int().min(2).max(200),
  responses: z
    .array(ResponseSchema.omit({ id: true }))
    .min(1)
    .max(12),
  alpha: z.number().min(0.001).max(0.2),
  /** Beds it is laid out on, in their order. */
  bedIds: z.array(Id).min(1).max(100),
  plotLengthM: z.number().min(0.1).max(2000),
  gapM: z.number().min(0).max(100),
  /** Left out: drawn here. */
  seed: z.int().min(0).max(4_294_967_295).optional(),
});

const tags = ["trials"];
const farm = "/v1/offices/{officeId}/farms/{farmId}" as const;
const trialPath = farmPath.extend({ trialId: Id });

export const listTrials = createRoute({
  method: "get",
  path: `${farm}/trials`,
  tags,
  summary: "A farm's trials, newest first",
  request: { params: farmPath },
  responses: {
    200: json(
      z.object({ trials: z.array(TrialSchema.extend({ filled: z.int(), wanted: z.int() })) }),
      "The trials, with how many of their values are in",
    ),
    ...problems,
  },
});

export const addTrial = createRoute({
  method: "post",
  path: `${farm}/trials`,
  tags,
  summary: "Design a trial: its plots are laid out at random on the beds named",
  request: { params: farmPath, body: body(NewTrial) },
  responses: { 201: json(TrialDetailSchema, "The trial with its plots"), ...problems },
});

export const getTrial = createRoute({
  method: "get",
  path: `${farm}/trials/{trialId}`,
  tags,
  summary: "One trial, its numbers and what they say so far",
  request: { params: trialPath },
  responses: { 200: json(TrialDetailSchema, "The trial"), ...problems },
});

export const changeTrial = createRoute({
  method: "patch",
  path: `${farm}/trials/{trialId}`,
  tags,
  summary: "Change a trial's name or days; a new seed lays it out again, before it has begun only",
  request: {
    params: trialPath,
    body: body(
      z.object({
        name: name.optional(),
        startedOn: Day.nullable().optional(),
        endedOn: Day.nullable().optional(),
        seed: z.int().min(0).max(4_294_967_295).optional(),
      }),
    ),
  },
  responses: { 200: json(TrialDetailSchema, "The trial as it is now"), ...problems },
});

export const removeTrial = createRoute({
  method: "delete",
  path: `${farm}/trials/{trialId}`,
  tags,
  summary: "Take a trial back; only while it has no numbers",
  request: { params: trialPath },
  responses: { 200: json(DoneSchema, "It is gone"), ...problems },
});

export const keepPlotValues = createRoute({
  method: "put",
  path: `${farm}/trials/{trialId}/values`,
  tags,
  summary: "Write plots' numbers, or why there is none; both left empty takes one back",
  request: {
    params: trialPath,
    body: body(z.object({ values: z.array(PlotValueSchema).min(1).max(1000) })),
  },
  responses: { 200: json(TrialDetailSchema, "The trial as it is now"), ...problems },
});

export const trialAsEvidence = createRoute({
  method: "post",
  path: `${farm}/trials/{trialId}/evidence`,
  tags,
  summary: "Put a trial's result among the office's own evidence, with its grade and limits",
  request: {
    params: trialPath,
    body: body(z.object({ rule: z.string().min(1).max(40).describe("the rule it speaks about") })),
  },
  responses: { 201: json(OwnSourceSchema, "The evidence"), ...problems },
});

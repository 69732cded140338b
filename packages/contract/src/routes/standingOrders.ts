import { createRoute, z } from "@hono/zod-openapi";
import { GRADES } from "@pith/rules";
import { body, Day, farmPath, Id, Instant, json, officePath, problems } from "../shapes.ts";

/** Signed permissions for one rule to issue on one farm by itself, and for which advice two people are wanted. */

const Hour = z.number().int().min(0).max(23);

/** What an order permits. Whatever does not fit stays a draft. */
export const StandingOrderTermsSchema = z
  .object({
    /** Decisions it covers, e.g. only warnings. */
    decisionCodes: z.array(z.string().min(1).max(60)).min(1).max(30),
    mostPerWeek: z.number().int().min(1).max(100).describe("advice issued in any seven days"),
    leastGrade: z.enum(GRADES).nullable().describe("evidence at least this good; null for any"),
    measuredOnly: z.boolean().describe("only where nothing was estimated"),
    /** Only between these hours of the site's clock; through midnight where the first is the later. */
    hours: z.object({ from: Hour, to: Hour }).nullable(),
    /** Amounts of the answer that may not be larger; one that the answer does not name does not fit. */
    mostAmounts: z.record(z.string().min(1).max(60), z.number().min(0).max(1_000_000_000)),
    /** Its last day, at the site. */
    endsOn: Day,
  })
  .openapi("StandingOrderTerms");
export type StandingOrderTerms = z.infer<typeof StandingOrderTermsSchema>;

export const StandingOrderSchema = z
  .object({
    id: Id,
    /** Other terms are another version, signed again. */
    version: z.number().int(),
    farmId: Id,
    farmName: z.string(),
    ruleId: z.string(),
    /** The version of the rule it was signed for; a newer one must be signed for anew. */
    ruleVersion: z.number().int(),
    terms: StandingOrderTermsSchema,
    signedBy: z.string(),
    signedAt: Instant,
    confirmedBy: z.string().nullable(),
    confirmedAt: Instant.nullable(),
    /** Whether it issues now, and why not. */
    state: z.enum(["in-force", "waiting", "paused", "past", "outdated", "signer-gone", "ended"]),
    /** Whether the reader may confirm it: not who signed it. */
    mine: z.boolean(),
    issuedThisWeek: z.number().int(),
    issued: z.number().int(),
  })
  .openapi("StandingOrder");
export type StandingOrder = z.infer<typeof StandingOrderSchema>;

export const IssuingSettingsSchema = z
  .object({
    secondReader: z
      .enum(["never", "rules", "danger", "always"])
      .describe("for which advice a second agent must say yes"),
    /** Where `rules`: for these. */
    ruleIds: z.array(z.string().min(1).max(60)).max(100),
  })
  .openapi("IssuingSettings");
export type IssuingSettings = z.infer<typeof IssuingSettingsSchema>;

const tags = ["standing orders"];
const office = "/v1/offices/{officeId}" as const;
const orderPath = officePath.extend({ orderId: Id });
const one = json(StandingOrderSchema, "The standing order");

export const listStandingOrders = createRoute({
  method: "get",
  path: `${office}/standing-orders`,
  tags,
  summary: "Standing orders, those in force first",
  request: {
    params: officePath,
    query: z.object({ farmId: Id.optional(), ended: z.enum(["yes", "no"]).optional() }),
  },
  responses: { 200: json(z.object({ orders: z.array(StandingOrderSchema) }), "The orders"), ...problems },
});

export const signStandingOrder = createRoute({
  method: "post",
  path: `${office}/farms/{farmId}/standing-orders`,
  tags,
  summary:
    "Sign a permission for one rule to issue on this farm by itself, within limits, for a season at most",
  request: {
    params: farmPath,
    body: body(z.object({ ruleId: z.string().min(1).max(60), terms: StandingOrderTermsSchema })),
  },
  responses: { 201: one, ...problems },
});

export const signAnewStandingOrder = createRoute({
  method: "post",
  path: `${office}/standing-orders/{orderId}/versions`,
  tags,
  summary: "Sign it with other terms: its next version, which replaces the one before at once",
  request: { params: orderPath, body: body(z.object({ terms: StandingOrderTermsSchema })) },
  responses: { 201: one, ...problems },
});

export const confirmStandingOrder = createRoute({
  method: "post",
  path: `${office}/standing-orders/{orderId}/confirm`,
  tags,
  summary: "The second pair of eyes on a version, where the office wants one: never who signed it",
  request: { params: orderPath, body: body(z.object({ version: z.number().int().min(1) })) },
  responses: { 200: one, ...problems },
});

export const pauseStandingOrder = createRoute({
  method: "post",
  path: `${office}/standing-orders/{orderId}/pause`,
  tags,
  summary: "Pause it at once, or let it go on",
  request: { params: orderPath, body: body(z.object({ paused: z.boolean() })) },
  responses: { 200: one, ...problems },
});

export const revokeStandingOrder = createRoute({
  method: "post",
  path: `${office}/standing-orders/{orderId}/revoke`,
  tags,
  summary: "End it at once and for good",
  request: { params: orderPath },
  responses: { 200: one, ...problems },
});

export const getIssuingSettings = createRoute({
  method: "get",
  path: `${office}/issuing-settings`,
  tags,
  summary: "For which advice the office wants a second pair of eyes",
  request: { params: officePath },
  responses: { 200: json(IssuingSettingsSchema, "The settings"), ...problems },
});

export const changeIssuingSettings = createRoute({
  method: "put",
  path: `${office}/issuing-settings`,
  tags,
  summary: "Say for which advice the office wants a second pair of eyes; a lead's to say",
  request: { params: officePath, body: body(IssuingSettingsSchema) },
  responses: { 200: json(IssuingSettingsSchema, "The settings as they are now"), ...problems },
});

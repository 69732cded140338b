import { createRoute, z } from "@hono/zod-openapi";
import { BedPlanStateSchema, MARKET_TYPES, SPECIES } from "../rulesWords.ts";
import { body, Day, farmPath, Id, json, problems } from "../shapes.ts";

/** A season's plantings placed on the beds of a site. */

/** Plants of one variety that stand together. */
export const PlanBlockSchema = z
  .object({
    id: Id,
    /** The planting it is, where that exists already. */
    plantingId: Id.nullable(),
    varietyName: z.string().trim().min(1).max(80),
    species: z.enum(SPECIES),
    marketType: z.enum(MARKET_TYPES),
    /** Null: as the market type is. */
    pungent: z.boolean().nullable(),
    plants: z.int().min(1).max(1_000_000),
    /** Rows side by side that it takes. */
    rows: z.int().min(1).max(40),
    plantSpacingM: z.number().min(0.05).max(3),
    heightCm: z.number().min(10).max(300).nullable(),
    water: z.enum(["full", "deficit"]),
    saveSeed: z.boolean(),
    /** Stays where it is, whatever is proposed. */
    pinned: z.boolean(),
    firstPickOn: Day.nullable(),
    /** First row across the bed, and metres from its first end; null where it has no place yet. */
    at: z.object({ bedId: Id, row: z.int().min(1).max(40), fromM: z.number().min(0).max(2000) }).nullable(),
  })
  .openapi("PlanBlock");

export const BedPlanSchema = z
  .object({
    /** Null until it is first kept. */
    id: Id.nullable(),
    siteId: Id,
    season: z.int(),
    /** Grows with every change. */
    version: z.int(),
    blocks: z.array(PlanBlockSchema).max(1000),
    /** What the rules read, for checks beside every move. */
    state: BedPlanStateSchema,
  })
  .openapi("BedPlan");
export type BedPlan = z.infer<typeof BedPlanSchema>;
export type PlanBlock = z.infer<typeof PlanBlockSchema>;

const planPath = farmPath.extend({
  siteId: Id,
  season: z.coerce.number().int().min(1900).max(2200).openapi({ example: 2027 }),
});
const tags = ["bed plan"];
const path = "/v1/offices/{officeId}/farms/{farmId}/sites/{siteId}/bed-plans/{season}" as const;

export const getBedPlan = createRoute({
  method: "get",
  path,
  tags,
  summary: "The plan of a site's beds for a season; where none is kept, the plantings as they stand",
  request: { params: planPath },
  responses: { 200: json(BedPlanSchema, "The plan"), ...problems },
});

export const keepBedPlan = createRoute({
  method: "put",
  path,
  tags,
  summary: "Keep the plan whole; a version that is not the newest is refused",
  request: {
    params: planPath,
    body: body(z.object({ version: z.int().min(0), blocks: z.array(PlanBlockSchema).max(1000) })),
  },
  responses: { 200: json(BedPlanSchema, "The plan as it is kept"), ...problems },
});

export const adoptBedPlan = createRoute({
  method: "post",
  path: `${path}/adopt`,
  tags,
  summary: "Make plantings of the plan: new blocks are added, plantings not set out yet move to their bed",
  request: {
    params: planPath,
    body: body(
      z.object({
        version: z.int().min(1),
        /** Sowing day of the new ones. */
        sownOn: Day,
        plannedSetOutOn: Day.nullable(),
      }),
    ),
  },
  responses: {
    200: json(z.object({ added: z.int(), moved: z.int(), plan: BedPlanSchema }), "What was done"),
    ...problems,
  },
});

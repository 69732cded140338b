import { type BedPlan, bedPlanRoutes, type PlanBlock } from "@pith/contract";
import { bedPlans, type Tx } from "@pith/db";
import { BedPlanStateSchema, parseAtTheDoor, refuse } from "@pith/rules";
import { and, eq } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, nowOf, requireAgent } from "../context.ts";
import { adviseFarm } from "../drafts/adviseFarm.ts";
import { found, ServiceError } from "../errors.ts";
import { belongsHere } from "../farms/belongsHere.ts";
import type { OfFarm } from "../farms/ofFarm.ts";
import { lockFarm, requireFarm } from "../farms/requireFarm.ts";
import { type FarmFacts, readFacts } from "../states/facts.ts";
import { bedPlanState, blocksAsTheyStand } from "../states/planState.ts";
import { bodyOf } from "../wellFormed.ts";
import { adoptBlocks } from "./adoptBlocks.ts";

/** Whose plan of which season. */
interface Where extends OfFarm {
  siteId: string;
  season: number;
}

/** The plan of a site's beds for a season; where none is kept, the plantings as they stand. */
export const getBedPlan = (ctx: Ctx, farmId: string, siteId: string, season: number): Promise<BedPlan> =>
  inOffice(ctx, async (tx) => {
    await requireFarm(tx, ctx, farmId);
    return readPlan(tx, ctx, { officeId: ctx.officeId, farmId, siteId, season });
  });

async function readPlan(tx: Tx, ctx: Ctx, where: Where): Promise<BedPlan> {
  const { siteId, season } = where;
  const facts = await readFacts(tx, where, nowOf(ctx));
  found(facts.sites.get(siteId), "site");
  const kept = facts.bedPlans.find((p) => p.siteId === siteId && p.season === season);
  return viewOf(facts, {
    id: kept?.id ?? null,
    siteId,
    season,
    version: kept?.version ?? 0,
    blocks: (kept?.blocks as PlanBlock[] | undefined) ?? blocksAsTheyStand(facts, siteId, season),
  });
}

const viewOf = (facts: FarmFacts, plan: Omit<BedPlan, "state">): BedPlan => ({
  ...plan,
  state: bedPlanState(facts, { ...plan, id: plan.id ?? plan.siteId }),
});

/** Keeps a plan whole. One that breaks a rule may be kept: it is work in hand, and the answer says what it breaks. */
export async function keepBedPlan(
  ctx: Ctx,
  farmId: string,
  siteId: string,
  season: number,
  raw: unknown,
): Promise<BedPlan> {
  requireAgent(ctx);
  const { version, blocks } = bodyOf(bedPlanRoutes.keepBedPlan, raw);
  return inOffice(ctx, async (tx) => {
    await lockFarm(tx, ctx, farmId);
    const where = { officeId: ctx.officeId, farmId, siteId, season };
    const known = await readPlan(tx, ctx, where);
    requireNewest(known, version);
    await checkBlocks(tx, where, blocks);
    await store(tx, ctx, where, known, blocks);
    const plan = await readPlan(tx, ctx, where);
    parseAtTheDoor(BedPlanStateSchema, plan.state);
    await adviseFarm(tx, ctx, farmId);
    return plan;
  });
}

/** Makes plantings of a plan that breaks no hard rule. */
export async function adoptBedPlan(
  ctx: Ctx,
  farmId: string,
  siteId: string,
  season: number,
  raw: unknown,
): Promise<{ added: number; moved: number; plan: BedPlan }> {
  requireAgent(ctx);
  const { version, ...days } = bodyOf(bedPlanRoutes.adoptBedPlan, raw);
  return inOffice(ctx, async (tx) => {
    await lockFarm(tx, ctx, farmId);
    const where = { officeId: ctx.officeId, farmId, siteId, season };
    const known = await readPlan(tx, ctx, where);
    requireNewest(known, version);
    const { added, moved, blocks } = await adoptBlocks(tx, where, known, days);
    await store(tx, ctx, where, known, blocks);
    await adviseFarm(tx, ctx, farmId);
    return { added, moved, plan: await readPlan(tx, ctx, where) };
  });
}

function requireNewest(known: BedPlan, version: number): void {
  if (version !== known.version) {
    throw new ServiceError(
      "conflict",
      "Somebody else changed this plan in the meantime; read it again before you keep yours.",
    );
  }
}

async function checkBlocks(tx: Tx, at: OfFarm, blocks: PlanBlock[]): Promise<void> {
  for (const [i, { id, at: place, plantingId }] of blocks.entries()) {
    if (blocks.findIndex((b) => b.id === id) < i)
      refuse(`blocks.${i}.id`, "is there twice", "an id of its own for each block", id);
    if (plantingId !== null && blocks.findIndex((b) => b.plantingId === plantingId) < i)
      refuse(`blocks.${i}.plantingId`, "is there twice", "one block a planting", plantingId);
    await belongsHere(tx, at, "planting", `blocks.${i}.plantingId`, plantingId);
    await belongsHere(tx, at, "bed", `blocks.${i}.at.bedId`, place?.bedId ?? null);
  }
}

async function store(tx: Tx, ctx: Ctx, where: Where, known: BedPlan, blocks: PlanBlock[]): Promise<void> {
  const version = known.version + 1;
  const changedAt = nowOf(ctx);
  const id = known.id ?? globalThis.crypto.randomUUID();
  if (known.id === null) await tx.insert(bedPlans).values({ ...where, id, blocks, version, changedAt });
  else {
    await tx
      .update(bedPlans)
      .set({ blocks, version, changedAt })
      .where(and(eq(bedPlans.officeId, where.officeId), eq(bedPlans.id, id)));
  }
  await recordAudit(tx, ctx, {
    action: "bed-plan.keep",
    entity: "bed_plans",
    entityId: id,
    detail: { version },
  });
}

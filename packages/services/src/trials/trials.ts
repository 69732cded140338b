import { type Trial, type TrialDetail, trialRoutes } from "@pith/contract";
import { type TrialPlan, type Tx, trials, trialValues } from "@pith/db";
import { refuse } from "@pith/rules";
import { and, count, desc, eq } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, forOffice, inOffice, nowOf, requireAgent, requireOwnFarm } from "../context.ts";
import { adviseFarm } from "../drafts/adviseFarm.ts";
import { ServiceError } from "../errors.ts";
import { belongsHere } from "../farms/belongsHere.ts";
import { lockFarm, requireFarm } from "../farms/requireFarm.ts";
import { type BodyOf, bodyOf } from "../wellFormed.ts";
import { planOf, plotsOf } from "./layOut.ts";
import { detailOf, readTrial, trialView } from "./readTrial.ts";

/** A farm's trials, newest first, with how many of their values are in. */
export function listTrials(
  ctx: Ctx,
  farmId: string,
): Promise<{ trials: (Trial & { filled: number; wanted: number })[] }> {
  return inOffice(ctx, async (tx) => {
    await requireFarm(tx, ctx, farmId);
    const ofFarm = and(eq(trials.officeId, ctx.officeId), eq(trials.farmId, farmId));
    const rows = await tx.select().from(trials).where(ofFarm).orderBy(desc(trials.madeAt), desc(trials.id));
    const counts = await tx
      .select({ id: trialValues.trialId, n: count() })
      .from(trialValues)
      .where(and(eq(trialValues.officeId, ctx.officeId), eq(trialValues.farmId, farmId)))
      .groupBy(trialValues.trialId);
    const filled = new Map(counts.map(({ id, n }) => [id, n]));
    return {
      trials: rows.map((row) => ({
        ...trialView(row),
        filled: filled.get(row.id) ?? 0,
        wanted: row.plots.length * row.design.responses.length,
      })),
    };
  });
}

/** Designs a trial; its plots are laid out at random on the beds named, or it is refused whole. */
export async function addTrial(ctx: Ctx, farmId: string, raw: unknown): Promise<TrialDetail> {
  requireAgent(ctx);
  const value = bodyOf(trialRoutes.addTrial, raw);
  return inOffice(ctx, async (tx) => {
    await lockFarm(tx, ctx, farmId);
    const at = { officeId: ctx.officeId, farmId };
    await belongsHere(tx, at, "site", "siteId", value.siteId);
    const design = planOf(value);
    const id = globalThis.crypto.randomUUID();
    await tx.insert(trials).values({
      ...at,
      id,
      siteId: value.siteId,
      name: value.name,
      design,
      plots: await plotsOf(tx, at, design, value.bedIds),
      madeAt: nowOf(ctx),
    });
    await recordAudit(tx, ctx, { action: "trial.add", entity: "trials", entityId: id });
    await adviseFarm(tx, ctx, farmId);
    return detailOf(tx, ctx, await readTrial(tx, ctx, farmId, id));
  });
}

/** One trial, its numbers and what they say so far. */
export const getTrial = (ctx: Ctx, farmId: string, trialId: string): Promise<TrialDetail> =>
  inOffice(ctx, async (tx) => {
    await requireFarm(tx, ctx, farmId);
    return detailOf(tx, ctx, await readTrial(tx, ctx, farmId, trialId));
  });

/** Changes name or days; a new seed lays it out again, while it has neither begun nor any number. */
export async function changeTrial(
  ctx: Ctx,
  farmId: string,
  trialId: string,
  raw: unknown,
): Promise<TrialDetail> {
  requireAgent(ctx);
  const { seed, ...change } = bodyOf(trialRoutes.changeTrial, raw);
  return inOffice(ctx, async (tx) => {
    await lockFarm(tx, ctx, farmId);
    const { row, values } = await readTrial(tx, ctx, farmId, trialId);
    const next = { ...row, ...change };
    if (next.endedOn !== null && (next.startedOn === null || next.endedOn < next.startedOn)) {
      refuse(
        "endedOn",
        "must not be before the trial began",
        next.startedOn ?? "a day it began",
        next.endedOn,
      );
    }
    let laid: { design: TrialPlan; plots: typeof row.plots } | undefined;
    if (seed !== undefined && seed !== row.design.seed) {
      if (values.length > 0 || row.startedOn !== null) {
        throw new ServiceError("conflict", "A trial that has begun is not laid out again.");
      }
      const design = { ...row.design, seed };
      const bedIds = [...new Set(row.plots.map((p) => p.bedId))];
      laid = { design, plots: await plotsOf(tx, { officeId: ctx.officeId, farmId }, design, bedIds) };
    }
    await tx
      .update(trials)
      .set({ name: next.name, startedOn: next.startedOn, endedOn: next.endedOn, ...laid })
      .where(and(eq(trials.officeId, ctx.officeId), eq(trials.id, trialId)));
    await recordAudit(tx, ctx, { action: "trial.change", entity: "trials", entityId: trialId });
    await adviseFarm(tx, ctx, farmId);
    return detailOf(tx, ctx, await readTrial(tx, ctx, farmId, trialId));
  });
}

/** Takes a trial back while it has no numbers. */
export async function removeTrial(ctx: Ctx, farmId: string, trialId: string): Promise<{ done: true }> {
  requireAgent(ctx);
  return inOffice(ctx, async (tx) => {
    await lockFarm(tx, ctx, farmId);
    const { values } = await readTrial(tx, ctx, farmId, trialId);
    if (values.length > 0) {
      throw new ServiceError("conflict", "This trial has numbers; end it instead, and they stay.");
    }
    await tx.delete(trials).where(and(eq(trials.officeId, ctx.officeId), eq(trials.id, trialId)));
    await recordAudit(tx, ctx, { action: "trial.remove", entity: "trials", entityId: trialId });
    await adviseFarm(tx, ctx, farmId);
    return { done: true as const };
  });
}

type Values = BodyOf<typeof trialRoutes.keepPlotValues>["values"];

/** Writes plots' numbers, all of them or none: by an agent, or by the farm's own people in the field. */
export async function keepPlotValues(
  ctx: Ctx,
  farmId: string,
  trialId: string,
  raw: unknown,
): Promise<TrialDetail> {
  requireOwnFarm(ctx, farmId);
  const { values } = bodyOf(trialRoutes.keepPlotValues, raw);
  return forOffice(ctx, async (tx) => {
    await lockFarm(tx, ctx, farmId);
    const { row } = await readTrial(tx, ctx, farmId, trialId);
    checkValues(values, row);
    for (const value of values) await keepOne(tx, ctx, { farmId, trialId }, value);
    await recordAudit(tx, ctx, {
      action: "trial.values",
      entity: "trials",
      entityId: trialId,
      detail: { values: values.length },
    });
    await adviseFarm(tx, ctx, farmId);
    return detailOf(tx, ctx, await readTrial(tx, ctx, farmId, trialId));
  });
}

function checkValues(values: Values, { plots, design }: typeof trials.$inferSelect): void {
  values.forEach(({ plotId, responseId, value, missing }, i) => {
    if (!plots.some((p) => p.id === plotId))
      refuse(`values.${i}.plotId`, "names no plot of this trial", "a plot's id", plotId);
    if (!design.responses.some((r) => r.id === responseId))
      refuse(`values.${i}.responseId`, "names nothing measured here", "a response's id", responseId);
    if (value !== null && missing !== null)
      refuse(`values.${i}.missing`, "must be empty beside a value", "null", missing);
  });
}

async function keepOne(
  tx: Tx,
  ctx: Ctx,
  { farmId, trialId }: { farmId: string; trialId: string },
  { plotId, responseId, on, value, missing }: Values[number],
): Promise<void> {
  const { officeId } = ctx;
  const thisOne = and(
    eq(trialValues.officeId, officeId),
    eq(trialValues.trialId, trialId),
    eq(trialValues.plotId, plotId),
    eq(trialValues.responseId, responseId),
  );
  if (value === null && missing === null) {
    await tx.delete(trialValues).where(thisOne);
    return;
  }
  const said = { onDay: on, value, missing, recordedBy: ctx.actor.userId, recordedAt: nowOf(ctx) };
  await tx
    .insert(trialValues)
    .values({ officeId, farmId, trialId, plotId, responseId, ...said })
    .onConflictDoUpdate({
      target: [trialValues.officeId, trialValues.trialId, trialValues.plotId, trialValues.responseId],
      set: said,
    });
}

import type { TrialDetail } from "@pith/contract";
import { offices, sites, type Tx, trials, trialValues } from "@pith/db";
import { type Answer, adviseState, SettingsSchema } from "@pith/rules";
import { and, asc, eq } from "drizzle-orm";
import { readNames } from "../advice/names.ts";
import { type Ctx, nowOf } from "../context.ts";
import { found } from "../errors.ts";
import { sayAnswer } from "../saying/sayAnswer.ts";
import { type TrialFacts, trialState } from "../states/trialState.ts";

/** One trial's rows, as its state is made of them. */
export async function readTrial(tx: Tx, ctx: Ctx, farmId: string, id: string): Promise<TrialFacts> {
  const { officeId } = ctx;
  const [one] = await tx
    .select({ row: trials, timeZone: sites.timeZone })
    .from(trials)
    .innerJoin(sites, and(eq(sites.officeId, trials.officeId), eq(sites.id, trials.siteId)))
    .where(and(eq(trials.officeId, officeId), eq(trials.farmId, farmId), eq(trials.id, id)));
  const { row, timeZone } = found(one, "trial");
  const [office] = await tx
    .select({ settings: offices.settings })
    .from(offices)
    .where(eq(offices.id, officeId));
  const values = await tx
    .select()
    .from(trialValues)
    .where(and(eq(trialValues.officeId, officeId), eq(trialValues.trialId, id)))
    .orderBy(asc(trialValues.plotId), asc(trialValues.responseId));
  return { asOf: nowOf(ctx), settings: SettingsSchema.parse(office?.settings ?? {}), timeZone, row, values };
}

/** What the rule says of it now. */
function answerOn(facts: TrialFacts): Answer {
  const [answer] = adviseState(trialState(facts));
  if (!answer) throw new Error("no rule speaks about trials");
  return answer;
}

/** A trial as the wire shows it, with what its numbers say so far. */
export async function detailOf(tx: Tx, ctx: Ctx, facts: TrialFacts): Promise<TrialDetail> {
  const { row } = facts;
  const names = await readNames(tx, ctx, [row.farmId]);
  const answer = answerOn(facts);
  return {
    trial: trialView(row),
    values: facts.values.map(({ plotId, responseId, onDay, value, missing }) => ({
      plotId,
      responseId,
      on: onDay,
      value,
      missing,
    })),
    answer,
    said: sayAnswer(answer, names.farm(row.farmId).reader),
  };
}

/** A row as the wire shows it. */
export function trialView(row: typeof trials.$inferSelect): TrialDetail["trial"] {
  const { design, seed, factors, blocks, responses, alpha } = row.design;
  return {
    id: row.id,
    siteId: row.siteId,
    name: row.name,
    design,
    seed,
    factors,
    blocks,
    responses: responses as TrialDetail["trial"]["responses"],
    alpha,
    plots: row.plots,
    startedOn: row.startedOn,
    endedOn: row.endedOn,
  };
}

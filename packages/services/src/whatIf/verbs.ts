import { type WhatIfOf, whatIfRoutes } from "@pith/contract";
import { drafts, plantings, type Tx } from "@pith/db";
import {
  localDay,
  type PlantingState,
  type Reader,
  refuse,
  render,
  subjectOf,
  type WhatIf,
} from "@pith/rules";
import { CHOICE_NAMES, differing, whatIfOf } from "@pith/rules/what-if";
import { and, eq } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, nowOf, requireAgent } from "../context.ts";
import { adviseFarm } from "../drafts/adviseFarm.ts";
import { type Subject, subjectsOfKind, whatIfSubjects } from "../drafts/subjects.ts";
import { found, ServiceError } from "../errors.ts";
import { lockFarm, requireFarm } from "../farms/requireFarm.ts";
import { type FarmFacts, readFacts } from "../states/facts.ts";
import { bodyOf } from "../wellFormed.ts";

interface Where {
  farmId: string;
  plantingId: string;
}

/** What the rules read of a planting and its valve now, to try things on, and what was chosen of it. */
export function getWhatIf(ctx: Ctx, { farmId, plantingId }: Where): Promise<WhatIfOf> {
  requireAgent(ctx);
  return inOffice(ctx, async (tx) => {
    await requireFarm(tx, ctx, farmId);
    const facts = await readFacts(tx, { officeId: ctx.officeId, farmId }, nowOf(ctx));
    const { planting, valve } = whatIfSubjects(facts, stateOf(facts, plantingId));
    const choices = facts.plantings.find(({ id }) => id === plantingId)?.whatIf;
    const drafted = choices ? { choices, draftId: await draftIdOf(tx, ctx, plantingId) } : null;
    return { planting, valve, drafted };
  });
}

/** Keeps a choice as this planting's one what-if and drafts its advice; it is issued as any draft is. */
export function draftWhatIf(
  ctx: Ctx,
  { farmId, plantingId }: Where,
  raw: unknown,
): Promise<{ draftId: string }> {
  requireAgent(ctx);
  const { choices } = bodyOf(whatIfRoutes.draftWhatIf, raw);
  return inOffice(ctx, async (tx) => {
    await lockFarm(tx, ctx, farmId);
    const facts = await readFacts(tx, { officeId: ctx.officeId, farmId }, nowOf(ctx));
    const state = stateOf(facts, plantingId);
    const reader: Reader = { language: ctx.language ?? "en", units: "metric" };
    const { starting } = whatIfOf(whatIfSubjects(facts, state));
    const tried = differing(choices, starting);
    const names = CHOICE_NAMES.filter((name) => tried[name] !== undefined);
    if (names.length === 0) refuse("choices", "hold nothing that is not so already", CHOICE_NAMES.join(", "));
    for (const name of names) {
      const { not } = starting[name];
      if (not) refuse(`choices.${name}`, `cannot be tried now: ${render(not, reader)}`);
    }
    const today = localDay(nowOf(ctx), state.site.timeZone);
    if (tried.setOutOn !== undefined && tried.setOutOn < today) {
      refuse("choices.setOutOn", "must not be before today", `${today} or later`, tried.setOutOn);
    }
    await keep(tx, ctx, { farmId, plantingId }, tried);
    await adviseFarm(tx, ctx, farmId);
    const draftId = await draftIdOf(tx, ctx, plantingId);
    if (draftId === null) {
      throw new ServiceError("conflict", "The same choice was issued already and still stands.");
    }
    const detail = { choices: names.join(", ") };
    await recordAudit(tx, ctx, { action: "what-if.draft", entity: "planting", entityId: plantingId, detail });
    return { draftId };
  });
}

/** Lets a drafted choice go, and its draft with it. */
export function letGoWhatIf(ctx: Ctx, { farmId, plantingId }: Where): Promise<{ done: true }> {
  requireAgent(ctx);
  return inOffice(ctx, async (tx) => {
    await lockFarm(tx, ctx, farmId);
    await keep(tx, ctx, { farmId, plantingId }, null);
    await adviseFarm(tx, ctx, farmId);
    await recordAudit(tx, ctx, { action: "what-if.let-go", entity: "planting", entityId: plantingId });
    return { done: true };
  });
}

/** @throws ServiceError not-found, or DomainError where the rules cannot read what is stored of it */
function stateOf(facts: FarmFacts, plantingId: string): PlantingState {
  const isIt = ({ state }: Subject) => state.kind === "planting" && subjectOf(state).id === plantingId;
  const subject = found(subjectsOfKind.planting(facts).find(isIt), "planting");
  if (subject.problem) throw subject.problem;
  return subject.state as PlantingState;
}

async function keep(tx: Tx, { officeId }: Ctx, { farmId, plantingId }: Where, whatIf: WhatIf | null) {
  const isIt = and(
    eq(plantings.officeId, officeId),
    eq(plantings.farmId, farmId),
    eq(plantings.id, plantingId),
  );
  const [row] = await tx.update(plantings).set({ whatIf }).where(isIt).returning({ id: plantings.id });
  found(row, "planting");
}

async function draftIdOf(tx: Tx, { officeId }: Ctx, plantingId: string): Promise<string | null> {
  const isIt = and(
    eq(drafts.officeId, officeId),
    eq(drafts.ruleId, "what-if"),
    eq(drafts.subjectId, plantingId),
  );
  const [row] = await tx.select({ id: drafts.id }).from(drafts).where(isIt);
  return row?.id ?? null;
}

import { type Actual, type Advisory, adviceRoutes, type Expected } from "@pith/contract";
import { advisories, answers, type Tx } from "@pith/db";
import { addDays, refuse } from "@pith/rules";
import { and, desc, eq } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, forOffice } from "../context.ts";
import { adviseFarm } from "../drafts/adviseFarm.ts";
import { ServiceError } from "../errors.ts";
import { belongsHere } from "../farms/belongsHere.ts";
import { lockFarm } from "../farms/requireFarm.ts";
import { append } from "../ledger/append.ts";
import { NOTHING_COMPUTED } from "../ledger/body.ts";
import { takeBackApplications, writeApplication } from "../records/applications.ts";
import { refuseFuture } from "../records/past.ts";
import { takeBackWaterings, writeWatering } from "../records/waterings.ts";
import { keepText } from "../texts.ts";
import { tellWebhooks } from "../webhooks/tell.ts";
import { bodyOf } from "../wellFormed.ts";
import { readAdvisory, requireAdvisory, thisAdvisory } from "./advisories.ts";

/** What was done before the advice came may be what it asked for; what was done long before is a slip (common practice). */
const BEFORE_ISSUED_DAYS = 60;

/**
 * What became of an issued advice, said by the farm or by an agent for it: done with what was really done, not done, or
 * cannot. "Done" writes the application or watering and takes from the shed. A second answer corrects the first: what
 * the first wrote is taken back, both stay in the ledger. Who says which answer they saw corrects only that one: what was
 * written in the field without signal does not silently take the place of what another said meanwhile.
 */
export async function answerAdvisory(ctx: Ctx, advisoryId: string, raw: unknown): Promise<Advisory> {
  const { kind, actual, reason, answerSeen } = bodyOf(adviceRoutes.answerAdvisory, raw);
  await forOffice(ctx, async (tx) => {
    const { farmId } = await requireAdvisory(tx, ctx, advisoryId);
    await lockFarm(tx, ctx, farmId);
    const advisory = await requireAdvisory(tx, ctx, advisoryId);
    if (advisory.status === "withdrawn") {
      throw new ServiceError("conflict", "This advice was withdrawn; there is nothing to answer any more.");
    }
    if (answerSeen !== undefined) await requireNoOtherAnswer(tx, ctx, advisoryId, answerSeen);
    const expected = advisory.expected as Expected | null;
    if (kind !== "done" && actual !== null) {
      refuse("actual", "belongs to an answer that says done", "null", actual);
    }
    if (actual !== null) {
      await refuseFuture(tx, ctx, farmId, actual, "actual.");
      const earliest = addDays(advisory.issuedAt.slice(0, 10), -BEFORE_ISSUED_DAYS);
      if (actual.on < earliest)
        refuse("actual.on", "lies long before the advice", `from ${earliest} on`, actual.on);
    }

    await takeBackApplications(tx, ctx, farmId, advisoryId);
    await takeBackWaterings(tx, ctx, farmId, advisoryId);
    if (kind === "done" && actual !== null) await writeDown(tx, ctx, advisory, expected, actual);
    const text = await keepText(tx, ctx, farmId, reason);
    await tx.update(advisories).set({ status: kind }).where(thisAdvisory(ctx, advisoryId));
    await recordAudit(tx, ctx, {
      action: "advice.answer",
      entity: "advisories",
      entityId: advisoryId,
      detail: { kind },
    });
    const ruleId = advisory.ruleId;
    await tellWebhooks(tx, ctx, "advisory.answered", { farmId, advisoryId, ruleId, answer: kind });
    await adviseFarm(tx, ctx, farmId);
    const id = globalThis.crypto.randomUUID();
    await append(
      tx,
      ctx,
      {
        kind: "answered",
        farm: farmId,
        advisory: advisoryId,
        subject: { kind: advisory.subjectKind, id: advisory.subjectId },
        rule: { id: advisory.ruleId, version: advisory.ruleVersion },
        ...NOTHING_COMPUTED,
        expected,
        outcome: { kind, actual },
        textSha256: text?.sha256 ?? null,
      },
      async ({ seq, at }) => {
        await tx.insert(answers).values({
          officeId: ctx.officeId,
          id,
          farmId,
          advisoryId,
          kind,
          actual,
          reasonTextId: text?.id ?? null,
          answeredBy: ctx.actor.userId,
          answeredAt: at,
          ledgerSeq: seq,
        });
      },
    );
  });
  return readAdvisory(ctx, advisoryId);
}

/** Called where the farm is locked, so that of two who answer at once the second is told. */
async function requireNoOtherAnswer(tx: Tx, ctx: Ctx, advisoryId: string, seen: number | null) {
  const [newest] = await tx
    .select({ seq: answers.ledgerSeq })
    .from(answers)
    .where(and(eq(answers.officeId, ctx.officeId), eq(answers.advisoryId, advisoryId)))
    .orderBy(desc(answers.ledgerSeq))
    .limit(1);
  if ((newest?.seq ?? null) === seen) return;
  throw new ServiceError("changed", "Somebody has changed this since you read it. Look at it again.");
}

/** The record that the actual says was done. Setting out and looking leave no record of their own here. */
async function writeDown(
  tx: Tx,
  ctx: Ctx,
  advisory: { id: string; farmId: string; subjectKind: string; subjectId: string; plantingIds: string[] },
  expected: Expected | null,
  { on, materialId, amountKg, areaM2, minutes, litres, alongside = [] }: Actual,
): Promise<void> {
  const { id, farmId, subjectId } = advisory;
  const at = { officeId: ctx.officeId, farmId };
  if (expected?.kind === "application") {
    if (materialId === null)
      refuse("actual.materialId", "is missing: what was given", "a material of the farm", null);
    if (amountKg === null) refuse("actual.amountKg", "is missing: how much was given", "kilograms", null);
    if (areaM2 === null || areaM2 === 0) {
      refuse("actual.areaM2", "is missing: on how much ground it was given", "more than 0 m2", areaM2);
    }
    await belongsHere(tx, at, "material", "actual.materialId", materialId);
    // A dose on a bed is the bed's, also where several plantings stand in it, or none.
    const onBed = advisory.subjectKind === "bed";
    const plantingId = advisory.plantingIds[0] ?? (onBed ? null : subjectId);
    const given = { plantingId, bedId: onBed ? subjectId : null, on, lot: null, areaM2 };
    await writeApplication(tx, ctx, farmId, { ...given, materialId, amountKg, minutesOfLabour: minutes }, id);
    for (const [i, one] of alongside.entries()) {
      await belongsHere(tx, at, "material", `actual.alongside.${i}.materialId`, one.materialId);
      await writeApplication(tx, ctx, farmId, { ...given, ...one, minutesOfLabour: null }, id);
    }
  }
  if (expected?.kind === "watering") {
    if (minutes === null && litres === null) {
      refuse(
        "actual.minutes",
        "must be given where litres are not",
        "minutes of the valve, or litres by meter",
        null,
      );
    }
    await writeWatering(tx, ctx, farmId, { valveId: subjectId, on, minutes, litres }, id);
  }
}

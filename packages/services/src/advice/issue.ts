import { advisories, drafts, plantings, type Tx } from "@pith/db";
import { LANGUAGES } from "@pith/rules";
import { and, eq, inArray, sql } from "drizzle-orm";
import { type Ctx, nowOf, serverItself } from "../context.ts";
import { append, keepState } from "../ledger/append.ts";
import { issuedAnswer } from "../ledger/body.ts";
import { sealed } from "../ledger/rendered.ts";
import { sayAnswer } from "../saying/sayAnswer.ts";
import { afterIssued } from "./afterIssued.ts";
import type { Authority } from "./authority.ts";
import { thisDraft } from "./drafts.ts";
import type { Fresh } from "./freshAnswer.ts";
import { readNames } from "./names.ts";
import { expiryOf, standsOpen } from "./standing.ts";

/**
 * Issues what was just computed: the one way from a draft to an advice, whoever says yes. Advice, state, what it takes
 * the place of, and the ledger's entry are one transaction, the caller's.
 */
export async function issue(
  tx: Tx,
  ctx: Ctx,
  { draft, subject, answer }: Fresh,
  on: Authority,
): Promise<string> {
  const { officeId } = ctx;
  const { farmId } = draft;
  const id = globalThis.crypto.randomUUID();
  const issuedBy = on.agentId ?? serverItself.userId;
  const expiresAt = expiryOf(answer.window.to, subject.timeZone);
  const state = await keepState(tx, officeId, subject.state);
  // The farmer reads the names of their beds; the ledger holds no names, says them by number, and speaks English.
  const { reader } = (await readNames(tx, ctx, [farmId])).farm(farmId);
  const said = sayAnswer(answer, { language: "en", units: reader.units });
  const rendered = await sealed(answer, reader);
  await tx.delete(drafts).where(thisDraft(ctx, draft.id));
  const before = await openBefore(tx, ctx, answer);
  await afterIssued(tx, ctx, { id, farmId, draftId: draft.id, ruleId: answer.rule.id, answer, on });
  await append(
    tx,
    // Under whose name, which is not always who is here: the second agent's yes issues the first one's.
    { ...ctx, actor: { ...ctx.actor, userId: issuedBy } },
    {
      kind: "issued",
      farm: farmId,
      advisory: id,
      subject: answer.subject,
      rule: answer.rule,
      state,
      answer: issuedAnswer(answer),
      said,
      renderedSha256: rendered.sha256,
      evidence: answer.evidence,
      cautions: answer.cautions,
      expected: answer.expected,
      outcome: null,
      issuing: {
        languages: [...LANGUAGES],
        expiresAt,
        supersedes: before,
        confirmedBy: on.confirmedBy,
        standingOrder: on.standingOrder,
      },
      textSha256: on.note?.sha256 ?? null,
    },
    async ({ seq, at }) => {
      await tx.insert(advisories).values({
        officeId,
        id,
        farmId,
        ruleId: answer.rule.id,
        ruleVersion: answer.rule.version,
        subjectKind: answer.subject.kind,
        subjectId: answer.subject.id,
        plantingIds: subject.plantingIds,
        stateSha256: state,
        answer: { ...answer },
        rendered: rendered.stored,
        expected: answer.expected ? { ...answer.expected } : null,
        noteTextId: on.note?.id ?? null,
        issuedBy,
        confirmedBy: on.confirmedBy,
        standingOrderId: on.standingOrder?.id ?? null,
        standingOrderVersion: on.standingOrder?.version ?? null,
        issuedAt: at,
        expiresAt,
        ledgerSeq: seq,
      });
      if (answer.rule.id === "what-if") await letGo(tx, ctx, answer.subject.id);
      if (before.length === 0) return;
      await tx
        .update(advisories)
        .set({ status: "superseded", supersededBy: id, supersededAt: nowOf(ctx) })
        .where(and(eq(advisories.officeId, officeId), inArray(advisories.id, before)));
    },
  );
  return id;
}

/** What was tried and is issued now is no longer to be drafted. */
const letGo = (tx: Tx, { officeId }: Ctx, plantingId: string) =>
  tx
    .update(plantings)
    .set({ whatIf: null })
    .where(and(eq(plantings.officeId, officeId), eq(plantings.id, plantingId)));

/** Advice of the same rule for the same subject that still waits for an answer: the new one takes its place. What lapsed has none. */
async function openBefore(tx: Tx, ctx: Ctx, { rule, subject, decision }: Fresh["answer"]): Promise<string[]> {
  // Ash that was chosen still stands when a day is chosen after it: only another choice of the kind replaces it.
  const ofTheKind =
    rule.id === "what-if" ? sql`${advisories.answer} -> 'decision' ->> 'code' = ${decision.code}` : undefined;
  const rows = await tx
    .select({ id: advisories.id })
    .from(advisories)
    .where(
      and(
        eq(advisories.officeId, ctx.officeId),
        eq(advisories.ruleId, rule.id),
        eq(advisories.subjectId, subject.id),
        ofTheKind,
        standsOpen(ctx),
      ),
    )
    .orderBy(advisories.ledgerSeq);
  return rows.map(({ id }) => id);
}

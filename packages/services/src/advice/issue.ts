import { advisories, drafts, type Tx } from "@pith/db";
import { and, eq, inArray } from "drizzle-orm";
import { type Ctx, nowOf, serverItself } from "../context.ts";
import { append, keepState } from "../ledger/append.ts";
import { issuedAnswer } from "../ledger/body.ts";
import { LANGUAGES, sealed } from "../ledger/rendered.ts";
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
  // The farmer reads the names of their beds; the ledger holds no names and says them by number.
  const { reader } = (await readNames(tx, officeId, [farmId])).farm(farmId);
  const said = sayAnswer(answer, { ...reader, bedNames: undefined });
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
        languages: LANGUAGES,
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
      if (before.length === 0) return;
      await tx
        .update(advisories)
        .set({ status: "superseded", supersededBy: id, supersededAt: nowOf(ctx) })
        .where(and(eq(advisories.officeId, officeId), inArray(advisories.id, before)));
    },
  );
  return id;
}

/** Advice of the same rule for the same subject that still waits for an answer: the new one takes its place. What lapsed has none. */
async function openBefore(tx: Tx, ctx: Ctx, { rule, subject }: Fresh["answer"]): Promise<string[]> {
  const rows = await tx
    .select({ id: advisories.id })
    .from(advisories)
    .where(
      and(
        eq(advisories.officeId, ctx.officeId),
        eq(advisories.ruleId, rule.id),
        eq(advisories.subjectId, subject.id),
        standsOpen(ctx),
      ),
    )
    .orderBy(advisories.ledgerSeq);
  return rows.map(({ id }) => id);
}

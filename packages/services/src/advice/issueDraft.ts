import { type Advisory, adviceRoutes } from "@pith/contract";
import { advisories, drafts, type Tx } from "@pith/db";
import type { Answer } from "@pith/rules";
import { and, eq, inArray } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, nowOf, requireAgent } from "../context.ts";
import { draftRow, keyOf, writeDrafts } from "../drafts/adviseFarm.ts";
import { adviseSubjects } from "../drafts/adviseSubjects.ts";
import { isChanged } from "../drafts/isChanged.ts";
import { found, ServiceError } from "../errors.ts";
import { lockFarm } from "../farms/requireFarm.ts";
import { append, keepState } from "../ledger/append.ts";
import { issuedAnswer } from "../ledger/body.ts";
import { canonicalText, sha256Hex } from "../ledger/canonical.ts";
import { sealed } from "../ledger/rendered.ts";
import { sayAnswer } from "../saying/sayAnswer.ts";
import { readFacts } from "../states/facts.ts";
import { keepText } from "../texts.ts";
import { bodyOf } from "../wellFormed.ts";
import { readAdvisory } from "./advisories.ts";
import { thisDraft } from "./drafts.ts";
import { readNames } from "./names.ts";

type DraftRow = typeof drafts.$inferSelect;

/**
 * Issues a draft under the agent's name. The answer that is issued is computed here and now from what is known now; a
 * browser sends none. Where it no longer says what the agent read, nothing is issued: the draft is brought up to date
 * and the agent reads it again.
 */
export async function issueDraft(ctx: Ctx, draftId: string, raw: unknown): Promise<Advisory> {
  requireAgent(ctx);
  const { stateSha256, note } = bodyOf(adviceRoutes.issueDraft, raw);
  const outcome = await inOffice(ctx, async (tx) => {
    const [seen] = await tx.select({ farmId: drafts.farmId }).from(drafts).where(thisDraft(ctx, draftId));
    const farm = await lockFarm(tx, ctx, found(seen, "draft").farmId);
    // Read again under the lock: somebody may have issued or replaced it just now.
    const [row] = await tx.select().from(drafts).where(thisDraft(ctx, draftId));
    const draft = found(row, "draft");
    if (draft.kind !== "advice") {
      throw new ServiceError(
        "invalid",
        "Only advice can be issued; this draft says what is missing or to be fixed.",
      );
    }
    if (draft.stateSha256 !== stateSha256) return "changed";

    const facts = await readFacts(tx, { officeId: ctx.officeId, farmId: farm.id }, nowOf(ctx));
    const read = draft.answer as unknown as Answer;
    const subject = adviseSubjects(facts).find((s) => s.answers.some((a) => keyOf(a) === keyOf(read)));
    const answer = subject?.answers.find((a) => keyOf(a) === keyOf(read));
    if (!subject || !answer) {
      await tx.delete(drafts).where(thisDraft(ctx, draftId));
      return "changed";
    }
    if (answer.kind !== "advice" || isChanged(read, answer)) {
      const sha256 = await sha256Hex(canonicalText(subject.state));
      await writeDrafts(tx, [draftRow(ctx, farm.id, draftId, subject, answer, sha256)]);
      return "changed";
    }

    const id = globalThis.crypto.randomUUID();
    const state = await keepState(tx, ctx.officeId, subject.state);
    const text = await keepText(tx, ctx, farm.id, note);
    // The farmer reads the names of their beds; the ledger holds no names and says them by number.
    const { reader } = (await readNames(tx, ctx.officeId, [farm.id])).farm(farm.id);
    const said = sayAnswer(answer, { ...reader, bedNames: undefined });
    const rendered = await sealed(sayAnswer(answer, reader));
    await tx.delete(drafts).where(thisDraft(ctx, draftId));
    await supersede(tx, ctx, draft);
    await recordAudit(tx, ctx, {
      action: "advice.issue",
      entity: "advisories",
      entityId: id,
      detail: { draftId, ruleId: draft.ruleId },
    });
    await append(
      tx,
      ctx,
      {
        kind: "issued",
        farm: farm.id,
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
        textSha256: text?.sha256 ?? null,
      },
      async ({ seq, at }) => {
        await tx.insert(advisories).values({
          officeId: ctx.officeId,
          id,
          farmId: farm.id,
          ruleId: answer.rule.id,
          ruleVersion: answer.rule.version,
          subjectKind: answer.subject.kind,
          subjectId: answer.subject.id,
          plantingIds: subject.plantingIds,
          stateSha256: state,
          answer: { ...answer },
          rendered: rendered.stored,
          expected: answer.expected ? { ...answer.expected } : null,
          noteTextId: text?.id ?? null,
          issuedBy: ctx.actor.userId,
          issuedAt: at,
          ledgerSeq: seq,
        });
      },
    );
    return { id };
  });
  if (outcome === "changed") {
    throw new ServiceError(
      "conflict",
      "What is known has changed since you read this; read the draft again.",
    );
  }
  return readAdvisory(ctx, outcome.id);
}

/** The advice of the same rule for the same subject that still waits for an answer is replaced by the new one. */
async function supersede(tx: Tx, ctx: Ctx, { ruleId, subjectId }: DraftRow): Promise<void> {
  await tx
    .update(advisories)
    .set({ status: "superseded" })
    .where(
      and(
        eq(advisories.officeId, ctx.officeId),
        eq(advisories.ruleId, ruleId),
        eq(advisories.subjectId, subjectId),
        inArray(advisories.status, ["issued", "read"]),
      ),
    );
}

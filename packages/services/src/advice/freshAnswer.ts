import { drafts, type Tx } from "@pith/db";
import type { Answer } from "@pith/rules";
import { type Ctx, nowOf } from "../context.ts";
import { draftRow, writeDrafts } from "../drafts/adviseFarm.ts";
import { type Advised, adviseOnly } from "../drafts/adviseSubjects.ts";
import { isChanged } from "../drafts/isChanged.ts";
import { found, ServiceError } from "../errors.ts";
import { lockFarm } from "../farms/requireFarm.ts";
import { canonicalText, sha256Hex } from "../ledger/canonical.ts";
import { readFacts } from "../states/facts.ts";
import { thisDraft } from "./drafts.ts";

type DraftRow = typeof drafts.$inferSelect;
export type Advice = Extract<Answer, { kind: "advice" }>;

/** What a draft says, computed here and now. */
export interface Fresh {
  draft: DraftRow;
  subject: Advised;
  answer: Advice;
}

/** The draft, with its farm locked, if it is advice; nobody else issues or replaces it until the transaction ends. */
export async function lockDraft(tx: Tx, ctx: Ctx, draftId: string): Promise<DraftRow> {
  const [seen] = await tx.select({ farmId: drafts.farmId }).from(drafts).where(thisDraft(ctx, draftId));
  await lockFarm(tx, ctx, found(seen, "draft").farmId);
  // Read again under the lock: somebody may have issued or replaced it just now.
  const [row] = await tx.select().from(drafts).where(thisDraft(ctx, draftId));
  const draft = found(row, "draft");
  if (draft.kind !== "advice") {
    throw new ServiceError(
      "invalid",
      "Only advice can be issued; this draft says what is missing or to be fixed.",
    );
  }
  return draft;
}

/**
 * Computes a draft's answer again from what is known now; no browser sends one. Where it no longer says what was read,
 * the draft is brought up to date and nothing is to be issued.
 */
export async function freshAnswer(tx: Tx, ctx: Ctx, draft: DraftRow): Promise<Fresh | "changed"> {
  const { farmId } = draft;
  const facts = await readFacts(tx, { officeId: ctx.officeId, farmId }, nowOf(ctx));
  const read = draft.answer as unknown as Answer;
  const subject = adviseOnly(facts, read);
  const answer = subject?.answers[0];
  if (!subject || !answer) {
    await tx.delete(drafts).where(thisDraft(ctx, draft.id));
    return "changed";
  }
  if (answer.kind !== "advice" || isChanged(read, answer)) {
    const sha256 = await sha256Hex(canonicalText(subject.state));
    await writeDrafts(tx, [draftRow(ctx, farmId, draft.id, subject, answer, sha256)]);
    return "changed";
  }
  return { draft, subject, answer };
}

export const changedSince = () =>
  new ServiceError("conflict", "What is known has changed since you read this; read the draft again.");

import { advisories, answers, type ledgerEntries, type Tx, texts } from "@pith/db";
import { and, eq, inArray } from "drizzle-orm";
import { type EntryBody, issuedAnswer } from "./body.ts";
import { canonicalText, saltedHash } from "./canonical.ts";
import { sealHolds } from "./rendered.ts";

type Row = typeof ledgerEntries.$inferSelect;

/**
 * What people read stands in tables beside the chain. Gives, for a page of entries, a check of one entry against them:
 * the advice and its words, the answer, and the words a person wrote where they were not erased.
 */
export async function besideOf(tx: Tx, officeId: string, page: Row[]) {
  const seqs = page.map((row) => row.seq);
  const none = seqs.length === 0;
  const issued = none
    ? []
    : await tx
        .select()
        .from(advisories)
        .where(and(eq(advisories.officeId, officeId), inArray(advisories.ledgerSeq, seqs)));
  const answered = none
    ? []
    : await tx
        .select()
        .from(answers)
        .where(and(eq(answers.officeId, officeId), inArray(answers.ledgerSeq, seqs)));
  const withdrawnIds = page.flatMap((row) => (row.kind === "withdrawn" ? advisoryIn(row.body) : []));
  const withdrawn =
    withdrawnIds.length === 0
      ? []
      : await tx
          .select({ id: advisories.id, textId: advisories.withdrawnTextId, status: advisories.status })
          .from(advisories)
          .where(and(eq(advisories.officeId, officeId), inArray(advisories.id, withdrawnIds)));

  return async (row: Row): Promise<string | null> => {
    const body = JSON.parse(row.body) as EntryBody;
    if (body.kind === "issued") {
      const advisory = issued.find((a) => a.id === body.advisory);
      if (!advisory || advisory.ledgerSeq !== row.seq) return "the advice it issued is missing";
      const answer = issuedAnswer(advisory.answer as unknown as Parameters<typeof issuedAnswer>[0]);
      const same =
        canonicalText(answer) === canonicalText(body.answer) &&
        (await sealHolds(advisory.rendered, body.renderedSha256)) &&
        canonicalText(advisory.expected) === canonicalText(body.expected) &&
        advisory.farmId === body.farm &&
        advisory.subjectId === body.subject.id &&
        advisory.ruleId === body.rule.id &&
        advisory.stateSha256 === body.state &&
        advisory.issuedBy === body.actor &&
        advisory.issuedAt === body.at;
      if (!same) return "the advice that people read is not the one that was issued";
      return faultInText(tx, officeId, advisory.noteTextId, body.textSha256);
    }
    if (body.kind === "answered") {
      const answer = answered.find((a) => a.ledgerSeq === row.seq);
      if (!answer) return "the answer it records is missing";
      const same =
        answer.advisoryId === body.advisory &&
        answer.kind === body.outcome?.kind &&
        canonicalText(answer.actual) === canonicalText(body.outcome.actual) &&
        answer.answeredBy === body.actor &&
        answer.answeredAt === body.at;
      if (!same) return "the answer that people read is not the one that was given";
      return faultInText(tx, officeId, answer.reasonTextId, body.textSha256);
    }
    const advisory = withdrawn.find((a) => a.id === body.advisory);
    if (advisory?.status !== "withdrawn") return "the advice it withdrew does not stand as withdrawn";
    return faultInText(tx, officeId, advisory.textId, body.textSha256);
  };
}

async function faultInText(
  tx: Tx,
  officeId: string,
  textId: string | null,
  sha256: string | null,
): Promise<string | null> {
  if (textId === null) return sha256 === null ? null : "the words that belong to it are missing";
  const [text] = await tx
    .select()
    .from(texts)
    .where(and(eq(texts.officeId, officeId), eq(texts.id, textId)));
  if (!text) return "the words that belong to it are missing";
  if (text.salt === null || text.bytes === null) return null; // erased, as people may ask for
  return (await saltedHash(text.salt, text.bytes)) === sha256
    ? null
    : "the words that belong to it were changed";
}

function advisoryIn(body: string): string[] {
  try {
    const { advisory } = JSON.parse(body) as Partial<EntryBody>;
    return typeof advisory === "string" ? [advisory] : [];
  } catch {
    return [];
  }
}

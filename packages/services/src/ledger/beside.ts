import type { advisories, answers, texts } from "@pith/db";
import { faultInIssuing } from "../advice/issuing.ts";
import { type EntryBody, issuedAnswer } from "./body.ts";
import { canonicalText, saltedHash } from "./canonical.ts";
import { sealHolds } from "./rendered.ts";

/** What people read stands in tables beside the chain: the advice and its words, the answer, and what a person wrote. */
export interface BesideRows {
  /** Those that the entries issued or withdrew. */
  advisories: (typeof advisories.$inferSelect)[];
  answers: (typeof answers.$inferSelect)[];
  texts: Map<string, Pick<typeof texts.$inferSelect, "salt" | "bytes">>;
}

/** What in these tables does not say what an entry says. */
export async function faultBeside(
  { seq, body }: { seq: number; body: EntryBody },
  beside: BesideRows,
): Promise<string | null> {
  const text = (id: string | null) => faultInText(beside, id, body.textSha256);
  if (body.kind === "issued") {
    const advisory = beside.advisories.find((a) => a.id === body.advisory);
    if (!advisory || advisory.ledgerSeq !== seq) return "the advice it issued is missing";
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
    return faultInIssuing(body, advisory, beside.advisories) ?? text(advisory.noteTextId);
  }
  if (body.kind === "answered") {
    const answer = beside.answers.find((a) => a.ledgerSeq === seq);
    if (!answer) return "the answer it records is missing";
    const same =
      answer.advisoryId === body.advisory &&
      answer.kind === body.outcome?.kind &&
      canonicalText(answer.actual) === canonicalText(body.outcome.actual) &&
      answer.answeredBy === body.actor &&
      answer.answeredAt === body.at;
    if (!same) return "the answer that people read is not the one that was given";
    return text(answer.reasonTextId);
  }
  const advisory = beside.advisories.find((a) => a.id === body.advisory);
  if (advisory?.status !== "withdrawn") return "the advice it withdrew does not stand as withdrawn";
  return text(advisory.withdrawnTextId);
}

/**
 * A check of what others may have made up, and hashed and signed with a key of their own: where it has not even the form of
 * an entry, it is broken. For checks alone that read nothing but what is given to them, so that what fails is the content.
 */
export async function unlessUnreadable(check: () => Promise<string | null>): Promise<string | null> {
  try {
    return await check();
  } catch {
    return "its content cannot be read";
  }
}

/** Whether a person's words are those whose salted hash an entry holds, where they were not erased. */
export async function faultInText(
  { texts }: Pick<BesideRows, "texts">,
  textId: string | null,
  sha256: string | null,
): Promise<string | null> {
  if (textId === null) return sha256 === null ? null : "the words that belong to it are missing";
  const text = texts.get(textId);
  if (!text) return "the words that belong to it are missing";
  if (text.salt === null || text.bytes === null) return null; // erased, as people may ask for
  return (await saltedHash(text.salt, text.bytes)) === sha256
    ? null
    : "the words that belong to it were changed";
}

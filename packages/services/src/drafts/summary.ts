import { type Answer, localDay, type Message, type Reader, render } from "@pith/rules";
import { sayAnswer } from "../saying/sayAnswer.ts";

/** The little of an answer that the round shows: enough to say it in any reader's language and units. */
export type Summary =
  | { kind: "advice"; decision: Message; reason: Message; actByDay: string | null }
  | { kind: "needs-more" | "does-not-apply" | "refused"; answer: Answer };

/** @param timeZone of the site, for the day by which to act */
export function summaryOf(answer: Answer, timeZone: string): Summary {
  switch (answer.kind) {
    case "advice": {
      const { reason, actBy } = answer.stakes;
      const actByDay = actBy === null ? null : localDay(actBy, timeZone);
      return { kind: "advice", decision: answer.decision.text, reason, actByDay };
    }
    case "needs-more":
      return { kind: answer.kind, answer: { ...answer, working: [], estimated: [] } };
    default:
      return { kind: answer.kind, answer };
  }
}

/** The draft in one line, and why it stands where it stands in the round. */
export function saySummary(
  summary: Summary,
  { overdue, reader }: { overdue: boolean; reader: Reader },
): { headline: string; reason: string } {
  if (summary.kind !== "advice") {
    const said = sayAnswer(summary.answer, reader);
    const reason = said.missing[0]?.couldMove ?? said.problems[0]?.message ?? "";
    return { headline: said.decision, reason };
  }
  const headline = render(summary.decision, reader);
  const reason = render(summary.reason, reader);
  if (summary.actByDay === null) return { headline, reason };
  const key = overdue ? "said.round.overdue" : "said.round.by";
  return { headline, reason: render({ key, params: { reason, day: { day: summary.actByDay } } }, reader) };
}

import type { Answer, Table } from "../../core/rule.ts";
import { type Message, say } from "../../text/message.ts";
import type { Explored } from "../../whatIf/explore.ts";

/** What was reckoned about the choices, one sentence a row. */
export const reckonedTable = (spoken: Explored[]): Table => ({
  id: "reckoned",
  title: say("what-if.table.reckoned"),
  columns: [{ name: say("what-if.table.said") }],
  rows: spoken.flatMap(({ said }) => said.map((message) => [message])),
});

/** What each rule says as things are and as they are tried. */
export const rulesTable = (explored: Explored[]): Table => ({
  id: "rules",
  title: say("what-if.table.rules"),
  columns: [
    { name: say("what-if.table.question") },
    { name: say("what-if.table.as-is") },
    { name: say("what-if.table.tried") },
  ],
  rows: explored.map(({ rule, asIs, tried }) => [
    say(`what-if.rule.${rule.id}`),
    answerSaid(asIs),
    answerSaid(tried),
  ]),
});

/** An answer in one sentence; of one that lacks something, what to measure. */
export function answerSaid(answer: Answer | null): Message | null {
  switch (answer?.kind) {
    case "advice":
      return answer.decision.text;
    case "does-not-apply":
      return answer.reason;
    case "needs-more":
      return answer.missing[0]?.measure ?? null;
    case "refused":
      return say("what-if.not.refused");
    default:
      return null;
  }
}

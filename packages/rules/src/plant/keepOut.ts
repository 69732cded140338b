import { cautionsFor } from "../cautions/register.ts";
import { clockAt, localDay } from "../core/days.ts";
import type { AnswerBody } from "../core/rule.ts";
import type { State } from "../states/states.ts";
import { onDay, say } from "../text/message.ts";
import { sprayIntervals } from "./sprayIntervals.ts";

/**
 * Any advice on a bed that a spray's label closes: nobody is sent in before it opens. What is to be done and why stays as
 * the rule said it; the first step, the window, the day expected and a caution wait for the label.
 */
export function keepOut(answer: AnswerBody, state: State): AnswerBody {
  if (state.kind === "what-if") return keepOut(answer, state.planting);
  if (answer.kind !== "advice" || (state.kind !== "planting" && state.kind !== "bed")) return answer;
  if (!state.sprays?.length) return answer;
  const { timeZone } = state.site;
  const { reEntryUntil } = sprayIntervals(state.sprays, timeZone, state.asOf);
  if (reEntryUntil === null) return answer;
  const opens = localDay(reEntryUntil, timeZone);
  const { window, expected } = answer;
  const from = window.from === null || window.from < opens ? opens : window.from;
  return {
    ...answer,
    steps: [
      { text: say("closed.step", { day: onDay(opens), time: clockAt(reEntryUntil, timeZone).slice(11) }) },
      ...answer.steps,
    ],
    // A window that would close before the bed opens has no end that can be kept.
    window: { ...window, from, to: window.to !== null && window.to < from ? null : window.to },
    cautions: cautionsFor("bed-closed", ...answer.cautions.map((c) => c.id)),
    expected: expected && expected.date < opens ? { ...expected, date: opens } : expected,
  };
}

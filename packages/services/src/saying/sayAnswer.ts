import type { Said } from "@pith/contract";
import { type Answer, daysBetween, type Message, type Reader, render } from "@pith/rules";

/** Says an answer of the rules in a reader's language and units, in the order it is read. */
export function sayAnswer(answer: Answer, reader: Reader): Said {
  const say = (message: Message) => render(message, reader);
  const nothing = {
    language: reader.language,
    units: reader.units,
    steps: [],
    window: null,
    reason: null,
    cautions: [],
    limits: [],
    wouldChange: [],
    cases: [],
    missing: [],
    problems: [],
  };
  switch (answer.kind) {
    case "advice":
      return {
        ...nothing,
        decision: say(answer.decision.text),
        steps: answer.steps.map((step) => say(step.text)),
        window: sayWindow(answer.window, reader),
        reason: say(answer.stakes.reason),
        cautions: answer.cautions.map(({ id, version, severity, text }) => ({
          id,
          version,
          severity,
          text: text[reader.language],
        })),
        limits: answer.limits.map(say),
        wouldChange: answer.wouldChange.map(say),
        cases: answer.cases.map((c) => ({
          when: say(c.when),
          decision: say(c.decision),
          steps: c.steps.map((step) => say(step.text)),
        })),
      };
    case "needs-more": {
      const missing = answer.missing.map((m) => ({
        field: m.field,
        measure: say(m.measure),
        couldMove: say(m.couldMove),
      }));
      const measure = missing[0]?.measure ?? "";
      return { ...nothing, decision: say({ key: "said.needs-more", params: { measure } }), missing };
    }
    case "does-not-apply":
      return { ...nothing, decision: say(answer.reason) };
    case "refused":
      return {
        ...nothing,
        decision: say({ key: "said.refused", params: {} }),
        problems: answer.problems,
      };
  }
}

/** Of a window longer than this many days, day and month alone do not tell which ones. */
const HALF_A_YEAR = 183;

function sayWindow(
  { from, to, endsBy }: { from: string | null; to: string | null; endsBy: Message },
  reader: Reader,
): string {
  const ends = render(endsBy, reader);
  if (from === null && to === null) return ends;
  const key =
    from === null
      ? "said.window.to"
      : to === null
        ? "said.window.from"
        : from === to
          ? "said.window.on"
          : daysBetween(from, to) > HALF_A_YEAR
            ? "said.window.between-years"
            : "said.window.between";
  return render(
    {
      key,
      params: {
        ...(from && { from: { day: from }, fromYear: from.slice(0, 4) }),
        ...(to && { to: { day: to }, toYear: to.slice(0, 4) }),
        endsBy: ends,
      },
    },
    reader,
  );
}

import { cautionsFor } from "../../cautions/register.ts";
import { addDays } from "../../core/days.ts";
import type { AnswerBody, Rule } from "../../core/rule.ts";
import { Working } from "../../core/working.ts";
import { GRADES } from "../../evidence/types.ts";
import type { WhatIfState } from "../../states/states.ts";
import { CHOICE_NAMES, type WhatIf } from "../../states/whatIf.ts";
import { onDay, say } from "../../text/message.ts";
import { differing, type Explored, RULE_OF, whatIfOf } from "../../whatIf/explore.ts";
import { todayOf, wantedDay } from "../../whatIf/subjects.ts";
import { chosenText, codeOf, expectedOf } from "./chosen.ts";
import { reckonedTable, rulesTable } from "./tables.ts";

/** What the agent chose, beside what the rules say of it. */
export const whatIfRule: Rule<"what-if"> = {
  id: "what-if",
  version: 1,
  question: "What did the agent choose, and what do the rules say of it?",
  subject: "what-if",
  needs: ["what the agent tried on the planting"],
  run: runWhatIf,
};

/** A choice made on one week's numbers holds a week; the round comes again (common practice). */
const HOLDS_DAYS = 7;

/**
 * The choice is the agent's, so nothing here decides: it says what is to be done, what each rule holds of it as things are
 * and as they are tried, and carries every caution that any of them would.
 */
function runWhatIf({ planting, valve, choices }: WhatIfState): AnswerBody {
  const desk = whatIfOf({ planting, valve });
  const tried = differing(choices, desk.starting);
  const [first, ...others] = CHOICE_NAMES.filter((name) => tried[name] !== undefined);
  if (first === undefined) return { kind: "does-not-apply", reason: say("what-if.not.nothing") };
  const barred = [first, ...others].map((name) => desk.starting[name].not).find((not) => not !== null);
  if (barred) return { kind: "does-not-apply", reason: barred };
  if (tried.setOutOn !== undefined && tried.setOutOn < todayOf(planting)) {
    return { kind: "does-not-apply", reason: say("what-if.not.past", { day: onDay(tried.setOutOn) }) };
  }
  const explored = desk.explore(tried);
  const spoken = spokenOf(explored, tried);
  const working = new Working();
  for (const { working: lines, estimated } of spoken) working.include({ working: lines, estimated });
  const from = tried.setOutOn ?? (first === "cover" ? wantedDay(planting) : todayOf(planting));
  return {
    kind: "advice",
    decision: { code: codeOf(first), text: chosenText(planting, first, tried, desk.starting) },
    steps: [
      // The day and its cover are one deed, said in one sentence.
      ...others.flatMap((name) =>
        name === "cover" && first === "setOutOn"
          ? []
          : [{ text: chosenText(planting, name, tried, desk.starting) }],
      ),
      ...(tried.withheldPct === undefined ? [] : waterSteps(explored)),
    ],
    window: { from, to: addDays(from, HOLDS_DAYS), endsBy: say("what-if.ends") },
    stakes: { harm: 0, reason: say("what-if.stakes"), actBy: null },
    working: working.lines,
    estimated: working.estimated,
    evidence: [...new Set(spoken.flatMap(({ tried: t }) => (t?.kind === "advice" ? t.evidence : [])))],
    grade: weakest(spoken),
    limits: [say("what-if.limit.choice")],
    cautions: cautionsFor(...new Set(spoken.flatMap(({ cautions }) => cautions.map((c) => c.id)))),
    wouldChange: [say("what-if.change.numbers")],
    cases: [],
    expected: expectedOf(planting, tried),
    amounts: amountsOf(tried),
    charts: spoken.flatMap(({ charts }) => charts),
    table: [reckonedTable(spoken), rulesTable(explored.filter((e) => e.changed || spoken.includes(e)))],
  };
}

/** The rules that speak about what was tried, each once. */
function spokenOf(explored: Explored[], tried: WhatIf): Explored[] {
  const ids = new Set(CHOICE_NAMES.filter((name) => tried[name] !== undefined).map((name) => RULE_OF[name]));
  return explored.filter(({ rule }) => ids.has(rule.id));
}

/** What to do at the valve today, with the water that is left. */
function waterSteps(explored: Explored[]) {
  const water = explored.find(({ rule }) => rule.id === "irrigate")?.tried;
  return water?.kind === "advice" ? [{ text: water.decision.text }] : [];
}

const weakest = (spoken: Explored[]) =>
  GRADES.findLast((grade) => spoken.some(({ tried }) => tried?.kind === "advice" && tried.grade === grade)) ??
  "practice";

const amountsOf = (tried: WhatIf): Record<string, number> =>
  Object.fromEntries(
    Object.entries(tried).flatMap(([name, value]) => (typeof value === "number" ? [[name, value]] : [])),
  );

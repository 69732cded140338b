import { cautionsFor } from "../../cautions/register.ts";
import type { AdviceBody, AnswerBody, Rule } from "../../core/rule.ts";
import { Working } from "../../core/working.ts";
import { lowerBound } from "../../layout/bound.ts";
import { checkStands, standsOf } from "../../layout/checkPlan.ts";
import { modelOf } from "../../layout/model.ts";
import type { BedPlanState } from "../../states/states.ts";
import { type Message, measure, say } from "../../text/message.ts";
import { bestMove } from "./hint.ts";
import type { Looked } from "./looked.ts";
import { missingOf, unknownLimits } from "./missing.ts";
import { placementSteps, placementTable } from "./placements.ts";
import { writeWorking } from "./working.ts";

/** Who stands with whom, and does the plan hold? */
export const companyRule: Rule<"bed-plan"> = {
  id: "company",
  version: 1,
  question: "Who stands with whom, and does the plan hold?",
  subject: "bed-plan",
  needs: [
    "beds with length, width and rows; where each lies, and which valve waters it",
    "what stood in each bed in the last five seasons",
    "plantings with plants, spacing, rows, height and first pick",
    "which are to be kept short of water, and from which seed is kept",
  ],
  run,
};

/** What a broken plan may cost, and one that only could be better (common practice). */
const HARM = { broken: 0.1, better: 0.01 } as const;
/** A move that saves less is not worth a word (common practice). */
const WORTH_A_MOVE = 1;

function run(state: BedPlanState): AnswerBody {
  if (state.blocks.length === 0) return { kind: "does-not-apply", reason: say("company.not.no-plantings") };
  if (state.beds.length === 0) return { kind: "does-not-apply", reason: say("company.not.no-beds") };
  const m = modelOf(state);
  const stands = standsOf(m);
  const check = checkStands(m, stands);
  const hint = check.hard.length === 0 ? bestMove(m, stands, check) : undefined;
  const looked: Looked = { m, stands, check, bound: lowerBound(m), hint };
  const w = new Working();
  writeWorking(w, looked);
  const missing = missingOf(looked);
  if (missing.length > 0) return { kind: "needs-more", missing, working: w.lines, estimated: w.estimated };
  return adviceFrom(looked, w);
}

function adviceFrom(l: Looked, w: Working): AdviceBody {
  const { check, hint } = l;
  const code = codeOf(l);
  const broken = check.hard.length;
  return {
    kind: "advice",
    decision: {
      code,
      text: say(`company.decision.${code}`, {
        n: broken,
        plantings: l.m.blocks.length,
        points: Math.round(check.total),
        saves: Math.round(hint?.saves ?? 0),
      }),
    },
    steps: [
      ...check.hard.map((b) => b.text),
      ...(hint ? [hint.text] : []),
      ...(code === "unplaced" ? [say("company.step.propose")] : []),
      ...placementSteps(l),
    ].map((text) => ({ text })),
    window: {
      from: `${l.m.state.season}-01-01`,
      to: `${l.m.state.season}-12-31`,
      endsBy: say("company.ends"),
    },
    stakes: {
      harm: broken > 0 ? HARM.broken : HARM.better,
      reason: say(broken > 0 ? "company.stakes.broken" : "company.stakes.better"),
      actBy: null,
    },
    working: w.lines,
    estimated: w.estimated,
    evidence: EVIDENCE,
    grade: "practice",
    limits: limitsOf(l),
    cautions: cautionsFor(),
    wouldChange: [say("company.change.move"), say("company.change.proposal")],
    cases: [],
    expected: null,
    amounts: { broken, points: check.total, bound: l.bound.total },
    charts: [],
    table: [placementTable(l)],
  };
}

const EVIDENCE = [
  "company.isolation-home",
  "company.isolation-commercial",
  "company.isolation-other",
  "company.species",
  "company.microbes",
  "company.kin",
  "company.intercrop",
  "company.shade",
  "company.water",
  "company.weights",
  "company.search",
  "company.map",
];

function codeOf({ check, hint }: Looked): string {
  if (check.hard.length > 0) return check.hard.every((b) => b.kind === "unplaced") ? "unplaced" : "breaks";
  return hint && hint.saves >= WORTH_A_MOVE ? "better" : "fits";
}

function limitsOf(l: Looked): Message[] {
  const { state } = l.m;
  const saved = state.blocks.some((b) => b.saveSeed);
  return [
    say("company.limit.microbes"),
    say("company.limit.rotation"),
    say("company.limit.weights"),
    ...(l.m.shadow.northPerM === 0 ? [] : [say("company.limit.noon")]),
    ...(saved
      ? [say("company.limit.isolation", { sweet: measure(45.72, "m"), hot: measure(182.88, "m") })]
      : []),
    ...unknownLimits(l),
  ];
}

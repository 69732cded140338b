import { cautionsFor } from "../../cautions/register.ts";
import type { AdviceBody } from "../../core/rule.ts";
import { Working } from "../../core/working.ts";
import type { TrialState } from "../../states/states.ts";
import { say } from "../../text/message.ts";
import { analyse } from "../../trials/analyse.ts";
import { gradeOf } from "../../trials/grade.ts";
import type { ResponseValues } from "../../trials/readValues.ts";
import { sentenceOf } from "../../trials/sentence.ts";
import { judge, readFamilies } from "../../trials/verdict.ts";
import { chartsOf } from "./charts.ts";
import type { Judged } from "./judged.ts";
import { limitsOf } from "./limits.ts";
import { stepsOf } from "./steps.ts";
import { anovaTableOf, lackingTable, leftOutTable, meansTable, pairsTable } from "./tables.ts";
import { writeAnalysis } from "./working.ts";

/** As soon as a response is all in: what it says. The first that can be judged gives the decision. */
export function analysedAdvice(
  { trial }: TrialState,
  read: readonly ResponseValues[],
  today: string,
): AdviceBody {
  const complete = read.filter((r) => r.lacking.length === 0);
  const outcomes = complete.map((values) => ({ values, result: analyse(trial, values) }));
  const judged = outcomes.flatMap(({ result }): Judged[] =>
    typeof result === "string" ? [] : [{ analysis: result, verdict: judge(result, trial) }],
  );
  const w = new Working();
  for (const { analysis } of judged) writeAnalysis(w, trial, analysis);
  const [main] = judged;
  const [failed] = outcomes.flatMap(({ values, result }) =>
    typeof result === "string" ? [{ values, why: result }] : [],
  );
  const lacking = read.filter((r) => r.lacking.length > 0);
  return {
    kind: "advice",
    decision: main
      ? { code: main.verdict.code, text: sentenceOf(trial, main.analysis, main.verdict) }
      : {
          code: "cannot-judge",
          text: say(`trial.decision.cannot-judge.${failed?.why ?? "too-few"}`, {
            what: { word: `trial.what.${(failed?.values ?? read[0])?.response.kind ?? "other"}` },
          }),
        },
    steps: stepsOf(trial, judged, lacking).map((text) => ({ text })),
    window: { from: today, to: null, endsBy: say("trial.ends.analysed") },
    stakes: { harm: 0, reason: say("trial.stakes.analysed"), actBy: null },
    working: w.lines,
    estimated: w.estimated,
    evidence: ["trial.variance", "trial.all-pairs", "trial.by-lot", "trial.one-season", "trial.missing"],
    grade: main ? gradeOf(main.analysis, main.verdict) : "weak",
    limits: limitsOf(trial, judged, complete),
    cautions: cautionsFor(),
    wouldChange: ["season", "blocks", "numbers"].map((what) => say(`trial.change.${what}`)),
    cases: [],
    expected: null,
    amounts: main?.verdict.code === "differ" ? { difference: main.verdict.main.difference } : {},
    charts: judged.flatMap(({ analysis }) => chartsOf(trial, analysis, readFamilies(analysis, trial))),
    table: [
      ...judged.flatMap(({ analysis }) => [
        meansTable(trial, analysis),
        ...pairsTable(trial, analysis, readFamilies(analysis, trial)),
        anovaTableOf(trial, analysis),
      ]),
      ...complete.flatMap((values) => leftOutTable(trial, values)),
      ...(lacking.length > 0 ? [lackingTable(trial, lacking)] : []),
    ],
  };
}

import type { ResponseKind, Trial, TrialDesign } from "../../states/trial.ts";
import { type Message, say } from "../../text/message.ts";
import type { ResponseValues } from "../../trials/readValues.ts";
import { SCOVILLE_FACTOR } from "../../trials/sentence.ts";
import { interplayOf, readFamilies } from "../../trials/verdict.ts";
import type { Judged } from "./judged.ts";

/** Below so many degrees of freedom a picture of residuals shows only gross faults (cp). */
const FEW_DF = 10;
const SHARES: ResponseKind[] = ["lodged-pct", "culls-pct"];

/** Where what was found does not hold, from the farm down to the plot that was lost. */
export function limitsOf(
  trial: Trial,
  judged: readonly Judged[],
  complete: readonly ResponseValues[],
): Message[] {
  const [main] = judged;
  const years = complete.flatMap((r) => r.years ?? []);
  const kinds = complete.map((r) => r.response.kind);
  return [
    say(new Set(years).size > 1 ? "trial.limit.seasons" : "trial.limit.one-farm"),
    ...complete.flatMap((values) => leftOutSaid(trial, values)),
    ...(complete.some((r) => lostUnevenly(trial, r)) ? [say("trial.limit.lost-unevenly")] : []),
    ...(main ? interplaySaid(trial, main) : []),
    ...(judged.length > 1
      ? [say("trial.limit.many-responses", { count: judged.length, oneIn: Math.round(1 / trial.alpha) })]
      : []),
    ...(main ? lsdOnlySaid(trial, main) : []),
    ...(kinds.some((kind) => SHARES.includes(kind)) ? [say("trial.limit.shares")] : []),
    ...(main && main.analysis.residual.df < FEW_DF ? [say("trial.limit.few")] : []),
    ...(kinds.includes("capsaicinoids-mg-per-kg")
      ? [say("trial.limit.scoville", { factor: SCOVILLE_FACTOR })]
      : []),
  ];
}

const LEFT_OUT: Record<TrialDesign, string> = {
  "completely-randomised": "trial.limit.left-out-alone",
  "randomised-blocks": "trial.limit.left-out",
  "factorial-blocks": "trial.limit.left-out",
  "paired-strips": "trial.limit.left-out-pairs",
};

function leftOutSaid({ design }: Trial, { leftOut, response }: ResponseValues): Message[] {
  if (leftOut.length === 0) return [];
  return [say(LEFT_OUT[design], { count: leftOut.length, what: { word: `trial.what.${response.kind}` } })];
}

/** Two plots more of one level than of another, lost with their plants, are no accident to be passed over (cp). */
function lostUnevenly({ factors }: Trial, { leftOut }: ResponseValues): boolean {
  const lost = leftOut.filter((l) => l.why === "plants-lost");
  return factors.some(({ levels }, f) => {
    const counts = levels.map(({ id }) => lost.filter(({ plot }) => plot.levels[f] === id).length);
    return Math.max(...counts) - Math.min(...counts) >= 2;
  });
}

function interplaySaid(trial: Trial, { analysis }: Judged): Message[] {
  if (trial.factors.length === 1) return [];
  const whole = analysis.families.some((f) => f.factors.length > 1);
  if (!whole) return [say("trial.limit.confounded")];
  return interplayOf(analysis, trial.alpha).length > 0 ? [say("trial.limit.interplay")] : [];
}

function lsdOnlySaid(trial: Trial, { analysis }: Judged): Message[] {
  const count = readFamilies(analysis, trial)
    .flatMap((f) => f.pairs)
    .filter((p) => Math.abs(p.difference) > p.lsd && Math.abs(p.difference) <= p.hsd).length;
  return count > 0 ? [say("trial.limit.lsd-only", { count })] : [];
}

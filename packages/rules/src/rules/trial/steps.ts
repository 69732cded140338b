import { blocksForPower } from "../../quantities/statistics/blocksForPower.ts";
import type { Trial } from "../../states/trial.ts";
import { type Message, say } from "../../text/message.ts";
import { POWER } from "../../trials/analyse.ts";
import type { ResponseValues } from "../../trials/readValues.ts";
import { differenceSaid, sentenceOf, whoOf } from "../../trials/sentence.ts";
import type { Judged } from "./judged.ts";

/** A residual of so many residual standard deviations is looked at again (cp). */
const FAR = 2.5;

/** The other sentences, what to keep, what to look at again, and that one season is not two. */
export function stepsOf(
  trial: Trial,
  judged: readonly Judged[],
  lacking: readonly ResponseValues[],
): Message[] {
  const [main, ...others] = judged;
  return [
    ...(main?.verdict.code === "differ"
      ? main.verdict.others.map((found) => differenceSaid(trial, main.analysis, found))
      : []),
    ...(main ? betterSaid(trial, main) : []),
    ...others.map(({ analysis, verdict }) => sentenceOf(trial, analysis, verdict)),
    ...judged.flatMap(({ analysis }) =>
      analysis.residuals
        .filter(({ residual }) => Math.abs(residual) > FAR * analysis.residual.sd)
        .map(({ plot }) => say("trial.step.look-again", { plot: plot.number })),
    ),
    ...(main?.verdict.code === "none-seen" ? largerSaid(trial, main) : []),
    ...(lacking.length > 0 ? [say("trial.step.still-lacking", { count: lacking.length })] : []),
    say("trial.step.repeat"),
  ];
}

function betterSaid(trial: Trial, { analysis, verdict }: Judged): Message[] {
  const { better } = analysis.values.response;
  if (verdict.code !== "differ" || better === "neither") return [];
  const { family, more, less } = verdict.main;
  return [
    say(`trial.step.${better}-is-better`, {
      ...whoOf(trial, family.means[more]?.levels ?? [], "x"),
      ...whoOf(trial, family.means[less]?.levels ?? [], "y"),
    }),
  ];
}

/** Blocks that would find half the difference; only their ratio to the spread of the plots counts. */
function largerSaid(trial: Trial, { analysis, verdict }: Judged): Message[] {
  if (trial.design === "factorial-blocks" || verdict.code === "differ") return [];
  const cv = 10;
  const differencePct = (cv * verdict.family.detectable) / 2 / analysis.residual.sd;
  const { blocks } = blocksForPower({
    cv,
    differencePct,
    treatments: verdict.family.means.length,
    alpha: trial.alpha,
    power: POWER,
  });
  return [say("trial.step.larger", { blocks })];
}

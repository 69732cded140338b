import { SCOVILLE_FACTORS } from "../quantities/soil/scoville.ts";
import type { ResponseKind, Trial } from "../states/trial.ts";
import { type MeasureUnit, type Message, measure, type Param, say, treatmentNamed } from "../text/message.ts";
import type { Analysis, Compared } from "./analyse.ts";
import { nthLevel } from "./combinations.ts";
import type { Asked } from "./model.ts";
import type { Difference, Verdict } from "./verdict.ts";

/** Units of what is measured; counts and whatever else have none. */
const UNITS: Partial<Record<ResponseKind, MeasureUnit>> = {
  "marketable-kg": "kg",
  "total-kg": "kg",
  "mean-fruit-g": "g",
  "first-pick-day": "days",
  "coloured-kg": "kg",
  "height-cm": "cm",
  "lodged-pct": "pct",
  "culls-pct": "pct",
  "capsaicinoids-mg-per-kg": "mg/kg",
};
export const unitOf = (kind: ResponseKind): MeasureUnit | undefined => UNITS[kind];

/** An amount of what is measured, in words: with its unit, or three digits of a plain number. */
export function amountOf(kind: ResponseKind, value: number): Param {
  const unit = UNITS[kind];
  return unit ? measure(value, unit) : Number(value.toPrecision(3));
}

/** A level, or a combination of up to three, as parameters `x1` to `x3` and how many there are. */
export function whoOf(trial: Trial, levels: Asked, name: string): Record<string, Param> {
  const named = levels.flatMap((id, f) =>
    id === null ? [] : [treatmentNamed(id, nthLevel(trial.factors, f, id))],
  );
  const [first = "", second = "", third = ""] = named;
  return {
    [`${name}n`]: String(named.length),
    [`${name}1`]: first,
    [`${name}2`]: second,
    [`${name}3`]: third,
  };
}

/** How much stands behind it, which every sentence carries: plots, confidence, season. */
export function standingOf(trial: Trial, { values }: Analysis): Record<string, Param> {
  const [from, to] = values.years ?? [0, 0];
  return {
    plots: values.rows.length,
    confidence: Number((100 * (1 - trial.alpha)).toPrecision(3)),
    season: from === to ? String(from) : `${from}-${to}`,
  };
}

/** One sentence that a grower can repeat: which, by how much, how surely, from how much, where and when. */
export function sentenceOf(trial: Trial, analysis: Analysis, verdict: Verdict): Message {
  if (verdict.code === "differ") return differenceSaid(trial, analysis, verdict.main);
  const { kind } = analysis.values.response;
  const { family } = verdict;
  if (verdict.code === "differ-somewhere")
    return say("trial.decision.differ-somewhere", {
      ...standingOf(trial, analysis),
      what: { word: `trial.what.${kind}` },
    });
  return noneSaid(trial, analysis, family);
}

/** Of one pair that differs. */
export function differenceSaid(trial: Trial, analysis: Analysis, found: Difference): Message {
  const { kind } = analysis.values.response;
  const levelsOf = (place: number) => found.family.means[place]?.levels ?? [];
  return say(`trial.decision.differ.${kind}`, {
    ...whoOf(trial, levelsOf(found.more), "x"),
    ...whoOf(trial, levelsOf(found.less), "y"),
    by: amountOf(kind, found.difference),
    low: amountOf(kind, Math.max(0, found.low)),
    high: amountOf(kind, found.high),
    ...standingOf(trial, analysis),
  });
}

/** That none was seen is not that there is none: how large a one this trial would rather not have missed stands beside it. */
function noneSaid(trial: Trial, analysis: Analysis, family: Compared): Message {
  const { kind } = analysis.values.response;
  return say("trial.decision.none-seen", {
    what: { word: `trial.what.${kind}` },
    missed: amountOf(kind, family.detectable),
    ...standingOf(trial, analysis),
  });
}

/** Scoville units of a laboratory's sum of capsaicinoids, with the factor that is named beside them. */
export const SCOVILLE_FACTOR = "16.1";
export const scovilleOf = (mgPerKg: number): number => SCOVILLE_FACTORS[SCOVILLE_FACTOR].main * mgPerKg;

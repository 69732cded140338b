import normalQuantile from "@stdlib/stats-base-dists-normal-quantile";
import { type AnovaLine, anovaTable } from "../quantities/statistics/anova.ts";
import {
  detectableDifference,
  lengthOf,
  type Pair,
  pairsOf,
  spreadOf,
} from "../quantities/statistics/comparisons.ts";
import { tTwoSided } from "../quantities/statistics/distributions.ts";
import { type PairedT, pairedT } from "../quantities/statistics/pairedT.ts";
import type { Cell } from "../quantities/statistics/sequentialFit.ts";
import { typeTwo } from "../quantities/statistics/typeTwo.ts";
import type { Plot, Trial } from "../states/trial.ts";
import { type Asked, type Family, familiesOf, termsOf } from "./model.ts";
import type { Measured, ResponseValues } from "./readValues.ts";

interface Mean {
  levels: Asked;
  plots: number;
  /** By least squares, as if every block had every treatment; with all plots in, the plain mean. */
  mean: number;
  low: number;
  high: number;
}

/** Means of one family, and each against each. */
export interface Compared extends Family {
  means: Mean[];
  pairs: Pair[];
  /** What this trial, at the spread it turned out to have, would find eight times in ten. */
  detectable: number;
}

export interface Analysis {
  values: ResponseValues;
  table: AnovaLine[];
  residual: { df: number; sd: number };
  families: Compared[];
  /** Chance of an interaction as large where there is none, for each that the layout can tell. */
  interactions: { source: string; p: number }[];
  residuals: { plot: Plot; fitted: number; residual: number; normalScore: number }[];
  /** Paired strips: what the differences of the pairs say, which is the same test. */
  paired: PairedT | null;
}

/** Why a response that is all in still cannot be judged. */
type NotPossible = "too-few" | "no-spread" | "level-lost" | "cannot-tell";

/** Means for `power` in ten trials; the usual share (cp). */
export const POWER = 0.8;
/** More means than this are not set against each other two by two. */
const MEANS_AT_MOST = 36;
/** A residual this small beside the whole is rounding. */
const NOTHING = 1e-18;

/**
 * Analysis of variance of one response by the design's model, means with intervals, and all pairs. Plots that are missing
 * stay out: the model is fitted to those that are in, and sums of squares are each after all other terms that do not hold
 * them.
 */
export function analyse(trial: Trial, values: ResponseValues): Analysis | NotPossible {
  const { rows } = values;
  const lost = trial.factors.some((factor, f) =>
    factor.levels.some((level) => !rows.some(({ plot }) => plot.levels[f] === level.id)),
  );
  if (lost) return rows.length < trial.factors.length + 2 ? "too-few" : "level-lost";
  const families = familiesOf(trial.factors);
  const asked = families.flatMap((family) => family.asked);
  const y = rows.map((row) => row.value);
  const fit = typeTwo(y, termsOf(trial, rows, asked), asked.length);
  // The studentised range begins at two degrees of freedom.
  if (fit.residual.df < 2) return "too-few";
  if (!(fit.residual.ss > NOTHING * Math.max(fit.total.ss, Number.MIN_VALUE))) return "no-spread";
  const residual = { df: fit.residual.df, sd: Math.sqrt(fit.residual.ss / fit.residual.df) };
  const cells = fit.cells.slice();
  const compared = families.flatMap((family) => {
    const own = cells.splice(0, family.asked.length);
    const known = own.flatMap((cell) => cell ?? []);
    return known.length === own.length ? [compare(family, known, rows, residual, trial.alpha)] : [];
  });
  if (compared.length < trial.factors.length) return "cannot-tell";
  const table = anovaTable(fit);
  return {
    values,
    table,
    residual,
    families: compared,
    interactions: table.flatMap(({ source, p }) =>
      source.includes(":") && p !== null ? [{ source, p }] : [],
    ),
    residuals: residualsOf(rows, fit.residuals),
    paired: trial.design === "paired-strips" ? pairsTested(trial, rows) : null,
  };
}

function compare(
  family: Family,
  cells: readonly Cell[],
  rows: readonly Measured[],
  residual: Analysis["residual"],
  alpha: number,
): Compared {
  const t = tTwoSided(alpha, residual.df);
  const pairs = cells.length <= MEANS_AT_MOST ? pairsOf(cells, residual, alpha) : [];
  const widest = Math.max(
    ...cells.flatMap((a, i) => cells.slice(i + 1).map((b) => residual.sd * spreadOf(a, b))),
  );
  return {
    ...family,
    means: cells.map(({ mean, weights }, i) => {
      const reach = t * residual.sd * lengthOf(weights);
      const levels = family.asked[i] ?? [];
      const plots = rows.filter(({ plot }) => levels.every((id, f) => id === null || plot.levels[f] === id));
      return { levels, plots: plots.length, mean, low: mean - reach, high: mean + reach };
    }),
    pairs,
    detectable: detectableDifference(widest, cells.length - 1, residual.df, alpha, POWER),
  };
}

/**
 * Each residual beside the one that a normal sample of that size would have at its rank (Blom 1958).
 *
 *   z = normal quantile of (rank - 3/8) / (n + 1/4)
 */
function residualsOf(rows: readonly Measured[], residuals: readonly number[]): Analysis["residuals"] {
  const order = residuals.map((_, i) => i).sort((a, b) => (residuals[a] ?? 0) - (residuals[b] ?? 0) || a - b);
  const rank = new Map(order.map((i, place) => [i, place + 1]));
  return rows.map(({ plot, value }, i) => ({
    plot,
    residual: residuals[i] ?? 0,
    fitted: value - (residuals[i] ?? 0),
    normalScore: normalQuantile(((rank.get(i) ?? 1) - 0.375) / (rows.length + 0.25), 0, 1),
  }));
}

/** The second level less the first, pair by pair. */
function pairsTested(trial: Trial, rows: readonly Measured[]): PairedT {
  const [now = "", other = ""] = trial.factors[0]?.levels.map((l) => l.id) ?? [];
  const of = (level: string) =>
    rows
      .filter(({ plot }) => plot.levels[0] === level)
      .sort((a, b) => (a.plot.block ?? 0) - (b.plot.block ?? 0))
      .map((row) => row.value);
  return pairedT(of(other), of(now), 1 - trial.alpha);
}

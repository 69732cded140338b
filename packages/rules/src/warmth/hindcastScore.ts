/** One probability that was given, and what came. */
export interface ProbabilityCase {
  /** 0 to 1. */
  forecast: number;
  happened: boolean;
  year: number;
}

/** The cases whose forecast fell into one tenth of the scale. */
export interface ReliabilityBin {
  from: number;
  to: number;
  n: number;
  meanForecast: number;
  observedShare: number;
}

/** How good a set of probabilities was. */
export interface ProbabilityScore {
  n: number;
  years: number;
  /** Mean squared error of the probabilities: 0 is perfect. Brier 1950, in the form for one event. */
  brier: number;
  /** The flat forecast that is to be beaten: the share of all cases in which it happened. */
  baseRate: number;
  /** Brier score of the flat forecast, base rate × (1 - base rate). */
  uncertainty: number;
  /** How far each bin's forecasts lie from what came; less is better. */
  reliability: number;
  /** How far the bins' outcomes lie apart from the base rate; more is better. */
  resolution: number;
  /** What gathering different forecasts in one bin leaves over. */
  withinBins: number;
  /** 1 - brier / uncertainty: 1 perfect, 0 no better than the base rate; null where it always or never happened. */
  skill: number | null;
  /** Standard error of `skill` by leaving out one year after the other; null where that leaves nothing to score. */
  skillStandardError: number | null;
  bins: ReliabilityBin[];
}

const BINS = 10;

const binOf = (forecast: number): number => Math.min(BINS - 1, Math.floor(forecast * BINS));
const outcome = (c: ProbabilityCase): number => (c.happened ? 1 : 0);
const mean = (values: readonly number[]): number => values.reduce((sum, v) => sum + v, 0) / values.length;

/**
 * Scores probabilities against what came.
 *
 *   BS = mean (f - o)²        BSS = 1 - BS / UNC        UNC = ō (1 - ō)
 *   BS = REL - RES + UNC + W
 *   REL = Σ n_k (f̄_k - ō_k)² / n        RES = Σ n_k (ō_k - ō)² / n
 *   W   = Σ Σ [(f - f̄_k)² - 2 (f - f̄_k)(o - ō_k)] / n        k the tenth of the scale into which f falls
 *
 * W is 0 where all forecasts of a bin are the same, and the rest is then Murphy's partition.
 *
 * The skill is against a base rate that knows the years it is asked about, which favours the base rate a little. Cases
 * of one year are not independent (their windows overlap), so the error of the skill leaves out whole years (jackknife).
 *
 * Sources: Brier 1950; Murphy 1973; within-bin terms: Stephenson, Coelho and Jolliffe 2008.
 *
 * @param cases at least one
 */
export function scoreProbabilities(cases: readonly ProbabilityCase[]): ProbabilityScore {
  const n = cases.length;
  const brier = mean(cases.map((c) => (c.forecast - outcome(c)) ** 2));
  const baseRate = mean(cases.map(outcome));
  const uncertainty = baseRate * (1 - baseRate);
  let reliability = 0;
  let resolution = 0;
  let withinBins = 0;
  const bins: ReliabilityBin[] = [];
  for (let k = 0; k < BINS; k++) {
    const own = cases.filter((c) => binOf(c.forecast) === k);
    if (own.length === 0) continue;
    const meanForecast = mean(own.map((c) => c.forecast));
    const observedShare = mean(own.map(outcome));
    reliability += (own.length * (meanForecast - observedShare) ** 2) / n;
    resolution += (own.length * (observedShare - baseRate) ** 2) / n;
    for (const c of own) {
      const off = c.forecast - meanForecast;
      withinBins += (off ** 2 - 2 * off * (outcome(c) - observedShare)) / n;
    }
    bins.push({ from: k / BINS, to: (k + 1) / BINS, n: own.length, meanForecast, observedShare });
  }
  const years = [...new Set(cases.map((c) => c.year))];
  return {
    n,
    years: years.length,
    brier,
    baseRate,
    uncertainty,
    reliability,
    resolution,
    withinBins,
    skill: skillOf(cases),
    skillStandardError: jackknifeError(years.map((year) => skillOf(cases.filter((c) => c.year !== year)))),
    bins,
  };
}

function skillOf(cases: readonly ProbabilityCase[]): number | null {
  const baseRate = mean(cases.map(outcome));
  const uncertainty = baseRate * (1 - baseRate);
  return uncertainty > 0 ? 1 - mean(cases.map((c) => (c.forecast - outcome(c)) ** 2)) / uncertainty : null;
}

/** √[(m - 1) / m Σ (s_j - s̄)²] over the scores that leave one of m years out. */
function jackknifeError(scores: readonly (number | null)[]): number | null {
  const known = scores.filter((s) => s !== null);
  if (known.length < scores.length || known.length < 2) return null;
  const middle = mean(known);
  const m = known.length;
  return Math.sqrt(((m - 1) / m) * known.reduce((sum, s) => sum + (s - middle) ** 2, 0));
}

import { deviations, dot, sumOfSquares } from "./sums.ts";

/** One term of a linear model: its name and, for each row, the level of each of its factors. */
export interface Term {
  source: string;
  /** One label per row for each factor; more than one factor is an interaction. */
  factors: readonly (readonly string[])[];
}

export interface Fit {
  terms: { source: string; df: number; ss: number }[];
  /** Terms that earlier ones already hold, such as an interaction confounded with blocks. */
  aliased: string[];
  residual: { df: number; ss: number };
  total: { df: number; ss: number };
}

/** A column this much shorter after what came before is taken out holds nothing new. */
const ALIASED_BELOW = 1e-8;

/**
 * Sums of squares of the terms in their order, each after those before it (Fisher 1925; for balanced data the order is
 * of no consequence). Contrast columns are made orthogonal twice by modified Gram-Schmidt; the response is centred
 * about its first value, so that constant leading digits cost nothing.
 */
export function sequentialFit(values: readonly number[], terms: readonly Term[]): Fit {
  const y = deviations(values);
  const totalSs = sumOfSquares(y);
  const basis: number[][] = [];
  let rest = y;
  const fitted: Fit["terms"] = [];
  const aliased: string[] = [];
  for (const term of terms) {
    let df = 0;
    const parts: number[] = [];
    for (const column of contrasts(term.factors)) {
      const centred = deviations(column);
      const direction = newDirection(centred, basis);
      if (!direction) continue;
      basis.push(direction);
      const length = dot(direction, rest);
      parts.push(length * length);
      rest = rest.map((v, i) => v - length * (direction[i] ?? 0));
      df += 1;
    }
    if (df === 0) aliased.push(term.source);
    else fitted.push({ source: term.source, df, ss: parts.reduce((a, b) => a + b, 0) });
  }
  return {
    terms: fitted,
    aliased,
    residual: { df: values.length - 1 - basis.length, ss: sumOfSquares(rest) },
    total: { df: values.length - 1, ss: totalSs },
  };
}

/** The part of a column that no earlier direction holds, at unit length; null where there is none. */
function newDirection(column: readonly number[], basis: readonly number[][]): number[] | null {
  const before = Math.sqrt(sumOfSquares(column));
  let left = [...column];
  for (let pass = 0; pass < 2; pass++) {
    for (const direction of basis) {
      const length = dot(direction, left);
      left = left.map((v, i) => v - length * (direction[i] ?? 0));
    }
  }
  const after = Math.sqrt(sumOfSquares(left));
  if (!(after > ALIASED_BELOW * before)) return null;
  return left.map((v) => v / after);
}

/** Columns that compare each level with the last; for an interaction, the products of its factors' columns. */
function contrasts(factors: readonly (readonly string[])[]): number[][] {
  return factors
    .map(mainContrasts)
    .reduce((products, columns) =>
      products.flatMap((a) => columns.map((b) => a.map((v, i) => v * (b[i] ?? 0)))),
    );
}

function mainContrasts(labels: readonly string[]): number[][] {
  const levels = [...new Set(labels)];
  const last = levels.at(-1);
  return levels
    .slice(0, -1)
    .map((level) => labels.map((label) => (label === level ? 1 : label === last ? -1 : 0)));
}

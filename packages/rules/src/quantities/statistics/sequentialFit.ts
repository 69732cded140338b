import { deviations, dot, stableMean, sumOfSquares } from "./sums.ts";

/** One term of a linear model: its name and, for each row, the level of each of its factors. */
export interface Term {
  source: string;
  /**
   * One label per row for each factor; more than one factor is an interaction. Labels beyond the rows are those of the
   * cells to be estimated, where null means the plain average over the factor's levels.
   */
  factors: readonly (readonly (string | null)[])[];
}

/** An estimate of the model: its value, and what the values' chance errors put into it, each direction for itself. */
export interface Cell {
  mean: number;
  /** Standard error = residual sd x length; of a difference, residual sd x length of the difference. */
  weights: readonly number[];
}

export interface Fit {
  terms: { source: string; df: number; ss: number }[];
  /** Terms that earlier ones already hold, such as an interaction confounded with blocks. */
  aliased: string[];
  residual: { df: number; ss: number };
  total: { df: number; ss: number };
  /** What the model leaves of each value. */
  residuals: number[];
  /** As many as were asked for; null where the layout cannot tell. */
  cells: (Cell | null)[];
}

/** A column this much shorter after what came before is taken out holds nothing new. */
const ALIASED_BELOW = 1e-8;

/** A column of the model over the rows, and its value in each cell that is to be estimated. */
interface Column {
  rows: number[];
  cells: number[];
}

/**
 * Sums of squares of the terms in their order, each after those before it (Fisher 1925; for balanced data the order is
 * of no consequence), and least-squares estimates. Contrast columns are made orthogonal twice by modified Gram-Schmidt; the
 * response is centred about its first value, so that constant leading digits cost nothing. What is done to a column is
 * done to its values in the cells too, so that estimates and their errors come without a matrix to invert.
 *
 * @param cells how many labels of each factor, after those of the rows, are of cells to be estimated
 */
export function sequentialFit(values: readonly number[], terms: readonly Term[], cells = 0): Fit {
  const y = deviations(values);
  const totalSs = sumOfSquares(y);
  const basis: Column[] = [];
  let rest = y;
  const fitted: Fit["terms"] = [];
  const aliased: string[] = [];
  const estimates = Array.from({ length: cells }, () => stableMean(values));
  const told = estimates.map(() => true);
  for (const term of terms) {
    let df = 0;
    const parts: number[] = [];
    for (const column of contrasts(term.factors, values.length)) {
      const { direction, unseen } = newDirection(centred(column), basis);
      if (!direction) {
        unseen.forEach((v, c) => {
          if (Math.abs(v) > ALIASED_BELOW) told[c] = false;
        });
        continue;
      }
      basis.push(direction);
      const length = dot(direction.rows, rest);
      parts.push(length * length);
      rest = rest.map((v, i) => v - length * (direction.rows[i] ?? 0));
      direction.cells.forEach((v, c) => {
        estimates[c] = (estimates[c] ?? 0) + length * v;
      });
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
    residuals: rest,
    cells: estimates.map((mean, c) =>
      told[c]
        ? { mean, weights: [1 / Math.sqrt(values.length), ...basis.map((column) => column.cells[c] ?? 0)] }
        : null,
    ),
  };
}

function centred({ rows, cells }: Column): Column {
  const mean = stableMean(rows);
  return { rows: deviations(rows), cells: cells.map((v) => v - mean) };
}

/** The part of a column that no earlier direction holds, at unit length; none, and what cells would need of it, where there is none. */
function newDirection(
  column: Column,
  basis: readonly Column[],
): { direction: Column | null; unseen: readonly number[] } {
  const before = Math.sqrt(sumOfSquares(column.rows));
  let rows = [...column.rows];
  let cells = [...column.cells];
  for (let pass = 0; pass < 2; pass++) {
    for (const direction of basis) {
      const length = dot(direction.rows, rows);
      rows = rows.map((v, i) => v - length * (direction.rows[i] ?? 0));
      cells = cells.map((v, c) => v - length * (direction.cells[c] ?? 0));
    }
  }
  const after = Math.sqrt(sumOfSquares(rows));
  if (!(after > ALIASED_BELOW * before)) return { direction: null, unseen: cells };
  return {
    direction: { rows: rows.map((v) => v / after), cells: cells.map((v) => v / after) },
    unseen: [],
  };
}

/** Columns that compare each level with the last; for an interaction, the products of its factors' columns. */
function contrasts(factors: Term["factors"], rows: number): Column[] {
  return factors
    .map((labels) => mainContrasts(labels, rows))
    .reduce((products, columns) =>
      products.flatMap((a) => columns.map((b) => a.map((v, i) => v * (b[i] ?? 0)))),
    )
    .map((column) => ({ rows: column.slice(0, rows), cells: column.slice(rows) }));
}

function mainContrasts(labels: readonly (string | null)[], rows: number): number[][] {
  const levels = [...new Set(labels.slice(0, rows))];
  const last = levels.at(-1);
  return levels
    .slice(0, -1)
    .map((level) => labels.map((label) => (label === level ? 1 : label === last ? -1 : 0)));
}

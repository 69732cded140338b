import { type Model, solve } from "yalps";

/** One unknown, never below zero. */
export interface Column {
  cost: number;
  /** Whole numbers only, as bags. */
  whole?: boolean;
}

/** One condition: the sum of `coefficient x unknown` is at least or at most `limit`. */
export interface Row {
  terms: readonly (readonly [column: number, coefficient: number])[];
  sense: "least" | "most";
  limit: number;
}

/** Least cost within the rows. */
export interface Programme<R extends Row = Row> {
  columns: readonly Column[];
  rows: readonly R[];
}

export type Solved =
  | { status: "optimal"; x: number[]; cost: number }
  /** The search for whole numbers was stopped; `x` is the best it had, if any. */
  | { status: "stopped"; x: number[] | null }
  | { status: "infeasible" }
  | { status: "unbounded" };

/** The solver counts what is nearer to zero as zero; with rows and columns in scale that is far below what a scale shows. */
const PRECISION = 1e-9;
/** One pass more changes little on programmes of this kind. */
const SCALING_PASSES = 3;

/**
 * Solves a linear programme, with whole numbers where columns ask for them (Dantzig's simplex, branch and bound). No clock is
 * read: the search for whole numbers stops by count alone, so that the same programme gives the same answer everywhere.
 */
export function solveProgramme(programme: Programme, mostBranches = 20_000): Solved {
  const scale = scalesOf(programme);
  for (const order of [forwards, backwards]) {
    const model = modelOf(programme, scale, order);
    const { status, variables } = solve(model, {
      precision: PRECISION,
      timeout: Number.POSITIVE_INFINITY,
      maxIterations: mostBranches,
    });
    if (status === "infeasible" || status === "unbounded") return { status };
    if (status === "optimal" || status === "timedout") {
      const x = valuesOf(programme, scale, variables);
      if (status === "optimal") return { status, x, cost: costOf(programme, x) };
      return { status: "stopped", x: variables.length > 0 ? x : null };
    }
    // "cycled": the pivots ran in a ring; another order of the columns breaks it.
  }
  return { status: "stopped", x: null };
}

export const costOf = ({ columns }: Programme, x: readonly number[]): number =>
  columns.reduce((sum, column, j) => sum + column.cost * (x[j] ?? 0), 0);

export const leftSide = (row: Row, x: readonly number[]): number =>
  row.terms.reduce((sum, [j, a]) => sum + a * (x[j] ?? 0), 0);

const forwards = (columns: number[]): number[] => columns;
const backwards = (columns: number[]): number[] => columns.toReversed();

interface Scales {
  row: number[];
  column: number[];
  cost: number;
}

function modelOf(
  { columns, rows }: Programme,
  scale: Scales,
  order: (columns: number[]) => number[],
): Model<number, number> {
  const terms: [number, number][][] = columns.map((c, j) => [
    [COST, at(scale.column, j) * (c.cost / scale.cost)],
  ]);
  rows.forEach((row, i) => {
    for (const [j, a] of row.terms) terms[j]?.push([i, a * at(scale.column, j) * at(scale.row, i)]);
  });
  return {
    direction: "minimize",
    objective: COST,
    constraints: rows.map(({ sense, limit }, i) => {
      const scaled = limit * at(scale.row, i);
      return [i, sense === "least" ? { min: scaled } : { max: scaled }] as const;
    }),
    variables: order(columns.map((_, j) => j)).map((j) => [j, terms[j] ?? []] as const),
    integers: columns.flatMap((c, j) => (c.whole ? [j] : [])),
  };
}

const COST = -1;
const at = (values: readonly number[], i: number): number => values[i] ?? 1;

function valuesOf(
  { columns }: Programme,
  scale: Scales,
  found: readonly (readonly [number, number])[],
): number[] {
  const x = new Array<number>(columns.length).fill(0);
  for (const [j, value] of found) {
    const real = value * at(scale.column, j);
    x[j] = columns[j]?.whole ? Math.round(real) : Math.max(0, real);
  }
  return x;
}

/** Geometric scaling: brings the coefficients near to one, because the solver's zero is absolute. Whole columns keep their unit. */
function scalesOf({ columns, rows }: Programme): Scales {
  const row = rows.map(() => 1);
  const column = columns.map(() => 1);
  for (let pass = 0; pass < SCALING_PASSES; pass++) {
    rows.forEach((r, i) => {
      const span = new Span();
      for (const [j, a] of r.terms) span.meet(a * at(column, j));
      row[i] = span.inverse();
    });
    const spans = columns.map(() => new Span());
    rows.forEach((r, i) => {
      for (const [j, a] of r.terms) spans[j]?.meet(a * at(row, i));
    });
    spans.forEach((span, j) => {
      if (!columns[j]?.whole) column[j] = span.inverse();
    });
  }
  const dearest = Math.max(0, ...columns.map((c, j) => Math.abs(c.cost) * at(column, j)));
  return { row, column, cost: dearest > 0 ? dearest : 1 };
}

/** Smallest and largest size met. */
class Span {
  private low = Number.POSITIVE_INFINITY;
  private high = 0;

  meet(value: number): void {
    const size = Math.abs(value);
    if (size === 0) return;
    if (size < this.low) this.low = size;
    if (size > this.high) this.high = size;
  }

  inverse(): number {
    return this.high > 0 ? 1 / Math.sqrt(this.low * this.high) : 1;
  }
}

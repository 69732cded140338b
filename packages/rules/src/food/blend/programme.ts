import { type Model, solve } from "yalps";

/** One unknown, never below zero. */
export interface Column {
  cost: number;
  /** Whole numbers only, as bags. */
  whole?: boolean;
  /** An amount of it that is about one: for the solver's eyes alone. */
  unit?: number;
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

/**
 * What is nearer to zero counts as zero; with rows and columns in scale that is far below what a balance shows. Finer than this, the
 * rounding of a few hundred pivots is taken for a condition that cannot be met.
 */
const PRECISION = 1e-8;
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

/**
 * Brings the coefficients near to one, because the solver's zero is absolute: columns by their unit, rows by their largest. Whole
 * columns keep their own unit, so what is bought by the bag is best counted in bags everywhere.
 */
function scalesOf({ columns, rows }: Programme): Scales {
  const column = columns.map((c) => (c.whole ? 1 : (c.unit ?? 1)));
  const row = rows.map((r) => inverse(Math.max(0, ...r.terms.map(([j, a]) => Math.abs(a * at(column, j))))));
  const cost = Math.max(0, ...columns.map((c, j) => Math.abs(c.cost) * at(column, j)));
  return { row, column, cost: cost > 0 ? cost : 1 };
}

const inverse = (largest: number): number => (largest > 0 ? 1 / largest : 1);

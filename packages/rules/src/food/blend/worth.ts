import { type Programme, type Row, solveProgramme } from "./programme.ts";

/** What one unit of each row's limit moves the least cost (never below zero), and what one unit of each column would add to it. */
export interface Worths {
  row: number[];
  column: number[];
  /** Least cost as the rows' worth reckons it: the same as the programme's own, which proves both. */
  cost: number;
}

const sign = (row: Row) => (row.sense === "least" ? 1 : -1);

/**
 * Solves the dual programme: the prices of the rows that leave no column a gain. Whole columns are taken as divisible; fix them
 * first where that is not meant. Undefined where the programme cannot be met.
 *
 * Source: Dantzig (1963), Linear Programming and Extensions, chapter 6 (duality).
 */
export function worthsOf(programme: Programme): Worths | undefined {
  const { columns, rows } = programme;
  const terms: [number, number][][] = columns.map(() => []);
  rows.forEach((row, i) => {
    for (const [j, a] of row.terms) terms[j]?.push([i, sign(row) * a]);
  });
  const unit = (j: number) => columns[j]?.unit ?? 1;
  const dearest = Math.max(0, ...columns.map((c, j) => c.cost * unit(j)));
  const solved = solveProgramme({
    columns: rows.map((row) => {
      const largest = Math.max(0, ...row.terms.map(([j, a]) => Math.abs(a * unit(j))));
      return { cost: -sign(row) * row.limit, unit: (dearest || 1) / (largest || 1) };
    }),
    rows: columns.map(({ cost }, j) => ({ terms: terms[j] ?? [], sense: "most", limit: cost })),
  });
  if (solved.status !== "optimal") return undefined;
  const y = solved.x;
  return {
    row: y,
    column: columns.map(
      ({ cost }, j) => cost - (terms[j] ?? []).reduce((sum, [i, a]) => sum + a * (y[i] ?? 0), 0),
    ),
    cost: -solved.cost,
  };
}

/** Rounding of a limit from which all was taken off. */
const SAID = 1e-9;

/** The same programme with some columns fixed: what they bring is taken off the limits. Rows that then say nothing go. */
export function fixed<R extends Row>(
  programme: Programme<R>,
  values: ReadonlyMap<number, number>,
): { programme: Programme<R>; free: number[] } {
  const free = programme.columns.flatMap((_, j) => (values.has(j) ? [] : [j]));
  const place = new Map(free.map((j, k) => [j, k]));
  const rows = programme.rows.flatMap((row) => {
    let { limit } = row;
    const terms: [number, number][] = [];
    for (const [j, a] of row.terms) {
      const k = place.get(j);
      if (k === undefined) limit -= a * (values.get(j) ?? 0);
      else terms.push([k, a]);
    }
    const kept = terms.length === 0 && (row.sense === "most" ? limit >= -SAID : limit <= SAID);
    return kept ? [] : [{ ...row, terms, limit }];
  });
  return {
    programme: { columns: free.map((j) => programme.columns[j] ?? { cost: 0 }), rows },
    free,
  };
}

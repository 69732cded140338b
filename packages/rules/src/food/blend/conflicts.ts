import { loosened } from "./cheapest.ts";
import type { Model, NamedRow } from "./model.ts";
import { conditionOf } from "./names.ts";
import type { Condition, Relaxation } from "./plan.ts";
import { type Column, type Programme, type Row, solveProgramme } from "./programme.ts";
import { worthsOf } from "./worth.ts";

/** Enough to act on; the next ones show when these are mended. */
const MOST_CONFLICTS = 5;
/** A change smaller than this share of a limit is the solver's rounding. */
const NO_CHANGE = 1e-6;

export interface Unmet {
  conflicts: Condition[][];
  /** The same sets as rows of the programme. */
  conflictRows: NamedRow[][];
  relaxation: Relaxation[];
}

/**
 * What is in the way of a programme that cannot be met: sets of conditions that cannot all hold, each so small that without any one
 * of them the others can; and the least total relative change of limits with which everything fits.
 *
 * Sets: from the rows with worth in the softened programme, by the deletion filter. Source: Chinneck, J.W., Dravnieks, E.W. (1991),
 * ORSA Journal on Computing 3:157-168.
 */
export function explainUnmet(model: Model): Unmet {
  const soft = softened(model);
  const solved = solveProgramme(soft.programme);
  if (solved.status !== "optimal") return { conflicts: [], conflictRows: [], relaxation: [] };
  const relaxation = soft.gives.flatMap(({ row, j }) => {
    const by = solved.x[j] ?? 0;
    return by > NO_CHANGE * row.limit ? [{ condition: conditionOf(model, row.means), by }] : [];
  });
  const worths = worthsOf(soft.programme);
  let suspects = model.rows.filter((_, i) => (worths?.row[i] ?? 0) > 0);
  const conflictRows: NamedRow[][] = [];
  while (conflictRows.length < MOST_CONFLICTS && !canHold(model, suspects)) {
    const set = filtered(model, suspects);
    conflictRows.push(set);
    const floor = set.find((row) => row.means.kind === "floor");
    if (!floor) break;
    suspects = suspects.filter((row) => row !== floor);
  }
  const conflicts = conflictRows.map((set) => set.map((row) => conditionOf(model, row.means)));
  return { conflicts, conflictRows, relaxation };
}

/** Every limit that has a size may give, at a cost of its change as a share of itself. */
function softened(model: Model): { programme: Programme; gives: { row: NamedRow; j: number }[] } {
  const columns: Column[] = loosened(model).columns.map(({ unit }) => ({
    cost: 0,
    ...(unit !== undefined && { unit }),
  }));
  const gives: { row: NamedRow; j: number }[] = [];
  const rows: Row[] = model.rows.map((row) => {
    // What is printed on a label does not give.
    if (row.limit <= 0 || row.means.kind === "label") return row;
    const j = columns.length;
    columns.push({ cost: 1 / row.limit, unit: row.limit });
    gives.push({ row, j });
    return { ...row, terms: [...row.terms, [j, row.sense === "least" ? 1 : -1] as const] };
  });
  return { programme: { columns, rows }, gives };
}

/** Takes rows out one by one; one without which the rest can hold is needed for the conflict and stays. */
function filtered(model: Model, suspects: readonly NamedRow[]): NamedRow[] {
  let set = [...suspects];
  for (const row of suspects) {
    const without = set.filter((r) => r !== row);
    if (!canHold(model, without)) set = without;
  }
  return set;
}

/** Whether these rows alone can all be kept. */
function canHold(model: Model, rows: readonly NamedRow[]): boolean {
  const columns = loosened(model).columns.map((c) => ({ ...c, cost: 0 }));
  return solveProgramme({ columns, rows }).status !== "infeasible";
}

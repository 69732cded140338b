import { type Draw, drawFrom, shuffled } from "../layout/random.ts";

/** What one input's uncertainty does to an answer. */
export interface Effect {
  /** By output: what knowing the input is expected to take off its variance, 0 to 1. */
  varianceShare: number[];
  /** Share of pairs of draws that differ in this input alone whose decisions differ. */
  decisionChanges: number;
}

/** What one run of the rule gives: numbers, NaN where it has none, and a decision; null where it refused what was drawn. */
export interface Run {
  outputs: number[];
  decision: string | null;
}

export interface Effects {
  /** Every run in which all inputs are drawn at once. */
  all: Run[];
  byInput: Effect[];
  runs: number;
}

/**
 * First-order effects of inputs on a function, by pairs of draws.
 *
 *   S_i = mean( (f(B) - f0) (f(A with B's i-th input) - f(A)) ) / V,  within 0 and
 *   T_i = mean( (f(A) - f(A with B's i-th input))² ) / 2V
 *
 * S_i is the expected share of variance that goes when input i is known. A and B are two sets of independent draws; V and f0
 * are the variance and mean over both. An input that changes nothing has T_i = 0 and so S_i = 0 exactly, whatever the
 * others do. What all others together do to the variance is at most the sum of their T, so S_i is at least one less that sum:
 * an input that alone moves the answer has 1 and no noise. Source: Saltelli et al. 2010, Table 2 (b) for S_i, Jansen's (f)
 * for T_i.
 *
 * Each input has draws of its own from the seed and its name, in equal layers (Latin hypercube), so that another input beside
 * it moves none of them.
 */
export function effectsOf(
  names: string[],
  run: (quantiles: number[]) => Run,
  { seed, draws }: { seed: number; draws: number },
): Effects {
  const columns = names.map((name) => {
    const draw = drawFrom(seedOf(seed, name));
    return { a: layered(draws, draw), b: layered(draws, draw) };
  });
  const rowOf = (set: "a" | "b", row: number) => columns.map((c) => c[set][row] as number);
  const rows = Array.from({ length: draws }, (_, row) => row);
  const a = rows.map((row) => run(rowOf("a", row)));
  const b = rows.map((row) => run(rowOf("b", row)));
  const mixedByInput = columns.map((column, i) =>
    rows.map((row) => run(rowOf("a", row).with(i, column.b[row] as number))),
  );
  const outputs = a[0]?.outputs.length ?? 0;
  const shares = Array.from({ length: outputs }, (_, k) => sharesOf(a, b, mixedByInput, k));
  const byInput = mixedByInput.map((mixed, i) => ({
    varianceShare: shares.map((s) => s[i] as number),
    decisionChanges: decisionChanges(a, mixed),
  }));
  return { all: [...a, ...b], byInput, runs: draws * (names.length + 2) };
}

/** Share of pairs, of those in which neither was refused, whose decisions differ. */
function decisionChanges(a: Run[], mixed: Run[]): number {
  const pairs = a.map((run, row) => [run.decision, mixed[row]?.decision ?? null] as const);
  const decided = pairs.filter(([one, other]) => one !== null && other !== null);
  const changed = decided.filter(([one, other]) => one !== other).length;
  return decided.length === 0 ? 0 : changed / decided.length;
}

/** First-order shares of one output, input by input. */
function sharesOf(a: Run[], b: Run[], mixedByInput: Run[][], k: number): number[] {
  const estimates = mixedByInput.map((mixed) => estimate(valuesOf(a, k), valuesOf(b, k), valuesOf(mixed, k)));
  const totals = estimates.reduce((sum, e) => sum + e.total, 0);
  return estimates.map(({ first, total, varies }) => {
    if (!varies || total === 0) return 0;
    const least = 1 - (totals - total);
    return Math.min(1, Math.max(Math.min(first, total), least, 0));
  });
}

const valuesOf = (runs: Run[], k: number): number[] => runs.map((r) => r.outputs[k] as number);

function estimate(
  a: number[],
  b: number[],
  mixed: number[],
): { first: number; total: number; varies: boolean } {
  const known = a.flatMap((fa, row) => {
    const [fb, fm] = [b[row] as number, mixed[row] as number];
    return Number.isNaN(fa + fb + fm) ? [] : [{ fa, fb, fm }];
  });
  const both = known.flatMap(({ fa, fb }) => [fa, fb]);
  const f0 = mean(both);
  const variance = mean(both.map((f) => (f - f0) ** 2));
  if (!(variance > 0)) return { first: 0, total: 0, varies: false };
  const first = mean(known.map(({ fa, fb, fm }) => (fb - f0) * (fm - fa))) / variance;
  const total = mean(known.map(({ fa, fm }) => (fa - fm) ** 2)) / (2 * variance);
  return { first, total, varies: true };
}

const mean = (values: number[]): number => values.reduce((sum, v) => sum + v, 0) / values.length;

/** One draw in each of `n` equal layers of 0 to 1, in any order. */
const layered = (n: number, draw: Draw): number[] =>
  shuffled(
    Array.from({ length: n }, (_, layer) => (layer + draw()) / n),
    draw,
  );

/** A seed of an input's own, by FNV-1a over its name. */
function seedOf(seed: number, name: string): number {
  let hash = 0x811c9dc5 ^ seed;
  for (let i = 0; i < name.length; i++) hash = Math.imul(hash ^ name.charCodeAt(i), 0x01000193);
  return hash | 0;
}

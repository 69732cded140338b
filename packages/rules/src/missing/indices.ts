import { type Draw, drawFrom, shuffled } from "../layout/random.ts";

/** What one input's uncertainty does to an answer. */
export interface Effect {
  /** By output: what knowing the input is expected to take off its variance, 0 to 1. */
  varianceShare: number[];
  /** Share of pairs of draws that differ in this input alone whose decisions differ. */
  decisionChanges: number;
}

/** What one run of the rule gives: numbers, NaN where it has none, and a decision. */
export interface Run {
  outputs: number[];
  decision: string;
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
 * others do. Source: Saltelli et al. 2010, Table 2 (b) for S_i, Jansen's (f) for T_i.
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
  const byInput = names.map((_, i) => {
    const mixed = rows.map((row) =>
      run(rowOf("a", row).with(i, (columns[i] as (typeof columns)[number]).b[row] as number)),
    );
    return effect(a, b, mixed);
  });
  return { all: [...a, ...b], byInput, runs: draws * (names.length + 2) };
}

function effect(a: Run[], b: Run[], mixed: Run[]): Effect {
  const outputs = a[0]?.outputs.length ?? 0;
  const changed = a.filter((run, row) => run.decision !== mixed[row]?.decision).length;
  return {
    varianceShare: Array.from({ length: outputs }, (_, k) =>
      firstOrder(valuesOf(a, k), valuesOf(b, k), valuesOf(mixed, k)),
    ),
    decisionChanges: a.length === 0 ? 0 : changed / a.length,
  };
}

const valuesOf = (runs: Run[], k: number): number[] => runs.map((r) => r.outputs[k] as number);

function firstOrder(a: number[], b: number[], mixed: number[]): number {
  const known = a.flatMap((fa, row) => {
    const [fb, fm] = [b[row] as number, mixed[row] as number];
    return Number.isNaN(fa + fb + fm) ? [] : [{ fa, fb, fm }];
  });
  const both = known.flatMap(({ fa, fb }) => [fa, fb]);
  const f0 = mean(both);
  const variance = mean(both.map((f) => (f - f0) ** 2));
  if (!(variance > 0)) return 0;
  const first = mean(known.map(({ fa, fb, fm }) => (fb - f0) * (fm - fa))) / variance;
  const total = mean(known.map(({ fa, fm }) => (fa - fm) ** 2)) / (2 * variance);
  return Math.min(1, total, Math.max(0, first));
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

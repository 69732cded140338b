import type { BedPlanState } from "../states/states.ts";
import { Arrangement, UNPLACED_POINTS } from "./arrangement.ts";
import { lowerBound } from "./bound.ts";
import { standsOf } from "./checkPlan.ts";
import { fillInOrder } from "./firstFit.ts";
import { type ModelBlock, modelOf } from "./model.ts";
import { exchange, isSmall, placesFor, placeWell, relocate, ruinAndRefill, type Step } from "./moves.ts";
import { STEP_M } from "./positions.ts";
import { type Draw, drawFrom } from "./random.ts";
import type { Stand } from "./stand.ts";

export interface SearchOptions {
  /** The same seed and plan give the same proposal. */
  seed: number;
  iterations?: number;
  /** How finely places along a bed are tried. */
  stepM?: number;
}

/** How far a search has come, for whoever waits for it. */
export interface Progress {
  iteration: number;
  iterations: number;
  /** Points of the best plan so far, and blocks it leaves without a bed. */
  best: number;
  unplaced: number;
  /** No plan with every block placed comes below this. */
  bound: number;
}

export interface Proposal {
  state: BedPlanState;
  total: number;
  bound: number;
  /** Blocks for which no place was found that keeps every hard rule. Ids. */
  unplaced: string[];
}

const DEFAULT_ITERATIONS = 10_000;
/** So often somebody may look, and stop it. */
const REPORT_EVERY = 250;
/** Points by which a step may make things worse, at first and at last: a clump's worth, then next to nothing. */
const HEAT = { first: 10, last: 0.01 } as const;

/**
 * A better plan, sought from the plan as it stands and from first fit: blocks are moved, exchanged, and taken up a few at a time
 * and put down again; now and then a step for the worse is taken, ever more rarely (simulated annealing, Kirkpatrick et al.
 * 1983; ruin and recreate, Schrimpf et al. 2000). No step breaks a hard rule. Stop calling it to cancel.
 */
export function* proposePlan(
  state: BedPlanState,
  { seed, iterations = DEFAULT_ITERATIONS, stepM = STEP_M }: SearchOptions,
): Generator<Progress, Proposal, void> {
  const m = modelOf(state);
  const bound = lowerBound(m).total;
  const draw = drawFrom(seed);
  const a = startOf(new Arrangement(m));
  let score = a.score();
  let best = { score, stands: [...a.stands] };
  const look = (iteration: number): Progress => ({
    iteration,
    iterations,
    best: best.score % UNPLACED_POINTS,
    unplaced: Math.floor(best.score / UNPLACED_POINTS),
    bound,
  });
  yield look(0);
  const keep = () => {
    if (score < best.score - 1e-9) best = { score, stands: [...a.stands] };
  };
  for (let k = 0; k < iterations && a.free.length > 0; k++) {
    const heat = HEAT.first * (HEAT.last / HEAT.first) ** (k / iterations);
    const step = chooseStep(a, draw, stepM);
    if (step) {
      const change = step.change;
      if (change <= 0 || draw() < Math.exp(-change / heat)) {
        score += change;
        keep();
      } else step.undo();
    }
    if ((k + 1) % REPORT_EVERY === 0) yield look(k + 1);
  }
  a.restore(best.stands);
  polish(a, stepM);
  best = { score: a.score(), stands: [...a.stands] };
  yield look(iterations);
  const unplaced = a.unplaced().map((i) => (m.blocks[i] as ModelBlock).block.id);
  return { state: a.toState(), total: a.points(), bound, unplaced };
}

/** Runs a search to its end where nobody waits. */
export function finish(search: Generator<Progress, Proposal, void>): Proposal {
  for (;;) {
    const { done, value } = search.next();
    if (done) return value;
  }
}

/** The better of first fit, largest block first, and the plan as it stands with what is missing or forbidden put anew. */
function startOf(a: Arrangement): Arrangement {
  const asGiven = new Arrangement(a.m);
  const given = standsOf(a.m);
  for (const i of asGiven.free) {
    const s = given[i];
    if (s && asGiven.allows(i, s)) asGiven.put(i, s);
  }
  fillInOrder(asGiven, asGiven.unplaced());
  const size = (i: number) => {
    const b = a.m.blocks[i] as ModelBlock;
    return b.lengthM * b.block.rows;
  };
  fillInOrder(
    a,
    [...a.free].sort((i, j) => size(j) - size(i)),
  );
  return a.score() < asGiven.score() ? a : asGiven;
}

function chooseStep(a: Arrangement, draw: Draw, stepM: number): Step | undefined {
  const what = draw();
  if (what < (isSmall(a) ? 0.3 : 0.03) || a.free.length < 3) return ruinAndRefill(a, draw, stepM);
  return what < 0.5 ? exchange(a, draw) : relocate(a, draw, stepM);
}

const POLISH_ROUNDS = 3;

/** Each block to its best place of all, until none moves or some rounds are done; what stands nowhere first. */
function polish(a: Arrangement, stepM: number): void {
  for (let moved = true, rounds = 0; moved && rounds < POLISH_ROUNDS; rounds++) {
    moved = false;
    for (const i of [...a.unplaced(), ...a.free]) {
      const now = a.stands[i];
      const costs = now ? a.adds(i, now) : UNPLACED_POINTS;
      a.put(i, undefined);
      const to = placeWell(a, i, placesFor(a, i, stepM), () => 0);
      const better: Stand | undefined = to && to.points < costs - 1e-9 ? to.stand : now;
      a.put(i, better);
      if (better !== now) moved = true;
    }
  }
}

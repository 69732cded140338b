import { refuse } from "../core/errors.ts";
import type { BedPlanState } from "../states/states.ts";
import { Arrangement, mayStand, UNPLACED_POINTS } from "./arrangement.ts";
import { type Model, type ModelBed, type ModelBlock, modelOf } from "./model.ts";
import { clash, pairPoints } from "./pair.ts";
import { STEP_M, steppedIn } from "./positions.ts";
import type { Stand } from "./stand.ts";
import { WEIGHTS } from "./weights.ts";

/** More arrangements than this take too long to look at one by one. */
const MOST_LOOKED_AT = 5e6;

/**
 * The best of all arrangements whose blocks begin on a step of their bed, every one looked at save those whose first blocks
 * already cost more than the best so far. For a handful of blocks: what the search is proved against.
 */
export function exactPlan(
  state: BedPlanState,
  { stepM = STEP_M, most = MOST_LOOKED_AT } = {},
): { state: BedPlanState; total: number } {
  const m = modelOf(state);
  const a = new Arrangement(m);
  const places = a.free.map((i) =>
    m.beds.flatMap((_, bed) => steppedIn(m, i, bed, stepM)).filter((s) => mayStand(m, s)),
  );
  let best = Number.POSITIVE_INFINITY;
  let bestStands = [...a.stands];
  let looked = 0;

  /** Without clumps, which a further block may join: what is spent already and comes back in no case. */
  const spentBy = (i: number, s: Stand): number | undefined => {
    let points = outsideShade(m, i, s);
    for (let j = 0; j < a.stands.length; j++) {
      const b = a.stands[j];
      if (!b || j === i) continue;
      if (clash(m, i, s, j, b)) return undefined;
      points += pairPoints(m, i, s, j, b);
    }
    return points;
  };

  const descend = (depth: number, spent: number): void => {
    if (spent >= best) return;
    if (++looked > most) refuse("blocks", "too many arrangements to look at each", `at most ${most}`, looked);
    const i = a.free[depth];
    if (i === undefined) {
      const score = a.score();
      if (score < best) [best, bestStands] = [score, [...a.stands]];
      return;
    }
    for (const s of places[depth] as Stand[]) {
      const points = spentBy(i, s);
      if (points === undefined) continue;
      a.put(i, s);
      descend(depth + 1, spent + points);
      a.put(i, undefined);
    }
    descend(depth + 1, spent + UNPLACED_POINTS);
  };
  descend(0, 0);
  bestStands.forEach((s, i) => {
    if (a.free.includes(i)) a.put(i, s);
  });
  return { state: a.toState(), total: a.points() };
}

const outsideShade = (m: Model, i: number, s: Stand): number =>
  WEIGHTS["outside-shade"].points *
  (m.beds[s.bed] as ModelBed).outsideShade *
  (m.blocks[i] as ModelBlock).block.plants;

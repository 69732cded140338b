import type { BedPlanState } from "../states/states.ts";
import { Arrangement } from "./arrangement.ts";
import { modelOf } from "./model.ts";
import { cornersIn } from "./positions.ts";
import { drawFrom, shuffled } from "./random.ts";

/** What a proposal is held against: plans that keep every hard rule and look at no cost. Blocks that find no room stay off. */

/** Each block in the order given, in the first bed and at the first place that takes it. */
export function firstFit(state: BedPlanState): BedPlanState {
  const a = new Arrangement(modelOf(state));
  fillInOrder(a, a.free);
  return a.toState();
}

export function fillInOrder(a: Arrangement, order: readonly number[]): void {
  for (const i of order) {
    for (let bed = 0; bed < a.m.beds.length && !a.stands[i]; bed++) {
      const places = cornersIn(a, i, bed).sort((x, y) => x.row - y.row || x.fromM - y.fromM);
      a.put(
        i,
        places.find((s) => a.allows(i, s)),
      );
    }
  }
}

/** Blocks in an order, and each at a place that takes it, as the seed decides. */
export function randomPlan(state: BedPlanState, seed: number): BedPlanState {
  const a = new Arrangement(modelOf(state));
  const draw = drawFrom(seed);
  for (const i of shuffled(a.free, draw)) {
    const places = shuffled(
      a.m.beds.flatMap((_, bed) => cornersIn(a, i, bed)),
      draw,
    );
    a.put(
      i,
      places.find((s) => a.allows(i, s)),
    );
  }
  return a.toState();
}

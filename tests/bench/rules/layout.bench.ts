import { checkPlan, costOfMove, finishPlan, firstFit, planModel, proposePlan, randomPlan } from "@pith/rules";
import { bench, describe } from "vitest";
import { at, FARM, randomState } from "../../rules/layoutStates.ts";

/** A season of a small farm: how much better a proposal is than plans that look at no cost, and what a drag asks of the browser. */
describe("a bed plan of 100 plantings in 20 beds", () => {
  const state = randomState(1, FARM);
  const first = firstFit(state);
  const { total, bound } = finishPlan(proposePlan(state, { seed: 1 }));
  const firstTotal = checkPlan(first).total;
  const chance = Math.min(...[1, 2, 3].map((seed) => checkPlan(randomPlan(state, seed)).total));
  console.log(
    `layout: first fit costs ${(firstTotal / total).toFixed(1)} times the proposal, chance (best of 3) ${(chance / total).toFixed(1)} times; ` +
      `${total.toFixed(0)} points, at most ${(total - bound).toFixed(0)} from the best possible`,
  );
  const model = planModel(first);

  bench("what one move would cost, with the plan's model at hand", () => {
    costOfMove(first, "block-40", at("bed-7", 1, 12), model);
  });
  bench("the whole plan checked anew", () => {
    checkPlan(first);
  });
  bench(
    "250 steps of the search",
    () => {
      finishPlan(proposePlan(first, { seed: 2, iterations: 250 }));
    },
    { iterations: 3, warmupIterations: 0, time: 0 },
  );
});

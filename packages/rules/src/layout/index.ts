export type { Breach, BreachKind, Unknown } from "./breach.ts";
export { type Cost, checkPlan, type PlanCheck } from "./checkPlan.ts";
export { exactPlan } from "./exact.ts";
export { firstFit, randomPlan } from "./firstFit.ts";
export { blockLengthM, modelOf } from "./model.ts";
export { costOfMove, type MoveCost, moveBlock, placementUnder } from "./move.ts";
export { finish, type Progress, type Proposal, proposePlan, type SearchOptions } from "./search.ts";
export type { CostKind } from "./weights.ts";

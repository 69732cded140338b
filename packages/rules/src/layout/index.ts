export type { Breach as PlanBreach, BreachKind, Unknown as PlanUnknown } from "./breach.ts";
export { type Cost as PlanCost, checkPlan, type PlanCheck } from "./checkPlan.ts";
export { type DrawnBed, type DrawnBlock, type DrawnPoint, type PlanDrawing, planDrawing } from "./drawing.ts";
export { exactPlan } from "./exact.ts";
export { firstFit, randomPlan } from "./firstFit.ts";
export { bedPlacesFromGeoJson, type PlacedBed, type PlacedBeds } from "./geojson.ts";
export { blockLengthM, type Model as PlanModel, modelOf as planModel } from "./model.ts";
export { costOfMove, type MoveCost, moveBlock, placementUnder } from "./move.ts";
export {
  finish as finishPlan,
  type Progress as PlanProgress,
  type Proposal as PlanProposal,
  proposePlan,
  type SearchOptions as PlanSearchOptions,
} from "./search.ts";
export type { CostKind } from "./weights.ts";

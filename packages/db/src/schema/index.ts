export * from "./advice.ts";
export * from "./auth.ts";
export * from "./farms.ts";
export * from "./ledger.ts";
export * from "./measured.ts";
export * from "./offices.ts";
export * from "./proof.ts";
export * from "./records.ts";
export type { PlanBlock, TrialPlan, TrialPlot } from "./shapes.ts";

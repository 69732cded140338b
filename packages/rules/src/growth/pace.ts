import type { Belief } from "../quantities/statistics/normalUpdate.ts";

/**
 * A planting's pace: the heat it takes to each stage as a share of the table's, with its spread. 1 is the table's own, 0.9 a
 * tenth earlier.
 */
export type Pace = Belief;

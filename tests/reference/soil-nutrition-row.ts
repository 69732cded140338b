import type { Printed } from "./climate-water-row.ts";

/** A published row that a table or a function holds: the answers and the printed numbers, by the same names. */
export interface HeldValue {
  id: string;
  source: string;
  what: string;
  answer: () => Record<string, unknown>;
  /** Tolerance: half a unit of the last printed place, or the reference's own; 0 for a table's cell. */
  expect: Record<string, Printed>;
}

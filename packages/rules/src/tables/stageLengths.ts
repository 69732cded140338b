import type { SourceRef } from "../core/working.ts";
import type { Range } from "./soils.ts";

/** Lengths of the stages as FAO-56 prints them [days]; the first is a range in one row. */
export interface StageLengthRow {
  plantedIn: string;
  region: string;
  initial: Range;
  development: number;
  mid: number;
  late: number;
  source: SourceRef;
}

const source: SourceRef = { key: "fao56", locator: "Table 11, p. 104" };

/** Sweet pepper's rows. Source: FAO-56, Table 11. */
export const PEPPER_STAGE_LENGTHS: readonly [StageLengthRow, StageLengthRow] = [
  {
    plantedIn: "April to June",
    region: "Europe and Mediterranean",
    initial: { low: 25, high: 30 },
    development: 35,
    mid: 40,
    late: 20,
    source,
  },
  {
    plantedIn: "October",
    region: "arid region",
    initial: { low: 30, high: 30 },
    development: 40,
    mid: 110,
    late: 30,
    source,
  },
];

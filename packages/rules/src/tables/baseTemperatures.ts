import type { SourceRef } from "../core/working.ts";
import { HEAT_UNITS } from "./stageHeat.ts";

/** A base temperature as somebody published it. */
export interface BaseTemperature {
  /** Option of the choice `stage.base-temperature`. */
  id: string;
  of: string;
  baseC: number;
  source: SourceRef;
}

/** Published bases of peppers; they disagree, so an office may choose. */
export const BASE_TEMPERATURES: readonly BaseTemperature[] = [
  {
    id: "heat-units",
    of: "field chile, the base of the published heat sums",
    baseC: HEAT_UNITS.baseC,
    source: { key: "silvertooth-2010", locator: "heat units 55-86 F" },
  },
  {
    id: "compact-9.3",
    of: "C. annuum, a compact hot cultivar",
    baseC: 9.3,
    source: { key: "dickson-2024", locator: "abstract, second cultivar" },
  },
  {
    id: "compact-13.3",
    of: "C. annuum, a compact sweet cultivar",
    baseC: 13.3,
    source: { key: "dickson-2024", locator: "abstract, first cultivar" },
  },
  {
    id: "biquinho-16.8",
    of: "C. chinense biquinho, two cultivars",
    baseC: 16.8,
    source: { key: "biquinho-plastochron", locator: "abstract, vegetative phase" },
  },
  {
    id: "compact-17.8",
    of: "C. annuum, another compact hot cultivar",
    baseC: 17.8,
    source: { key: "horttechnology-35-671", locator: "abstract" },
  },
];

const published = BASE_TEMPERATURES.map((b) => b.baseC);

/** Lowest and highest base published for peppers: the family's range. */
export const FAMILY_BASE_C = { low: Math.min(...published), high: Math.max(...published) } as const;

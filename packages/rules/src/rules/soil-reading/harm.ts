import type { SourceRef } from "../../core/working.ts";
import type { ReadValue } from "./values.ts";

/** Probability that a crop on very low soil yields more for the nutrient (NMSU Guide A-141, Table 1, SN-219: above 90 %). */
const CHANCE_VERY_LOW = { value: 0.9, source: { key: "nmsu-a141", locator: "Table 1" } as SourceRef };
/** In the other classes in which crops respond no probability was found: half is common practice. */
const CHANCE_ELSEWHERE = { value: 0.5, source: { key: "common-practice" } as SourceRef };
/** No published loss of pepper without phosphate or potash was found; a fifth of the yield is common practice. */
const LOSS = { value: 0.2, source: { key: "common-practice" } as SourceRef };

export interface Harm {
  value: number;
  chance: { value: number; source: SourceRef };
  loss: { value: number; source: SourceRef };
}

/** What is at risk where a nutrient reads short: the chance of a response times what it is worth. None where none does. */
export function harmOf(read: readonly ReadValue[]): Harm | undefined {
  const short = read.filter((r) => r.read.response === "responds");
  if (short.length === 0) return undefined;
  const chance = short.some((r) => r.read.class === "very-low") ? CHANCE_VERY_LOW : CHANCE_ELSEWHERE;
  return { value: chance.value * LOSS.value, chance, loss: LOSS };
}

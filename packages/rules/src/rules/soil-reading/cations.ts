import { type CationExchange, cationExchange } from "../../quantities/soil/cationExchange.ts";
import { adamsEvansAcidity } from "../../quantities/soil/limeMethods.ts";
import type { SoilTest } from "../../states/parts.ts";
import { BASE_SATURATION_PCT } from "../../tables/exchangeCapacity.ts";

export type Cations = CationExchange & {
  extractant: string;
  /** Where the acidity in the sum comes from; none where it is missing and the sum a minimum. */
  acidityFrom: "measured" | "adams-evans-buffer" | null;
  acidityCmolPerKg: number | null;
};

/** The exchange capacity by sum, where one extractant gave calcium, magnesium and potassium. */
export function cationsOf(test: SoilTest): Cations | undefined {
  const extractants = new Set(test.values.map((v) => v.extractant));
  for (const extractant of extractants) {
    if (extractant === undefined) continue;
    const of = (nutrient: string) =>
      test.values.find((v) => v.nutrient === nutrient && v.extractant === extractant)?.mgPerKg;
    const [ca, mg, k] = [of("Ca"), of("Mg"), of("K")];
    if (ca === undefined || mg === undefined || k === undefined || ca + mg + k === 0) continue;
    const acidity = acidityOf(test);
    const sum = cationExchange({
      caMgPerKg: ca,
      mgMgPerKg: mg,
      kMgPerKg: k,
      naMgPerKg: of("Na"),
      acidityCmolPerKg: acidity?.cmolPerKg,
    });
    return Object.assign(sum, {
      extractant,
      acidityFrom: acidity?.from ?? null,
      acidityCmolPerKg: acidity?.cmolPerKg ?? null,
    });
  }
  return undefined;
}

/** Measured, or from the Adams-Evans buffer as Clemson's laboratory does it (SN-124, SN-606); other buffers tell it per volume. */
function acidityOf(
  test: SoilTest,
): { cmolPerKg: number; from: "measured" | "adams-evans-buffer" } | undefined {
  if (test.acidityCmolPerKg !== undefined) return { cmolPerKg: test.acidityCmolPerKg, from: "measured" };
  if (test.bufferPh?.method !== "adams-evans") return undefined;
  return { cmolPerKg: adamsEvansAcidity(test.bufferPh.value), from: "adams-evans-buffer" };
}

export type Side = "below" | "in" | "above";

/** Each cation's share against the Massachusetts range (SN-205); not said where acidity is missing. */
export function saturationOf(cations: Cations): Record<"ca" | "mg" | "k", Side> | undefined {
  if (cations.cecIsMinimum) return undefined;
  const side = (share: number, { low, high }: { low: number; high: number }): Side =>
    share < low ? "below" : share > high ? "above" : "in";
  return {
    ca: side(cations.caPct, BASE_SATURATION_PCT.ca),
    mg: side(cations.mgPct, BASE_SATURATION_PCT.mg),
    k: side(cations.kPct, BASE_SATURATION_PCT.k),
  };
}

import { type CationExchange, cationExchange } from "../../quantities/soil/cationExchange.ts";
import type { SoilTest } from "../../states/parts.ts";

/** The exchange capacity by sum, where one extractant gave calcium, magnesium and potassium. */
export function cationsOf(test: SoilTest): (CationExchange & { extractant: string }) | undefined {
  const extractants = [...new Set(test.values.map((v) => v.extractant).filter((e) => e !== undefined))];
  for (const extractant of extractants) {
    const of = (nutrient: string) =>
      test.values.find((v) => v.nutrient === nutrient && v.extractant === extractant)?.mgPerKg;
    const [ca, mg, k] = [of("Ca"), of("Mg"), of("K")];
    if (ca === undefined || mg === undefined || k === undefined || ca + mg + k === 0) continue;
    const sum = cationExchange({
      caMgPerKg: ca,
      mgMgPerKg: mg,
      kMgPerKg: k,
      naMgPerKg: of("Na"),
      acidityCmolPerKg: test.acidityCmolPerKg,
    });
    return { ...sum, extractant };
  }
  return undefined;
}

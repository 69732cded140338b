import { z } from "zod";
import { num, word } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { METHOD_BASE, PH_AFTER_METHODS, phAfterLime } from "./limeMethods.ts";

export const ASH_BUFFER_METHODS = PH_AFTER_METHODS;

/** Where ash was not analysed. Potash 5 % (3 to 8 published); lime value 50 % (20 to 67 published): SN-501, SN-502, SN-505. */
const ASH_DEFAULT = { k2oPct: 5, ccePct: 50 } as const;

export interface WoodAshInput {
  kgPerM2: number;
  /** As analysed. */
  k2oPct?: number;
  /** Calcium carbonate equivalent, as analysed. */
  ccePct?: number;
  soilPh: number;
  bufferPh?: number;
  bufferMethod?: (typeof ASH_BUFFER_METHODS)[number];
  depthCm?: number;
}

/**
 * Potash and lime in wood ash, and the pH it would leave.
 *
 *   K2O = ash x K2O %, lime equivalent = ash x CCE %, pH by the buffer method's equation turned round
 *
 * `predictedPh` is null without a buffer pH and its method, and beyond what the method can answer for.
 * Sources: SN-501, SN-502, SN-545; the buffer methods' own.
 */
export function woodAsh(input: WoodAshInput): {
  k2oKgPerHa: number;
  limeEquivalentKgPerHa: number;
  predictedPh: number | null;
} {
  const ashKgPerHa = input.kgPerM2 * 10_000;
  const limeEquivalentKgPerHa = (ashKgPerHa * (input.ccePct ?? ASH_DEFAULT.ccePct)) / 100;
  return {
    k2oKgPerHa: (ashKgPerHa * (input.k2oPct ?? ASH_DEFAULT.k2oPct)) / 100,
    limeEquivalentKgPerHa,
    predictedPh: predictedPh(input, limeEquivalentKgPerHa),
  };
}

function predictedPh(input: WoodAshInput, limeKgPerHa: number): number | null {
  if (input.bufferPh === undefined || input.bufferMethod === undefined) return null;
  const baseDepthCm = METHOD_BASE[input.bufferMethod].depthCm;
  const forBaseDepth = (limeKgPerHa * baseDepthCm) / (input.depthCm ?? baseDepthCm);
  return phAfterLime(input.bufferMethod, input.bufferPh, input.soilPh, forBaseDepth);
}

const COMPOSITION = { key: "vce-ash-1993", locator: "about 5 % potash, 20-50 % as CaCO3" };

export const woodAshQuantity = defineQuantity({
  id: "wood-ash",
  question: "What does this much wood ash bring, and what pH would it leave?",
  schema: z.strictObject({
    kgPerM2: num("ash spread", "kg/m2", 0, 20),
    k2oPct: num("potash in the ash, as analysed", "% K2O", 0, 40).optional(),
    ccePct: num("calcium carbonate equivalent of the ash, as analysed", "%", 0, 150).optional(),
    soilPh: num("pH of the soil in water", "pH", 3, 10),
    bufferPh: num("buffer pH", "pH", 3, 8).optional(),
    bufferMethod: word("method of the buffer pH", ASH_BUFFER_METHODS).optional(),
    depthCm: num("depth the ash is worked in", "cm", 1, 60).optional(),
  }),
  outputs: {
    k2oKgPerHa: { meaning: "potash", unit: "kg/ha" },
    limeEquivalentKgPerHa: { meaning: "lime value, as calcium carbonate", unit: "kg/ha" },
    predictedPh: { meaning: "pH it would leave; null where no buffering method can say", unit: "pH" },
  },
  sources: [
    COMPOSITION,
    { key: "times-tribune-ash", locator: "3-8 % potash; 1.5 lb ash = 1 lb limestone" },
    ...ASH_BUFFER_METHODS.map((method) => METHOD_BASE[method].source),
  ],
  compute(input, w) {
    const result = woodAsh(input);
    if (input.k2oPct === undefined) {
      w.estimate("k2oPct", `${ASH_DEFAULT.k2oPct} %; published ashes hold 3 to 8 %`, COMPOSITION);
    }
    if (input.ccePct === undefined) {
      w.estimate("ccePct", `${ASH_DEFAULT.ccePct} %; published ashes hold 20 to 67 %`, COMPOSITION);
    }
    const kg = input.kgPerM2 * 10_000;
    const k2o = input.k2oPct ?? ASH_DEFAULT.k2oPct;
    const cce = input.ccePct ?? ASH_DEFAULT.ccePct;
    w.line("K2O", "potash", `${kg} x ${k2o} / 100`, result.k2oKgPerHa, "kg/ha", COMPOSITION);
    w.line("CCE", "lime value", `${kg} x ${cce} / 100`, result.limeEquivalentKgPerHa, "kg/ha", COMPOSITION);
    const method = input.bufferPh === undefined ? undefined : input.bufferMethod;
    if (method && input.depthCm === undefined) {
      w.estimate(
        "depthCm",
        `the method's own depth, ${METHOD_BASE[method].depthCm} cm`,
        METHOD_BASE[method].source,
      );
    }
    w.line(
      "pH",
      method ? "pH it would leave" : "pH it would leave: unknown without a buffer pH and its method",
      method ? `${method}: pH ${input.soilPh}, buffer pH ${input.bufferPh}` : "",
      result.predictedPh,
      "pH",
      method ? METHOD_BASE[method].source : null,
    );
    return result;
  },
});

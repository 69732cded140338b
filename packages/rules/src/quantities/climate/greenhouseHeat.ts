import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { SourceRef } from "../../core/working.ts";

const asae: SourceRef = { key: "asae-ep406", locator: "structural and infiltration heat loss" };

/**
 * Heat that a degree takes out of a cubic metre of air [W h/(m3 K)]: 1.2 kg/m3 × 1006 J/(kg K) / 3600, the same as the
 * handbooks' 0.018 Btu/(ft3 F). Moist air and latent heat take more: handbooks round up to 0.02 for that.
 */
export const AIR_WH_PER_M3_K = (1.2 * 1006) / 3600;

/**
 * Heat a covered structure loses at an inside and an outside temperature [W]; 0 where it is not colder outside.
 *
 *   conduction = U A (Ti - To)        infiltration = 0.335 V N (Ti - To)
 *
 * The floor, the sun and what the ground gives back are not in it. Source: the standard handbook form, ANSI/ASAE EP406,
 * recalled, not re-read.
 */
function greenhouseHeatW(input: {
  coverAreaM2: number;
  uWPerM2K: number;
  volumeM3: number;
  airChangesPerH: number;
  insideC: number;
  outsideC: number;
}): { conductionW: number; infiltrationW: number; totalW: number } {
  const difference = Math.max(0, input.insideC - input.outsideC);
  const conductionW = input.uWPerM2K * input.coverAreaM2 * difference;
  const infiltrationW = AIR_WH_PER_M3_K * input.volumeM3 * input.airChangesPerH * difference;
  return { conductionW, infiltrationW, totalW: conductionW + infiltrationW };
}

/** `greenhouse-heat`: see {@link greenhouseHeatW}. */
export const greenhouseHeat = defineQuantity({
  id: "greenhouse-heat",
  question: "How much heat does this structure lose at these temperatures?",
  schema: z.strictObject({
    coverAreaM2: num("area of roof, walls and ends", "m2", 0.01, 100_000),
    uWPerM2K: num("heat transfer of the cover", "W/m2/K", 0.05, 20),
    volumeM3: num("air inside", "m3", 0.001, 1_000_000),
    airChangesPerH: num("air changes by leaks", "1/h", 0, 60),
    insideC: num("temperature to keep inside", "C", -20, 45),
    outsideC: num("temperature outside", "C", -60, 50),
  }),
  outputs: {
    conductionW: { meaning: "heat through the cover", unit: "W" },
    infiltrationW: { meaning: "heat with the air that leaks", unit: "W" },
    totalW: { meaning: "heat lost", unit: "W" },
  },
  sources: [asae],
  compute(input, w) {
    const { conductionW, infiltrationW, totalW } = greenhouseHeatW(input);
    const difference = Math.max(0, input.insideC - input.outsideC);
    w.line("dT", "inside less outside, not below 0", `${input.insideC} - ${input.outsideC}`, difference, "C");
    w.line(
      "Qc",
      "conduction",
      `U A dT = ${input.uWPerM2K} × ${input.coverAreaM2} × dT`,
      conductionW,
      "W",
      asae,
    );
    w.line(
      "Qi",
      "infiltration",
      `0.335 V N dT, V = ${input.volumeM3}, N = ${input.airChangesPerH}`,
      infiltrationW,
      "W",
      asae,
    );
    w.line("Q", "heat lost", "Qc + Qi", totalW, "W", asae);
    return { conductionW, infiltrationW, totalW };
  },
});

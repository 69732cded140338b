import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";

/**
 * Gross depth, litres and minutes for a net depth: 1 mm on 1 m2 is 1 L.
 *
 *   gross = net / efficiency        litres = gross × area        minutes = 60 litres / flow
 *
 * `flowLPerH` is the valve's total flow, `areaM2` the area the net depth refers to. Source: arithmetic.
 */
export function runTime(input: { netMm: number; efficiency: number; areaM2: number; flowLPerH: number }): {
  grossMm: number;
  litres: number;
  minutes: number;
} {
  const grossMm = input.netMm / input.efficiency;
  const litres = grossMm * input.areaM2;
  return { grossMm, litres, minutes: (60 * litres) / input.flowLPerH };
}

/** `run-time`: see {@link runTime}. Efficiency as a fraction, 0.05 to 1. */
export const runTimeQuantity = defineQuantity({
  id: "run-time",
  question: "How long must the valve run to give this net depth?",
  schema: z.strictObject({
    netMm: num("net depth over the area", "mm", 0, 500),
    efficiency: num("share of the water given that stays in the root zone", "fraction", 0.05, 1),
    areaM2: num("area the net depth refers to", "m2", 0.001, 10_000_000),
    flowLPerH: num("total flow of the valve", "L/h", 0.01, 10_000_000),
  }),
  outputs: {
    grossMm: { meaning: "gross depth", unit: "mm" },
    litres: { meaning: "water through the valve", unit: "L" },
    minutes: { meaning: "run time", unit: "min" },
  },
  sources: [],
  compute(input, w) {
    const { grossMm, litres, minutes } = runTime(input);
    w.line("gross", "gross depth", `net / efficiency = ${input.netMm} / ${input.efficiency}`, grossMm, "mm");
    w.line(
      "V",
      "water through the valve",
      `gross × area, 1 mm on 1 m2 = 1 L; area = ${input.areaM2}`,
      litres,
      "L",
    );
    w.line("t", "run time", `60 V / flow, flow = ${input.flowLPerH}`, minutes, "min");
    return { grossMm, litres, minutes };
  },
});

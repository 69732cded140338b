import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { PLASTIC_MULCH } from "../../tables/cropCoefficients.ts";
import { fao56 } from "../cite.ts";

const source = fao56("ch. 10, p. 196-197");

/**
 * `mulched-crop-coefficient`: mid and end coefficients under a complete plastic mulch with trickle, and the printed
 * initial one.
 *
 *   Kc = Kc(table) (1 - fall)        single 10 to 30 %, basal 5 to 15 %; Kcini = Kcb,ini = 0.10
 *
 * The falls are the reader's to choose where the crop has no row; left out, the low end is taken, which waters more.
 * Source: FAO-56, chapter 10, example 45.
 */
export const mulchedCropCoefficient = defineQuantity({
  id: "mulched-crop-coefficient",
  question: "What becomes of the crop coefficient under plastic mulch?",
  schema: z.strictObject({
    kcMid: num("single crop coefficient of the mid stage", "", 0.1, 2),
    kcEnd: num("single crop coefficient at the end", "", 0.1, 2),
    kcbMid: num("basal crop coefficient of the mid stage", "", 0.05, 2),
    kcbEnd: num("basal crop coefficient at the end", "", 0.05, 2),
    kcFallPct: num("fall of the single coefficient; 10 where left out", "%", 0, 50).optional(),
    kcbFallPct: num("fall of the basal coefficient; 5 where left out", "%", 0, 30).optional(),
  }),
  outputs: {
    kcIni: { meaning: "single coefficient of the initial stage", unit: "" },
    kcMid: { meaning: "single coefficient of the mid stage", unit: "" },
    kcEnd: { meaning: "single coefficient at the end", unit: "" },
    kcbIni: { meaning: "basal coefficient of the initial stage", unit: "" },
    kcbMid: { meaning: "basal coefficient of the mid stage", unit: "" },
    kcbEnd: { meaning: "basal coefficient at the end", unit: "" },
  },
  sources: [source],
  compute(input, w) {
    const { kcReductionPct, kcbReductionPct, kcIni } = PLASTIC_MULCH;
    if (input.kcFallPct === undefined) {
      w.estimate("kcFallPct", "10, the low end of the printed 10 to 30 %", kcReductionPct.source);
    }
    if (input.kcbFallPct === undefined) {
      w.estimate("kcbFallPct", "5, the low end of the printed 5 to 15 %", kcbReductionPct.source);
    }
    const keptKc = 1 - (input.kcFallPct ?? kcReductionPct.low) / 100;
    const keptKcb = 1 - (input.kcbFallPct ?? kcbReductionPct.low) / 100;
    const under = (symbol: string, meaning: string, table: number, kept: number): number =>
      w.line(symbol, meaning, `${kept} × ${table}`, kept * table, "", source);
    return {
      kcIni: w.line("Kcini", "single coefficient of the initial stage", "printed", kcIni.value, "", source),
      kcMid: under("Kcmid", "single coefficient of the mid stage", input.kcMid, keptKc),
      kcEnd: under("Kcend", "single coefficient at the end", input.kcEnd, keptKc),
      kcbIni: w.line("Kcb,ini", "basal coefficient of the initial stage", "printed", kcIni.value, "", source),
      kcbMid: under("Kcb,mid", "basal coefficient of the mid stage", input.kcbMid, keptKcb),
      kcbEnd: under("Kcb,end", "basal coefficient at the end", input.kcbEnd, keptKcb),
    };
  },
});

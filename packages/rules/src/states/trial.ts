import { z } from "zod";
import { day, int, num, word } from "../core/fields.ts";

/** A comparison on a farm: what is compared, which plot got what, and what was measured. Names stay outside. */

const id = z.string().min(1).max(64);

export const TRIAL_DESIGNS = [
  "completely-randomised",
  "randomised-blocks",
  "paired-strips",
  "factorial-blocks",
] as const;
export type TrialDesign = (typeof TRIAL_DESIGNS)[number];

/** What a plot is measured for. */
export const RESPONSE_KINDS = [
  "marketable-kg",
  "total-kg",
  "fruit-count",
  "mean-fruit-g",
  "first-pick-day",
  "coloured-kg",
  "height-cm",
  "lodged-pct",
  "culls-pct",
  "capsaicinoids-mg-per-kg",
  "other",
] as const;
export type ResponseKind = (typeof RESPONSE_KINDS)[number];

export const MISSING_REASONS = ["plants-lost", "not-measured", "mixed-up", "spoiled"] as const;

export const FactorSchema = z.strictObject({
  id,
  /** The first is what is done now. */
  levels: z.array(z.strictObject({ id })).min(2).max(12),
});

export const PlotSchema = z.strictObject({
  id,
  /** As on its label, from 1. */
  number: int("plot", "plot", 1, 1000),
  block: int("block", "block", 1, 200).optional(),
  /** One level of each factor, in their order. */
  levels: z.array(id).min(1).max(3),
  bedId: id,
  fromM: num("begins, from the bed's first end", "m", 0, 2000),
  lengthM: num("length", "m", 0.1, 2000),
});
export type Plot = z.infer<typeof PlotSchema>;

export const ResponseSchema = z.strictObject({
  id,
  kind: word("what is measured", RESPONSE_KINDS),
  better: word("which way is better", ["more", "less", "neither"]),
});
export type Response = z.infer<typeof ResponseSchema>;

/** One response of one plot; a value, or why there is none. */
export const PlotValueSchema = z
  .strictObject({
    plotId: id,
    responseId: id,
    on: day("day measured"),
    value: num("value", "as the response says", -1_000_000, 10_000_000).optional(),
    missing: word("why there is none", MISSING_REASONS).optional(),
  })
  .refine((v) => (v.value === undefined) !== (v.missing === undefined), {
    path: ["value"],
    error: "either a value or why it is missing must be given",
  });
export type PlotValue = z.infer<typeof PlotValueSchema>;

export const TrialSchema = z.strictObject({
  id,
  design: word("design", TRIAL_DESIGNS),
  /** Which layout was drawn. */
  seed: int("seed of the layout", "seed", 0, 4_294_967_295),
  factors: z.array(FactorSchema).min(1).max(3),
  blocks: int("blocks, or plots a treatment", "blocks", 2, 200),
  plots: z.array(PlotSchema).min(2).max(1000),
  responses: z.array(ResponseSchema).min(1).max(12),
  values: z.array(PlotValueSchema).max(12_000),
  alpha: num("significance level", "fraction", 0.001, 0.2),
  startedOn: day("day it began").optional(),
  endedOn: day("day it ended").optional(),
});
export type Trial = z.infer<typeof TrialSchema>;

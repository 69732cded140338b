import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { flag, int, num, word } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { ANIMALS } from "../../states/food.ts";
import {
  AMMONIUM_KEPT_ON_SURFACE,
  AMMONIUM_LOSS_SOURCE,
  DRY_FROM_PCT,
  MANURE_RELEASE,
  MANURE_RELEASE_SOURCE,
} from "../../tables/manureRelease.ts";

export interface ManureNitrogenInput {
  /** Of fresh weight [%]. */
  nPct: number;
  /** Of fresh weight [%], part of `nPct`. */
  ammoniumNPct: number;
  animal: (typeof ANIMALS)[number];
  /** [%] */
  dryMatterPct: number;
  /** Left lying instead of being worked in. */
  onSurface: boolean;
  /** 0 in the year it is given, 1 the year after, 2 two years after. */
  yearsAfter: number;
}

/**
 * Nitrogen that plants can have from a manure in one year [kg per tonne of fresh manure].
 *
 *   organic = N - NH4-N        available = organic x release + (in its own year) NH4-N x kept
 *
 * kept is 1 where it is worked in at once and 0.66 on the surface; release by animal, dry matter and year.
 * Source: Montana State University nutrient plan worksheet, step 5 (SN-901); Cornell CSS 412 (SN-902).
 */
export function manureNitrogen(input: ManureNitrogenInput): {
  organicKgPerT: number;
  releasePct: number;
  availableKgPerT: number;
  lostKgPerT: number;
} {
  const row = MANURE_RELEASE[input.animal];
  const years = input.dryMatterPct >= DRY_FROM_PCT ? row.dry : row.wet;
  const releasePct = years[input.yearsAfter] ?? 0;
  // 1 % is 10 kg in a tonne.
  const organicKgPerT = 10 * (input.nPct - input.ammoniumNPct);
  const ammoniumKgPerT = input.yearsAfter === 0 ? 10 * input.ammoniumNPct : 0;
  const lostKgPerT = input.onSurface ? ammoniumKgPerT * (1 - AMMONIUM_KEPT_ON_SURFACE) : 0;
  return {
    organicKgPerT,
    releasePct,
    availableKgPerT: (organicKgPerT * releasePct) / 100 + ammoniumKgPerT - lostKgPerT,
    lostKgPerT,
  };
}

/** `manure-nitrogen`: see {@link manureNitrogen}. Throws DomainError where ammonium exceeds total nitrogen. */
export const manureNitrogenQuantity = defineQuantity({
  id: "manure-nitrogen",
  question: "How much nitrogen does a tonne of this manure give plants in a year?",
  schema: z.strictObject({
    nPct: num("total nitrogen, of fresh weight", "% N", 0, 20),
    ammoniumNPct: num("ammonium nitrogen, of fresh weight", "% N", 0, 20),
    animal: word("animal", ANIMALS),
    dryMatterPct: num("dry matter", "%", 0.5, 100),
    onSurface: flag("left on the surface, not worked in"),
    yearsAfter: int("years after it was given", "years", 0, 2),
  }),
  outputs: {
    organicKgPerT: { meaning: "organic nitrogen", unit: "kg/t" },
    releasePct: { meaning: "share of the organic nitrogen that comes free in that year", unit: "%" },
    availableKgPerT: { meaning: "nitrogen that plants can have in that year", unit: "kg/t" },
    lostKgPerT: { meaning: "ammonia lost to the air", unit: "kg/t" },
  },
  sources: [MANURE_RELEASE_SOURCE, AMMONIUM_LOSS_SOURCE],
  compute(input, w) {
    if (input.ammoniumNPct > input.nPct) {
      refuse(
        "ammoniumNPct",
        "must not exceed the total nitrogen",
        `at most ${input.nPct}`,
        input.ammoniumNPct,
      );
    }
    const value = manureNitrogen(input);
    w.line(
      "No",
      "organic nitrogen",
      `10 x (${input.nPct} - ${input.ammoniumNPct})`,
      value.organicKgPerT,
      "kg/t",
    );
    w.line(
      "r",
      "share that comes free in that year",
      `${input.animal}, ${input.dryMatterPct} % dry matter, ${input.yearsAfter} years after`,
      value.releasePct,
      "%",
      MANURE_RELEASE_SOURCE,
    );
    w.line(
      "Nlost",
      "ammonia lost to the air",
      input.onSurface ? "0.34 x NH4-N on the surface" : "none: worked in",
      value.lostKgPerT,
      "kg/t",
      AMMONIUM_LOSS_SOURCE,
    );
    w.line("Na", "nitrogen that plants can have", "No x r + NH4-N - Nlost", value.availableKgPerT, "kg/t");
    return value;
  },
});

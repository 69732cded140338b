import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { SourceRef } from "../../core/working.ts";

const source: SourceRef = { key: "harrington-minges-1954", locator: "pepper, sown 1/2 in deep" };

/**
 * Pepper sown 13 mm deep: days until it shows, and normal seedlings of a hundred seeds, by soil temperature. `null`:
 * none came up. Source: Harrington and Minges 1954, as retold by Oregon State Extension.
 */
const PEPPER = [
  { soilC: 0, days: null, normalPct: 0 },
  { soilC: 5, days: null, normalPct: 0 },
  { soilC: 10, days: null, normalPct: 1 },
  { soilC: 15, days: 25, normalPct: 70 },
  { soilC: 20, days: 13, normalPct: 96 },
  { soilC: 25, days: 8, normalPct: 98 },
  { soilC: 30, days: 8, normalPct: 95 },
  { soilC: 35, days: 9, normalPct: 70 },
  { soilC: 40, days: null, normalPct: 0 },
] as const;

/** Columns of the table stand this far apart. */
const STEP_C = 5;

/**
 * Days and normal seedlings at a soil temperature. Between two columns the speed (1 / days) runs in a straight line,
 * since emergence advances by a share of its way each day; so does the count of normal seedlings. `days` is null next to
 * a column in which none came up: the table does not say where between the two it ends.
 */
function emergenceOf(soilC: number): { days: number | null; normalPct: number } {
  const at = Math.min(Math.floor(soilC / STEP_C), PEPPER.length - 2);
  const below = PEPPER[at] as (typeof PEPPER)[number];
  const above = PEPPER[at + 1] as (typeof PEPPER)[number];
  const share = (soilC - below.soilC) / STEP_C;
  const normalPct = below.normalPct + share * (above.normalPct - below.normalPct);
  // On a column itself its own figure stands, whatever its neighbour says.
  if (share === 0) return { days: below.days, normalPct };
  if (share === 1) return { days: above.days, normalPct };
  if (below.days === null || above.days === null) return { days: null, normalPct };
  return { days: 1 / ((1 - share) / below.days + share / above.days), normalPct };
}

/** `germination-days`: see {@link emergenceOf}. Pepper at an even soil temperature. */
export const germinationDays = defineQuantity({
  id: "germination-days",
  question: "How long do pepper seeds take to come up in soil this warm, and how many do?",
  schema: z.strictObject({ soilC: num("temperature of the soil at the seed, day and night", "C", 0, 40) }),
  outputs: {
    days: { meaning: "days until the seedlings show; null where the table has none", unit: "days" },
    normalSeedlingsPct: { meaning: "normal seedlings of a hundred seeds", unit: "%" },
  },
  sources: [source],
  compute({ soilC }, w) {
    const { days, normalPct } = emergenceOf(soilC);
    return {
      days: w.line(
        "d",
        "days until the seedlings show",
        days === null ? "none beside a column without emergence" : "1 / d in a straight line between columns",
        days,
        "days",
        source,
      ),
      normalSeedlingsPct: w.line(
        "g",
        "normal seedlings of a hundred seeds",
        "in a straight line between columns",
        normalPct,
        "%",
        source,
      ),
    };
  },
});

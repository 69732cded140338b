import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num, word } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { MATERIAL_KINDS } from "../../states/food.ts";
import { dissolves, SOLUBILITY } from "../../tables/solubility.ts";

const SOURCES = [
  { key: "solubility-notes-2015", locator: "SN-726" },
  { key: "crc-handbook", locator: "SN-727" },
  { key: "msu-fertigation", locator: "SN-812" },
];

/**
 * Whether a material dissolves in its stock tank at the coldest the tank gets: the printed solubility of the warmest column
 * not warmer than the tank, or a published label's stop where the kind has no row. Throws DomainError below the coldest column.
 */
export const stockTankQuantity = defineQuantity({
  id: "stock-tank",
  question: "Does this much fertiliser dissolve in the stock tank when it is cold?",
  schema: z.strictObject({
    kind: word("kind of material", MATERIAL_KINDS),
    grams: num("fertiliser in the tank", "g", 0, 10_000_000),
    stockLitres: num("stock in the tank", "L", 0.01, 100_000),
    tankC: num("coldest the stock gets", "C", 0, 50),
  }),
  outputs: {
    gPerL: { meaning: "strength of the stock", unit: "g/L" },
    mostGPerL: { meaning: "most that dissolves", unit: "g/L" },
    dissolves: { meaning: "it dissolves", unit: "yes/no" },
    leastLitres: { meaning: "least stock in which it does", unit: "L" },
  },
  sources: SOURCES,
  compute({ kind, grams, stockLitres, tankC }, w) {
    const limit = dissolves(kind, tankC);
    if (!limit) {
      const coldest = SOLUBILITY[kind]?.atC[0]?.[0] ?? 0;
      refuse("tankC", `is colder than any published solubility of ${kind}`, `at least ${coldest}`, tankC);
    }
    const gPerL = w.line(
      "c",
      "strength of the stock",
      `${grams} / ${stockLitres}`,
      grams / stockLitres,
      "g/L",
    );
    const at = limit.atC === null ? "no row for this kind: a label's stop" : `table, at ${limit.atC} °C`;
    const mostGPerL = w.line("cmax", "most that dissolves", at, limit.gPerL, "g/L", limit.source);
    const leastLitres = w.line("V", "least stock in which it does", "g / cmax", grams / mostGPerL, "L");
    return { gPerL, mostGPerL, dissolves: gPerL <= mostGPerL, leastLitres };
  },
});

import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { int, num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";

export interface PlantPopulationInput {
  rowSpacingM: number;
  plantSpacingM: number;
  /** With `bedSpacingM`: rows on beds, alleys counted. */
  rowsPerBed?: number;
  bedSpacingM?: number;
}

/**
 * Plants on a hectare of cropped land.
 *
 *   even rows: 10,000 / (row spacing x plant spacing)
 *   on beds:   10,000 x rows per bed / (bed spacing x plant spacing), bed centre to bed centre, alleys included
 *
 * Source: arithmetic; Bailey's table and the linear-bed-foot method agree (SN-1004 to SN-1006).
 *
 * @throws DomainError naming the half of the bed that is missing, or the bed spacing where the rows do not fit
 */
function plantPopulation(input: PlantPopulationInput): { plantsPerHa: number } {
  const { rowSpacingM, plantSpacingM, rowsPerBed, bedSpacingM } = input;
  if (rowsPerBed === undefined && bedSpacingM === undefined) {
    return { plantsPerHa: 10_000 / (rowSpacingM * plantSpacingM) };
  }
  if (rowsPerBed === undefined) refuse("rowsPerBed", "is needed together with bedSpacingM", "1 to 40");
  if (bedSpacingM === undefined) refuse("bedSpacingM", "is needed together with rowsPerBed", "0.1 to 200");
  const rowsWidthM = (rowsPerBed - 1) * rowSpacingM;
  if (rowsWidthM >= bedSpacingM) {
    refuse(
      "bedSpacingM",
      `must be wider than its rows (${rowsWidthM} m)`,
      `more than ${rowsWidthM}`,
      bedSpacingM,
    );
  }
  return { plantsPerHa: (10_000 * rowsPerBed) / (bedSpacingM * plantSpacingM) };
}

const SOURCE = { key: "definition" };

export const plantPopulationQuantity = defineQuantity({
  id: "plant-population",
  question: "How many plants stand on a hectare of cropped land?",
  schema: z.strictObject({
    rowSpacingM: num("row to row", "m", 0.01, 20),
    plantSpacingM: num("plant to plant in the row", "m", 0.01, 20),
    rowsPerBed: int("rows on a bed", "rows", 1, 40).optional(),
    bedSpacingM: num("bed centre to bed centre, alley included", "m", 0.1, 200).optional(),
  }),
  outputs: { plantsPerHa: { meaning: "plants", unit: "plants/ha" } },
  sources: [SOURCE],
  compute(input, w) {
    const result = plantPopulation(input);
    const expression =
      input.bedSpacingM === undefined
        ? `10000 / (${input.rowSpacingM} x ${input.plantSpacingM})`
        : `10000 x ${input.rowsPerBed} / (${input.bedSpacingM} x ${input.plantSpacingM})`;
    w.line("N", "plants on a hectare", expression, result.plantsPerHa, "plants/ha", SOURCE);
    return result;
  },
});

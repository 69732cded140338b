import { z } from "zod";
import { day, int, num, word } from "../core/fields.ts";

const id = z.string().min(1).max(64);

/** What a house or tunnel is glazed with. */
export const GLAZINGS = [
  "single-glass",
  "single-poly",
  "double-poly",
  "double-poly-infrared",
  "twin-wall-polycarbonate",
  "triple-wall-polycarbonate",
] as const;
export const INNER_LAYERS = ["none", "fleece", "inner-film", "thermal-screen"] as const;
export const FUELS = [
  "electricity",
  "natural-gas",
  "propane",
  "fuel-oil",
  "firewood",
  "wood-pellets",
] as const;

/** A house or tunnel that plants stand in and that may be heated. */
export const StructureSchema = z.strictObject({
  id,
  glazing: word("what it is glazed with", GLAZINGS),
  /** Measured or from the maker; left out: the table's for the glazing. */
  uWPerM2K: num("heat loss of the cover", "W/m2/K", 0.5, 12).optional(),
  innerLayer: word("second layer inside, drawn at night", INNER_LAYERS),
  floorAreaM2: num("floor", "m2", 0.5, 100_000),
  coverAreaM2: num("outer surface, floor not counted", "m2", 1, 300_000),
  volumeM3: num("enclosed volume", "m3", 0.3, 600_000),
  airChangesPerH: num("air changes", "1/h", 0.1, 20).optional(),
  /** What stands there to heat with; the first is what is used now. */
  heaters: z
    .array(
      z.strictObject({
        fuel: word("fuel", FUELS),
        efficiency: num("share of the fuel's heat that reaches the air", "fraction", 0.2, 1).optional(),
        outputW: num("rated output", "W", 100, 5_000_000).optional(),
        /** Per kWh for electricity and gas, per L for propane and oil, per kg for wood. */
        pricePerUnit: num("price of one unit of fuel", "money/unit", 0, 1000).optional(),
      }),
    )
    .max(10),
  trays: z
    .strictObject({
      count: int("seedling trays", "trays", 1, 100_000),
      areaM2: num("area of one tray", "m2", 0.01, 5),
    })
    .optional(),
  /** Night temperature to keep; left out: the office's floor for plants raised indoors. */
  nightC: num("night temperature to keep", "C", 2, 30).optional(),
  /** Nights on which plants need it. */
  heatedFrom: day("first heated night").optional(),
  heatedTo: day("last heated night").optional(),
});
export type Structure = z.infer<typeof StructureSchema>;

import type { SourceRef } from "../core/working.ts";
import type { Structure } from "../states/structure.ts";

/** 1 Btu/(h ft2 F) in W/(m2 K), by the definitions of the international table Btu, the foot and the degree. */
export const W_PER_M2_K_PER_BTU = 5.678263341113489;

const ep406: SourceRef = { key: "asae-ep406", locator: "U by cover and air changes (GH-9, GH-10)" };

interface Glazing {
  /** Heat transfer [W/(m2 K)]; the wasteful end where the handbook prints a range. */
  uWPerM2K: number;
  /** Air changes by leaks [1/h]; the leaky end of the printed range. */
  airChangesPerH: number;
}

const glazing = (uBtu: number, airChangesPerH: number): Glazing => ({
  uWPerM2K: uBtu * W_PER_M2_K_PER_BTU,
  airChangesPerH,
});

/**
 * Heat transfer and leaks by what a house is glazed with: ANSI/ASAE EP406 and extension tables made from it, from memory
 * (GH-9, GH-10). A house that needs more heat than said harms plants, one that needs less harms nobody, so of a range the
 * wasteful end is taken.
 */
export const GLAZING_HEAT: Record<Structure["glazing"], Glazing> = {
  "single-glass": glazing(1.1, 1.5),
  "single-poly": glazing(1.2, 1),
  "double-poly": glazing(0.7, 1),
  "double-poly-infrared": glazing(0.5, 1),
  "twin-wall-polycarbonate": glazing(0.65, 1),
  "triple-wall-polycarbonate": glazing(0.5, 1),
};
export const GLAZING_SOURCE = ep406;

/** What a second layer that is drawn at night leaves of the cover's heat transfer. */
interface InnerLayerHeat {
  share: number;
  source: SourceRef;
}

/**
 * A second film: 34 % less loss than under one (a model study's double against single, GH-8). A thermal screen: 30 %, from
 * memory of extension leaflets that print 20 to 50 %. Fleece keeps the plants warmer, not the house: it lowers the
 * temperature that the air needs.
 */
export const INNER_LAYER_HEAT: Record<Structure["innerLayer"], InnerLayerHeat | null> = {
  none: null,
  fleece: null,
  "inner-film": { share: 0.66, source: { key: "rasheed-glazing", locator: "double against single (GH-8)" } },
  "thermal-screen": { share: 0.7, source: { key: "energy-screens", locator: "20 to 50 %, from memory" } },
};

/** Seedling mats [W/m2]: 12 to 20 W/ft2 (GH-12, from memory). */
export const MAT_W_PER_M2 = { low: 12 / 0.09290304, high: 20 / 0.09290304 } as const;
export const MAT_SOURCE: SourceRef = { key: "soil-heating-wattage", locator: "seedling mats (GH-12)" };

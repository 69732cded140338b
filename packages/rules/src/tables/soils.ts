import type { SourceRef } from "../core/working.ts";
import type { TEXTURES } from "../states/parts.ts";

/** A range as the source prints it. */
export interface Range {
  low: number;
  high: number;
}

/** Water a soil holds [m3/m3], and what evaporates from its top 0.10 m [mm]. */
export interface SoilWaterRow {
  fieldCapacity: Range;
  wiltingPoint: Range;
  /** FC - WP as printed: narrower than the difference of the two ranges. */
  available: Range;
  /** Readily evaporable water. */
  rewMm: Range;
  /** Total evaporable water, Ze = 0.10 m. */
  tewMm: Range;
}

const to = (low: number, high: number): Range => ({ low, high });
const row = (
  fieldCapacity: Range,
  wiltingPoint: Range,
  available: Range,
  rewMm: Range,
  tewMm: Range,
): SoilWaterRow => ({
  fieldCapacity,
  wiltingPoint,
  available,
  rewMm,
  tewMm,
});

/** Where {@link SOIL_WATER} comes from. */
export const SOIL_WATER_SOURCE: SourceRef = { key: "fao56", locator: "Table 19, p. 144" };

/** Typical soil water characteristics by texture class. Source: FAO-56, Table 19. */
export const SOIL_WATER: Record<(typeof TEXTURES)[number], SoilWaterRow> = {
  sand: row(to(0.07, 0.17), to(0.02, 0.07), to(0.05, 0.11), to(2, 7), to(6, 12)),
  "loamy-sand": row(to(0.11, 0.19), to(0.03, 0.1), to(0.06, 0.12), to(4, 8), to(9, 14)),
  "sandy-loam": row(to(0.18, 0.28), to(0.06, 0.16), to(0.11, 0.15), to(6, 10), to(15, 20)),
  loam: row(to(0.2, 0.3), to(0.07, 0.17), to(0.13, 0.18), to(8, 10), to(16, 22)),
  "silt-loam": row(to(0.22, 0.36), to(0.09, 0.21), to(0.13, 0.19), to(8, 11), to(18, 25)),
  silt: row(to(0.28, 0.36), to(0.12, 0.22), to(0.16, 0.2), to(8, 11), to(22, 26)),
  "silty-clay-loam": row(to(0.3, 0.37), to(0.17, 0.24), to(0.13, 0.18), to(8, 11), to(22, 27)),
  "silty-clay": row(to(0.3, 0.42), to(0.17, 0.29), to(0.13, 0.19), to(8, 12), to(22, 28)),
  clay: row(to(0.32, 0.4), to(0.2, 0.24), to(0.12, 0.2), to(8, 12), to(22, 29)),
};

/** The middle of a printed range. */
export const middle = ({ low, high }: Range): number => (low + high) / 2;

import type { Bed } from "../states/parts.ts";
import { middle, SOIL_WATER, type SoilWaterRow } from "../tables/soils.ts";

/** The upper 0.10 m of a soil, which dries by evaporation [mm]. */
export interface TopSoil {
  tewMm: number;
  rewMm: number;
  how: "texture" | "nearest-texture";
}

/** Depth that dries by evaporation, the lower end of the printed 0.10 to 0.15 m and Table 19's own. Source: FAO-56, eq. 73. */
const EVAPORATION_DEPTH_M = 0.1;
/** In Table 19 REW is at most about this share of TEW; keeps REW below TEW for a soil drier than any row. */
const LARGEST_REW_SHARE = 0.6;

const distance = (row: SoilWaterRow, fieldCapacity: number, wiltingPoint: number): number =>
  Math.abs(middle(row.fieldCapacity) - fieldCapacity) + Math.abs(middle(row.wiltingPoint) - wiltingPoint);

/**
 * TEW and REW of a bed's soil: from its texture the middle of Table 19's ranges; where field capacity and wilting point
 * were measured TEW = 1000 (FC - 0.5 WP) Ze, with the REW of the row whose middles lie nearest. Undefined for containers
 * (no published REW of a potting mix was found) and where neither is known: then the top cannot be followed.
 *
 * Source: FAO-56, eq. 73 and Table 19.
 */
export function topSoilOf(bed: Bed): TopSoil | undefined {
  if (bed.kind === "containers") return undefined;
  const { fieldCapacity, wiltingPoint, texture } = bed.soil;
  if (fieldCapacity !== undefined && wiltingPoint !== undefined) {
    const [nearest] = Object.values(SOIL_WATER).toSorted(
      (a, b) => distance(a, fieldCapacity, wiltingPoint) - distance(b, fieldCapacity, wiltingPoint),
    );
    const tewMm = 1000 * (fieldCapacity - 0.5 * wiltingPoint) * EVAPORATION_DEPTH_M;
    const rewMm = Math.min(nearest ? middle(nearest.rewMm) : tewMm, LARGEST_REW_SHARE * tewMm);
    return { tewMm, rewMm, how: "nearest-texture" };
  }
  if (texture === undefined) return undefined;
  const row = SOIL_WATER[texture];
  return { tewMm: middle(row.tewMm), rewMm: middle(row.rewMm), how: "texture" };
}

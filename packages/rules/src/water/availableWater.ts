import { refuse } from "../core/errors.ts";
import type { Bed } from "../states/parts.ts";
import { middle, SOIL_WATER } from "../tables/soils.ts";

/** Water between field capacity and wilting point in a cubic metre of soil or medium. */
export interface AvailableWater {
  m3PerM3: number;
  how: "measured" | "texture" | "medium";
  low: number;
  high: number;
  /** Measured, else the middle of the texture's range; unknown for a potting mix [m3/m3]. */
  fieldCapacity?: number;
}

/** A peat or bark mix gives up about a quarter of its volume; mixes differ (common practice). */
const POTTING_MIX = { low: 0.15, middle: 0.25, high: 0.35 } as const;

/** Every texture's range, for saying how far an answer could move. */
export const widestAvailableWater = (): { low: number; high: number } => {
  const rows = Object.values(SOIL_WATER);
  return {
    low: Math.min(...rows.map((r) => r.available.low)),
    high: Math.max(...rows.map((r) => r.available.high)),
  };
};

/**
 * Available water of a bed: measured, else the middle of its texture's range (FAO-56 Table 19), else for containers a
 * potting mix. Undefined where the ground's texture is not known either.
 *
 * @throws DomainError naming the wilting point where it is not below field capacity
 */
export function availableWaterOf(bed: Bed, path: string): AvailableWater | undefined {
  const { fieldCapacity, wiltingPoint, texture } = bed.soil;
  if (fieldCapacity !== undefined && wiltingPoint !== undefined) {
    if (wiltingPoint >= fieldCapacity) {
      const bound = `below ${fieldCapacity}`;
      refuse(
        `${path}.soil.wiltingPoint`,
        `must be below fieldCapacity (${fieldCapacity})`,
        bound,
        wiltingPoint,
      );
    }
    const value = fieldCapacity - wiltingPoint;
    return { m3PerM3: value, how: "measured", low: value, high: value, fieldCapacity };
  }
  if (bed.kind === "containers") {
    return { m3PerM3: POTTING_MIX.middle, how: "medium", low: POTTING_MIX.low, high: POTTING_MIX.high };
  }
  if (texture === undefined) return undefined;
  const row = SOIL_WATER[texture];
  return {
    m3PerM3: middle(row.available),
    how: "texture",
    low: row.available.low,
    high: row.available.high,
    fieldCapacity: middle(row.fieldCapacity),
  };
}

import type { SourceRef } from "../core/working.ts";
import type { Soil } from "../states/parts.ts";

type Texture = NonNullable<Soil["texture"]>;

interface Row {
  textures: readonly Texture[];
  lowCmolPerKg: number;
  highCmolPerKg: number;
}

/**
 * Usual exchange capacity of mineral soils by texture. Source: Ohioline ANR-81 (2019), Table 1 (SN-126). Textures that
 * the table does not name have no row.
 */
export const USUAL_CEC: { source: SourceRef; rows: readonly Row[]; organic: readonly [number, number] } = {
  source: { key: "ohioline-anr-81", locator: "Table 1" },
  rows: [
    { textures: ["sand"], lowCmolPerKg: 3, highCmolPerKg: 5 },
    { textures: ["loam"], lowCmolPerKg: 10, highCmolPerKg: 15 },
    { textures: ["silt-loam"], lowCmolPerKg: 15, highCmolPerKg: 25 },
    { textures: ["clay", "silty-clay", "silty-clay-loam"], lowCmolPerKg: 20, highCmolPerKg: 50 },
  ],
  organic: [50, 100],
};

/** The usual capacity of a texture, where the table names it. */
export const usualCec = (texture: Texture | undefined): Row | undefined =>
  USUAL_CEC.rows.find((row) => texture !== undefined && row.textures.includes(texture));

/**
 * Share of the exchange capacity that each cation holds in a soil in order. Source: report form of the University of
 * Massachusetts laboratory, 2014 (SN-205).
 */
export const BASE_SATURATION_PCT = {
  source: { key: "umass-report-form", locator: "base saturation" } as SourceRef,
  ca: { low: 50, high: 80 },
  mg: { low: 10, high: 30 },
  k: { low: 2, high: 7 },
} as const;

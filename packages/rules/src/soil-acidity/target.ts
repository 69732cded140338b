import type { SourceRef } from "../core/working.ts";

/**
 * The pH to lime to unless the office set another: within Georgia's 6.3 to 6.8 for pepper (SN-221), within the 6.2 to 6.8
 * most crops want (SN-614), at the upper end of the 6.2 to 6.5 that Penn State keeps for fruiting crops (SN-237); and a pH
 * for which every method held here has a figure.
 */
export const LIME_TARGET = {
  ph: 6.5,
  /** Georgia's range: within it nothing is done. */
  low: 6.3,
  high: 6.8,
  source: { key: "uga-crop-176", locator: "target pH 6.3 to 6.8 (SN-221)" } as SourceRef,
  beside: [
    { key: "ohio-agronomy-quoted", locator: "6.2 to 6.8 (SN-614)" },
    { key: "psu-fertigation", locator: "6.2 to 6.5 (SN-237)" },
  ] as readonly SourceRef[],
} as const;

/** Above this peppers are out of the range that FAO's pepper card gives: only then is acidifying thought of. */
export const HIGHEST_PEPPER_PH = {
  ph: 7,
  source: { key: "fao-pepper-card", locator: "pH 5.5 to 7.0" },
} as const;

/** Below this out of it. */
export const LOWEST_PEPPER_PH = 5.5;

/** Whether lime is due. With the office's own target anything below it; else what lies below the published range. */
export const limeIsDue = (waterPh: number, officeTargetPh: number | undefined): boolean =>
  officeTargetPh === undefined ? waterPh < LIME_TARGET.low : waterPh < officeTargetPh;

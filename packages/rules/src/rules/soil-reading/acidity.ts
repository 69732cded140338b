import type { SourceRef } from "../../core/working.ts";

/** Where a soil's pH stands for pepper. */
export type PhBand = "too-acid" | "acid" | "fit" | "high" | "too-high";

/** Georgia's target for pepper (crop sheet 176, SN-221), within the range of FAO's pepper card. */
export const PH_TARGET = {
  low: 6.3,
  high: 6.8,
  source: { key: "uga-crop-176", locator: "target pH" } as SourceRef,
};
export const PH_RANGE = { low: 5.5, high: 7, source: { key: "fao-pepper-card", locator: "pH" } as SourceRef };

export function phBand(ph: number): PhBand {
  if (ph < PH_RANGE.low) return "too-acid";
  if (ph < PH_TARGET.low) return "acid";
  if (ph <= PH_TARGET.high) return "fit";
  return ph <= PH_RANGE.high ? "high" : "too-high";
}

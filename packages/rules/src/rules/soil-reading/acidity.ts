import type { Range } from "../../core/rule.ts";
import type { SourceRef } from "../../core/working.ts";
import { say } from "../../text/message.ts";

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

/** Bands at the tenth that laboratories print; the lowest starts where the scale of a soil's pH does. */
const BANDS: readonly { band: PhBand; low: number; high: number | null }[] = [
  { band: "too-acid", low: 2, high: PH_RANGE.low - 0.1 },
  { band: "acid", low: PH_RANGE.low, high: PH_TARGET.low - 0.1 },
  { band: "fit", low: PH_TARGET.low, high: PH_TARGET.high },
  { band: "high", low: PH_TARGET.high + 0.1, high: PH_RANGE.high },
  { band: "too-high", low: PH_RANGE.high + 0.1, high: null },
].map((b) => ({
  band: b.band as PhBand,
  low: Math.round(b.low * 10) / 10,
  high: b.high === null ? null : Math.round(b.high * 10) / 10,
}));

export function phRange(ph: number): Range {
  const band = phBand(ph);
  return {
    id: "pH",
    name: say("soil-reading.range.ph"),
    unit: "pH",
    value: ph,
    classes: BANDS.map((b) => ({ name: say(`soil-reading.ph-band.${b.band}`), low: b.low, high: b.high })),
    class: BANDS.findIndex((b) => b.band === band),
    guide: { id: "pepper-ph", title: "Georgia target within the FAO range for peppers", status: "seen" },
  };
}

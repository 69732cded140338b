import { refuse } from "../../core/errors.ts";
import type { SourceRef } from "../../core/working.ts";
import {
  CM_PER_INCH,
  KG_PER_HA_PER_LB_PER_ACRE,
  KG_PER_HA_PER_TON_PER_ACRE,
} from "../../tables/landUnits.ts";
import { SMP_ROWS } from "../../tables/smp.ts";

export const LIME_METHODS = ["mehlich", "adams-evans", "smp", "tri-state", "exchangeable-acidity"] as const;
export type LimeMethod = (typeof LIME_METHODS)[number];

export interface LimeInput {
  method: LimeMethod;
  /** Needed by the buffer methods. */
  bufferPh?: number;
  targetPh: number;
  /** Needed by all but `smp` and `tri-state`. */
  waterPh?: number;
  /** Needed by `exchangeable-acidity`. */
  acidityCmolPerKg?: number;
}

/** The depth each method's rate is for, and where it comes from. */
export const METHOD_BASE = {
  mehlich: {
    depthCm: 6.67 * CM_PER_INCH,
    source: { key: "mehlich-buffer-ncda", locator: "Ac = 4 (6.6 - BpH); factor table" },
  },
  "adams-evans": {
    depthCm: 6.67 * CM_PER_INCH,
    source: { key: "adams-evans-1962", locator: "pH = 7.79 - 5.55 Hs + 2.27 Hs^2" },
  },
  smp: { depthCm: 8 * CM_PER_INCH, source: { key: "smp-1961", locator: "single buffer table" } },
  "tri-state": {
    depthCm: 8 * CM_PER_INCH,
    source: { key: "tri-state-e2567", locator: "mineral soil, by lime test index" },
  },
  "exchangeable-acidity": {
    depthCm: 7 * CM_PER_INCH,
    source: { key: "penn-state-lime", locator: "targets 7.0 and 6.5" },
  },
} as const satisfies Record<LimeMethod, { depthCm: number; source: SourceRef }>;

/** Adams-Evans: share of the exchange that is acid at a pH, from pH = 7.79 - 5.55 Hs + 2.27 Hs^2. */
const acidShare = (ph: number) => (5.55 - Math.sqrt(5.55 ** 2 - 4 * 2.27 * (7.79 - ph))) / (2 * 2.27);

/** Mehlich buffer acidity, Ac = 4 (6.6 - BpH) [meq/100 cm3], not below 0 (SN-601). */
export const mehlichAcidity = (bufferPh: number) => Math.max(0, 4 * (6.6 - bufferPh));

/** Adams-Evans exchange acidity, H = 8 (8.00 - BpH) [meq/100 g], not below 0 (SN-606). */
export const adamsEvansAcidity = (bufferPh: number) => Math.max(0, 8 * (8 - bufferPh));

/** Pure, fully effective CaCO3 for the method's own depth [kg/ha]. */
export function caco3AtBaseDepth(input: LimeInput): number {
  return BY_METHOD[input.method](input);
}

const BY_METHOD: Record<LimeMethod, (input: LimeInput) => number> = {
  /** LR = Ac (target - pH) / (6.6 - pH), tons per acre (SN-602). */
  mehlich(input) {
    const bufferPh = need(input, "bufferPh");
    const ph = need(input, "waterPh");
    within("targetPh", input.targetPh, 4, 6.6);
    if (input.targetPh <= ph) return 0;
    const tons = (mehlichAcidity(bufferPh) * (input.targetPh - ph)) / (6.6 - ph);
    return tons * KG_PER_HA_PER_TON_PER_ACRE;
  },
  /** LR = 8000 (8 - BpH) / Hs1 x (Hs1 - Hs2), pounds of pure CaCO3 per acre (SN-607). */
  "adams-evans"(input) {
    const bufferPh = need(input, "bufferPh");
    const ph = need(input, "waterPh");
    within("targetPh", input.targetPh, 4.4, 7.7);
    if (input.targetPh <= ph) return 0;
    within("waterPh", ph, 4.4, 7.7);
    const before = acidShare(ph);
    const pounds = ((1000 * adamsEvansAcidity(bufferPh)) / before) * (before - acidShare(input.targetPh));
    return pounds * KG_PER_HA_PER_LB_PER_ACRE;
  },
  smp(input) {
    const bufferPh = need(input, "bufferPh");
    within("bufferPh", bufferPh, 5, 8);
    within("targetPh", input.targetPh, 6, 7);
    if (input.waterPh !== undefined && input.targetPh <= input.waterPh) return 0;
    return smpTonsPerAcre(bufferPh, input.targetPh) * KG_PER_HA_PER_TON_PER_ACRE;
  },
  /** Tons per acre by the lime test index, 10 x the SMP buffer pH, not below 0 (SN-609). */
  "tri-state"(input) {
    const bufferPh = need(input, "bufferPh");
    within("bufferPh", bufferPh, 5, 8);
    const line = TRI_STATE_LINES.find((l) => l.targetPh === input.targetPh);
    if (!line) {
      const accepted = TRI_STATE_LINES.map((l) => l.targetPh).join(", ");
      refuse("targetPh", "this method has equations for three targets only", accepted, input.targetPh);
    }
    if (input.waterPh !== undefined && input.targetPh <= input.waterPh) return 0;
    return Math.max(0, line.at0 - line.perIndex * 10 * bufferPh) * KG_PER_HA_PER_TON_PER_ACRE;
  },
  /** 1000 lb CCE/A per meq to pH 7.0; to pH 6.5: 840 per meq above 4.0 meq, else 2000 lb where pH is below 6.5 (SN-604, SN-605). */
  "exchangeable-acidity"(input) {
    const acidity = need(input, "acidityCmolPerKg");
    const ph = need(input, "waterPh");
    if (input.targetPh !== 7 && input.targetPh !== 6.5) {
      refuse("targetPh", "this method has rates for two targets only", "6.5 or 7", input.targetPh);
    }
    if (ph >= input.targetPh) return 0;
    const pounds = input.targetPh === 7 ? 1000 * acidity : acidity > 4 ? 840 * acidity : 2000;
    return pounds * KG_PER_HA_PER_LB_PER_ACRE;
  },
};

/** Tri-State equations, tons per acre for 8 in (SN-609, from memory; within 0.1 of the SMP table). */
const TRI_STATE_LINES = [
  { targetPh: 6, at0: 49.3, perIndex: 0.71 },
  { targetPh: 6.5, at0: 60.4, perIndex: 0.87 },
  { targetPh: 6.8, at0: 71.4, perIndex: 1.03 },
] as const;

/** Straight between the table's rows and targets; above its last row the last step goes on down to 0. */
function smpTonsPerAcre(bufferPh: number, targetPh: number): number {
  const at = Math.min(Math.max(Math.floor((bufferPh - 5) * 10 + 1e-9), 0), SMP_ROWS.length - 2);
  const [lower, upper] = [SMP_ROWS[at], SMP_ROWS[at + 1]];
  if (!lower || !upper) throw new Error("the SMP table has no such row");
  const along = (bufferPh - lower.bufferPh) / (upper.bufferPh - lower.bufferPh);
  const column = (i: 0 | 1 | 2) =>
    Math.max(0, lower.tonsPerAcre[i] + along * (upper.tonsPerAcre[i] - lower.tonsPerAcre[i]));
  const [to7, to65, to6] = [column(0), column(1), column(2)];
  return targetPh >= 6.5
    ? to65 + ((targetPh - 6.5) / 0.5) * (to7 - to65)
    : to6 + ((targetPh - 6) / 0.5) * (to65 - to6);
}

export const PH_AFTER_METHODS = ["mehlich", "adams-evans", "smp"] as const;
export type PhAfterMethod = (typeof PH_AFTER_METHODS)[number];

/**
 * The pH that an amount of fully effective CaCO3 leaves behind, for the method's own depth: its equation or table turned
 * round. Null where more is given than the method can answer for (Mehlich to 6.6, Adams-Evans to 7.7, SMP to 7.0), and
 * by SMP also where less is given than its lowest target of 6.0 takes.
 */
export function phAfterLime(
  method: PhAfterMethod,
  bufferPh: number,
  waterPh: number,
  caco3KgPerHa: number,
): number | null {
  return PH_AFTER[method](bufferPh, waterPh, caco3KgPerHa);
}

const PH_AFTER: Record<PhAfterMethod, (bufferPh: number, waterPh: number, kgPerHa: number) => number | null> =
  {
    mehlich(bufferPh, waterPh, kgPerHa) {
      const acidity = mehlichAcidity(bufferPh);
      if (acidity === 0 || waterPh >= 6.6) return null;
      const after = waterPh + ((kgPerHa / KG_PER_HA_PER_TON_PER_ACRE) * (6.6 - waterPh)) / acidity;
      return after <= 6.6 ? after : null;
    },
    "adams-evans"(bufferPh, waterPh, kgPerHa) {
      within("soilPh", waterPh, 4.4, 7.7);
      const acidity = adamsEvansAcidity(bufferPh);
      if (acidity === 0) return null;
      const before = acidShare(waterPh);
      const left = before - ((kgPerHa / KG_PER_HA_PER_LB_PER_ACRE) * before) / (1000 * acidity);
      const after = 7.79 - 5.55 * left + 2.27 * left ** 2;
      return left > 0 && after <= 7.7 ? after : null;
    },
    smp(bufferPh, waterPh, kgPerHa) {
      within("bufferPh", bufferPh, 5, 8);
      const tons = kgPerHa / KG_PER_HA_PER_TON_PER_ACRE;
      const [to6, to65, to7] = [6, 6.5, 7].map((target) => smpTonsPerAcre(bufferPh, target));
      if (to6 === undefined || to65 === undefined || to7 === undefined) return null;
      if (!(to6 < to65 && to65 < to7) || tons < to6 || tons > to7 || waterPh >= 6) return null;
      return tons <= to65
        ? 6 + (0.5 * (tons - to6)) / (to65 - to6)
        : 6.5 + (0.5 * (tons - to65)) / (to7 - to65);
    },
  };

function need(input: LimeInput, field: "bufferPh" | "waterPh" | "acidityCmolPerKg"): number {
  const value = input[field];
  if (value === undefined) refuse(field, `is needed by the method ${input.method}`, "a number");
  return value;
}

function within(field: string, value: number, low: number, high: number): void {
  if (!(value >= low && value <= high)) {
    refuse(field, `must be between ${low} and ${high} for this method`, `${low} to ${high}`, value);
  }
}

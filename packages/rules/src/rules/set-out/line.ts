import type { FieldNote, Settings } from "../../states/parts.ts";

/** Nights in which a set-out plant takes hold (cp). */
export const ESTABLISHMENT_DAYS = 14;
/** Dates looked at, today included. */
export const HORIZON_DAYS = 90;
/** Fewer years say nothing about a spring's cold (catalogue). */
export const FEWEST_YEARS = 8;
/** With fewer, a tail must carry its interval (catalogue). */
export const YEARS_FOR_TAILS = 20;
/** Days in a row that must be within the risk, so that one lucky date does not count (cp). */
export const STEADY_DAYS = 7;
/** Days of hardening before the open bed (TR-14, from memory: 7 to 10). */
export const HARDENING_DAYS = 7;
/** True leaves of a plant ready for the bed (TR-14, from memory: 6 to 8). */
export const READY_LEAVES = 6;
/** Soil at 10 cm in the morning below which roots stand still (TR-13, from memory: 16 to 18 C). */
export const SOIL_FLOOR_C = 16;
/** Air at which a plant cell freezes is a little lower; the thermometer in the screen reads this. */
export const FROST_C = 0;

/** The office's line for one planting, each number the office's own or common practice. */
export interface Line {
  floorC: number;
  acceptedRisk: number;
  frostRisk: number;
  /** What a plant may meet in the window after setting out on that day. */
  allowedOn(lead: number): Allowed;
  hardened: boolean;
  leaves: number | null;
}

interface Allowed {
  nights: number;
  degreeHours: number;
  stage: "sturdy" | "tender";
}

/** Defaults (cp): a hardened plant with its leaves shrugs off a few cool nights, a soft one hardly any. */
const DEFAULT_ALLOWED = {
  sturdy: { nights: 5, degreeHours: 60 },
  tender: { nights: 2, degreeHours: 20 },
} as const;

/**
 * The line that decides. Defaults (cp): floor 12 C, one spring in five above the allowed dose, one in twenty with frost.
 * A plant nobody has noted as hardened counts as tender until it can have been hardened.
 */
export function lineOf(settings: Settings, notes: FieldNote[], today: string): Line {
  const hardened = notes.some((n) => n.kind === "hardened" && n.on <= today);
  const leaves = latestValue(notes, "true-leaves", today);
  const small = leaves !== null && leaves < READY_LEAVES;
  const allowed = (stage: Allowed["stage"]): Allowed => ({
    nights: settings.setOutAllowedNights ?? DEFAULT_ALLOWED[stage].nights,
    degreeHours: settings.setOutAllowedDegreeHours ?? DEFAULT_ALLOWED[stage].degreeHours,
    stage,
  });
  const tender = allowed("tender");
  const sturdy = allowed("sturdy");
  return {
    floorC: settings.coldFloorC ?? 12,
    acceptedRisk: settings.setOutAcceptedRisk ?? 0.2,
    frostRisk: settings.setOutFrostRisk ?? 0.05,
    hardened,
    leaves,
    allowedOn: (lead) => (small || (!hardened && lead < HARDENING_DAYS) ? tender : sturdy),
  };
}

function latestValue(notes: FieldNote[], kind: FieldNote["kind"], today: string): number | null {
  const seen = notes.filter((n) => n.kind === kind && n.value !== undefined && n.on <= today);
  const latest = seen.reduce<FieldNote | undefined>((a, b) => (a && a.on > b.on ? a : b), undefined);
  return latest?.value ?? null;
}

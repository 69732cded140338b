import type { SourceRef } from "../../core/working.ts";
import type { SoilTest } from "../../states/parts.ts";
import { PEPPER_SALT_TOLERANCE } from "../../tables/saltTolerance.ts";

type Extraction = NonNullable<NonNullable<SoilTest["ec"]>["extraction"]>;

/** A salt reading against the published bound of its own extraction. */
export type SaltReading =
  | { kind: "read"; extraction: Extraction; fine: boolean; limitDsPerM: number; source: SourceRef }
  | { kind: "no-extraction" }
  | { kind: "no-bound"; extraction: Extraction };

const [pepper] = PEPPER_SALT_TOLERANCE;

/**
 * Bounds by extraction: saturated paste, pepper's threshold (Maas 1990); 1:2, the Massachusetts report's "below 0.6"
 * (SN-205). None is held for 1:1 and 1:5, and none is derived by conversion.
 */
const BOUNDS: Partial<Record<Extraction, { limitDsPerM: number; source: SourceRef }>> = {
  "saturated-paste": { limitDsPerM: pepper.thresholdDsPerM.low, source: pepper.source },
  "1:2": { limitDsPerM: 0.6, source: { key: "umass-report-form", locator: "soluble salts 1:2" } },
};

/** The general comfort of vegetables, from a page that does not name its extraction; shown beside a paste reading. */
export const VEGETABLE_COMFORT = {
  dSPerM: 2,
  source: { key: "csu-soil-test-2014", locator: "SN-129" } as SourceRef,
} as const;

export function readSalts(ec: NonNullable<SoilTest["ec"]>): SaltReading {
  if (ec.extraction === undefined) return { kind: "no-extraction" };
  const bound = BOUNDS[ec.extraction];
  if (!bound) return { kind: "no-bound", extraction: ec.extraction };
  return { kind: "read", extraction: ec.extraction, fine: ec.dSPerM <= bound.limitDsPerM, ...bound };
}

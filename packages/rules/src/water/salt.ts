import { daysBetween } from "../core/days.ts";
import { leachingFractionOf } from "../quantities/water/leachingRequirement.ts";
import { saltStressCoefficient, saltStressHoldsTo } from "../quantities/water/salinityStress.ts";
import { eceUnderWater } from "../quantities/water/soilSalinity.ts";
import type { SoilTest, WaterTest } from "../states/parts.ts";
import { PEPPER_WATER } from "../tables/cropCoefficients.ts";
import { PEPPER_SALT_TOLERANCE } from "../tables/saltTolerance.ts";

const [tolerance] = PEPPER_SALT_TOLERANCE;

/** Pepper and salt, the default of two sources (reference SA-1), with the seasonal Ky. */
export const PEPPER_SALT = {
  thresholdDsPerM: tolerance.thresholdDsPerM.low,
  slopePctPerDsPerM: tolerance.slopePctPerDsPerM.low,
  ky: PEPPER_WATER.ky.value,
} as const;

/** Leaching that eq. 93 is read at where nobody measured the soil: the lower end of the 15 to 20 % of FAO-56 p. 181. */
export const USUAL_LEACHING = 0.15;
/** A test tells of the salt of its own year (common practice). */
const TEST_HOLDS_DAYS = 365;

/** The salt that a zone's roots stand in [dS/m of the saturated paste]. */
export interface Salinity {
  eceDsPerM: number;
  how: "soil-test" | "water-test";
  /** Ks of eq. 91. */
  saltKs: number;
  /** Beyond this the equation is not stated. */
  holdsToDsPerM: number;
}

const holds = (sampledOn: string, today: string): boolean =>
  sampledOn <= today && daysBetween(sampledOn, today) <= TEST_HOLDS_DAYS;

/** The latest conductivity of the water that still holds [dS/m]. */
export const ecOfWater = (tests: WaterTest[], today: string): number | undefined =>
  tests
    .filter((t) => t.ecDSPerM !== undefined && holds(t.sampledOn, today))
    .toSorted((a, b) => (a.sampledOn < b.sampledOn ? 1 : -1))[0]?.ecDSPerM;

/**
 * The salinity of a zone's soil: measured in the saturated paste, else what the water settles it at (eq. 93, leaching of
 * 15 %). Other extractions are another scale and are not read here. Undefined where neither is known.
 */
export function salinityOf(
  soilTests: SoilTest[],
  waterTests: WaterTest[],
  today: string,
): Salinity | undefined {
  const measured = soilTests
    .filter((t) => t.ec?.extraction === "saturated-paste" && holds(t.sampledOn, today))
    .toSorted((a, b) => (a.sampledOn < b.sampledOn ? 1 : -1))[0]?.ec?.dSPerM;
  const water = ecOfWater(waterTests, today);
  const eceDsPerM = measured ?? (water === undefined ? undefined : eceUnderWater(water, USUAL_LEACHING));
  if (eceDsPerM === undefined) return undefined;
  return {
    eceDsPerM,
    how: measured === undefined ? "water-test" : "soil-test",
    saltKs: saltStressCoefficient(eceDsPerM, PEPPER_SALT),
    holdsToDsPerM: saltStressHoldsTo(PEPPER_SALT),
  };
}

/** More than this share is not advised as leaching: nutrients go with it and roots drown (common practice). */
const MOST_LEACHING = 0.3;

/** What must pass below the roots to hold the soil at pepper's threshold. */
export interface Leaching {
  /** LR; undefined where no leaching holds that soil with this water. */
  required: number | undefined;
  /** Share of rain and irrigation that already drained. */
  drained: number;
  /** What the gross depth is raised by, as 1 / (1 - share); 0 where none is needed. */
  share: number;
}

/**
 * The leaching that the water asks for (FAO-29), and whether more must be given for it: only where the soil is, or with
 * this water would be, above pepper's threshold, and less has drained so far than required. Undefined without a water test.
 */
export function leachingOf(input: {
  ecwDsPerM: number | undefined;
  salinity: Salinity | undefined;
  drainedMm: number;
  givenMm: number;
}): Leaching | undefined {
  const { ecwDsPerM, salinity, drainedMm, givenMm } = input;
  if (ecwDsPerM === undefined || salinity === undefined) return undefined;
  const { thresholdDsPerM } = PEPPER_SALT;
  const drained = givenMm > 0 ? Math.min(1, drainedMm / givenMm) : 0;
  if (ecwDsPerM >= 2.5 * thresholdDsPerM) return { required: undefined, drained, share: 0 };
  const required = leachingFractionOf(ecwDsPerM, thresholdDsPerM);
  const needed = salinity.eceDsPerM > thresholdDsPerM && drained < required;
  return { required, drained, share: needed ? Math.min(MOST_LEACHING, required) : 0 };
}

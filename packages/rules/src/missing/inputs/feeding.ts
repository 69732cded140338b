import { daysBetween, localDay } from "../../core/days.ts";
import { latestTestOf } from "../../food/latestTest.ts";
import { nitrateOf } from "../../food/nitrateCheck.ts";
import type { PlantingState } from "../../states/states.ts";
import { KG_PER_HA_PER_LB_PER_ACRE } from "../../tables/landUnits.ts";
import { agedSd, CP, RETEST } from "../published.ts";
import type { UncertainInput } from "../types.ts";

type Input = UncertainInput<PlantingState>;

/** What crops take and dressings bring moves a soil's potassium so much a year, of its value (common practice). */
const K_DRIFT_A_YEAR = 0.1;
/** Potassium of a soil nobody tested, by Mehlich-3 [mg/kg] (common practice). */
const UNKNOWN_K = { low: 40, high: 250 } as const;
/** Nitrate-N in the upper 30 cm before or soon after setting out [mg/kg] (common practice). */
const UNKNOWN_NITRATE = { low: 2, mode: 10, high: 30 } as const;
/** Nitrogen a soil releases in a year for each percent of organic matter [lb/A], as feeding has it: from memory. */
const RELEASE_LB_PER_ACRE = { low: 10, high: 40 } as const;
/** Organic matter of a soil nobody tested [%] (common practice). */
const UNKNOWN_MATTER = { low: 1, mode: 2.5, high: 4 } as const;
/** Bulk density of a topsoil nobody weighed [kg/m3] (common practice). */
const DENSITY = { low: 1100, mode: 1300, high: 1550 } as const;

/** What a planting's food rests on that is not known for sure. */
export function feedingInputs(state: PlantingState): Input[] {
  const today = localDay(state.asOf, state.site.timeZone);
  const judged = new Set(state.feeding.credits.map((c) => c.kind));
  return [
    potassium(state, today),
    judged.has("organic-matter") ? undefined : soilNitrogen(state, today),
    judged.has("soil-nitrate") ? undefined : soilNitrate(state, today),
    judged.has("irrigation-water") ? undefined : waterNitrate(state),
    judged.has("soil-nitrate") ? undefined : bulkDensity(state),
  ].filter((i) => i !== undefined);
}

const testId = "not-tested";

function potassium(state: PlantingState, today: string): Input {
  const test = latestTestOf(
    state.soilTests,
    today,
    (t) =>
      t.medium === "mineral-soil" &&
      t.values.some((v) => v.nutrient === "K" && v.extractant !== undefined && v.mgPerKg > 0),
  )?.test;
  if (!test) {
    return {
      id: "potassium-first",
      spread: { shape: "uniform", unit: "mg/kg", ...UNKNOWN_K, source: CP },
      cost: "laboratory",
      apply: (s, mgPerKg) => ({
        ...s,
        soilTests: [
          ...s.soilTests,
          {
            id: `${testId}-k`,
            sampledOn: today,
            depthCm: 17,
            medium: "mineral-soil",
            values: [{ nutrient: "K", extractant: "mehlich-3", mgPerKg }],
          },
        ],
      }),
    };
  }
  const mean = test.values.find((v) => v.nutrient === "K" && v.extractant !== undefined)?.mgPerKg ?? 0;
  const years = daysBetween(test.sampledOn, today) / 365;
  return {
    id: "potassium-again",
    spread: {
      shape: "normal",
      unit: "mg/kg",
      mean,
      sd: mean * agedSd(RETEST.contentCv, K_DRIFT_A_YEAR, years),
      least: 0,
      most: 3 * mean,
      source: RETEST.source,
    },
    cost: "laboratory",
    apply: (s, mgPerKg) => ({
      ...s,
      soilTests: s.soilTests.map((t) =>
        t.id === test.id
          ? { ...t, values: t.values.map((v) => (v.nutrient === "K" ? { ...v, mgPerKg } : v)) }
          : t,
      ),
    }),
  };
}

/** What the soil itself gives. The range is from memory and feeding counts on its lowest alone, so that is the likeliest here. */
function soilNitrogen(state: PlantingState, today: string): Input {
  const pct = latestTestOf(
    state.soilTests,
    today,
    (t) => t.medium === "mineral-soil" && t.organicMatterPct !== undefined,
  )?.test.organicMatterPct;
  const kgPerHa = (lbPerAcre: number, matterPct: number) =>
    Math.min(500, lbPerAcre * matterPct * KG_PER_HA_PER_LB_PER_ACRE);
  const { low, high } = RELEASE_LB_PER_ACRE;
  const source = { key: "nitrogen-credits-memory", locator: "SN-911" };
  const apply: Input["apply"] = (s, value) => ({
    ...s,
    feeding: {
      ...s.feeding,
      credits: [...s.feeding.credits, { kind: "organic-matter", nKgPerHaLow: value, nKgPerHaHigh: value }],
    },
  });
  if (pct !== undefined) {
    return {
      id: "soil-nitrogen",
      spread: {
        shape: "triangular",
        unit: "kg/ha",
        low: kgPerHa(low, pct),
        mode: kgPerHa(low, pct),
        high: kgPerHa(high, pct),
        source,
      },
      cost: "free",
      apply,
    };
  }
  return {
    id: "organic-matter",
    spread: {
      shape: "triangular",
      unit: "kg/ha",
      low: kgPerHa(low, UNKNOWN_MATTER.low),
      mode: kgPerHa(low, UNKNOWN_MATTER.mode),
      high: kgPerHa((low + high) / 2, UNKNOWN_MATTER.high),
      source,
    },
    cost: "laboratory",
    apply,
  };
}

function soilNitrate(state: PlantingState, today: string): Input | undefined {
  if (state.soilTests.some((t) => nitrateOf(t) !== undefined)) return undefined;
  return {
    id: "soil-nitrate",
    spread: { shape: "triangular", unit: "mg/kg", ...UNKNOWN_NITRATE, source: CP },
    cost: "cheap",
    apply: (s, mgPerKg) => ({
      ...s,
      soilTests: [
        ...s.soilTests,
        {
          id: `${testId}-nitrate`,
          sampledOn: today,
          depthCm: 30,
          medium: "mineral-soil",
          values: [{ nutrient: "NO3-N", extractant: "kcl", mgPerKg }],
        },
      ],
    }),
  };
}

/** Only where it is known how much is watered: feeding cannot count it else. */
function waterNitrate(state: PlantingState): Input | undefined {
  const { nitrateNMgPerL, irrigationMm, givenMm } = state.water ?? {};
  const tested = state.waterTests?.some((t) => t.nitrateNMgPerL !== undefined) ?? false;
  if (nitrateNMgPerL !== undefined || tested || (irrigationMm ?? givenMm) === undefined) return undefined;
  return {
    id: "water-nitrate",
    spread: {
      shape: "triangular",
      unit: "mg/L",
      low: 0,
      mode: 0.2,
      high: 15,
      source: { key: "nolan-1997", locator: "abstract: medians 0.2 and 4.8 mg/L; the shape is (cp)" },
    },
    cost: "cheap",
    apply: (s, value) => ({ ...s, water: { ...s.water, nitrateNMgPerL: value } }),
  };
}

/** Turns a nitrate test into kilograms; of no use without one. */
function bulkDensity(state: PlantingState): Input | undefined {
  const read = state.soilTests.some((t) => nitrateOf(t) !== undefined);
  if (!read || state.bed.soil.bulkDensityKgPerM3 !== undefined) return undefined;
  return {
    id: "bulk-density",
    spread: { shape: "triangular", unit: "kg/m3", ...DENSITY, source: CP },
    cost: "cheap",
    apply: (s, value) => ({
      ...s,
      bed: { ...s.bed, soil: { ...s.bed.soil, bulkDensityKgPerM3: value } },
    }),
  };
}

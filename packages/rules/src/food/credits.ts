import { daysBetween } from "../core/days.ts";
import { soilTestMass } from "../quantities/soil/soilTestMass.ts";
import type { SoilTest } from "../states/parts.ts";
import type { PlantingState } from "../states/states.ts";

/** Nitrogen from elsewhere [kg/ha], as a range. */
export interface Credit {
  kind: PlantingState["feeding"]["credits"][number]["kind"];
  low: number;
  high: number;
  how: "given" | "computed";
}

/** A nitrate test speaks for about two months (common practice). */
const NITRATE_TEST_HOLDS_DAYS = 60;
/** Of nitrate found in the soil, half to all is still there when roots come (common practice). */
const NITRATE_KEPT = { low: 0.5, high: 1 } as const;
/** Mineral topsoil where nobody weighed it (common practice). */
const BULK_DENSITY_KG_PER_M3 = 1300;

/** 1 mg/L in 1 mm on a hectare (10 m3) is 0.01 kg. */
const nitrateInWaterKgPerHa = (mgPerL: number, mm: number) => (mgPerL * mm) / 100;

/** The credits as judged by the agent, and those that can be computed where the agent gave none of that kind. */
export function creditsOf(state: PlantingState, test: SoilTest | undefined, start: string): Credit[] {
  const credits: Credit[] = state.feeding.credits.map((c) => ({
    kind: c.kind,
    low: c.nKgPerHaLow,
    high: c.nKgPerHaHigh,
    how: "given",
  }));
  const has = (kind: Credit["kind"]) => credits.some((c) => c.kind === kind);
  const nitrate = state.water?.nitrateNMgPerL;
  const mm = state.water?.irrigationMm;
  if (nitrate !== undefined && mm !== undefined && !has("irrigation-water")) {
    const kg = nitrateInWaterKgPerHa(nitrate, mm);
    credits.push({ kind: "irrigation-water", low: kg, high: kg, how: "computed" });
  }
  const inSoil = test && soilNitrate(state, test, start);
  if (inSoil !== undefined && !has("soil-nitrate")) {
    credits.push({
      kind: "soil-nitrate",
      low: inSoil * NITRATE_KEPT.low,
      high: inSoil * NITRATE_KEPT.high,
      how: "computed",
    });
  }
  return credits;
}

function soilNitrate(state: PlantingState, test: SoilTest, start: string): number | undefined {
  const value = test.values.find((v) => v.nutrient === "NO3-N" && v.extractant !== undefined);
  if (!value || test.medium !== "mineral-soil") return undefined;
  if (Math.abs(daysBetween(test.sampledOn, start)) > NITRATE_TEST_HOLDS_DAYS) return undefined;
  const bulkDensityKgPerM3 = state.bed.soil.bulkDensityKgPerM3 ?? BULK_DENSITY_KG_PER_M3;
  return soilTestMass({ mgPerKg: value.mgPerKg, depthCm: test.depthCm, bulkDensityKgPerM3 }).kgPerHa;
}

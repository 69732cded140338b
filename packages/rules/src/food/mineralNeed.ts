import type { SourceRef } from "../core/working.ts";
import { classifyBy } from "../guides/classify.ts";
import { recommendationOf } from "../guides/recommend.ts";
import { responseTo } from "../guides/responseTo.ts";
import type { Guide, Response } from "../guides/schema.ts";
import type { SoilTest } from "../states/parts.ts";
import { KG_PER_HA_PER_LB_PER_ACRE } from "../tables/landUnits.ts";
import { type Range, uptakePerTonne } from "../tables/uptake.ts";

/** Above this P2O5 is questionable at any test level (UC ANR, SN-208: 120 to 150 lb/A, the lower taken). */
export const MOST_P2O5_KG_PER_HA = 120 * KG_PER_HA_PER_LB_PER_ACRE;
/** Most K2O a year for most vegetables (Midwest Vegetable Guide 2022, SN-212: 300 lb/A). */
export const MOST_K2O_KG_PER_HA = 300 * KG_PER_HA_PER_LB_PER_ACRE;

/** Whether and how much of phosphate or potash to give over the season [kg/ha]. */
export interface MineralNeed {
  response: Response | "unknown";
  because?: "no-extractant" | "no-guide" | "needs-cec" | "needs-ph" | "no-test";
  /** Null where the soil was not read: nothing is advised blind. */
  kgPerHa: number | null;
  mgPerKg?: number;
  sources: SourceRef[];
  /** The office's guide, where its grid gave the rate. */
  guide?: { title: string; status: Guide["status"]; low: number; high: number };
}

const middle = ({ low, high }: Range) => (low + high) / 2;

/**
 * The rate of the office's own guide where it chose one with a grid that fits; else what the crop takes up where the soil test
 * says it responds; what the fruit removes where it may; none where it is
 * unlikely. Middle of the published range per tonne, within the published ceiling.
 */
export function mineralNeed(
  nutrient: "P" | "K",
  test: SoilTest | undefined,
  yieldGoalTPerHa: number,
  cecCmolPerKg: number | undefined,
  chosen?: Guide,
): MineralNeed {
  const values = test?.medium === "mineral-soil" ? test.values.filter((v) => v.nutrient === nutrient) : [];
  const value = values.find((v) => v.extractant !== undefined) ?? values[0];
  if (!value) return { response: "unknown", because: "no-test", kgPerHa: null, sources: [] };
  const byGuide = chosen && fromGrid(chosen, nutrient, value, test?.waterPh, cecCmolPerKg);
  if (byGuide) return byGuide;
  const answer = responseTo(nutrient, value.extractant, value.mgPerKg, cecCmolPerKg, test?.waterPh);
  if (answer.response === "unknown") {
    return {
      response: "unknown",
      because: answer.because,
      kgPerHa: null,
      mgPerKg: value.mgPerKg,
      sources: [],
    };
  }
  const sources = answer.readings.map((r) => r.source);
  const field = nutrient === "P" ? "p2o5KgPerT" : "k2oKgPerT";
  const most = nutrient === "P" ? MOST_P2O5_KG_PER_HA : MOST_K2O_KG_PER_HA;
  const perTonne = {
    responds: middle(uptakePerTonne("whole-crop")[field]),
    "may-respond": middle(uptakePerTonne("fruit")[field]),
    unlikely: 0,
  }[answer.response];
  return {
    response: answer.response,
    kgPerHa: Math.min(most, perTonne * yieldGoalTPerHa),
    mgPerKg: value.mgPerKg,
    sources,
  };
}

type Value = SoilTest["values"][number];

/** Middle of the guide's rate for the class; undefined where its grid does not speak of this value. */
function fromGrid(
  guide: Guide,
  nutrient: "P" | "K",
  value: Value,
  waterPh: number | undefined,
  cecCmolPerKg: number | undefined,
): MineralNeed | undefined {
  const found = classifyBy(guide, value.extractant, nutrient, value.mgPerKg, { cecCmolPerKg, waterPh });
  if ("problem" in found) return undefined;
  const rate = recommendationOf(guide, nutrient, found.class);
  if (!rate) return undefined;
  const { lowKgPerHa: low, highKgPerHa: high } = rate;
  return {
    response: found.response,
    kgPerHa: middle({ low, high }),
    mgPerKg: value.mgPerKg,
    sources: [guide.source],
    guide: { title: guide.title, status: guide.status, low, high },
  };
}

import type { Working } from "../../core/working.ts";
import { salinityYield } from "../../quantities/water/salinityYield.ts";
import type { PlantingState } from "../../states/states.ts";
import { PEPPER_SALT_TOLERANCE, type SaltTolerance } from "../../tables/saltTolerance.ts";
import type { SoilSaltReading } from "./soil.ts";
import type { WaterReading } from "./water.ts";

/** From here something is done about it: FAO's tables begin with the loss of a tenth (common practice). */
const LOSS_TO_ACT_PCT = 10;
/** More than this share drained wastes water and nitrate; another water is looked for first (common practice). */
const MOST_LEACHING = 0.3;

type Decision = "fine" | "watch" | "leach" | "better-water";

/** Yield lost to one soil salinity [%], by the default and by the other published tolerance. */
interface Loss {
  eceDsPerM: number;
  lossPct: number;
  /** Smallest and largest over the two tolerances and the span of the conversion. */
  lowPct: number;
  highPct: number;
}

/** Everything an answer is made of. */
export interface Judged {
  decision: Decision;
  soil: SoilSaltReading;
  water: WaterReading | undefined;
  fromSoil: Loss | undefined;
  fromWater: Loss | undefined;
  lossPct: number;
  cost: { kg: number; money: number | undefined } | undefined;
}

const [maas, fao56] = PEPPER_SALT_TOLERANCE;

/** Yield lost at a salinity by a printed tolerance, its range taken at the end that loses most or least [%]. */
export function lossPctAt(eceDsPerM: number, t: SaltTolerance, end: "most" | "least"): number {
  const most = end === "most";
  const { relativeYieldPct } = salinityYield.compute({
    eceDsPerM,
    thresholdDsPerM: most ? t.thresholdDsPerM.low : t.thresholdDsPerM.high,
    slopePctPerDsPerM: most ? t.slopePctPerDsPerM.high : t.slopePctPerDsPerM.low,
  }).value;
  return 100 - relativeYieldPct;
}

function lossOf(ece: { at: number; low: number; high: number }, w: Working): Loss {
  const answer = salinityYield.compute({
    eceDsPerM: ece.at,
    thresholdDsPerM: maas.thresholdDsPerM.low,
    slopePctPerDsPerM: maas.slopePctPerDsPerM.low,
  });
  w.include(answer);
  return {
    eceDsPerM: ece.at,
    lossPct: 100 - answer.value.relativeYieldPct,
    lowPct: w.line(
      "loss least",
      "yield lost by the mildest that is published",
      `12 (ECe - 1.7), ECe = ${ece.low}`,
      lossPctAt(ece.low, fao56, "least"),
      "%",
      fao56.source,
    ),
    highPct: w.line(
      "loss most",
      "yield lost by the harshest that is published",
      `14 (ECe - 1.5), ECe = ${ece.high}`,
      lossPctAt(ece.high, maas, "most"),
      "%",
      maas.source,
    ),
  };
}

/** Puts soil and water together. The soil is what there is now; the water is where it goes without rain. */
export function judge(
  state: PlantingState,
  soil: SoilSaltReading,
  water: WaterReading | undefined,
  w: Working,
): Judged {
  const fromSoil =
    soil.kind === "read"
      ? lossOf({ at: soil.eceDsPerM, low: soil.lowDsPerM, high: soil.highDsPerM }, w)
      : undefined;
  const settled = water?.settledEceDsPerM;
  const fromWater =
    settled === undefined ? undefined : lossOf({ at: settled, low: settled, high: settled }, w);
  const lossPct = w.line(
    "loss",
    "yield lost to salt, the larger of soil and water",
    "max(100 - Yr)",
    Math.max(fromSoil?.lossPct ?? 0, fromWater?.lossPct ?? 0),
    "%",
  );
  const cost = costOf(state, lossPct, w);
  return {
    decision: decide(soil, water, fromSoil, fromWater),
    soil,
    water,
    fromSoil,
    fromWater,
    lossPct,
    cost,
  };
}

function decide(
  soil: SoilSaltReading,
  water: WaterReading | undefined,
  fromSoil: Loss | undefined,
  fromWater: Loss | undefined,
): Decision {
  const { leachingFraction } = water ?? {};
  const drainsTooMuch = leachingFraction === null || (leachingFraction ?? 0) > MOST_LEACHING;
  const poisons = water?.classes.some(
    (c) => c.restriction === "severe" && (c.what === "boron" || c.what === "chloride" || c.what === "sodium"),
  );
  if (drainsTooMuch || poisons) return "better-water";
  if (soilIsSalty(soil, fromSoil) || (fromWater?.lossPct ?? 0) >= LOSS_TO_ACT_PCT) return "leach";
  const limited = water?.classes.some((c) => c.restriction !== "none") ?? false;
  const lossy = (fromSoil?.highPct ?? 0) > 0 || (fromWater?.highPct ?? 0) > 0;
  return limited || lossy ? "watch" : "fine";
}

/** Salty enough to wash. A conversion is believed only where all that is published agrees on the harm. */
export function soilIsSalty(soil: SoilSaltReading, fromSoil: Loss | undefined): boolean {
  const harmPct = soil.kind === "read" && soil.converted ? fromSoil?.lowPct : fromSoil?.lossPct;
  return (harmPct ?? 0) >= LOSS_TO_ACT_PCT;
}

/** What the loss is worth, where a yield goal is set; money only where a price is expected too. */
function costOf(state: PlantingState, lossPct: number, w: Working): Judged["cost"] {
  const { yieldGoalTPerHa, expectedPricePerKg, plants, rowsPerBed, plantSpacingM } = state.planting;
  if (yieldGoalTPerHa === undefined || lossPct === 0) return undefined;
  const lengthM = Math.min(state.bed.lengthM, (plants / rowsPerBed) * plantSpacingM);
  const areaM2 = lengthM * state.bed.spacingM;
  const kg = w.line(
    "kg",
    "fruit lost to salt on this planting",
    `goal × area × loss, goal = ${yieldGoalTPerHa} t/ha, area = ${areaM2} m2 with its alley`,
    (yieldGoalTPerHa / 10) * areaM2 * (lossPct / 100),
    "kg",
  );
  if (expectedPricePerKg === undefined) return { kg, money: undefined };
  const money = w.line(
    "cost",
    "what that fruit would have brought",
    `kg × price, price = ${expectedPricePerKg}`,
    kg * expectedPricePerKg,
    "money",
  );
  return { kg, money };
}

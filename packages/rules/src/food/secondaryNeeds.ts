import type { SourceRef } from "../core/working.ts";
import { classifyBy } from "../guides/classify.ts";
import { chosenGuide } from "../guides/held.ts";
import { gypsumBy, type Mended, magnesiumBy } from "../guides/recommend.ts";
import { guidesFor, verifiedFor } from "../guides/register.ts";
import { responseTo } from "../guides/responseTo.ts";
import type { Guide } from "../guides/schema.ts";
import type { Extractant, SoilNutrient } from "../guides/types.ts";
import type { FedNutrient } from "../states/food.ts";
import type { SoilTest } from "../states/parts.ts";
import type { PlantingState } from "../states/states.ts";
import { KG_PER_HA_PER_LB_PER_ACRE } from "../tables/landUnits.ts";
import { ATOMIC_WEIGHT as W } from "../tables/nutrients.ts";
import { croppedAreaM2 } from "../water/ground.ts";
import { latestTestOf } from "./latestTest.ts";
import { contentPct } from "./mayUse.ts";
import { isOldTest } from "./oldTest.ts";

/** A need of calcium, magnesium or boron that a published sheet asks for [kg/ha]. */
export interface SecondaryNeed {
  nutrient: Extract<FedNutrient, "Ca" | "Mg" | "B">;
  leastKgPerHa: number;
  mostKgPerHa: number;
  source: SourceRef;
}

/** A rate with who asks for it [kg/ha]. */
interface RatedBy {
  low: number;
  high: number;
  source: SourceRef;
}

/** Lime is due below the low end of Georgia's target pH (SN-221). */
const LIME_DUE_BELOW_PH = 6.3;
/** In gypsum, CaSO4 . 2 H2O. */
const CALCIUM_OF_GYPSUM = W.Ca / (W.Ca + W.S + 4 * W.O + 2 * (2 * W.H + W.O));
/** Boron for the tomato group, a medium response: 1 to 2 lb B/A (SN-220). More of it poisons. */
const BORON_LB_PER_ACRE = { low: 1, high: 2 } as const;
/** A rate that a sheet prints as one number may be passed by as much again before it does harm (common practice). */
const TWICE = 2;

/** Calcium, magnesium and boron, only where a guide that fits the test's extractant asks for them. */
export function secondaryNeeds(state: PlantingState, today: string): SecondaryNeed[] {
  const found = latestTestOf(state.soilTests, today, (t) => t.medium === "mineral-soil");
  // Of an old test more is not known than that it was so once, and too much of these does harm.
  if (!found || isOldTest(found.test, today)) return [];
  const { test } = found;
  const own = chosenGuide(state.settings.soilGuide, state.guides);
  return [calcium(test, own), magnesium(test, own), boron(test)].flatMap((need) => {
    if (!need) return [];
    const given = givenSince(state, need.nutrient, test.sampledOn);
    const leastKgPerHa = Math.max(0, need.leastKgPerHa - given);
    return [{ ...need, leastKgPerHa, mostKgPerHa: Math.max(leastKgPerHa, need.mostKgPerHa - given) }];
  });
}

const tested = (test: SoilTest, nutrient: SoilNutrient) =>
  test.values.find((v) => v.nutrient === nutrient && v.extractant !== undefined);

/** The office's guide where it chose one that fits, else those read in their publication that fit the extractant. */
function guidesOf(own: Guide | undefined, extractant: Extractant): readonly Guide[] {
  if (own) return guidesFor([own], "Mg", extractant);
  return verifiedFor("Mg", extractant);
}

/** What all the guides that have a rule for it ask for; undefined where one of them asks for nothing. */
function agreed(guides: readonly Guide[], ask: (guide: Guide) => Mended | undefined): RatedBy | undefined {
  const asked = guides.map((guide) => ({ guide, mended: ask(guide) }));
  const [first] = asked;
  if (!first || asked.some(({ mended }) => mended === undefined || mended.kind === "dolomitic-lime"))
    return undefined;
  const { mended } = first;
  return mended && "lowKgPerHa" in mended
    ? { low: mended.lowKgPerHa, high: mended.highKgPerHa, source: first.guide.source }
    : undefined;
}

function calcium(test: SoilTest, own: Guide | undefined): SecondaryNeed | undefined {
  const value = tested(test, "Ca");
  const { waterPh } = test;
  if (value?.extractant === undefined || waterPh === undefined) return undefined;
  const guides = guidesOf(own, value.extractant).filter((g) => g.recommendations?.gypsum);
  const gypsum = agreed(guides, (guide) => gypsumBy(guide, value.mgPerKg, waterPh));
  return gypsum && rated("Ca", gypsum, CALCIUM_OF_GYPSUM);
}

function magnesium(test: SoilTest, own: Guide | undefined): SecondaryNeed | undefined {
  const value = tested(test, "Mg");
  const { waterPh } = test;
  if (value?.extractant === undefined || waterPh === undefined) return undefined;
  const { extractant, mgPerKg } = value;
  const guides = guidesOf(own, extractant).filter((g) => g.recommendations?.magnesium);
  const asked = agreed(guides, (guide) => {
    const found = classifyBy(guide, extractant, "Mg", mgPerKg);
    const limeIsDue = waterPh < (guide.recommendations?.targetPh?.low ?? LIME_DUE_BELOW_PH);
    return "problem" in found ? undefined : magnesiumBy(guide, found.class, limeIsDue);
  });
  return asked && rated("Mg", asked, 1);
}

const rated = (nutrient: "Ca" | "Mg", { low, high, source }: RatedBy, share: number): SecondaryNeed => ({
  nutrient,
  leastKgPerHa: low * share,
  mostKgPerHa: TWICE * high * share,
  source,
});

function boron(test: SoilTest): SecondaryNeed | undefined {
  const value = tested(test, "B");
  if (!value || responseTo("B", value.extractant, value.mgPerKg).response !== "responds") return undefined;
  return {
    nutrient: "B",
    leastKgPerHa: BORON_LB_PER_ACRE.low * KG_PER_HA_PER_LB_PER_ACRE,
    mostKgPerHa: BORON_LB_PER_ACRE.high * KG_PER_HA_PER_LB_PER_ACRE,
    source: { key: "midwest-vegetable-guide-2022", locator: "SN-220" },
  };
}

/** What was given since the test was taken, from materials whose analysis the shed still holds [kg/ha]. */
function givenSince(state: PlantingState, nutrient: FedNutrient, since: string): number {
  const cropped = croppedAreaM2(state.bed);
  return state.applications
    .filter((a) => a.on > since)
    .reduce((sum, a) => {
      const m = state.shed.find(({ id }) => id === a.materialId);
      return sum + (m ? (a.amountKg * contentPct(m, nutrient) * 100) / Math.max(a.areaM2, cropped) : 0);
    }, 0);
}

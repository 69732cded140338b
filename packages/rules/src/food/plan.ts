import { addDays } from "../../core/days.ts";
import { refuse } from "../../core/errors.ts";
import { type Credit, creditsOf } from "../../food/credits.ts";
import { dayShares, type FeedingDates, feedingDates } from "../../food/curve.ts";
import { type GivenNutrients, givenTo } from "../../food/given.ts";
import { latestTest } from "../../food/latestTest.ts";
import { type MineralNeed, mineralNeed } from "../../food/mineralNeed.ts";
import { dosesAhead, sharesOf, type WeekDose } from "../../food/pool.ts";
import type { SoilTest } from "../../states/parts.ts";
import type { PlantingState } from "../../states/states.ts";
import { KG_PER_HA_PER_LB_PER_ACRE } from "../../tables/landUnits.ts";
import { type Range, uptakePerTonne } from "../../tables/uptake.ts";
import { cationsOf } from "../soil-reading/cations.ts";

/** California bell pepper on drip gained nothing above 195 lb N/A (SN-228). */
export const N_CEILING_KG_PER_HA = 195 * KG_PER_HA_PER_LB_PER_ACRE;
/** What was spread so long before setting out still counts for this crop (common practice). */
const COUNTS_BEFORE_DAYS = 60;

/** The season's nutrients and what is left to give [kg per hectare of cropped land]. */
export interface FeedingPlan {
  dates: FeedingDates;
  /** First day the doses ahead begin: today, or setting out where that is later. */
  from: string;
  need: Range;
  credits: Credit[];
  creditsTotal: Range;
  /** Middle of need less middle of credits, within the ceiling. */
  seasonN: number;
  capped: boolean;
  givenN: number;
  poolN: number;
  weeksN: WeekDose[];
  leftN: number;
  p2o5: MineralNeed;
  k2o: MineralNeed;
  leftP2o5: number | null;
  leftK2o: number | null;
  weeksK2o: WeekDose[];
  given: GivenNutrients[];
  test: SoilTest | undefined;
}

const middle = ({ low, high }: Range) => (low + high) / 2;
const sum = (values: number[]) => values.reduce((a, b) => a + b, 0);

/** The plan for a yield goal, with what was given and what is only thought to have been given. */
export function planFor(
  state: PlantingState,
  yieldGoalTPerHa: number,
  start: string,
  today: string,
  unconfirmed: GivenNutrients[],
): FeedingPlan {
  const dates = feedingDates(start, state.notes, today);
  const from = today > start ? today : start;
  const test = latestTest(state.soilTests, today)?.test;
  const perTonne = uptakePerTonne("whole-crop").nKgPerT;
  const need = { low: perTonne.low * yieldGoalTPerHa, high: perTonne.high * yieldGoalTPerHa };
  const credits = creditsOf(state, test, start);
  const creditsTotal = { low: sum(credits.map((c) => c.low)), high: sum(credits.map((c) => c.high)) };
  const wanted = Math.max(0, middle(need) - middle(creditsTotal));
  const seasonN = Math.min(N_CEILING_KG_PER_HA, wanted);
  const given = [...givenOf(state, start, today), ...unconfirmed];
  const givenN = sum(given.map((g) => g.nKgPerHa));
  const shares = dayShares(dates);
  const n = dosesAhead({
    shares: sharesOf(shares, "n"),
    seasonKgPerHa: seasonN,
    given: given.map((g) => ({ on: g.on, kgPerHa: g.nKgPerHa })),
    from,
  });
  const weeksN = underCeiling(n.weeks, N_CEILING_KG_PER_HA - givenN);
  const cec = test?.cecCmolPerKg ?? (test && cationsOf(test)?.cecCmolPerKg);
  const p2o5 = mineralNeed("P", test, yieldGoalTPerHa, cec);
  const k2o = mineralNeed("K", test, yieldGoalTPerHa, cec);
  const k = dosesAhead({
    shares: sharesOf(shares, "k2o"),
    seasonKgPerHa: k2o.kgPerHa ?? 0,
    given: given.map((g) => ({ on: g.on, kgPerHa: g.k2oKgPerHa })),
    from,
  });
  const left = (needed: number | null, had: number) => (needed === null ? null : Math.max(0, needed - had));
  return {
    dates,
    from,
    need,
    credits,
    creditsTotal,
    seasonN,
    capped: wanted > N_CEILING_KG_PER_HA,
    givenN,
    poolN: n.poolKgPerHa,
    weeksN,
    leftN: sum(weeksN.map((w) => w.kgPerHa)),
    p2o5,
    k2o,
    leftP2o5: left(p2o5.kgPerHa, sum(given.map((g) => g.p2o5KgPerHa))),
    leftK2o: k2o.kgPerHa === null ? null : sum(k.weeks.map((w) => w.kgPerHa)),
    weeksK2o: k.weeks,
    given,
    test,
  };
}

/** What fell due in the past, was not given and is not made up for [kg/ha]. */
export const missedN = (plan: FeedingPlan): number => Math.max(0, plan.seasonN - plan.givenN - plan.leftN);

/** Logged applications that count for this crop. Refuses one of a day to come. */
function givenOf(state: PlantingState, start: string, today: string): GivenNutrients[] {
  const earliest = addDays(start, -COUNTS_BEFORE_DAYS);
  return state.applications.flatMap((a, i) => {
    if (a.on > today) {
      refuse(`applications.${i}.on`, "is after the day the advice is for", `at most ${today}`, a.on);
    }
    return a.on < earliest ? [] : [givenTo(state.bed, a)];
  });
}

/** Doses in their order until the ceiling is reached. */
function underCeiling(weeks: WeekDose[], roomKgPerHa: number): WeekDose[] {
  let room = Math.max(0, roomKgPerHa);
  return weeks.map((w) => {
    const kgPerHa = Math.min(w.kgPerHa, room);
    room -= kgPerHa;
    return { ...w, kgPerHa };
  });
}

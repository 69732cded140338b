import { addDays } from "../core/days.ts";
import { refuse } from "../core/errors.ts";
import { chosenGuide } from "../guides/held.ts";
import { rateKgPerHa } from "../guides/recommend.ts";
import type { Guide } from "../guides/schema.ts";
import { cationsOf } from "../rules/soil-reading/cations.ts";
import type { SoilTest } from "../states/parts.ts";
import type { PlantingState } from "../states/states.ts";
import { KG_PER_HA_PER_LB_PER_ACRE } from "../tables/landUnits.ts";
import { type Range, uptakePerTonne } from "../tables/uptake.ts";
import { analysisOf, ROTS } from "./available.ts";
import { type Credit, creditsOf } from "./credits.ts";
import { type DayShare, dayShares, type FeedingDates, feedingDates } from "./curve.ts";
import { type GivenNutrients, givenTo } from "./given.ts";
import { latestTestOf } from "./latestTest.ts";
import { type MineralNeed, MOST_K2O_KG_PER_HA, mineralNeed } from "./mineralNeed.ts";
import { type NitrateCheck, nitrateCheck } from "./nitrateCheck.ts";
import { type Moved, movedBy, type PlantTestReading, readPlantTests } from "./plantTests.ts";
import { dosesAhead, sharesOf, type WeekDose } from "./pool.ts";

/** California bell pepper on drip gained nothing above 195 lb N/A (SN-228). */
export const N_CEILING_KG_PER_HA = 195 * KG_PER_HA_PER_LB_PER_ACRE;
/** What was spread so long before setting out still counts for this crop (common practice). */
export const COUNTS_BEFORE_DAYS = 60;

/** The season's nutrients and what is left to give [kg per hectare of cropped land]. */
export interface FeedingPlan {
  dates: FeedingDates;
  /** Of every day from setting out to the season's end. */
  shares: DayShare[];
  /** First day the doses ahead begin: today, or setting out where that is later. */
  from: string;
  need: Range;
  /** The office's own guide, where its nitrogen rate is the need. */
  needBy: Guide | undefined;
  /** The guide that the office chose. */
  guide: Guide | undefined;
  credits: Credit[];
  creditsTotal: Range & { mid: number };
  /** Need less credits, within the ceiling: least need with most credits, as counted on, most with least. */
  season: Range & { mid: number };
  /** The middle of {@link season}: what the plan gives. */
  seasonN: number;
  capped: boolean;
  givenN: number;
  poolN: number;
  weeksN: WeekDose[];
  leftN: number;
  /** Share of the season's nitrogen that is taken up from {@link from} on. */
  aheadN: number;
  p2o5: MineralNeed;
  k2o: MineralNeed;
  leftP2o5: number | null;
  leftK2o: number | null;
  weeksK2o: WeekDose[];
  given: GivenNutrients[];
  givenP2o5: number;
  givenK2o: number;
  /** The tests that phosphorus and potassium are read from. */
  tests: { P: SoilTest | undefined; K: SoilTest | undefined };
  nitrate: NitrateCheck | undefined;
  plantTests: PlantTestReading[];
  moved: { n: Moved; k: Moved };
}

const middle = ({ low, high }: Range) => (low + high) / 2;
const sum = (values: number[]) => values.reduce((a, b) => a + b, 0);
const total = (weeks: WeekDose[]) => sum(weeks.map((w) => w.kgPerHa));

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
  const own = chosenGuide(state.settings.soilGuide, state.guides);
  const perTonne = uptakePerTonne("whole-crop").nKgPerT;
  const uptake = { low: perTonne.low * yieldGoalTPerHa, high: perTonne.high * yieldGoalTPerHa };
  // A published sheet's nitrogen may be for another way of growing; only an office's own is taken for its fields.
  const rate = own?.status === "office" ? own.recommendations?.nitrogen : undefined;
  const need = rate ? rateKgPerHa(rate) : uptake;
  const credits = creditsOf(state, start, today);
  const creditsTotal = {
    low: sum(credits.map((c) => c.low)),
    mid: sum(credits.map((c) => c.mid)),
    high: sum(credits.map((c) => c.high)),
  };
  const supply = (needed: number, credited: number) =>
    Math.min(N_CEILING_KG_PER_HA, Math.max(0, needed - credited));
  const season = {
    low: supply(need.low, creditsTotal.high),
    mid: supply(middle(need), creditsTotal.mid),
    high: supply(need.high, creditsTotal.low),
  };
  const seasonN = season.mid;
  const given = [...givenOf(state, start, today), ...unconfirmed];
  const givenN = sum(given.map((g) => g.nKgPerHa));
  const givenK2o = sum(given.map((g) => g.k2oKgPerHa));
  const givenP2o5 = sum(given.map((g) => g.p2o5KgPerHa));
  const shares = dayShares(dates);
  const plantTests = readPlantTests(state.plantTests, today);
  const moved = { n: movedBy(plantTests, "N"), k: movedBy(plantTests, "K") };
  const nitrate = nitrateCheck(state.soilTests, dates, today);

  const n = dosesAhead({
    shares: sharesOf(shares, "n"),
    seasonKgPerHa: seasonN,
    given: given.map((g) => ({ on: g.on, kgPerHa: g.nKgPerHa })),
    from,
  });
  const weeksN = underCeiling(
    paused(moveAll(n.weeks, moved.n.factor), nitrate),
    N_CEILING_KG_PER_HA - givenN,
  );

  const holds = (nutrient: "P" | "K") =>
    latestTestOf(
      state.soilTests,
      today,
      (t) => t.medium === "mineral-soil" && t.values.some((v) => v.nutrient === nutrient),
    )?.test;
  const tests = { P: holds("P"), K: holds("K") };
  const cec = tests.K?.cecCmolPerKg ?? (tests.K && cationsOf(tests.K)?.cecCmolPerKg);
  const p2o5 = mineralNeed("P", tests.P, yieldGoalTPerHa, cec, own);
  const k2o = mineralNeed("K", tests.K, yieldGoalTPerHa, cec, own);
  const k = dosesAhead({
    shares: sharesOf(shares, "k2o"),
    seasonKgPerHa: k2o.kgPerHa ?? 0,
    given: given.map((g) => ({ on: g.on, kgPerHa: g.k2oKgPerHa })),
    from,
  });
  const weeksK2o = underCeiling(moveAll(k.weeks, moved.k.factor), MOST_K2O_KG_PER_HA - givenK2o);
  return {
    dates,
    shares,
    from,
    need,
    needBy: rate ? own : undefined,
    guide: own,
    credits,
    creditsTotal,
    season,
    seasonN,
    capped: middle(need) - creditsTotal.mid > N_CEILING_KG_PER_HA,
    givenN,
    poolN: n.poolKgPerHa,
    weeksN,
    leftN: total(weeksN),
    aheadN: sum(shares.filter((d) => d.day >= from).map((d) => d.n)),
    p2o5,
    k2o,
    leftP2o5: p2o5.kgPerHa === null ? null : Math.max(0, p2o5.kgPerHa - givenP2o5),
    leftK2o: k2o.kgPerHa === null ? null : total(weeksK2o),
    weeksK2o,
    given,
    givenP2o5,
    givenK2o,
    tests,
    nitrate,
    plantTests,
    moved,
  };
}

/** What fell due in the past, was not given and is not made up for [kg/ha]. */
export const missedN = (plan: FeedingPlan): number =>
  Math.max(0, plan.seasonN * (1 - plan.aheadN) - (plan.givenN - plan.poolN));

/**
 * Logged applications that count for this crop. Refuses one of a day to come. The nitrogen of manure and compost is not
 * among them: what of it comes free is a credit.
 */
function givenOf(state: PlantingState, start: string, today: string): GivenNutrients[] {
  const earliest = addDays(start, -COUNTS_BEFORE_DAYS);
  return state.applications.flatMap((a, i) => {
    if (a.on > today) {
      refuse(`applications.${i}.on`, "is after the day the advice is for", `at most ${today}`, a.on);
    }
    if (a.on < earliest) return [];
    const given = givenTo(state.bed, a);
    return [ROTS.has(analysisOf(a, state.shed).kind) ? { ...given, nKgPerHa: 0 } : given];
  });
}

const moveAll = (weeks: WeekDose[], factor: number): WeekDose[] =>
  weeks.map((w) => ({ ...w, kgPerHa: w.kgPerHa * factor }));

/** Weeks that begin while the soil holds enough nitrate get none, and it is not made up for. */
function paused(weeks: WeekDose[], nitrate: NitrateCheck | undefined): WeekDose[] {
  const until = nitrate?.pausesUntil;
  return until === undefined ? weeks : weeks.map((w) => (w.from < until ? { ...w, kgPerHa: 0 } : w));
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

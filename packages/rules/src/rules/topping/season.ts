import { dayOf, epochDay } from "../../core/days.ts";
import { type DateRange, dateRange, daysReached } from "../../growth/dates.ts";
import type { Growth } from "../../growth/stages.ts";
import type { PlantingState } from "../../states/states.ts";
import { EQUAL_AT_C, type StageId } from "../../tables/stageHeat.ts";
import { firstAutumnFrosts } from "../../warmth/autumnFrost.ts";
import { climatologyYears } from "../../warmth/climatologyYears.ts";
import { coverOver } from "../../warmth/coverOver.ts";
import { siteShift } from "../../warmth/siteShift.ts";
import { DELAY_DAYS, FEWEST_YEARS } from "./thresholds.ts";

/** When the first fruit is ripe with and without its tip, against the first autumn frost. */
export interface Season {
  /** What counts as ripe here: green only where the planting says that it is picked so. */
  ripe: Extract<StageId, "mature-green" | "colour">;
  left: DateRange;
  taken: DateRange;
  /** Heat that the published delay is taken for [C day]. */
  delayHeat: number;
  /** The middle of the years' first frosts at the plants. */
  frost: string | null;
  /** Share of years, and of what the sums leave open, with ripe fruit before frost; null with too few years. */
  chanceLeft: number | null;
  chanceTaken: number | null;
  years: number;
}

const FROST_C = 0;

/**
 * Chance that the first fruit is ripe before the first autumn frost. A delay in days is counted as the heat of days at 24 C,
 * as every sum of the stages is, so that in a cool autumn it lasts longer.
 *
 *   Q' = Q + d (24 - Tb);  P = share of years and of the sum's spread with day(Q) < first frost
 */
export function seasonOf(state: PlantingState, growth: Growth): Season {
  const ripe = state.planting.pickAt === "green" ? "mature-green" : "colour";
  const stage = growth.stages.find((s) => s.stage === ripe);
  if (!stage) throw new Error(`no stage ${ripe}`);
  const { course, base } = growth;
  const delayHeat = DELAY_DAYS.counted * (EQUAL_AT_C - base.baseC);
  const late = { mean: stage.need.mean + delayHeat, sd: stage.need.sd };
  const frosts = frostsOf(state, course.outdoors.from);
  const known = frosts.filter((f) => f !== null).sort((a, b) => a - b);
  const enough = known.length >= FEWEST_YEARS;
  const middle = known[Math.floor((known.length - 1) / 2)];
  return {
    ripe,
    left: stage.dates,
    taken: dateRange(course, late),
    delayHeat,
    frost: middle === undefined ? null : dayOf(middle),
    chanceLeft: enough ? chanceBefore(daysReached(course, stage.need), frosts) : null,
    chanceTaken: enough ? chanceBefore(daysReached(course, late), frosts) : null,
    years: known.length,
  };
}

/** First autumn frosts at the plants as days of this season, a year each; null where a year does not say. */
function frostsOf(state: PlantingState, from: string): (number | null)[] {
  if (!state.climatology) return [];
  const shiftC = siteShift(state.site, 1).shiftC;
  const covered = state.bed.covers.length > 0;
  const warmerC = (day: number) => shiftC + (covered ? (coverOver(state.bed, dayOf(day)).offsetC ?? 0) : 0);
  const start = epochDay(from);
  const years = climatologyYears(state.climatology);
  return firstAutumnFrosts(years, state.site.latitudeDeg, from, FROST_C, warmerC).map((days) =>
    days === null ? null : start + days,
  );
}

/** A year's frost meets that year's warmth: a warm autumn has both. */
function chanceBefore(reached: number[][], frosts: (number | null)[]): number {
  let before = 0;
  let all = 0;
  reached.forEach((days, year) => {
    const frost = frosts[year];
    if (frost === null || frost === undefined) return;
    before += days.filter((day) => day < frost).length;
    all += days.length;
  });
  return all === 0 ? 0 : before / all;
}

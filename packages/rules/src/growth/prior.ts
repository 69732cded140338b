import { addDays, daysBetween } from "../core/days.ts";
import { normalUpdate } from "../quantities/statistics/normalUpdate.ts";
import type { FirstPick } from "../states/plant.ts";
import type { PlantingState } from "../states/states.ts";
import { pickAtOf } from "../tables/pickStages.ts";
import { EQUAL_AT_C, HEAT_UNITS, STAGE_HEAT, type StageId, TABLE_SPREAD } from "../tables/stageHeat.ts";
import { growingCOf, heatAtMean } from "./dayHeat.ts";
import { type Emergence, emergenceBy, USUAL_MEDIUM_C } from "./emergence.ts";
import { type HeatCourse, heatThen, usualHeatBetween } from "./heatCourse.ts";
import { later } from "./later.ts";
import type { Pace } from "./pace.ts";

/** How far a seed list's days stray from what a farm sees (cp), and one season of a farm from the next (cp). */
const LIST_SD = 0.12;
const OWN_SEASON_SD = 0.08;

/** One of a farm's earlier seasons as a share of the table's heat. */
export interface OwnSeason {
  firstPickOn: string;
  days: number;
  share: number;
  /** Counted from that season's own weather; else from a usual year's. */
  ownWeather: boolean;
}

/** What is thought of a variety's pace before this planting's own notes: the highest of the sources that is there. */
export interface Prior {
  pace: Pace;
  from: "own" | "list" | "table";
  /** Shown whichever source is in force. */
  list: {
    day: string;
    days: number;
    from: "sowing" | "transplanting";
    stage: StageId;
    share: number | null;
  } | null;
  own: OwnSeason[];
  ownDays: number | null;
}

/** The table's heat to a stage above another base: both are reached on the same day at 24 C. */
export const stageHeatAbove = (stage: StageId, baseC: number): number =>
  scaleTo(STAGE_HEAT[stage].cDays, baseC);

const scaleTo = (cDays: number, baseC: number): number =>
  (cDays * (EQUAL_AT_C - baseC)) / (EQUAL_AT_C - HEAT_UNITS.baseC);

/**
 * The farm's own first picks outrank the seed list, and the list outranks the table of heat; what is outranked is shown
 * and not counted. Each season of the farm counts once.
 */
export function priorOf(state: PlantingState, emergence: Emergence, course: HeatCourse): Prior {
  const table: Pace = { mean: 1, sd: TABLE_SPREAD };
  const list = listOf(state, emergence, course);
  const own = (state.firstPicks ?? []).flatMap((pick) => ownSeason(state, course.baseC, pick) ?? []);
  const ownDays =
    own.length === 0 ? null : Math.round(own.reduce((sum, season) => sum + season.days, 0) / own.length);
  const shown = { list, own, ownDays };
  if (own.length > 0) {
    const pace = own.reduce((p, { share }) => normalUpdate(p, { mean: share, sd: OWN_SEASON_SD }), table);
    return { pace, from: "own", ...shown };
  }
  if (list && list.share !== null) {
    return { pace: normalUpdate(table, { mean: list.share, sd: LIST_SD }), from: "list", ...shown };
  }
  return { pace: table, from: "table", ...shown };
}

/** The seed list's days, as days of a usual year on this farm. */
function listOf(state: PlantingState, emergence: Emergence, course: HeatCourse): Prior["list"] {
  const printed = state.planting.daysToMaturity;
  if (!printed) return null;
  const out = course.outdoors.from;
  const start = printed.from === "sowing" ? state.planting.sownOn : out;
  const day = addDays(start, printed.days);
  const stage = printed.to === "green" ? "mature-green" : "colour";
  const heat = usualHeatTo(state, course.baseC, emergence.day, out, day);
  return { ...printed, day, stage, share: heat === null ? null : heat / stageHeatAbove(stage, course.baseC) };
}

/** Heat from showing to a day, indoors until `out`, then of a usual year. */
function usualHeatTo(
  state: PlantingState,
  baseC: number,
  from: string,
  out: string,
  to: string,
): number | null {
  const indoors = heatAtMean(growingCOf(state), baseC) * Math.max(0, daysBetween(from, out < to ? out : to));
  if (to <= out) return indoors;
  const outdoors = usualHeatBetween(state, baseC, later(out, from), to);
  return outdoors === null ? null : indoors + outdoors;
}

/** A season that cannot be: days out of their order, or a pick on which no heat is known. */
function ownSeason(state: PlantingState, baseC: number, pick: FirstPick): OwnSeason | null {
  const { sownOn, setOutOn, firstPickOn } = pick;
  if (setOutOn < sownOn || firstPickOn <= setOutOn) return null;
  const emergence = emergenceBy(sownOn, state.planting.propagation?.mediumC ?? USUAL_MEDIUM_C);
  if (emergence === null) return null;
  const at = pick.at ?? pickAtOf(state.planting).at;
  const from = later(emergence, setOutOn);
  const indoors = heatAtMean(growingCOf(state), baseC) * Math.max(0, daysBetween(emergence, setOutOn));
  const then = heatThen(state, baseC, from, firstPickOn);
  const outdoors = then ?? usualHeatBetween(state, baseC, from, firstPickOn);
  if (outdoors === null) return null;
  const asked = stageHeatAbove(at === "green" ? "mature-green" : "colour", baseC);
  return {
    firstPickOn,
    days: daysBetween(setOutOn, firstPickOn),
    share: (indoors + outdoors) / asked,
    ownWeather: then !== null,
  };
}

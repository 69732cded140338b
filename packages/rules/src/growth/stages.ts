import { addDays } from "../core/days.ts";
import { refuse } from "../core/errors.ts";
import { heatOfLeaf } from "../quantities/climate/leafUnfolding.ts";
import { normalUpdate } from "../quantities/statistics/normalUpdate.ts";
import type { PlantingState } from "../states/states.ts";
import { EQUAL_AT_C, STAGE_IDS, STAGE_SPREAD, type StageId } from "../tables/stageHeat.ts";
import { type Base, baseOf } from "./base.ts";
import { type DateRange, dateRange, type HeatNeed } from "./dates.ts";
import { type Emergence, emergenceOf } from "./emergence.ts";
import { type HeatCourse, heatBy, heatCourseOf } from "./heatCourse.ts";
import { later } from "./later.ts";
import { type StageNotes, stageNotesOf } from "./notes.ts";
import type { Pace } from "./pace.ts";
import { type Prior, priorOf, stageHeatAbove } from "./prior.ts";

/** A note's day may be off by this much (cp: somebody looks every other day or so), as heat of days at 24 C. */
const NOTE_SD_DAYS = 2;

/** What one note said of the planting's pace. */
export interface PaceLook {
  /** From which stage to which, by what the table asks and what the plants took [C day]. */
  from: StageId;
  to: StageId;
  leaves: number | null;
  asked: number;
  took: number;
  share: number;
  sd: number;
  after: Pace;
}

/** When a planting reaches a stage: noted, or forecast. */
export interface StageForecast {
  stage: StageId;
  notedOn: string | null;
  dates: DateRange;
  need: HeatNeed;
}

/** Everything that is known of where a planting stands and when it comes where. */
export interface Growth {
  today: string;
  base: Base;
  emergence: Emergence;
  course: HeatCourse;
  notes: StageNotes;
  prior: Prior;
  looks: PaceLook[];
  pace: Pace;
  stages: StageForecast[];
}

const growths = new WeakMap<PlantingState, Map<string, Growth | null>>();

/**
 * The stages of a planting with their dates, by its notes, its weather and what is known of its variety. Null where the day
 * the seedlings showed is neither noted nor in the table of emergence.
 *
 * @throws DomainError naming `planting.baseTemperatureC` where the base leaves nothing below 24 C to count
 */
export function growthOf(state: PlantingState, today: string, base: Base = baseOf(state)): Growth | null {
  const known = growths.get(state) ?? new Map<string, Growth | null>();
  growths.set(state, known);
  const key = `${today} ${base.baseC}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const found = growthFrom(state, today, base);
  known.set(key, found);
  return found;
}

function growthFrom(state: PlantingState, today: string, base: Base): Growth | null {
  const { baseC } = base;
  if (baseC >= EQUAL_AT_C - 2)
    refuse("planting.baseTemperatureC", "leaves no heat to count", "4 to 20", baseC);
  const emergence = emergenceOf(state, today);
  if (emergence === null) return null;
  const course = heatCourseOf(state, emergence, today, baseC);
  const notes = stageNotesOf(state, today);
  const prior = priorOf(state, emergence, course);
  const { looks, pace } = looksAt({ course, notes, emergence, prior, baseC });
  const stages = STAGE_IDS.map((stage) =>
    forecastOf(stage, { course, notes, emergence, pace, baseC, today }),
  );
  return { today, base, emergence, course, notes, prior, looks, pace, stages };
}

interface Known {
  course: HeatCourse;
  notes: StageNotes;
  emergence: Emergence;
  baseC: number;
}

const noteSd = (baseC: number): number => NOTE_SD_DAYS * (EQUAL_AT_C - baseC);

/** Heat of a day noted or reckoned that forecasts start from, and how far it may be off. */
interface Anchor {
  stage: StageId;
  leaves: number | null;
  asked: number;
  took: number;
  sd: number;
}

const showing = ({ emergence, baseC }: Known): Anchor => ({
  stage: "emerged",
  leaves: null,
  asked: 0,
  took: 0,
  sd: emergence.sdDays * (EQUAL_AT_C - baseC),
});

const anchorsOf = (k: Known): Anchor[] => [
  showing(k),
  ...k.notes.stages
    .filter((n) => n.stage !== "emerged")
    .map((n) => ({
      stage: n.stage,
      leaves: null,
      asked: stageHeatAbove(n.stage, k.baseC),
      took: heatBy(k.course, n.on),
      sd: noteSd(k.baseC),
    })),
];

/** Heat from showing to so many true leaves. */
const leafHeatAbove = (count: number, baseC: number): number =>
  stageHeatAbove("seed-leaves", baseC) + count * heatOfLeaf(baseC);

function leafAnchor(k: Known): Anchor | null {
  const last = k.notes.leaves.at(-1);
  if (!last) return null;
  return {
    stage: "true-leaves",
    leaves: last.count,
    asked: leafHeatAbove(last.count, k.baseC),
    took: heatBy(k.course, last.on),
    // A leaf counts once it is wide enough to count: half a leaf either way (cp), beside the day of the look.
    sd: Math.hypot(noteSd(k.baseC), heatOfLeaf(k.baseC) / 2),
  };
}

/**
 * From each noted stage to the next, and from showing to the last count of leaves, what the plants took of the heat that the
 * table asks; one after the other into the pace.
 */
function looksAt(k: Known & { prior: Prior }): { looks: PaceLook[]; pace: Pace } {
  const anchors = anchorsOf(k);
  const leaf = leafAnchor(k);
  const pairs: [Anchor, Anchor][] = [
    ...anchors.slice(1).map((to, i): [Anchor, Anchor] => [anchors[i] as Anchor, to]),
    ...(leaf ? [[anchors[0], leaf] as [Anchor, Anchor]] : []),
  ];
  let pace = k.prior.pace;
  const looks: PaceLook[] = [];
  for (const [from, to] of pairs) {
    const asked = to.asked - from.asked;
    const took = to.took - from.took;
    const sd = Math.hypot(STAGE_SPREAD, Math.hypot(from.sd, to.sd) / asked);
    pace = normalUpdate(pace, { mean: took / asked, sd });
    looks.push({
      from: from.stage,
      to: to.stage,
      leaves: to.leaves,
      asked,
      took,
      share: took / asked,
      sd,
      after: pace,
    });
  }
  return { looks, pace };
}

/**
 * Heat to a point of the table, from an anchor on the way to it.
 *
 *   Q = Qa + m (H - Ha),   sd² = sda² + (H - Ha)² (s² + c²)
 *
 * m, s the pace and its spread, c the spread of one stage about its planting's pace. Nothing is taken to come before its anchor.
 */
function needFrom(anchor: Anchor, asked: number, pace: Pace): HeatNeed {
  const way = Math.max(0, asked - anchor.asked);
  return {
    mean: anchor.took + pace.mean * way,
    sd: Math.hypot(anchor.sd, way * Math.hypot(pace.sd, STAGE_SPREAD)),
  };
}

function forecastOf(stage: StageId, k: Known & { pace: Pace; today: string }): StageForecast {
  const notedOn = k.notes.stages.find((n) => n.stage === stage)?.on ?? firstLeafOn(stage, k.notes);
  const asked = stageHeatAbove(stage, k.baseC);
  const before = anchorsOf(k).filter((a) => a.asked <= asked);
  const need = needFrom(before.at(-1) ?? showing(k), asked, k.pace);
  if (notedOn !== null)
    return { stage, notedOn, need, dates: { low: notedOn, likely: notedOn, high: notedOn } };
  const dates = stage === "emerged" ? showingDates(k.emergence) : dateRange(k.course, need);
  return { stage, notedOn, need, dates: betweenNotes(stage, dates, k.notes) };
}

/** A stage that nobody noted came no sooner than the one noted before it, and no later than the one noted after it. */
function betweenNotes(stage: StageId, dates: DateRange, notes: StageNotes): DateRange {
  const order = STAGE_IDS.indexOf(stage);
  const before = notes.stages.findLast((n) => STAGE_IDS.indexOf(n.stage) < order)?.on;
  const after = notes.stages.find((n) => STAGE_IDS.indexOf(n.stage) > order)?.on;
  const within = (day: string | null): string | null => {
    if (after !== undefined && (day === null || day > after)) return after;
    return day !== null && before !== undefined ? later(day, before) : day;
  };
  return { low: within(dates.low), likely: within(dates.likely), high: within(dates.high) };
}

/** The day seedlings show follows from the medium and not from heat, so that its interval is in days. */
function showingDates({ day, sdDays }: Emergence): DateRange {
  const days = Math.round(EIGHT_IN_TEN * sdDays);
  return { low: addDays(day, -days), likely: day, high: addDays(day, days) };
}

/** Half width of an eight-in-ten interval in standard deviations. */
export const EIGHT_IN_TEN = 1.2815515655446004;

/** A count of true leaves says that the first had come by then. */
const firstLeafOn = (stage: StageId, notes: StageNotes): string | null =>
  stage === "true-leaves" ? (notes.leaves.find((n) => n.count >= 1)?.on ?? null) : null;

/** The heat to a count of true leaves, from the last count or from showing. */
export function leafNeed(g: Growth, count: number): HeatNeed {
  const k = { ...g, baseC: g.base.baseC };
  const leaf = leafAnchor(k);
  const asked = leafHeatAbove(count, g.base.baseC);
  return needFrom(leaf && leaf.asked <= asked ? leaf : showing(k), asked, g.pace);
}

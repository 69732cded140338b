import { daysBetween } from "../core/days.ts";
import type { Block, PlanBed } from "../states/bedPlan.ts";
import type { BedPlanState } from "../states/states.ts";
import { isolationM } from "../tables/isolation.ts";
import { WITHOUT_PUNGENCY } from "../tables/pungencyStudies.ts";
import { type Frame, frameOf, gapBetween, type Polygon, rectangle } from "./geometry.ts";
import { type RestReading, restReading, restsOf, restVerdict } from "./rest.ts";
import { noonShadow, type Shadow } from "./shadow.ts";
import { PICKING_ROUND_DAYS, UNPLACED_ALLEY_M } from "./weights.ts";

/** A bed plan with everything worked out that does not depend on where the blocks stand. */
export interface Model {
  state: BedPlanState;
  beds: ModelBed[];
  blocks: ModelBlock[];
  bedAt: ReadonlyMap<string, number>;
  blockAt: ReadonlyMap<string, number>;
  shadow: Shadow;
  reading: RestReading;
  /** Blocks whose first pick falls in one round, by round; only rounds of two and more. */
  rounds: number[][];
  /** Blocks of one variety, by variety. */
  varieties: number[][];
}

export interface ModelBed {
  bed: PlanBed;
  pitchM: number;
  /** On the farm's plan; where nobody placed it, side by side with the others that were not. */
  frame: Frame;
  placed: boolean;
  outline: Polygon;
  /** What waters it as one: its valve, else the bed for itself. */
  waterUnit: string;
  rest: "clear" | "too-soon" | "unknown";
  /** Share of a plant's sun that trees or a house take, as the plan counts it: 1, 0.5 or 0. */
  outsideShade: number;
}

export interface ModelBlock {
  block: Block;
  lengthM: number;
  hot: boolean;
  heightM: number | undefined;
  /** Number of its variety, and of its round of picking. */
  variety: number;
  round: number | undefined;
  /** How many others its round has. */
  roundOthers: number;
}

/** Metres of row a block takes: the plants of its fullest row, each with its spacing. */
export const blockLengthM = (b: Pick<Block, "plants" | "rows" | "plantSpacingM">): number =>
  Math.ceil(b.plants / b.rows) * b.plantSpacingM;

export const isHot = (b: Pick<Block, "pungent" | "marketType">): boolean =>
  b.pungent ?? !WITHOUT_PUNGENCY.has(b.marketType);

export function modelOf(state: BedPlanState): Model {
  const shadow = noonShadow(state.latitudeDeg);
  const reading = restReading(state.settings);
  const beds = bedsOf(state, reading);
  const blocks = blocksOf(state.blocks);
  return {
    state,
    beds,
    blocks,
    bedAt: new Map(state.beds.map((b, i) => [b.id, i])),
    blockAt: new Map(state.blocks.map((b, i) => [b.id, i])),
    shadow,
    reading,
    rounds: grouped(blocks.map((b) => b.round)).filter((g) => g.length > 1),
    varieties: grouped(blocks.map((b) => b.variety)),
  };
}

function bedsOf(state: BedPlanState, reading: RestReading): ModelBed[] {
  const north = state.latitudeDeg >= 0;
  // Beds that nobody placed lie side by side, east of all that have a place, their length to the north.
  let east = Math.max(
    0,
    ...state.beds.flatMap((b) =>
      b.place ? outlineOf(frameOf(b.place), b).map(([e]) => e + UNPLACED_ALLEY_M) : [],
    ),
  );
  return state.beds.map((bed) => {
    const place = bed.place ?? { eastM: east, northM: 0, bearingDeg: 0 };
    if (!bed.place) east += bed.widthM + UNPLACED_ALLEY_M;
    const frame = frameOf(place);
    return {
      bed,
      pitchM: bed.widthM / bed.rows,
      frame,
      placed: bed.place !== undefined,
      outline: outlineOf(frame, bed),
      waterUnit: bed.valveId === undefined ? `bed ${bed.id}` : `valve ${bed.valveId}`,
      // Fresh potting mix has no past; mix that is used again is the rotation rule's to warn of.
      rest: bed.kind === "containers" ? "clear" : restVerdict(restsOf(bed.history, state.season, reading)),
      outsideShade: outsideShadeOf(bed.shadedFrom, north),
    };
  });
}

const outlineOf = (frame: Frame, bed: PlanBed) => rectangle(frame, 0, bed.lengthM, 0, bed.widthM);

function outsideShadeOf(side: PlanBed["shadedFrom"], north: boolean): number {
  if (side === undefined) return 0;
  if (side === "east" || side === "west") return 0.5;
  return (side === "south") === north ? 1 : 0;
}

function blocksOf(blocks: readonly Block[]): ModelBlock[] {
  const varieties = new Map<string, number>();
  const picks = blocks.flatMap((b) => b.firstPickOn ?? []).sort();
  const rounds = blocks.map((b) =>
    b.firstPickOn === undefined || picks[0] === undefined
      ? undefined
      : Math.floor(daysBetween(picks[0], b.firstPickOn) / PICKING_ROUND_DAYS),
  );
  return blocks.map((block, i) => {
    if (!varieties.has(block.variety)) varieties.set(block.variety, varieties.size);
    return {
      block,
      lengthM: blockLengthM(block),
      hot: isHot(block),
      heightM: block.heightCm === undefined ? undefined : block.heightCm / 100,
      variety: varieties.get(block.variety) as number,
      round: rounds[i],
      roundOthers: rounds[i] === undefined ? 0 : rounds.filter((r) => r === rounds[i]).length - 1,
    };
  });
}

function grouped(keys: readonly (number | undefined)[]): number[][] {
  const groups = new Map<number, number[]>();
  keys.forEach((key, i) => {
    if (key === undefined) return;
    const group = groups.get(key);
    if (group) group.push(i);
    else groups.set(key, [i]);
  });
  return [...groups.values()];
}

/** Metres two blocks must keep between them for true seed; 0 where none is kept, or where they cannot spoil each other. */
export function neededIsolationM(a: ModelBlock, b: ModelBlock): number {
  if (!a.block.saveSeed && !b.block.saveSeed) return 0;
  if (a.variety === b.variety || a.block.species !== b.block.species) return 0;
  return isolationM(a.hot, b.hot);
}

/** Shortest way between two beds' outlines; undefined where one has no place on the plan. */
export function bedGapM(m: Model, a: number, b: number): number | undefined {
  if (a === b) return 0;
  const [x, y] = [m.beds[a] as ModelBed, m.beds[b] as ModelBed];
  return x.placed && y.placed ? drawnGapM(m, a, b) : undefined;
}

const gaps = new WeakMap<readonly PlanBed[], Float64Array>();

/** The same as they are drawn, places that nobody gave included. Kept for as long as the beds are the same. */
export function drawnGapM(m: Model, a: number, b: number): number {
  const n = m.beds.length;
  const known = gaps.get(m.state.beds) ?? new Float64Array(n * n).fill(-1);
  gaps.set(m.state.beds, known);
  const at = a * n + b;
  if ((known[at] as number) < 0) {
    const gap = gapBetween((m.beds[a] as ModelBed).outline, (m.beds[b] as ModelBed).outline);
    known[at] = known[b * n + a] = gap;
  }
  return known[at] as number;
}

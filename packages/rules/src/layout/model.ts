import { daysBetween } from "../core/days.ts";
import type { Block, PlanBed } from "../states/bedPlan.ts";
import type { BedPlanState } from "../states/states.ts";
import { isolationM } from "../tables/isolation.ts";
import { WITHOUT_PUNGENCY } from "../tables/pungencyStudies.ts";
import { type Frame, frameOf, gapBetween, type Polygon, rectangle } from "./geometry.ts";
import { type RestReading, restReading, restsOf, restVerdict } from "./rest.ts";
import { noonShadow, type Shadow } from "./shadow.ts";
import { MIXING_WITHIN_M, PICKING_ROUND_DAYS, UNPLACED_ALLEY_M } from "./weights.ts";

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
  /** Blocks that seed is kept from, and whether any is to be kept short of water. */
  seedBlocks: number[];
  bothWaters: boolean;
  /** Two beds so near that blocks on them may shade one another or be mixed up, at `a * beds + b`. */
  near: Uint8Array;
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

const isHot = (b: Pick<Block, "pungent" | "marketType">): boolean =>
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
    seedBlocks: blocks.flatMap((b, i) => (b.block.saveSeed ? [i] : [])),
    bothWaters: new Set(state.blocks.map((b) => b.water)).size > 1,
    near: nearBeds(state, beds, blocks, shadow),
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

const gaps = new WeakMap<readonly PlanBed[], Float64Array>();

/** Ways between outlines as they are drawn, places that nobody gave included. Kept for as long as the beds are the same. */
function drawnGaps(state: BedPlanState, beds: readonly ModelBed[]): Float64Array {
  const known = gaps.get(state.beds);
  if (known) return known;
  const n = beds.length;
  const found = new Float64Array(n * n);
  beds.forEach((a, i) => {
    for (let j = i + 1; j < n; j++)
      found[i * n + j] = found[j * n + i] = gapBetween(a.outline, (beds[j] as ModelBed).outline);
  });
  gaps.set(state.beds, found);
  return found;
}

function nearBeds(
  state: BedPlanState,
  beds: readonly ModelBed[],
  blocks: readonly ModelBlock[],
  shadow: Shadow,
): Uint8Array {
  const heights = blocks.flatMap((b) => b.heightM ?? []);
  const tallest = heights.length > 0 ? Math.max(...heights) - Math.min(...heights) : 0;
  const within = Math.max(MIXING_WITHIN_M, Math.abs(shadow.northPerM) * tallest);
  return Uint8Array.from(drawnGaps(state, beds), (gap) => (gap <= within ? 1 : 0));
}

import type { BedPlanState } from "../states/states.ts";
import { standsOf } from "./checkPlan.ts";
import { type Point, type Polygon, pointIn } from "./geometry.ts";
import { type Model, type ModelBed, type ModelBlock, modelOf } from "./model.ts";
import type { Stand } from "./stand.ts";

/** A point of the drawing: metres to the right of its left edge, and down from its top. North is up. */
export type DrawnPoint = [xM: number, yM: number];

export interface DrawnBed {
  bedId: string;
  nth: number;
  corners: DrawnPoint[];
  /** Middle of each row, from end to end. */
  rows: [DrawnPoint, DrawnPoint][];
  middle: DrawnPoint;
  /** Bearing of its length on the drawing, for a label that runs along it. */
  bearingDeg: number;
  lengthM: number;
  widthM: number;
  /** False: nobody gave its place, and it is drawn beside the others. */
  placed: boolean;
  /** Number of its valve in `valves`; undefined without one. */
  valve: number | undefined;
}

export interface DrawnBlock {
  blockId: string;
  nth: number;
  bedId: string;
  corners: DrawnPoint[];
  rows: [DrawnPoint, DrawnPoint][];
  middle: DrawnPoint;
  fromM: number;
  toM: number;
  firstRow: number;
  lastRow: number;
  /** Number of its variety in `varieties`: what it is filled and lettered by. */
  variety: number;
}

/** Numbers for a drawing to scale. */
export interface PlanDrawing {
  widthM: number;
  heightM: number;
  /** False where no bed has a place: then up is not north. */
  northKnown: boolean;
  /** A round length for the scale's bar, about a fifth of the drawing. */
  scaleBarM: number;
  beds: DrawnBed[];
  blocks: DrawnBlock[];
  /** In the order of the legend. A letter beside the pattern, so that nothing hangs on colour. */
  varieties: { variety: string; letter: string; hot: boolean; blockIds: string[]; plants: number }[];
  valves: { valveId: string; bedIds: string[]; water: "full" | "deficit" | "both" | "none" }[];
  /** Blocks that stand nowhere. */
  unplaced: string[];
}

const MARGIN_M = 1;

export function planDrawing(state: BedPlanState): PlanDrawing {
  const m = modelOf(state);
  const stands = standsOf(m);
  const points = [...m.beds.flatMap((b) => b.outline), ...stands.flatMap((s) => s?.footprint ?? [])];
  const east = points.map(([e]) => e);
  const north = points.map(([, n]) => n);
  const west = Math.min(...east, Number.POSITIVE_INFINITY) - MARGIN_M;
  const top = Math.max(...north, Number.NEGATIVE_INFINITY) + MARGIN_M;
  const at = ([e, n]: Point): DrawnPoint => [mm(e - west), mm(top - n)];
  const valves = valvesOf(m, stands);
  const widthM = points.length === 0 ? 0 : mm(Math.max(...east) + MARGIN_M - west);
  return {
    widthM,
    heightM: points.length === 0 ? 0 : mm(top - Math.min(...north) + MARGIN_M),
    northKnown: m.beds.some((b) => b.placed),
    scaleBarM: roundLength(widthM / 5),
    beds: m.beds.map((b, i) => drawnBed(b, i, at, valves)),
    blocks: stands.flatMap((s, i) => (s ? [drawnBlock(m, i, s, at)] : [])),
    varieties: m.varieties.map((members, v) => legendOf(m, members, v)),
    valves,
    unplaced: m.blocks.flatMap((b, i) => (stands[i] ? [] : [b.block.id])),
  };
}

const mm = (m: number) => Math.round(m * 1000) / 1000;

function drawnBed(
  { bed, frame, outline, pitchM, placed }: ModelBed,
  i: number,
  at: (p: Point) => DrawnPoint,
  valves: PlanDrawing["valves"],
): DrawnBed {
  return {
    bedId: bed.id,
    nth: i + 1,
    corners: outline.map(at),
    rows: Array.from({ length: bed.rows }, (_, r) => [
      at(pointIn(frame, 0, (r + 0.5) * pitchM)),
      at(pointIn(frame, bed.lengthM, (r + 0.5) * pitchM)),
    ]),
    middle: at(pointIn(frame, bed.lengthM / 2, bed.widthM / 2)),
    bearingDeg: bed.place?.bearingDeg ?? 0,
    lengthM: bed.lengthM,
    widthM: bed.widthM,
    placed,
    valve: bed.valveId === undefined ? undefined : valves.findIndex((v) => v.valveId === bed.valveId),
  };
}

function drawnBlock(m: Model, i: number, s: Stand, at: (p: Point) => DrawnPoint): DrawnBlock {
  const b = m.blocks[i] as ModelBlock;
  const { frame, pitchM, bed } = m.beds[s.bed] as ModelBed;
  return {
    blockId: b.block.id,
    nth: i + 1,
    bedId: bed.id,
    corners: (s.footprint as Polygon).map(at),
    rows: Array.from({ length: b.block.rows }, (_, r) => [
      at(pointIn(frame, s.fromM, (s.row + r - 0.5) * pitchM)),
      at(pointIn(frame, s.toM, (s.row + r - 0.5) * pitchM)),
    ]),
    middle: at(s.centre),
    fromM: mm(s.fromM),
    toM: mm(s.toM),
    firstRow: s.row,
    lastRow: s.rowEnd - 1,
    variety: b.variety,
  };
}

function legendOf(m: Model, members: readonly number[], v: number): PlanDrawing["varieties"][number] {
  const blocks = members.map((i) => m.blocks[i] as ModelBlock);
  return {
    variety: blocks[0]?.block.variety ?? "",
    letter: lettered(v),
    hot: blocks.some((b) => b.hot),
    blockIds: blocks.map((b) => b.block.id),
    plants: blocks.reduce((sum, b) => sum + b.block.plants, 0),
  };
}

/** A to Z, then AA, AB and so on. */
function lettered(n: number): string {
  const last = String.fromCharCode(65 + (n % 26));
  return n < 26 ? last : lettered(Math.floor(n / 26) - 1) + last;
}

function valvesOf(m: Model, stands: readonly (Stand | undefined)[]): PlanDrawing["valves"] {
  const ids = [...new Set(m.beds.flatMap((b) => b.bed.valveId ?? []))];
  return ids.map((valveId) => {
    const beds = m.beds.flatMap((b, i) => (b.bed.valveId === valveId ? [i] : []));
    const waters = new Set(
      stands.flatMap((s, i) => (s && beds.includes(s.bed) ? [(m.blocks[i] as ModelBlock).block.water] : [])),
    );
    return {
      valveId,
      bedIds: beds.map((i) => (m.beds[i] as ModelBed).bed.id),
      water: waters.size > 1 ? "both" : ([...waters][0] ?? "none"),
    };
  });
}

/** 1, 2 or 5 times a power of ten, the largest not above. */
function roundLength(m: number): number {
  if (!(m > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(m));
  return [5, 2, 1].map((n) => n * power).find((n) => n <= m) ?? power;
}

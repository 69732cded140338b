import type { Arrangement } from "./arrangement.ts";
import type { Model, ModelBed, ModelBlock } from "./model.ts";
import { EPSILON_M, type Stand, standIn } from "./stand.ts";

/** Where a block could begin. Along a bed a plan is laid out in steps; blocks also begin where a neighbour ends. */
export const STEP_M = 0.5;

const toMm = (m: number) => Math.round(m * 1000) / 1000;

/** Every step of one bed, its last fit included. */
export function steppedIn(m: Model, i: number, bed: number, stepM: number): Stand[] {
  const last = lastStart(m, i, bed);
  if (last === undefined) return [];
  const starts: number[] = [];
  for (let k = 0; k * stepM <= last + EPSILON_M; k++) starts.push(toMm(Math.min(last, k * stepM)));
  if (last - (starts[starts.length - 1] as number) > EPSILON_M) starts.push(last);
  return rowsOf(m, i, bed).flatMap((row) => starts.map((from) => standIn(m, i, bed, row, from)));
}

/** Both ends of a bed, and hard against each block that stands in it now. */
export function cornersIn(a: Arrangement, i: number, bed: number): Stand[] {
  const { m } = a;
  const last = lastStart(m, i, bed);
  if (last === undefined) return [];
  const { lengthM } = m.blocks[i] as ModelBlock;
  const starts = new Set([0, last]);
  for (const j of a.onBed[bed] as number[]) {
    const s = a.stands[j] as Stand;
    if (j === i) continue;
    for (const from of [toMm(s.toM), toMm(s.fromM - lengthM), toMm(s.fromM), toMm(s.toM - lengthM)])
      if (from >= 0 && from <= last) starts.add(from);
  }
  return rowsOf(m, i, bed).flatMap((row) => [...starts].map((from) => standIn(m, i, bed, row, from)));
}

/** Undefined where the bed is too short or too narrow. */
function lastStart(m: Model, i: number, bed: number): number | undefined {
  const { lengthM, block } = m.blocks[i] as ModelBlock;
  const { bed: b } = m.beds[bed] as ModelBed;
  if (block.rows > b.rows || lengthM > b.lengthM + EPSILON_M) return undefined;
  return Math.max(0, toMm(b.lengthM - lengthM));
}

const rowsOf = (m: Model, i: number, bed: number): number[] =>
  Array.from(
    { length: (m.beds[bed] as ModelBed).bed.rows - (m.blocks[i] as ModelBlock).block.rows + 1 },
    (_, k) => k + 1,
  );

import { area, gapBetween, intersection, type Point, swept } from "./geometry.ts";
import { type Model, type ModelBed, type ModelBlock, neededIsolationM } from "./model.ts";
import { gapInBed, overlap, type Stand } from "./stand.ts";
import { MIXING_WITHIN_M, WEIGHTS } from "./weights.ts";

/** Everything that depends on two blocks and nothing else. */

/** Shortest way between two blocks; undefined where a bed without a place lies between. */
export function gapM(m: Model, a: Stand, b: Stand): number | undefined {
  const x = m.beds[a.bed] as ModelBed;
  if (a.bed === b.bed) return gapInBed(a, b, x.pitchM);
  return x.placed && (m.beds[b.bed] as ModelBed).placed ? gapBetween(a.footprint, b.footprint) : undefined;
}

/** The two need more room for true seed than they have; undefined where nobody can tell. */
export function tooNearForSeed(m: Model, i: number, a: Stand, j: number, b: Stand): boolean | undefined {
  const needed = neededIsolationM(m.blocks[i] as ModelBlock, m.blocks[j] as ModelBlock);
  if (needed === 0) return false;
  const gap = gapM(m, a, b);
  return gap === undefined ? undefined : gap < needed;
}

export const waterClash = (m: Model, i: number, a: Stand, j: number, b: Stand): boolean =>
  (m.blocks[i] as ModelBlock).block.water !== (m.blocks[j] as ModelBlock).block.water &&
  (m.beds[a.bed] as ModelBed).waterUnit === (m.beds[b.bed] as ModelBed).waterUnit;

const near = (m: Model, a: Stand, b: Stand): boolean => m.near[a.bed * m.beds.length + b.bed] === 1;

/** The two cannot both stand like this. What nobody can tell does not forbid. */
export const clash = (m: Model, i: number, a: Stand, j: number, b: Stand): boolean =>
  overlap(a, b) || waterClash(m, i, a, j, b) || tooNearForSeed(m, i, a, j, b) === true;

/** Plants of the shorter in the noon shadow of the taller: the share of its ground that the shadow sweeps, times its plants. */
export function shadedPlants(m: Model, i: number, a: Stand, j: number, b: Stand): number {
  const [p, q] = [m.blocks[i] as ModelBlock, m.blocks[j] as ModelBlock];
  if (!near(m, a, b)) return 0;
  if (p.heightM === undefined || q.heightM === undefined || p.heightM === q.heightM) return 0;
  if (!(m.beds[a.bed] as ModelBed).placed || !(m.beds[b.bed] as ModelBed).placed) return 0;
  const [tall, short, of] = p.heightM > q.heightM ? [a, b, q] : [b, a, p];
  const north = m.shadow.northPerM * Math.abs(p.heightM - q.heightM);
  const apart = Math.hypot(a.centre[0] - b.centre[0], a.centre[1] - b.centre[1]);
  if (north === 0 || apart > a.reachM + b.reachM + Math.abs(north)) return 0;
  const push: Point = [0, north];
  const inShade = area(intersection(short.footprint, swept(tall.footprint, push)));
  // What overlaps is a breach and no shade.
  const under = overlap(a, b) ? area(intersection(short.footprint, tall.footprint)) : 0;
  const share = Math.max(0, inShade - under) / area(short.footprint);
  return share < 1e-9 ? 0 : share * of.block.plants;
}

/** Metres between the middles of two blocks of one picking round, each block's ways meaned over its round. */
export function walkM(m: Model, i: number, a: Stand, j: number, b: Stand): number {
  const p = m.blocks[i] as ModelBlock;
  if (p.round === undefined || p.round !== (m.blocks[j] as ModelBlock).round) return 0;
  return Math.hypot(a.centre[0] - b.centre[0], a.centre[1] - b.centre[1]) / p.roundOthers;
}

/** Sweet beside hot. Across beds without a place nobody can tell. */
export function mixes(m: Model, i: number, a: Stand, j: number, b: Stand): boolean {
  if ((m.blocks[i] as ModelBlock).hot === (m.blocks[j] as ModelBlock).hot) return false;
  if (!near(m, a, b)) return false;
  const gap = gapM(m, a, b);
  return gap !== undefined && gap < MIXING_WITHIN_M;
}

/** Points of a pair. */
export function pairPoints(m: Model, i: number, a: Stand, j: number, b: Stand): number {
  const walk = WEIGHTS.walk.points * walkM(m, i, a, j, b);
  if (!near(m, a, b)) return walk;
  const mixing = mixes(m, i, a, j, b) ? WEIGHTS.mixing.points : 0;
  return walk + mixing + WEIGHTS.shade.points * shadedPlants(m, i, a, j, b);
}

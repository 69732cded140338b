import type { PlanBlock } from "@pith/contract";
import { blockLengthM, type DrawnBed, type Placement, type PlanBed } from "@pith/rules";

/** From a point or an arrow key to a place in a bed. */

/** Along the bed in metres, across it in rows; both from its first corner. */
export interface Spot {
  bedId: string;
  alongM: number;
  acrossRows: number;
}

export type Direction = readonly [x: number, y: number];
export const ARROWS: Partial<Record<string, Direction>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Places are kept to the millimetre. */
const FINEST_M = 0.001;
/** A point this far beside a bed still means it [m]. */
const REACH_M = 1;

const dot = (a: Direction, b: Direction) => a[0] * b[0] + a[1] * b[1];
const minus = (a: Direction, b: Direction): Direction => [a[0] - b[0], a[1] - b[1]];

/** Which way a drawn bed's length and width run, each one metre long. */
function axes(bed: DrawnBed): { along: Direction; across: Direction } {
  const [c0, c1, , c3] = bed.corners as unknown as [Direction, Direction, Direction, Direction];
  const per = (v: Direction, m: number): Direction => [v[0] / m, v[1] / m];
  return { along: per(minus(c1, c0), bed.lengthM), across: per(minus(c3, c0), bed.widthM) };
}

/** The bed at or next to a point of the map. */
export function spotOnMap(point: Direction, drawn: readonly DrawnBed[], beds: readonly PlanBed[]) {
  let best: (Spot & { off: number }) | undefined;
  drawn.forEach((bed, i) => {
    const from = minus(point, bed.corners[0] as Direction);
    const { along, across } = axes(bed);
    const [alongM, acrossM] = [dot(from, along), dot(from, across)];
    const beside = (v: number, most: number) => Math.max(0, -v, v - most);
    const off = Math.hypot(beside(alongM, bed.lengthM), beside(acrossM, bed.widthM));
    if (off > REACH_M || (best && off >= best.off)) return;
    const acrossRows = (acrossM / bed.widthM) * (beds[i] as PlanBed).rows;
    best = { bedId: bed.bedId, alongM, acrossRows, off };
  });
  return best;
}

/** A block's place in a bed, kept inside it and on the step. */
export function settled(
  block: PlanBlock,
  bed: PlanBed,
  { row, fromM }: { row: number; fromM: number },
  stepM: number,
): Placement {
  const lastRow = Math.max(1, bed.rows - block.rows + 1);
  const lastM = Math.max(0, bed.lengthM - blockLengthM(block));
  const stepped = Math.round(fromM / stepM) * stepM;
  return {
    bedId: bed.id,
    row: Math.min(lastRow, Math.max(1, Math.round(row))),
    fromM: Math.round(Math.min(lastM, Math.max(0, stepped)) * 1000) / 1000,
  };
}

interface Walk {
  block: PlanBlock;
  at: Placement;
  direction: Direction;
  steps: number;
  stepM: number;
  beds: readonly PlanBed[];
  /** The map as it is drawn; left out where the beds stand one under the other, their length to the right. */
  drawn?: readonly DrawnBed[];
}

/** One arrow key: along the bed, to the next row, or past the edge into the next bed that way. */
export function walked({ block, at, direction, steps, stepM, beds, drawn }: Walk): Placement {
  const index = beds.findIndex((b) => b.id === at.bedId);
  const bed = beds[index];
  if (!bed) return at;
  const map = drawn?.[index] && axes(drawn[index] as DrawnBed);
  const along = dot(direction, map?.along ?? [1, 0]);
  const across = dot(direction, map?.across ?? [0, 1]);
  const lengthwise = Math.abs(along) >= Math.abs(across);
  const sign = Math.sign(lengthwise ? along : across);
  const wanted = lengthwise
    ? { row: at.row, fromM: at.fromM + sign * steps * stepM }
    : { row: at.row + sign, fromM: at.fromM };
  // Another row or bed leaves its place along the bed as it is, on the step or not.
  const alongStepM = lengthwise ? stepM : FINEST_M;
  const here = settled(block, bed, wanted, alongStepM);
  if (here.row !== at.row || Math.abs(here.fromM - at.fromM) > 1e-9) return here;
  const next = drawn
    ? bedThatWay(drawn, index, direction)
    : lengthwise
      ? undefined
      : { index: index + sign, sign };
  const to = next && beds[next.index];
  if (!to) return at;
  const row = lengthwise ? at.row : sign > 0 ? 1 : to.rows;
  return settled(block, to, { row, fromM: lengthwise ? (sign > 0 ? 0 : to.lengthM) : at.fromM }, alongStepM);
}

function bedThatWay(drawn: readonly DrawnBed[], from: number, direction: Direction) {
  const here = drawn[from] as DrawnBed;
  let best: { index: number; far: number } | undefined;
  drawn.forEach((bed, index) => {
    const way = minus(bed.middle, here.middle);
    const far = Math.hypot(...way);
    if (index === from || dot(way, direction) < 0.6 * far || (best && far >= best.far)) return;
    best = { index, far };
  });
  return best;
}

/** The first place, bed by bed and row by row, that is free and that `allows` accepts; else the first bed's first end. */
export function firstPlace(
  block: PlanBlock,
  blocks: readonly PlanBlock[],
  beds: readonly PlanBed[],
  allows: (at: Placement) => boolean,
): Placement | undefined {
  for (const bed of beds) {
    const ends = blocks.flatMap((b) => (b.at?.bedId === bed.id ? [b.at.fromM + blockLengthM(b)] : []));
    const starts = [0, ...ends.sort((a, b) => a - b)];
    for (let row = 1; row <= bed.rows - block.rows + 1; row++) {
      for (const fromM of starts) {
        const at = { bedId: bed.id, row, fromM };
        if (fromM + blockLengthM(block) <= bed.lengthM && allows(at)) return at;
      }
    }
  }
  return beds[0] && { bedId: beds[0].id, row: 1, fromM: 0 };
}

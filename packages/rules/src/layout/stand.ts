import type { Placement } from "../states/bedPlan.ts";
import { type Point, type Polygon, pointIn, rectangle } from "./geometry.ts";
import type { Model, ModelBed, ModelBlock } from "./model.ts";

/** A block where it stands, with what every cost asks of it. Its outline is only worked out where somebody asks. */
export class Stand {
  readonly centre: Point;
  /** Half its diagonal: nothing of it is further from the centre. */
  readonly reachM: number;
  #outline: Polygon | undefined;

  constructor(
    readonly bed: number,
    readonly row: number,
    /** The row after its last. */
    readonly rowEnd: number,
    readonly fromM: number,
    readonly toM: number,
    private readonly on: ModelBed,
  ) {
    const { left, right } = this.sides();
    this.centre = pointIn(on.frame, (fromM + toM) / 2, (left + right) / 2);
    this.reachM = Math.hypot(toM - fromM, right - left) / 2;
  }

  get footprint(): Polygon {
    const { left, right } = this.sides();
    this.#outline ??= rectangle(this.on.frame, this.fromM, this.toM, left, right);
    return this.#outline;
  }

  private sides() {
    return { left: (this.row - 1) * this.on.pitchM, right: (this.rowEnd - 1) * this.on.pitchM };
  }
}

/** Half a millimetre: what measures of a tape do not tell apart. */
export const EPSILON_M = 5e-4;

/** Undefined where it stands nowhere, or in a bed that the plan does not know. */
export function standAt(m: Model, block: number, at: Placement | undefined): Stand | undefined {
  const bed = at === undefined ? undefined : m.bedAt.get(at.bedId);
  return at === undefined || bed === undefined ? undefined : standIn(m, block, bed, at.row, at.fromM);
}

export function standIn(m: Model, block: number, bed: number, row: number, fromM: number): Stand {
  const b = m.blocks[block] as ModelBlock;
  return new Stand(bed, row, row + b.block.rows, fromM, fromM + b.lengthM, m.beds[bed] as ModelBed);
}

export const placementOf = (m: Model, s: Stand): Placement => ({
  bedId: (m.beds[s.bed] as ModelBed).bed.id,
  row: s.row,
  fromM: s.fromM,
});

/** Rows and length both meet. */
export const overlap = (a: Stand, b: Stand): boolean =>
  a.bed === b.bed &&
  a.row < b.rowEnd &&
  b.row < a.rowEnd &&
  a.fromM < b.toM - EPSILON_M &&
  b.fromM < a.toM - EPSILON_M;

/** Side by side or end to end in one bed, with no more than a metre between (common practice): one stand to whoever walks by. */
export const touching = (a: Stand, b: Stand): boolean =>
  a.bed === b.bed &&
  ((a.row < b.rowEnd && b.row < a.rowEnd && gapAlong(a, b) <= TOUCHING_M) ||
    ((a.row === b.rowEnd || b.row === a.rowEnd) && gapAlong(a, b) < -EPSILON_M));

const TOUCHING_M = 1;
const gapAlong = (a: Stand, b: Stand): number => Math.max(a.fromM, b.fromM) - Math.min(a.toM, b.toM);

/** Shortest way between two blocks of one bed. */
export function gapInBed(a: Stand, b: Stand, pitchM: number): number {
  const rows = Math.max(a.row, b.row) - Math.min(a.rowEnd, b.rowEnd);
  return Math.hypot(Math.max(0, gapAlong(a, b)), Math.max(0, rows * pitchM));
}

export const fitsBed = (m: Model, s: Stand): boolean => {
  const { bed } = m.beds[s.bed] as ModelBed;
  return s.row >= 1 && s.rowEnd - 1 <= bed.rows && s.fromM >= -EPSILON_M && s.toM <= bed.lengthM + EPSILON_M;
};

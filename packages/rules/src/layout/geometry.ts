import type { BedPlace } from "../states/bedPlan.ts";

/** Plane geometry in metres, east and north. Polygons are convex, their corners in order round. */

export type Point = readonly [eastM: number, northM: number];
export type Polygon = readonly Point[];

/** Where a bed's own measures point: along its length, and across its width to the right of that. */
export interface Frame {
  origin: Point;
  along: Point;
  across: Point;
}

/** The frame of a place: bearing clockwise from north, so along is (sin b, cos b) and right of it (cos b, -sin b). */
export function frameOf({ eastM, northM, bearingDeg }: BedPlace): Frame {
  const b = (bearingDeg * Math.PI) / 180;
  return {
    origin: [eastM, northM],
    along: [Math.sin(b), Math.cos(b)],
    across: [Math.cos(b), -Math.sin(b)],
  };
}

export const pointIn = ({ origin, along, across }: Frame, alongM: number, acrossM: number): Point => [
  origin[0] + alongM * along[0] + acrossM * across[0],
  origin[1] + alongM * along[1] + acrossM * across[1],
];

/** A point as metres along and across a frame: the inverse of {@link pointIn}. */
export function withinFrame(
  { origin, along, across }: Frame,
  [e, n]: Point,
): { alongM: number; acrossM: number } {
  const [de, dn] = [e - origin[0], n - origin[1]];
  return { alongM: de * along[0] + dn * along[1], acrossM: de * across[0] + dn * across[1] };
}

/** A rectangle of a frame, clockwise from its first corner. */
export const rectangle = (f: Frame, from: number, to: number, left: number, right: number): Polygon => [
  pointIn(f, from, left),
  pointIn(f, to, left),
  pointIn(f, to, right),
  pointIn(f, from, right),
];

/** Area with its sign: positive counter-clockwise (shoelace). */
function signedArea(polygon: Polygon): number {
  let twice = 0;
  for (let i = 0, j = polygon.length - 1; i < polygon.length; j = i++) {
    const [ax, ay] = polygon[j] as Point;
    const [bx, by] = polygon[i] as Point;
    twice += ax * by - bx * ay;
  }
  return twice / 2;
}
export const area = (polygon: Polygon): number => Math.abs(signedArea(polygon));

/** The part of a convex polygon that lies in another (Sutherland and Hodgman 1974); empty where they do not meet. */
export function intersection(subject: Polygon, clip: Polygon): Polygon {
  const turn = Math.sign(signedArea(clip));
  let kept: Point[] = [...subject];
  for (let i = 0, j = clip.length - 1; i < clip.length && kept.length > 0; j = i++) {
    const from = clip[j] as Point;
    const to = clip[i] as Point;
    const side = ([x, y]: Point) =>
      turn * ((to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0]));
    const next: Point[] = [];
    for (let k = 0, l = kept.length - 1; k < kept.length; l = k++) {
      const a = kept[l] as Point;
      const b = kept[k] as Point;
      const sa = side(a);
      const sb = side(b);
      if (sa >= 0 !== sb >= 0) {
        const t = sa / (sa - sb);
        next.push([a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])]);
      }
      if (sb >= 0) next.push(b);
    }
    kept = next;
  }
  return kept;
}

/** The ground a rectangle sweeps when it is pushed by a vector: the hull of where it was and where it is. */
export const swept = (polygon: Polygon, by: Point): Polygon =>
  hull([...polygon, ...polygon.map(([x, y]): Point => [x + by[0], y + by[1]])]);

/** Convex hull, counter-clockwise (Andrew 1979). */
export function hull(points: readonly Point[]): Polygon {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (ordered: readonly Point[]) => {
    const out: Point[] = [];
    for (const p of ordered) {
      while (out.length >= 2 && turns(out[out.length - 2] as Point, out[out.length - 1] as Point, p) <= 0)
        out.pop();
      out.push(p);
    }
    out.pop();
    return out;
  };
  return [...half(sorted), ...half(sorted.reverse())];
}
const turns = (o: Point, a: Point, b: Point) => (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0]);

/** Shortest way between two convex polygons; 0 where they touch or overlap. */
export function gapBetween(a: Polygon, b: Polygon): number {
  if (!separated(a, b) && !separated(b, a)) return 0;
  return Math.min(cornersToEdges(a, b), cornersToEdges(b, a));
}

/** Whether some edge of `a` has all of `b` beyond it. */
function separated(a: Polygon, b: Polygon): boolean {
  const turn = Math.sign(signedArea(a));
  for (let i = 0, j = a.length - 1; i < a.length; j = i++) {
    const from = a[j] as Point;
    const to = a[i] as Point;
    if (b.every((p) => turn * turns(from, to, p) < 0)) return true;
  }
  return false;
}

function cornersToEdges(a: Polygon, b: Polygon): number {
  let best = Number.POSITIVE_INFINITY;
  for (const p of a) {
    for (let i = 0, j = b.length - 1; i < b.length; j = i++)
      best = Math.min(best, toSegment(p, b[j] as Point, b[i] as Point));
  }
  return best;
}

function toSegment(p: Point, a: Point, b: Point): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const length = dx * dx + dy * dy;
  const t = length === 0 ? 0 : Math.min(1, Math.max(0, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / length));
  return Math.hypot(p[0] - a[0] - t * dx, p[1] - a[1] - t * dy);
}

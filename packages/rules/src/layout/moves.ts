import { type Arrangement, UNPLACED_POINTS } from "./arrangement.ts";
import type { ModelBlock } from "./model.ts";
import { cornersIn, steppedIn } from "./positions.ts";
import { type Draw, shuffled } from "./random.ts";
import { type Stand, standIn } from "./stand.ts";

/** A change made to an arrangement: by how many points, and how to take it back. */
export interface Step {
  change: number;
  undo(): void;
}

/** Every place of a block against a neighbour or a bed's end; in a small plan also on every step of a bed. */
export const placesFor = (a: Arrangement, i: number, stepM: number): Stand[] =>
  a.m.beds.flatMap((_, bed) => placesIn(a, i, bed, stepM));

const placesIn = (a: Arrangement, i: number, bed: number, stepM: number): Stand[] => [
  ...cornersIn(a, i, bed),
  ...(isSmall(a) ? steppedIn(a.m, i, bed, stepM) : []),
];

/** So few that every step of every bed can be tried each time. */
export const isSmall = (a: Arrangement): boolean => a.m.beds.length * a.free.length <= 40;

/** The cheapest of some places that is allowed; `noise` in points keeps it from being the same each time. */
export function placeWell(
  a: Arrangement,
  i: number,
  places: readonly Stand[],
  noise: () => number,
): { stand: Stand; points: number } | undefined {
  let best: { stand: Stand; points: number; seen: number } | undefined;
  for (const stand of places) {
    if (!a.allows(i, stand)) continue;
    const points = a.adds(i, stand);
    const seen = points + noise();
    if (!best || seen < best.seen) best = { stand, points, seen };
  }
  return best;
}

/** One block to another place. */
export function relocate(a: Arrangement, draw: Draw, stepM: number): Step | undefined {
  const i = a.free[draw.below(a.free.length)] as number;
  const bed = draw.below(a.m.beds.length);
  const places = draw() < 0.7 ? cornersIn(a, i, bed) : steppedIn(a.m, i, bed, stepM);
  const to = places[draw.below(places.length)];
  if (!to || !a.allows(i, to)) return undefined;
  const now = a.stands[i];
  const change = a.adds(i, to) - (now ? a.adds(i, now) : UNPLACED_POINTS);
  a.put(i, to);
  return { change, undo: () => a.put(i, now) };
}

/** Two blocks change places, each beginning where the other began, or ending where it ended. */
export function exchange(a: Arrangement, draw: Draw): Step | undefined {
  const i = a.free[draw.below(a.free.length)] as number;
  const j = a.free[draw.below(a.free.length)] as number;
  const [s, t] = [a.stands[i], a.stands[j]];
  if (i === j || !s || !t) return undefined;
  const [p, q] = [a.m.blocks[i] as ModelBlock, a.m.blocks[j] as ModelBlock];
  const atEnd = draw() < 0.5;
  const mm = (x: number) => Math.max(0, Math.round(x * 1000) / 1000);
  const toT = standIn(a.m, i, t.bed, t.row, atEnd ? mm(t.toM - p.lengthM) : t.fromM);
  const toS = standIn(a.m, j, s.bed, s.row, atEnd ? mm(s.toM - q.lengthM) : s.fromM);
  const restore = () => {
    a.put(i, s);
    a.put(j, t);
  };
  a.put(j, undefined);
  if (!a.allows(i, toT)) {
    restore();
    return undefined;
  }
  a.put(i, toT);
  if (!a.allows(j, toS)) {
    restore();
    return undefined;
  }
  const after = a.adds(j, toS);
  a.put(i, undefined);
  const alone = a.adds(i, toT);
  a.put(i, s);
  const before = a.adds(j, t);
  a.put(i, undefined);
  const beforeAlone = a.adds(i, s);
  a.put(i, toT);
  a.put(j, toS);
  return { change: after + alone - before - beforeAlone, undo: restore };
}

/** A few blocks that have to do with each other are taken up, and put down again one by one where each costs least. */
export function ruinAndRefill(a: Arrangement, draw: Draw, stepM: number): Step {
  const before = [...a.stands];
  const scoreBefore = a.score();
  const taken = shuffled(related(a, draw), draw);
  for (const i of taken) a.put(i, undefined);
  const noise = () => draw() * 2;
  for (const i of taken) {
    const beds = isSmall(a) ? a.m.beds.keys() : someBeds(a, i, draw);
    const places = [...beds].flatMap((bed) => placesIn(a, i, bed, stepM));
    a.put(i, placeWell(a, i, places, noise)?.stand);
  }
  return {
    change: a.score() - scoreBefore,
    undo: () => a.restore(before),
  };
}

/** One block and up to five others of its variety, round or bed; those without a bed first. */
function related(a: Arrangement, draw: Draw): number[] {
  const seedBlock = a.free[draw.below(a.free.length)] as number;
  const b = a.m.blocks[seedBlock] as ModelBlock;
  const by = draw.below(4);
  const kin = a.free.filter((i) => {
    const other = a.m.blocks[i] as ModelBlock;
    if (i === seedBlock) return false;
    if (by === 0) return other.variety === b.variety;
    if (by === 1) return other.round === b.round;
    if (by === 2) return a.stands[i]?.bed === a.stands[seedBlock]?.bed;
    return true;
  });
  const homeless = a.unplaced().slice(0, 2);
  return [...new Set([...homeless, seedBlock, ...shuffled(kin, draw).slice(0, 1 + draw.below(5))])];
}

/** The beds where a block's kin stand, and a few more. */
function someBeds(a: Arrangement, i: number, draw: Draw): number[] {
  const b = a.m.blocks[i] as ModelBlock;
  const kin = (a.m.varieties[b.variety] as number[]).flatMap((j) => a.stands[j]?.bed ?? []);
  const others = Array.from({ length: 6 }, () => draw.below(a.m.beds.length));
  return [...new Set([...kin, ...others])];
}

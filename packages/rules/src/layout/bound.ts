import { gapBetween, rectangle } from "./geometry.ts";
import type { Model, ModelBed, ModelBlock } from "./model.ts";
import { WEIGHTS } from "./weights.ts";

/**
 * Points that no plan with every block placed comes below: a bound for each cost from what blocks and beds measure alone.
 *
 * - Clumps: a variety needs as many beds as its metres of row fill, the largest first, and has a clump in each.
 * - Walk: for one block of a round in one bed, the others have at best the nearest free room: in a lane of rows the middles of
 *   blocks are at least the shortest block apart, and a bed holds no more of them than its metres of row. Half the sum over the
 *   round, because each way is counted from both ends.
 * - Beds that something shades: plants that the other beds cannot hold.
 *
 * Shade between blocks and mixing count 0. Pinned blocks are bounded like all others.
 */
export function lowerBound(m: Model): { clump: number; walk: number; outsideShade: number; total: number } {
  const clump = WEIGHTS.clump.points * clumpsAtLeast(m);
  const walk = WEIGHTS.walk.points * m.rounds.reduce((sum, round) => sum + walkAtLeastM(m, round), 0);
  const outsideShade = WEIGHTS["outside-shade"].points * shadedAtLeast(m);
  return { clump, walk, outsideShade, total: clump + walk + outsideShade };
}

const rowMetres = (b: ModelBlock) => b.block.rows * b.lengthM;
const roomOf = (b: ModelBed) => b.bed.rows * b.bed.lengthM;
/** Half a millimetre a block is forgiven where blocks meet: a little room more keeps the bound below. */
const SLACK = 1.0005;

/** Beds that may take a block by themselves; a pinned one counts for its own bed whatever that bed is. */
function bedsFor(m: Model, i: number): number[] {
  const { block, lengthM } = m.blocks[i] as ModelBlock;
  const pinned = block.pinned && block.at ? m.bedAt.get(block.at.bedId) : undefined;
  if (pinned !== undefined) return [pinned];
  return m.beds.flatMap((b, at) =>
    b.rest !== "too-soon" && block.rows <= b.bed.rows && lengthM <= b.bed.lengthM * SLACK ? [at] : [],
  );
}

function clumpsAtLeast(m: Model): number {
  return m.varieties.reduce((sum, members) => {
    const beds = [...new Set(members.flatMap((i) => bedsFor(m, i)))].map((b) =>
      roomOf(m.beds[b] as ModelBed),
    );
    let left = members.reduce((metres, i) => metres + rowMetres(m.blocks[i] as ModelBlock), 0);
    let needed = 0;
    for (const room of beds.sort((a, b) => b - a)) {
      if (left <= 0) break;
      left -= room * SLACK;
      needed++;
    }
    return sum + Math.max(0, needed - 1);
  }, 0);
}

function shadedAtLeast(m: Model): number {
  const least = Math.min(...m.beds.filter((b) => b.outsideShade > 0).map((b) => b.outsideShade));
  if (!Number.isFinite(least)) return 0;
  const sunny = m.beds.filter((b) => b.outsideShade === 0).reduce((sum, b) => sum + roomOf(b) * SLACK, 0);
  const all = m.blocks.reduce((sum, b) => sum + rowMetres(b), 0);
  const thinnest = Math.min(...m.blocks.map((b) => b.block.plants / rowMetres(b)));
  return m.blocks.length === 0 ? 0 : Math.max(0, all - sunny) * thinnest * least;
}

function walkAtLeastM(m: Model, round: readonly number[]): number {
  const lengths = round.map((i) => (m.blocks[i] as ModelBlock).lengthM);
  const shortest = Math.min(...lengths);
  const fewestRows = Math.min(...round.map((i) => (m.blocks[i] as ModelBlock).block.rows));
  const metres = round.map((i) => rowMetres(m.blocks[i] as ModelBlock)).sort((a, b) => a - b);
  const gaps = middleGaps(m, shortest, fewestRows);
  let sum = 0;
  for (const i of round) {
    const beds = bedsFor(m, i);
    if (beds.length === 0) continue;
    sum += Math.min(...beds.map((bed) => nearestOthers(m, i, bed, { metres, shortest, fewestRows, gaps })));
  }
  return sum / 2 / (round.length - 1);
}

/** Sum of the least ways from a block in a bed to the others of its round. */
function nearestOthers(
  m: Model,
  i: number,
  home: number,
  round: { metres: number[]; shortest: number; fewestRows: number; gaps: number[][] },
): number {
  const { lengthM, block } = m.blocks[i] as ModelBlock;
  const others = round.metres.length - 1;
  const slots: number[] = [];
  m.beds.forEach((b, bed) => {
    const lanes = Math.floor(b.bed.rows / round.fewestRows);
    const room = roomOf(b) * SLACK - (bed === home ? rowMetres(m.blocks[i] as ModelBlock) : 0);
    const most = Math.min(others, holds(round.metres, room));
    // Of two blocks in one bed either their rows lie apart, or they do along it.
    const beside = ((block.rows + round.fewestRows) / 2) * b.pitchM;
    const gap = bed === home ? Math.min(beside, (lengthM + round.shortest) / 2) : round.gaps[home]?.[bed];
    const here: number[] = [];
    for (let lane = 0; lane < lanes; lane++) {
      for (let t = 0; t < most; t++) {
        // Its own lane has the block itself in the middle; in any other t + 1 middles span t of the shortest blocks.
        const own = bed === home && lane === 0;
        const along = own
          ? (lengthM + round.shortest) / 2 + Math.floor(t / 2) * round.shortest
          : (t * round.shortest) / 2;
        here.push(Math.max(gap ?? 0, along));
      }
    }
    slots.push(...here.sort((a, b) => a - b).slice(0, most));
  });
  return slots
    .sort((a, b) => a - b)
    .slice(0, others)
    .reduce((sum, d) => sum + d, 0);
}

/** Shortest ways between the middles of blocks in different beds: a middle keeps half a block's measure from each edge. */
function middleGaps(m: Model, shortest: number, rows: number): number[][] {
  const inner = m.beds.map(({ bed, frame, pitchM }) => {
    const [end, side] = [Math.min(shortest, bed.lengthM) / 2, Math.min(rows * pitchM, bed.widthM) / 2];
    return rectangle(frame, end, bed.lengthM - end, side, bed.widthM - side);
  });
  return inner.map((a, i) => inner.map((b, j) => (i === j ? 0 : gapBetween(a, b))));
}

/** How many of the smallest go into so many metres of row. */
function holds(ascending: readonly number[], room: number): number {
  let left = room;
  let n = 0;
  for (const metres of ascending) {
    left -= metres;
    if (left < 0) break;
    n++;
  }
  return n;
}

import { refuse } from "../core/errors.ts";
import type { Placement } from "../states/bedPlan.ts";
import type { BedPlanState } from "../states/states.ts";
import { type Breach, ownBreaches, pairBreaches } from "./breach.ts";
import { standsOf } from "./checkPlan.ts";
import { clumpsOf } from "./clumps.ts";
import { withinFrame } from "./geometry.ts";
import { type Model, type ModelBed, type ModelBlock, modelOf } from "./model.ts";
import { mixes, shadedPlants, walkM } from "./pair.ts";
import { type Stand, standAt } from "./stand.ts";
import { COST_KINDS, type CostKind, WEIGHTS } from "./weights.ts";

/** What moving one block would do. */
export interface MoveCost {
  /** By what each cost would change: `amount` in its unit, `cost` in points. Negative is better. */
  soft: { kind: CostKind; amount: number; unit: string; cost: number }[];
  /** Points altogether. */
  total: number;
  /** Hard rules it would newly break, and those it would mend. */
  breaks: Breach[];
  mends: Breach[];
}

/** The plan with one block moved; null takes it off its bed. A pinned block moves by hand too: it is only proposals that leave it. */
export function moveBlock(state: BedPlanState, blockId: string, at: Placement | null): BedPlanState {
  const index = indexOf(state, blockId);
  if (at && !state.beds.some((b) => b.id === at.bedId))
    refuse("at.bedId", "no bed of this plan", state.beds.map((b) => b.id).join(", "), at.bedId);
  return { ...state, blocks: state.blocks.map((b, i) => (i === index ? placed(b, at) : b)) };
}

/** A block at a place, or nowhere. */
export function placed<T extends { at?: Placement | undefined }>(block: T, at: Placement | null): T {
  const { at: _, ...rest } = block;
  return (at ? { ...rest, at } : rest) as T;
}

function indexOf(state: BedPlanState, blockId: string): number {
  const index = state.blocks.findIndex((b) => b.id === blockId);
  if (index < 0) refuse("blockId", "no block of this plan", undefined, blockId);
  return index;
}

/**
 * What moving one block would change, counted over its own pairs alone, so that it can follow a finger. The same as the
 * difference of two whole checks. Whoever asks for many moves of one plan hands in its model.
 */
export function costOfMove(
  state: BedPlanState,
  blockId: string,
  at: Placement | null,
  m: Model = modelOf(state),
): MoveCost {
  const index = indexOf(state, blockId);
  const stands = standsOf(m);
  const before = ofBlock(m, index, stands);
  stands[index] = standAt(m, index, at ?? undefined);
  const after = ofBlock(m, index, stands, at !== null);
  const soft = COST_KINDS.map((kind) => {
    const amount = after.amounts[kind] - before.amounts[kind];
    return { kind, amount, unit: WEIGHTS[kind].unit, cost: amount * WEIGHTS[kind].points };
  });
  const key = (b: Breach) => JSON.stringify([b.kind, b.blockIds, b.bedIds, b.text]);
  const [had, has] = [new Set(before.breaches.map(key)), new Set(after.breaches.map(key))];
  return {
    soft,
    total: soft.reduce((sum, c) => sum + c.cost, 0),
    breaks: after.breaches.filter((b) => !had.has(key(b))),
    mends: before.breaches.filter((b) => !has.has(key(b))),
  };
}

/** All that one block has to do with. */
function ofBlock(m: Model, i: number, stands: readonly (Stand | undefined)[], somewhere?: boolean) {
  const b = m.blocks[i] as ModelBlock;
  const members = m.varieties[b.variety] as number[];
  const amounts: Record<CostKind, number> = {
    clump: Math.max(0, clumpsOf(members, stands).length - 1),
    shade: 0,
    "outside-shade": 0,
    walk: 0,
    mixing: 0,
  };
  const a = stands[i];
  const breaches = ownBreaches(m, i, a, somewhere);
  if (!a) return { amounts, breaches };
  amounts["outside-shade"] = (m.beds[a.bed] as ModelBed).outsideShade * b.block.plants;
  stands.forEach((other, j) => {
    if (!other || j === i) return;
    // In the plan's order, so that a breach that stays reads the same.
    breaches.push(...(i < j ? pairBreaches(m, i, a, j, other) : pairBreaches(m, j, other, i, a)));
    amounts.shade += shadedPlants(m, i, a, j, other);
    amounts.walk += walkM(m, i, a, j, other);
    amounts.mixing += mixes(m, i, a, j, other) ? 1 : 0;
  });
  return { amounts, breaches };
}

/**
 * Where a block would stand if its first corner were put down at a point of the farm's plan: the bed under the point, the
 * nearest row and the nearest step along it that keep it inside. Undefined beside all beds.
 */
export function placementUnder(
  m: Model,
  blockId: string,
  point: { eastM: number; northM: number },
  stepM: number,
): Placement | undefined {
  const b = m.blocks[m.blockAt.get(blockId) ?? -1];
  if (!b) return undefined;
  for (const { bed, frame, pitchM } of m.beds) {
    const { alongM, acrossM } = withinFrame(frame, [point.eastM, point.northM]);
    if (alongM < 0 || alongM > bed.lengthM || acrossM < 0 || acrossM > bed.widthM) continue;
    const lastRow = Math.max(1, bed.rows - b.block.rows + 1);
    const lastM = Math.max(0, bed.lengthM - b.lengthM);
    const fromM = Math.min(lastM, Math.round(alongM / stepM) * stepM);
    return { bedId: bed.id, row: Math.min(lastRow, Math.floor(acrossM / pitchM) + 1), fromM };
  }
  return undefined;
}

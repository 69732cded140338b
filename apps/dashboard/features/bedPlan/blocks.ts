import type { BedPlan, PlanBlock } from "@pith/contract";
import type { BedPlanState, Block, PlanBed } from "@pith/rules";

/** A plan in hand: pure changes of its blocks, and what the rules read of them. */

const nameOf = ({ varietyName }: PlanBlock) => varietyName.trim().toLowerCase();

/** The state the rules read of blocks in hand, as the server would read it of blocks that are kept. */
export function stateOf(plan: BedPlan, beds: PlanBed[], blocks: readonly PlanBlock[]): BedPlanState {
  const names = [...new Set(blocks.map(nameOf))].sort();
  return {
    ...(plan.state as BedPlanState),
    beds,
    blocks: blocks.map((block): Block => {
      const { varietyName: _, ...rest } = block;
      const known = Object.entries({ ...rest, variety: `v${names.indexOf(nameOf(block)) + 1}` });
      return Object.fromEntries(known.filter(([, v]) => v !== null && v !== false)) as unknown as Block;
    }),
  };
}

export const changed = (
  blocks: readonly PlanBlock[],
  id: string,
  to: Partial<PlanBlock> | ((block: PlanBlock) => Partial<PlanBlock>),
): PlanBlock[] => blocks.map((b) => (b.id === id ? { ...b, ...(typeof to === "function" ? to(b) : to) } : b));

/** A block as two: the new part follows the old one in its bed where there is one, and is no planting yet. */
export function split(blocks: readonly PlanBlock[], id: string, plantsOff: number): PlanBlock[] {
  return blocks.flatMap((b) => {
    if (b.id !== id) return [b];
    const stays = { ...b, plants: b.plants - plantsOff };
    const fromM = (b.at?.fromM ?? 0) + Math.ceil(stays.plants / b.rows) * b.plantSpacingM;
    const off = {
      ...b,
      id: crypto.randomUUID(),
      plantingId: null,
      plants: plantsOff,
      pinned: false,
      at: b.at && { ...b.at, fromM },
    };
    return [stays, off];
  });
}

/** Blocks where a proposal puts them. */
export function placedAs(blocks: readonly PlanBlock[], proposed: BedPlanState): PlanBlock[] {
  const at = new Map(proposed.blocks.map((b) => [b.id, b.at ?? null]));
  return blocks.map((b) => ({ ...b, at: at.get(b.id) ?? null }));
}

/** What can be undone and done again. */
export interface History {
  past: PlanBlock[][];
  now: PlanBlock[];
  next: PlanBlock[][];
}
export type Act = { to: PlanBlock[] } | "undo" | "redo";

export function historyAfter({ past, now, next }: History, act: Act): History {
  if (act === "undo") {
    const before = past.at(-1);
    return before ? { past: past.slice(0, -1), now: before, next: [now, ...next] } : { past, now, next };
  }
  if (act === "redo") {
    const [after, ...rest] = next;
    return after ? { past: [...past, now], now: after, next: rest } : { past, now, next };
  }
  return { past: [...past, now], now: act.to, next: [] };
}

import type { BedPlanState } from "../states/states.ts";
import { type Message, say } from "../text/message.ts";
import { BREACH_KINDS, type Breach, ownBreaches, pairBreaches, type Unknown } from "./breach.ts";
import { clumpsOf } from "./clumps.ts";
import { type Model, type ModelBed, type ModelBlock, modelOf } from "./model.ts";
import { mixes, shadedPlants, walkM } from "./pair.ts";
import { type Stand, standAt } from "./stand.ts";
import { unknownsOf } from "./unknowns.ts";
import { COST_KINDS, type CostKind, WEIGHTS } from "./weights.ts";

/** One thing that a plan is asked to keep small. `cost` is `amount` times `weight`, in points. */
export interface Cost {
  kind: CostKind;
  name: Message;
  amount: number;
  unit: string;
  weight: number;
  cost: number;
  /** Whose it is, the largest first. */
  parts: { blockIds: string[]; amount: number }[];
}

export interface PlanCheck {
  /** Empty where every block stands and nothing is broken. */
  hard: Breach[];
  soft: Cost[];
  /** Sum of the soft costs, in points. */
  total: number;
  unknown: Unknown[];
}

/** How a plan stands: what it breaks, what it costs, and what nobody can judge. Blocks that stand nowhere cost nothing. */
export function checkPlan(state: BedPlanState): PlanCheck {
  const m = modelOf(state);
  return checkStands(m, standsOf(m));
}

export const standsOf = (m: Model): (Stand | undefined)[] =>
  m.blocks.map(({ block }, i) => standAt(m, i, block.at));

export function checkStands(m: Model, stands: readonly (Stand | undefined)[]): PlanCheck {
  const hard: Breach[] = [];
  const parts: Record<CostKind, Cost["parts"]> = {
    clump: clumpParts(m, stands),
    shade: [],
    "outside-shade": [],
    walk: [],
    mixing: [],
  };
  stands.forEach((a, i) => {
    hard.push(...ownBreaches(m, i, a));
    if (!a) return;
    const { block } = m.blocks[i] as ModelBlock;
    const outside = (m.beds[a.bed] as ModelBed).outsideShade * block.plants;
    if (outside > 0) parts["outside-shade"].push({ blockIds: [block.id], amount: outside });
    for (let j = i + 1; j < stands.length; j++) {
      const b = stands[j];
      if (!b) continue;
      hard.push(...pairBreaches(m, i, a, j, b));
      const blockIds = [block.id, (m.blocks[j] as ModelBlock).block.id];
      const add = (kind: CostKind, amount: number) => {
        if (amount > 0) parts[kind].push({ blockIds, amount });
      };
      add("shade", shadedPlants(m, i, a, j, b));
      add("walk", walkM(m, i, a, j, b));
      add("mixing", mixes(m, i, a, j, b) ? 1 : 0);
    }
  });
  hard.sort((x, y) => BREACH_KINDS.indexOf(x.kind) - BREACH_KINDS.indexOf(y.kind));
  const soft = COST_KINDS.map((kind) => costOf(kind, parts[kind]));
  return { hard, soft, total: soft.reduce((sum, c) => sum + c.cost, 0), unknown: unknownsOf(m, stands) };
}

function costOf(kind: CostKind, parts: Cost["parts"]): Cost {
  const { unit, points } = WEIGHTS[kind];
  const amount = parts.reduce((sum, p) => sum + p.amount, 0);
  return {
    kind,
    name: say(`company.cost.${kind}`),
    amount,
    unit,
    weight: points,
    cost: amount * points,
    parts: parts.sort((a, b) => b.amount - a.amount),
  };
}

/** A variety in more than one stand: what it has beyond its first. */
function clumpParts(m: Model, stands: readonly (Stand | undefined)[]): Cost["parts"] {
  return m.varieties.flatMap((members) => {
    const clumps = clumpsOf(members, stands);
    if (clumps.length < 2) return [];
    return [
      { blockIds: members.map((i) => (m.blocks[i] as ModelBlock).block.id), amount: clumps.length - 1 },
    ];
  });
}

import { Arrangement } from "../../layout/arrangement.ts";
import { bedNamedIn, blockNamed } from "../../layout/breach.ts";
import type { PlanCheck } from "../../layout/checkPlan.ts";
import type { Model, ModelBlock } from "../../layout/model.ts";
import { placeWell } from "../../layout/moves.ts";
import { cornersIn } from "../../layout/positions.ts";
import type { Stand } from "../../layout/stand.ts";
import { type Message, measure, say } from "../../text/message.ts";

/** One move that would make a whole plan better. */
export interface Hint {
  blockId: string;
  saves: number;
  text: Message;
}

/** So many of the costliest blocks are tried: a hint, and no search. */
const TRIED = 8;

/** The move of one block that saves most, of the blocks that cost most. Undefined where none saves a point's hundredth. */
export function bestMove(
  m: Model,
  stands: readonly (Stand | undefined)[],
  check: PlanCheck,
): Hint | undefined {
  const a = new Arrangement(m);
  for (const i of a.free) a.put(i, stands[i]);
  let best: Hint | undefined;
  for (const i of costliest(m, a, check)) {
    const now = stands[i] as Stand;
    const points = a.adds(i, now);
    a.put(i, undefined);
    const places = m.beds.flatMap((_, bed) => cornersIn(a, i, bed));
    const to = placeWell(a, i, places, () => 0);
    a.put(i, now);
    const saves = to ? points - to.points : 0;
    if (!to || saves < 0.01 || saves <= (best?.saves ?? 0)) continue;
    const text = say("company.step.move", {
      block: blockNamed(m, i),
      bed: bedNamedIn(m, to.stand.bed),
      row: to.stand.row,
      from: measure(to.stand.fromM, "m"),
      saves: Math.round(saves * 10) / 10,
    });
    best = { blockId: (m.blocks[i] as ModelBlock).block.id, saves, text };
  }
  return best;
}

function costliest(m: Model, a: Arrangement, check: PlanCheck): number[] {
  const of = new Map<string, number>();
  for (const { parts, weight } of check.soft)
    for (const { blockIds, amount } of parts)
      for (const id of blockIds) of.set(id, (of.get(id) ?? 0) + (amount * weight) / blockIds.length);
  const cost = (i: number) => of.get((m.blocks[i] as ModelBlock).block.id) ?? 0;
  return [...a.free]
    .filter((i) => cost(i) > 0)
    .sort((i, j) => cost(j) - cost(i))
    .slice(0, TRIED);
}

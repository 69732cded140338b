import type { Unknown } from "./breach.ts";
import { type Model, type ModelBed, type ModelBlock, neededIsolationM } from "./model.ts";
import { tooNearForSeed } from "./pair.ts";
import type { Stand } from "./stand.ts";

/** What the plan cannot be judged by, because nobody has measured it. Only where it would matter. */
export function unknownsOf(m: Model, stands: readonly (Stand | undefined)[]): Unknown[] {
  const used = new Set(stands.flatMap((s) => (s ? [s.bed] : [])));
  const bedIds = (keep: (b: ModelBed, at: number) => boolean) =>
    m.beds.flatMap((b, at) => (keep(b, at) ? [b.bed.id] : []));
  const blockIds = (keep: (b: ModelBlock) => boolean) =>
    m.blocks.flatMap((b) => (keep(b) ? [b.block.id] : []));
  const out: Unknown[] = [
    { kind: "history", blockIds: [], bedIds: bedIds((b, at) => used.has(at) && b.rest === "unknown") },
    { kind: "place", blockIds: [], bedIds: m.beds.length > 1 ? bedIds((b) => !b.placed) : [] },
    { kind: "height", blockIds: blockIds((b) => b.heightM === undefined), bedIds: [] },
    { kind: "first-pick", blockIds: blockIds((b) => b.round === undefined), bedIds: [] },
    ...distancesUnknown(m, stands),
  ];
  return out.filter((u) => u.blockIds.length + u.bedIds.length > 0);
}

function distancesUnknown(m: Model, stands: readonly (Stand | undefined)[]): Unknown[] {
  const out: Unknown[] = [];
  stands.forEach((a, i) => {
    if (!a) return;
    for (let j = i + 1; j < stands.length; j++) {
      const b = stands[j];
      const [p, q] = [m.blocks[i] as ModelBlock, m.blocks[j] as ModelBlock];
      if (!b || neededIsolationM(p, q) === 0 || tooNearForSeed(m, i, a, j, b) !== undefined) continue;
      out.push({
        kind: "distance",
        blockIds: [p.block.id, q.block.id],
        bedIds: [a.bed, b.bed].map((at) => (m.beds[at] as ModelBed).bed.id),
      });
    }
  });
  return out;
}

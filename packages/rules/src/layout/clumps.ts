import { type Stand, touching } from "./stand.ts";

/** Stands of one variety: blocks that touch count as one. */
export function clumpsOf(members: readonly number[], stands: readonly (Stand | undefined)[]): number[][] {
  const open = new Set(members.filter((i) => stands[i] !== undefined));
  const clumps: number[][] = [];
  for (const first of open) {
    open.delete(first);
    const clump = [first];
    for (const i of clump) {
      for (const j of open) {
        if (!touching(stands[i] as Stand, stands[j] as Stand)) continue;
        open.delete(j);
        clump.push(j);
      }
    }
    clumps.push(clump);
  }
  return clumps;
}

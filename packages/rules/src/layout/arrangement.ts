import type { BedPlanState } from "../states/states.ts";
import { standsOf } from "./checkPlan.ts";
import { clumpsOf } from "./clumps.ts";
import type { Model, ModelBed, ModelBlock } from "./model.ts";
import { placed } from "./move.ts";
import { clash, pairPoints } from "./pair.ts";
import { fitsBed, overlap, placementOf, type Stand } from "./stand.ts";
import { WEIGHTS } from "./weights.ts";

/**
 * Blocks being put on beds, none of them against a hard rule. Pinned blocks stand where they are from the start, even where
 * that breaks a rule: it is not ours to move them, and nothing is put so that it breaks one with them.
 */
export class Arrangement {
  readonly stands: (Stand | undefined)[];
  /** Blocks that may be moved. */
  readonly free: number[];
  /** Blocks that stand on each bed. */
  readonly onBed: number[][];

  constructor(readonly m: Model) {
    const given = standsOf(m);
    const pinned = (i: number) => (m.blocks[i] as ModelBlock).block.pinned === true && given[i] !== undefined;
    this.stands = given.map(() => undefined);
    this.onBed = m.beds.map(() => []);
    this.free = given.flatMap((_, i) => (pinned(i) ? [] : [i]));
    given.forEach((s, i) => {
      if (pinned(i)) this.put(i, s);
    });
  }

  put(i: number, s: Stand | undefined): void {
    const now = this.stands[i];
    if (now) {
      const there = this.onBed[now.bed] as number[];
      there.splice(there.indexOf(i), 1);
    }
    this.stands[i] = s;
    if (s) this.onBed[s.bed]?.push(i);
  }

  /** Puts everything back to how it was kept. */
  restore(stands: readonly (Stand | undefined)[]): void {
    stands.forEach((s, i) => {
      if (this.stands[i] !== s) this.put(i, s);
    });
  }

  /** Whether a block may stand there beside all that stand now. */
  allows(i: number, s: Stand): boolean {
    const { m, stands } = this;
    if (!mayStand(m, s)) return false;
    for (const j of this.onBed[s.bed] as number[])
      if (j !== i && overlap(s, stands[j] as Stand)) return false;
    if (!m.bothWaters && m.seedBlocks.length === 0) return true;
    return stands.every((b, j) => !b || j === i || !clash(m, i, s, j, b));
  }

  /** Points that a block adds by standing there; what it has with itself elsewhere is left out. */
  adds(i: number, s: Stand): number {
    const b = this.m.blocks[i] as ModelBlock;
    let points =
      WEIGHTS["outside-shade"].points * (this.m.beds[s.bed] as ModelBed).outsideShade * b.block.plants;
    for (let j = 0; j < this.stands.length; j++) {
      const other = this.stands[j];
      if (other && j !== i) points += pairPoints(this.m, i, s, j, other);
    }
    const members = this.m.varieties[b.variety] as number[];
    if (members.length === 1) return points;
    const now = this.stands[i];
    this.stands[i] = undefined;
    const without = Math.max(0, clumpsOf(members, this.stands).length - 1);
    this.stands[i] = s;
    const within = clumpsOf(members, this.stands).length - 1;
    this.stands[i] = now;
    return points + WEIGHTS.clump.points * (within - without);
  }

  unplaced(): number[] {
    return this.free.filter((i) => this.stands[i] === undefined);
  }

  /** Points of the whole, counted anew. */
  points(): number {
    const { m, stands } = this;
    let points = 0;
    for (const members of m.varieties)
      points += WEIGHTS.clump.points * Math.max(0, clumpsOf(members, stands).length - 1);
    stands.forEach((a, i) => {
      if (!a) return;
      const plants = (m.blocks[i] as ModelBlock).block.plants;
      points += WEIGHTS["outside-shade"].points * (m.beds[a.bed] as ModelBed).outsideShade * plants;
      for (let j = i + 1; j < stands.length; j++) {
        const b = stands[j];
        if (b) points += pairPoints(m, i, a, j, b);
      }
    });
    return points;
  }

  /** What is compared: a block that stands nowhere weighs more than anything that standing costs. */
  score = (): number => UNPLACED_POINTS * this.unplaced().length + this.points();

  toState(): BedPlanState {
    const { m, stands } = this;
    const free = new Set(this.free);
    const blocks = m.state.blocks.map((b, i) => {
      const s = stands[i];
      return free.has(i) ? placed(b, s ? placementOf(m, s) : null) : b;
    });
    return { ...m.state, blocks };
  }
}

export const UNPLACED_POINTS = 1e6;

/** What a bed takes by itself: it fits, and peppers may stand there. */
export const mayStand = (m: Model, s: Stand): boolean =>
  fitsBed(m, s) && (m.beds[s.bed] as ModelBed).rest !== "too-soon";

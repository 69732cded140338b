import type { FieldNote } from "../states/parts.ts";
import type { PlantingState } from "../states/states.ts";
import { STAGE_IDS, type StageId } from "../tables/stageHeat.ts";

/** Which note says that a stage has come. True leaves come by their count. */
const NOTE_OF: Partial<Record<FieldNote["kind"], StageId>> = {
  emerged: "emerged",
  "seed-leaves-open": "seed-leaves",
  "buds-visible": "buds",
  "first-flower": "first-flower",
  "fruit-set": "set",
  "mature-green": "mature-green",
  colouring: "colour",
};

/** What people noted about how far the plants are. */
export interface StageNotes {
  /** The first day each stage was noted, in the order of the stages; those out of order are left out. */
  stages: { stage: StageId; on: string }[];
  /** Counts of true leaves that do not fall, oldest first. */
  leaves: { count: number; on: string }[];
  /** Stages noted out of their order, and counts that fell: they are not counted. */
  odd: { stage: StageId; on: string }[];
}

/**
 * Notes up to today. Where days do not follow the order of the stages, as many as can stand together are counted; the rest
 * is left out and said.
 */
export function stageNotesOf(state: PlantingState, today: string): StageNotes {
  const { sownOn } = state.planting;
  const notes = state.notes.filter((n) => n.on >= sownOn && n.on <= today);
  const firsts = new Map<StageId, string>();
  for (const note of notes) {
    const stage = NOTE_OF[note.kind] ?? (note.kind === "first-pick" ? pickedStage(state) : undefined);
    if (stage !== undefined) keepFirst(firsts, stage, note.on);
  }
  for (const { on } of state.picked ?? []) {
    if (on >= sownOn && on <= today) keepFirst(firsts, pickedStage(state), on);
  }
  const dated = STAGE_IDS.flatMap((stage) => {
    const on = firsts.get(stage);
    return on === undefined ? [] : [{ stage, on }];
  });
  const stages = mostInOrder(dated);
  const odd: StageNotes["odd"] = dated.filter((n) => !stages.includes(n));
  return { stages, leaves: leafCounts(notes, odd), odd };
}

interface Dated {
  stage: StageId;
  on: string;
}

/** The most notes whose days follow the order of the stages; of as many, those of the later stages. */
function mostInOrder(dated: Dated[]): Dated[] {
  const runs: Dated[][] = [];
  for (const note of dated) {
    const before = longest(runs.filter((run) => (run.at(-1) as Dated).on <= note.on));
    runs.push([...before, note]);
  }
  return longest(runs);
}

const longest = (runs: Dated[][]): Dated[] =>
  runs.reduce<Dated[]>((best, run) => (run.length >= best.length ? run : best), []);

function keepFirst(firsts: Map<StageId, string>, stage: StageId, on: string): void {
  const before = firsts.get(stage);
  if (before === undefined || on < before) firsts.set(stage, on);
}

/** Nobody picks what is not there: fruit in colour where that is how it is picked, else mature green at the least. */
const pickedStage = (state: PlantingState): StageId =>
  state.planting.pickAt === "colour" ? "colour" : "mature-green";

/** Leaves unfold and are counted, not lost: a count below an earlier one is left out. */
function leafCounts(notes: FieldNote[], odd: StageNotes["odd"]): StageNotes["leaves"] {
  const counts = notes
    .flatMap((n) => (n.kind === "true-leaves" && n.value !== undefined ? [{ count: n.value, on: n.on }] : []))
    .sort((a, b) => (a.on < b.on ? -1 : 1));
  const kept: StageNotes["leaves"] = [];
  for (const count of counts) {
    const last = kept.at(-1);
    if (last && (count.count < last.count || last.on === count.on)) {
      if (count.count < last.count) odd.push({ stage: "true-leaves", on: count.on });
    } else kept.push(count);
  }
  return kept;
}

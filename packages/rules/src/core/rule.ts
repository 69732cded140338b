import type { Caution } from "../cautions/types.ts";
import type { Grade } from "../evidence/types.ts";
import type { StateKind, StateOf, SubjectKind } from "../states/states.ts";
import type { MeasureUnit, Message } from "../text/message.ts";
import type { FieldProblem } from "./errors.ts";
import type { Estimated, WorkingLine } from "./working.ts";

/** What "done" is prefilled with, so that the farmer corrects numbers and does not type them. */
export interface Expected {
  kind: "application" | "watering" | "setting-out" | "look";
  date: string;
  materialId?: string;
  amountKg?: number;
  areaM2?: number;
  minutes?: number;
  netMm?: number;
  nKgPerHa?: number;
  /** What goes with the first material on the same ground and day. */
  alongside?: { materialId: string; amountKg: number }[];
}

/** One thing to do, in units a grower can measure. */
export interface Step {
  text: Message;
}

/** What to do if something nobody has told us is so. */
export interface Case {
  when: Message;
  decision: Message;
  steps: Step[];
}

/** Numbers to draw, with everything a text alternative and a data table need. */
export interface Chart {
  id: string;
  title: Message;
  /**
   * With `labels`, x counts things from 1, and these are what they are called, in order. Numbers are in `unit`, where
   * they have one.
   */
  x: { name: Message; kind: "date" | "hour" | "number"; labels?: Message[]; unit?: string };
  y: { name: Message; unit: string };
  series: {
    id: string;
    name: Message;
    style: "line" | "area" | "bars" | "limit" | "points";
    points: [string | number, number | null][];
  }[];
  /** Stretches of x with a name, in order: stages of a season. One ends where the next begins. */
  bands?: { name: Message; from: string | number; to: string | number }[];
}

/** A measured content among the classes of a guide, to draw as a range. Bounds are in `unit`, both ends included. */
export interface Range {
  id: string;
  name: Message;
  unit: string;
  value: number;
  /** As the laboratory printed it, where that was another unit. */
  reported?: { value: number; unit: string };
  /** Lowest first; `high` is null in the topmost. */
  classes: { name: Message; low: number; high: number | null }[];
  /** Place of the value's class among them. */
  class: number;
  guide: { id: string; title: string; status: "seen" | "secondary" | "memory" | "office" };
}

/** Rows to read or print where a picture does not do: a season week by week, a mixture material by material. */
export interface Table {
  id: string;
  title: Message;
  /** A column's numbers are in `unit`, as a measure has them; a column of words or days has none. */
  columns: {
    name: Message;
    unit?: MeasureUnit;
    /** Where its numbers are amounts of one material of the shed, and of what goes into one stock tank. */
    materialId?: string;
    tank?: "A" | "B";
  }[];
  /** As many cells as columns. A string is a calendar day; null where there is nothing to say. */
  rows: (Message | number | string | null)[][];
}

/** How much depends on acting, and until when. How each rule reckons it: docs/agronomy/stakes.md. */
export interface Stakes {
  /**
   * Share of this planting's worth at risk if what the advice asks for is not done by `actBy`, 0 to 1. What can be done
   * as well later, and damage that nothing mends any more, is not in it.
   */
  harm: number;
  reason: Message;
  /** Last instant at which acting still helps; null where nothing presses. */
  actBy: string | null;
}

/** A rule's advice for one subject at one time. */
export interface AdviceBody {
  kind: "advice";
  decision: { code: string; text: Message };
  steps: Step[];
  /** Days it holds for; `endsBy` says what ends it. */
  window: { from: string | null; to: string | null; endsBy: Message };
  stakes: Stakes;
  working: WorkingLine[];
  estimated: Estimated[];
  /** Ids of claims in the evidence register. */
  evidence: string[];
  grade: Grade;
  /** Where the evidence does not apply here. */
  limits: Message[];
  /** Whole, with version and text: never separated from the advice. */
  cautions: Caution[];
  wouldChange: Message[];
  /** Filled where advice of ours was never answered: what then, either way. */
  cases: Case[];
  expected: Expected | null;
  /** The numbers that a change of decides whether a draft is replaced. */
  amounts: Record<string, number>;
  charts: Chart[];
  ranges?: Range[];
  table?: Table[];
}

/** Cannot say yet: which measurement would settle it. */
export interface NeedsMoreBody {
  kind: "needs-more";
  missing: { field: string; measure: Message; couldMove: Message }[];
  working: WorkingLine[];
  estimated: Estimated[];
}

/** The question does not arise here. */
export interface DoesNotApplyBody {
  kind: "does-not-apply";
  reason: Message;
}

/** What came in cannot be; says what to fix. Shown and stored like any answer. */
export interface RefusedBody {
  kind: "refused";
  problems: FieldProblem[];
}

export type AnswerBody = AdviceBody | NeedsMoreBody | DoesNotApplyBody | RefusedBody;

/** An answer with whose it is. */
export type Answer = AnswerBody & {
  rule: { id: string; version: number };
  subject: { kind: SubjectKind; id: string };
  asOf: string;
};
export type Advice = Extract<Answer, { kind: "advice" }>;

/** One question with a version. */
export interface Rule<K extends StateKind = StateKind> {
  id: string;
  /** Bumped when a coefficient, an equation or a decision changes. */
  version: number;
  question: string;
  subject: K;
  /** What it reads, in the trade's words. */
  needs: string[];
  run(state: StateOf<K>): AnswerBody;
}

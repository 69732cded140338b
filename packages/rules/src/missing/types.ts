import type { SourceRef } from "../core/working.ts";
import type { SubjectKind } from "../states/states.ts";
import type { MeasureUnit, Message, Param } from "../text/message.ts";

/** What a measurement costs the grower (common practice): nothing but time, a thing from the shop, or a laboratory's fee. */
export const COST_CLASSES = ["free", "cheap", "laboratory"] as const;
export type CostClass = (typeof COST_CLASSES)[number];

/** How an input may differ from the value the rule took. `source` says whose figure the spread is. */
export type Spread = {
  unit: MeasureUnit | "share" | "pH" | "m3/m3" | "kg/m3" | "count";
  source: SourceRef;
} & (
  | { shape: "normal"; mean: number; sd: number; least?: number; most?: number }
  | { shape: "student-t"; mean: number; scale: number; degrees: number; least?: number; most?: number }
  | { shape: "uniform"; low: number; high: number }
  | { shape: "triangular"; low: number; mode: number; high: number }
  | { shape: "one-of"; values: number[] }
);

/** One input that is estimated or only roughly known, and how the state reads with another value of it. */
export interface UncertainInput<S> {
  /** Of its kind; with `about` where a subject has several of the kind. Texts: `missing.measure.<id>`, `.how.<id>`. */
  id: string;
  about?: { name: string; params: Record<string, Param> };
  spread: Spread;
  /** Left out where nobody can measure it now, as what the weather will do: it widens the interval and is no candidate. */
  cost?: CostClass;
  apply(state: S, value: number): S;
}

/** A number the rule's answer turns on. */
export interface KeyAmount {
  id: string;
  name: Message;
  /** A day's values are calendar days; `beyond` stands for later than the rule looks ahead. */
  unit: "day" | MeasureUnit;
  now: number | string | null;
  /** Eight draws in ten lie between them, with every uncertain input drawn at once. */
  low: number | string | null;
  high: number | string | null;
}

/** One thing worth measuring. */
export interface Candidate {
  input: string;
  measure: Message;
  how: Message;
  cost: CostClass;
  /** How sure the input is now: eight in ten lie from low to high. Left out where the rule has no value at all. */
  assumed?: { low: number; high: number; spread: Spread; text: Message };
  /** Nothing can be said without it. */
  settles: boolean;
  /** What knowing it would be expected to take off the variance of each key amount, 0 to 1; by the amount's id. */
  varianceShare: Record<string, number>;
  /** What it would be expected to take off the width of the interval of the amount it narrows most, 0 to 1. */
  narrows: number;
  /** Share of draws in which another value of this input alone gives another decision. */
  decisionChanges: number;
  /** All of that in a sentence. */
  text: Message;
}

/** What is worth measuring for one rule's answer, best first. */
export interface WorthMeasuring {
  rule: { id: string; version: number };
  subject: { kind: SubjectKind; id: string };
  asOf: string;
  /** Today's decision in words; null where the rule cannot say one yet. */
  decision: Message | null;
  amounts: KeyAmount[];
  candidates: Candidate[];
  /** How it was reckoned, so that it can be reckoned again. */
  seed: number;
  draws: number;
  /** Times the rule was run. */
  runs: number;
}

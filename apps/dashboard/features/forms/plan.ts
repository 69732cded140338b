import type { FormUnit } from "../../format/units.ts";

/**
 * What a form asks, in which order. A field is named by its path in the request (`soil.texture`); its kind, range,
 * words and whether it may stay empty come from the contract's schema, its unit from its name, its label from the
 * text catalogue.
 */
export interface Section {
  title?: string;
  fields?: string[];
  /** A list of rows that are alike, e.g. the periods of a bed's covers. */
  each?: { path: string; fields: string[]; add: string };
}

export interface Plan {
  /** Namespace of the labels in the catalogue, `fields.<name>`. */
  labels: string;
  sections: Section[];
  /** Choices for fields that name another thing. */
  choices?: Record<string, Choice[]>;
  /** Where a field's unit is not told by its name alone. */
  unitOf?: (path: string, raw: (path: string) => string) => FormUnit | undefined;
  /** Units that go with the words of a field, so that who chooses one reads what to measure in. */
  unitsByWord?: Record<string, Record<string, FormUnit>>;
  /** Choices that nobody has made yet: what stands first would be saved as if it had been seen. */
  unchosen?: string[];
  /** Fields that start from this day or moment: a page that was kept on a phone says them anew. */
  startNow?: string[];
  /** Zone of the clock that moments are read from. */
  zone?: string;
  /** Fields written in several lines. */
  long?: string[];
}

export interface Choice {
  value: string;
  label: string;
}

export interface FieldView {
  name: string;
  /** Where one page holds the same form several times. */
  id?: string;
  label: string;
  kind: "text" | "long" | "number" | "date" | "choice" | "flag" | "email" | "moment";
  unit: string | null;
  hint: string | null;
  required: boolean;
  value: string;
  choices: Choice[];
  /** The zone of the clock that says what it starts from: today, or now. */
  startsNowIn?: string;
}

export interface SectionView {
  title: string | null;
  fields: FieldView[];
  each: { path: string; add: string; template: FieldView[]; rows: FieldView[][] } | null;
}

/** What a form shows beside its fields after an attempt. */
export interface FormState {
  attempt: number;
  /** For the whole form. */
  message: string | null;
  problems: Record<string, string>;
  /** What was typed, so that nothing has to be typed twice. */
  typed: Record<string, string> | null;
  /** What the office answered, where it did, and the kind of problem that it named. */
  status?: number;
  type?: string;
  /** What another said of the same meanwhile. */
  meanwhile?: Meanwhile;
  /** Kept on this phone, because nobody could be reached. */
  kept?: boolean;
}

/** Two who spoke of the same: what stands now, what was written here, and the mark by which this may take its place. */
export interface Meanwhile {
  theirs: string;
  mine: string;
  seen: string;
}

export const untouched: FormState = { attempt: 0, message: null, problems: {}, typed: null };

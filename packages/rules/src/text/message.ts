/** Units a message parameter may carry; SI inside, converted only when it is rendered for a reader. */
export type MeasureUnit =
  | "C"
  | "C-difference"
  | "C-hours"
  | "C-days"
  | "mm"
  | "cm"
  | "m"
  | "m2"
  | "ha"
  | "g"
  | "kg"
  | "mL"
  | "scoop-mL"
  | "L"
  | "L/h"
  | "minutes"
  | "hours"
  | "days"
  | "kg/ha"
  | "kg/m2"
  | "g/m2"
  | "g/m"
  | "kg/m"
  | "g/plant"
  | "t/ha"
  | "mg/kg"
  | "mg/L"
  | "dS/m"
  | "kPa"
  | "pct"
  | "W"
  | "kWh"
  | "night-count"
  | "points";

/** A number with its unit, as a message parameter. */
export interface Measure {
  value: number;
  unit: MeasureUnit;
}

/**
 * A parameter of a message. A `day` is a calendar day; a `word` is itself a key of the text catalogue, `words` several of
 * them, said as a list; a `bed` is said by the name its people gave it where the reader may see it, else by its number among those the answer speaks of; so are a
 * planting and a treatment of a trial.
 */
export type Param =
  | string
  | number
  | Measure
  | { day: string }
  | { word: string }
  | { words: string[] }
  | { bed: string; nth: number }
  | { planting: string; nth: number }
  | { treatment: string; nth: number };

/** Words for people, kept as a key and its numbers, so that they can be said in any language and unit. */
export interface Message {
  key: string;
  params: Record<string, Param>;
}

/** Builds a message. `key` stands in `text/en/*.ts`. */
export const say = (key: string, params: Record<string, Param> = {}): Message => ({ key, params });

/** A measure for a message. */
export const measure = (value: number, unit: MeasureUnit): Measure => ({ value, unit });

/** A calendar day for a message. */
export const onDay = (day: string): { day: string } => ({ day });

/** A word that the text catalogue translates, e.g. a cover or a material kind. */
export const wordOf = (key: string): { word: string } => ({ word: key });

/** Several such words, said as the language lists them: "a, b and c". */
export const wordsOf = (keys: string[]): { words: string[] } => ({ words: keys });

/** A bed for a message: its id, and its number among the beds that the answer speaks of, from 1. */
export const bedNamed = (id: string, nth: number): { bed: string; nth: number } => ({ bed: id, nth });

/** A planting for a message: its id, and its number among the plantings that the answer speaks of, from 1. */
export const plantingNamed = (id: string, nth: number): { planting: string; nth: number } => ({
  planting: id,
  nth,
});

/** A treatment, or a level of a factor, of a trial for a message: its id, and its number from 1. */
export const treatmentNamed = (id: string, nth: number): { treatment: string; nth: number } => ({
  treatment: id,
  nth,
});

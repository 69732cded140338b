import type { Trial } from "../states/trial.ts";

type Factors = readonly { id: string; levels: readonly { id: string }[] }[];

/** Every treatment of a design as one level of each factor, the last factor turning fastest; of one factor its levels. */
export const combinationsOf = (factors: Factors): string[][] =>
  factors.reduce<string[][]>(
    (made, { levels }) => made.flatMap((before) => levels.map(({ id }) => [...before, id])),
    [[]],
  );

/** Place of a plot's treatment among {@link combinationsOf}, from 1; 0 where the design has no such treatment. */
export const nthTreatment = (factors: Trial["factors"], levels: readonly string[]): number =>
  combinationsOf(factors).findIndex(
    (c) => c.length === levels.length && c.every((id, i) => id === levels[i]),
  ) + 1;

/** A level for a message: its id, and its number among all levels of the trial, factor by factor, from 1. */
export function nthLevel(factors: Trial["factors"], factor: number, id: string): number {
  const before = factors.slice(0, factor).reduce((sum, f) => sum + f.levels.length, 0);
  return before + (factors[factor]?.levels.findIndex((level) => level.id === id) ?? -1) + 1;
}

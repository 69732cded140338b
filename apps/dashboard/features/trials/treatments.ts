import type { Trial } from "@pith/contract";
import { plotLabels, type Trial as RulesTrial } from "@pith/rules";

/** A plot as people read it. */
export interface NamedPlot {
  id: string;
  number: number;
  block: number | null;
  /** A letter for the treatment, and what it is. */
  letter: string;
  treatment: string;
  /** Number of the treatment, from 1. */
  nth: number;
  bedId: string;
  fromM: number;
  toM: number;
}

const FIRST_LETTER = 65;
const letterOf = (nth: number) => String.fromCharCode(FIRST_LETTER + nth - 1);

/** Plots in the order in which they are walked, with their treatments by name. */
export function namedPlots(trial: Trial): NamedPlot[] {
  const names = new Map(
    trial.factors.flatMap((f) => f.levels.map((level) => [level.id, level.name] as const)),
  );
  const shape = { factors: trial.factors, plots: trial.plots } as unknown as Pick<
    RulesTrial,
    "factors" | "plots"
  >;
  return plotLabels(shape).map(({ plotId, number, block, treatment, levels, bedId, fromM, toM }) => ({
    id: plotId,
    number,
    block,
    letter: letterOf(treatment),
    treatment: levels.map(({ levelId }) => names.get(levelId) ?? "").join(", "),
    nth: treatment,
    bedId,
    fromM,
    toM,
  }));
}

/** Each treatment once, by its letter. */
export const treatmentsOf = (plots: NamedPlot[]): NamedPlot[] =>
  [...new Map(plots.map((plot) => [plot.nth, plot])).values()].sort((a, b) => a.nth - b.nth);

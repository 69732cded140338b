import type { Trial } from "../states/trial.ts";
import { nthLevel, nthTreatment } from "./combinations.ts";

/** What is printed on a plot's label. Names of treatments and beds are added by who holds them. */
export interface PlotLabel {
  plotId: string;
  number: number;
  block: number | null;
  /** Number of the treatment, or of the combination, from 1. */
  treatment: number;
  /** A level of each factor; `nth` counts through all levels of the trial, as its sentences do. */
  levels: { factorId: string; levelId: string; nth: number }[];
  bedId: string;
  fromM: number;
  toM: number;
}

/** One label a plot, as one walks them. */
export const plotLabels = ({ factors, plots }: Pick<Trial, "factors" | "plots">): PlotLabel[] =>
  [...plots]
    .sort((a, b) => a.number - b.number)
    .map(({ id, number, block, levels, bedId, fromM, lengthM }) => ({
      plotId: id,
      number,
      block: block ?? null,
      treatment: nthTreatment(factors, levels),
      levels: levels.map((levelId, i) => ({
        factorId: factors[i]?.id ?? "",
        levelId,
        nth: nthLevel(factors, i, levelId),
      })),
      bedId,
      fromM,
      toM: Math.round((fromM + lengthM) * 1000) / 1000,
    }));

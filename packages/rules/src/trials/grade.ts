import type { Grade } from "../evidence/types.ts";
import type { Analysis } from "./analyse.ts";
import type { Verdict } from "./verdict.ts";

/** A trial that carries further than one look: so many plots of each, so many degrees of freedom, so few plots lost (cp). */
const MODERATE = { plots: 4, df: 10, leftOutShare: 0.1 };

/**
 * How far one trial carries: on one farm in one season never further than moderate, and that only where a difference was
 * found, every mean stands on at least four plots, at least ten degrees of freedom judge chance, and no more than a tenth
 * of the plots is missing (cp). All else is weak.
 */
export function gradeOf(analysis: Analysis, verdict: Verdict): Extract<Grade, "moderate" | "weak"> {
  const { rows, leftOut } = analysis.values;
  const carries =
    verdict.code === "differ" &&
    verdict.main.family.means.every((mean) => mean.plots >= MODERATE.plots) &&
    analysis.residual.df >= MODERATE.df &&
    leftOut.length <= MODERATE.leftOutShare * (rows.length + leftOut.length);
  return carries ? "moderate" : "weak";
}

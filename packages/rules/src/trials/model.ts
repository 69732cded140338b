import { subsets } from "../quantities/statistics/anovaRows.ts";
import type { Term } from "../quantities/statistics/sequentialFit.ts";
import type { Trial } from "../states/trial.ts";
import { combinationsOf } from "./combinations.ts";
import type { Measured } from "./readValues.ts";

/** One mean that is asked for: a level of each factor, null where it is taken over all of them. */
export type Asked = (string | null)[];

/** Means that are compared with one another. */
export interface Family {
  /** Places of the factors whose levels, or combinations, it compares. */
  factors: number[];
  asked: Asked[];
}

/** One factor: its levels. More: the levels of each, and last the combinations. */
export function familiesOf(factors: Trial["factors"]): Family[] {
  const each = factors.map((factor, f) => ({
    factors: [f],
    asked: factor.levels.map(({ id }) => factors.map((_, i) => (i === f ? id : null))),
  }));
  if (factors.length === 1) return each;
  return [...each, { factors: factors.map((_, f) => f), asked: combinationsOf(factors) }];
}

/**
 * The linear model of a design over the plots that are in: blocks, then factors, then what they do together. Terms of
 * factors are named by their places, `1`, `2`, `1:2`.
 */
export function termsOf(trial: Trial, rows: readonly Measured[], asked: readonly Asked[]): Term[] {
  const blocks: Term[] =
    trial.design === "completely-randomised"
      ? []
      : [
          {
            source: "block",
            factors: [[...rows.map(({ plot }) => String(plot.block)), ...asked.map(() => null)]],
          },
        ];
  // One array a factor, the same in every term that holds it: that is how an interaction is known to hold it.
  const columns = trial.factors.map((_, f) => [
    ...rows.map(({ plot }) => plot.levels[f] ?? ""),
    ...asked.map((levels) => levels[f] ?? null),
  ]);
  const names = trial.factors.map((_, f) => String(f + 1));
  return [
    ...blocks,
    ...subsets(names).map((subset) => ({
      source: subset.join(":"),
      factors: subset.map((name) => columns[Number(name) - 1] ?? []),
    })),
  ];
}

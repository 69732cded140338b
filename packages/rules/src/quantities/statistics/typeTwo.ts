import { type Fit, sequentialFit, type Term } from "./sequentialFit.ts";

/**
 * Fits a linear model and gives each term its sum of squares after all other terms that do not hold it (Yates 1934; type
 * II). With every plot in, that is the same as any other order. Where plots are missing it is the one that asks of a main
 * effect what it does beside the other factors, and does not depend on how levels are coded. What the layout cannot tell from
 * blocks is counted to the blocks.
 *
 * @param cells as in {@link sequentialFit}
 */
export function typeTwo(values: readonly number[], terms: readonly Term[], cells = 0): Fit {
  const whole = sequentialFit(values, terms, cells);
  return {
    ...whole,
    terms: whole.terms.map((line) => {
      const own = terms.find((t) => t.source === line.source);
      if (!own) return line;
      const others = terms.filter((t) => t !== own && !holds(t, own) && !whole.aliased.includes(t.source));
      return sequentialFit(values, [...others, own]).terms.find((t) => t.source === own.source) ?? line;
    }),
  };
}

/** An interaction holds the terms whose factors are all among its own. */
const holds = (term: Term, inner: Term): boolean => inner.factors.every((f) => term.factors.includes(f));

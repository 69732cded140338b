import type { Trial } from "../states/trial.ts";
import type { Analysis, Compared } from "./analyse.ts";

/** Two means that differ by more than chance among all pairs of their family. */
export interface Difference {
  family: Compared;
  /** Places in the family; the mean of `more` is the larger. */
  more: number;
  less: number;
  difference: number;
  /** Interval that holds for all pairs of the family at once. */
  low: number;
  high: number;
}

export type Verdict =
  /** What is said first; `others` are of the other factors, where none depends on another. */
  | { code: "differ"; main: Difference; others: Difference[] }
  /** The whole differs by more than chance, and no pair by itself. */
  | { code: "differ-somewhere"; family: Compared }
  | { code: "none-seen"; family: Compared };

/** Interactions that are not put down to chance. */
export const interplayOf = ({ interactions }: Analysis, alpha: number): string[] =>
  interactions.filter(({ p }) => p < alpha).map(({ source }) => source);

/**
 * The families that may be read: where what one factor does depends on another, averages over the other mislead, and only
 * combinations are compared. Where the layout cannot tell combinations, each factor for itself.
 */
export function readFamilies(analysis: Analysis, trial: Trial): Compared[] {
  const each = analysis.families.filter((f) => f.factors.length === 1);
  const whole = analysis.families.filter((f) => f.factors.length > 1);
  return interplayOf(analysis, trial.alpha).length > 0 && whole.length > 0 ? whole : each;
}

/** What the trial says of one response. Pairs count as different by Tukey's difference, which allows for their number. */
export function judge(analysis: Analysis, trial: Trial): Verdict {
  const families = readFamilies(analysis, trial);
  const found = families.flatMap((family) => differenceOf(family) ?? []);
  const [main, ...others] = found.sort(
    (a, b) => Number(touchesNow(b)) - Number(touchesNow(a)) || sureness(b) - sureness(a),
  );
  if (main) return { code: "differ", main, others };
  const family = families[0] as Compared;
  const whole = families.find((f) => (pOf(analysis, f) ?? 1) < trial.alpha);
  return whole ? { code: "differ-somewhere", family: whole } : { code: "none-seen", family };
}

/** The chance of an F as large, of the term a family of means stands for. */
const pOf = ({ table }: Analysis, { factors }: Pick<Compared, "factors">): number | null =>
  table.find((line) => line.source === factors.map((f) => f + 1).join(":"))?.p ?? null;

const touchesNow = ({ more, less }: Difference): boolean => more === 0 || less === 0;

/** How many times its honest difference a difference is: its distance from nothing, whatever its unit. */
const sureness = ({ difference, low }: Difference): number => difference / (difference - low);

/** Of the pairs that differ, the largest against what is done now, which is the first; else the largest of all. */
function differenceOf(family: Compared): Difference | null {
  const apart = family.pairs.filter((pair) => Math.abs(pair.difference) > pair.hsd);
  const withNow = apart.filter((pair) => pair.a === 0);
  const [largest] = (withNow.length > 0 ? withNow : apart).sort(
    (x, y) => Math.abs(y.difference) - Math.abs(x.difference),
  );
  if (!largest) return null;
  const difference = Math.abs(largest.difference);
  const up = largest.difference > 0;
  return {
    family,
    more: up ? largest.a : largest.b,
    less: up ? largest.b : largest.a,
    difference,
    low: difference - largest.hsd,
    high: difference + largest.hsd,
  };
}

/** What the round is ordered by. */
export interface Pressing {
  /** Share of the planting's worth at risk if nothing is done, 0 to 1. */
  harm: number;
  /** Last instant at which acting still helps; null where nothing presses. */
  actBy: string | null;
}

/** A harm that must be averted a week later weighs half: a visit a week is an agent's rhythm (common practice). */
const HALVES_IN_DAYS = 7;
const MS_PER_DAY = 86_400_000;
/** Harm below this is no harm to tell apart; it keeps the logarithm finite. */
const LEAST_HARM = 1e-3;
/** Behind everything that has a last moment: later than any of them by thousands of years. */
const NOTHING_PRESSES = 1e6;

/**
 * Where a draft stands in the round, in rising order: by harm avoided and time left.
 *
 *   weight = harm x 2^(-days left / 7),   key = -log2(weight) = act-by in weeks - log2(harm)
 *
 * Taken as a logarithm, the clock falls out: the order of two drafts never changes while they wait, so the key is
 * computed once, when the draft is made. Where nothing presses, harm alone orders, after everything that presses.
 * The form and the week are common practice.
 */
export function roundOrder({ harm, actBy }: Pressing): number {
  const weight = Math.log2(Math.max(harm, LEAST_HARM));
  return (actBy === null ? NOTHING_PRESSES : Date.parse(actBy) / MS_PER_DAY / HALVES_IN_DAYS) - weight;
}

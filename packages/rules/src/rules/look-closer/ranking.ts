import type { Weighed } from "./weigh.ts";

/** Points from which a cause is worth naming (cp). */
const FITS_FROM = 2;
/** Within this many points of the first, causes are named together: odds of 2 to 1 decide nothing (cp). */
const TOGETHER = 1;
const MOST_TOGETHER = 3;
/** Within this many points of the first, causes are shown with their working. */
const SHOWN = 3;
const MOST_SHOWN = 5;

/** What the weighing comes to. */
export interface Ranking {
  /** One stands clear, several stand close, or none fits what was seen. */
  kind: "leading" | "several" | "unclear";
  /** Named in the answer. */
  first: Weighed;
  second: Weighed;
  /** Those whose safe steps are taken: within a point of the first. */
  together: Weighed[];
  /** Those whose working is shown. */
  shown: Weighed[];
}

export function rankingOf(all: Weighed[]): Ranking {
  const [first, second] = all as [Weighed, Weighed, ...Weighed[]];
  const within = (points: number, most: number) =>
    all.slice(0, most).filter((c) => c.points >= first.points - points);
  const together = within(TOGETHER, MOST_TOGETHER);
  return {
    kind: first.points < FITS_FROM ? "unclear" : together.length > 1 ? "several" : "leading",
    first,
    second,
    together,
    shown: [...new Set([...within(SHOWN, MOST_SHOWN), first, second])],
  };
}

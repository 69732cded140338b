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
  /** Named in the answer, and told apart. */
  first: Weighed;
  second: Weighed;
  /** Those the answer names where several stand close: the first two, and all that stand level with the second. */
  named: Weighed[];
  /** Those whose safe steps and cautions are taken: the named, and up to three within a point of the first. */
  together: Weighed[];
  /** Those whose working is shown. */
  shown: Weighed[];
}

export function rankingOf(all: Weighed[]): Ranking {
  const [first, second] = all as [Weighed, Weighed, ...Weighed[]];
  const within = (points: number, most: number) =>
    all.slice(0, most).filter((c) => c.points >= first.points - points);
  const near = within(TOGETHER, MOST_TOGETHER);
  const close = near.length > 1;
  // Whatever stands level with the second is as likely as it: no cut among equals.
  const named = close ? all.filter((c) => c.points >= second.points) : [first];
  const together = named.length > near.length ? named : near;
  return {
    kind: first.points < FITS_FROM ? "unclear" : close ? "several" : "leading",
    first,
    second,
    named,
    together,
    shown: [...new Set([...together, ...within(SHOWN, MOST_SHOWN), first, second])],
  };
}

import type { MISSING_REASONS, Plot, Response, Trial } from "../states/trial.ts";

/** Why a plot is not in the sums: as its people said, nobody said by the end, or its partner in the pair is not in either. */
type LeftOutWhy = (typeof MISSING_REASONS)[number] | "not-told" | "partner";

export interface Measured {
  plot: Plot;
  value: number;
}

/** What came in for one response. */
export interface ResponseValues {
  response: Response;
  rows: Measured[];
  leftOut: { plot: Plot; why: LeftOutWhy }[];
  /** Neither a value nor a reason yet, while the trial runs. */
  lacking: Plot[];
  /** Year of the first and of the last value. */
  years: [number, number] | null;
}

/** Values of one response, plot by plot as one walks. Once the trial has ended, a plot nobody spoke of is left out. */
export function readValues(trial: Trial, response: Response, ended: boolean): ResponseValues {
  const said = new Map(trial.values.filter((v) => v.responseId === response.id).map((v) => [v.plotId, v]));
  const rows: Measured[] = [];
  const leftOut: ResponseValues["leftOut"] = [];
  const lacking: Plot[] = [];
  for (const plot of [...trial.plots].sort((a, b) => a.number - b.number)) {
    const found = said.get(plot.id);
    if (found?.value !== undefined) rows.push({ plot, value: found.value });
    else if (found?.missing) leftOut.push({ plot, why: found.missing });
    else if (ended) leftOut.push({ plot, why: "not-told" });
    else lacking.push(plot);
  }
  const years = [...said.values()].map((v) => Number(v.on.slice(0, 4)));
  const read = {
    response,
    rows,
    leftOut,
    lacking,
    years: years.length > 0 ? ([Math.min(...years), Math.max(...years)] as [number, number]) : null,
  };
  return trial.design === "paired-strips" && lacking.length === 0 ? wholePairs(read) : read;
}

/** A strip without its partner tells nothing about the difference: pair differences are all that is judged. */
function wholePairs(read: ResponseValues): ResponseValues {
  const inPair = new Map<number | undefined, number>();
  for (const { plot } of read.rows) inPair.set(plot.block, (inPair.get(plot.block) ?? 0) + 1);
  const whole = (m: Measured) => inPair.get(m.plot.block) === 2;
  return {
    ...read,
    rows: read.rows.filter(whole),
    leftOut: [
      ...read.leftOut,
      ...read.rows.filter((m) => !whole(m)).map(({ plot }) => ({ plot, why: "partner" as const })),
    ].sort((a, b) => a.plot.number - b.plot.number),
  };
}

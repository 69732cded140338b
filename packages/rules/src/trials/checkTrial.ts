import { refuse } from "../core/errors.ts";
import type { ResponseKind, Trial } from "../states/trial.ts";

/** What each kind of response can be at all. */
const BOUNDS: Record<ResponseKind, readonly [number, number]> = {
  "marketable-kg": [0, 100_000],
  "total-kg": [0, 100_000],
  "fruit-count": [0, 1_000_000],
  "mean-fruit-g": [0, 2000],
  "first-pick-day": [0, 366],
  "coloured-kg": [0, 100_000],
  "height-cm": [0, 400],
  "lodged-pct": [0, 100],
  "culls-pct": [0, 100],
  "capsaicinoids-mg-per-kg": [0, 1_000_000],
  other: [-1_000_000, 10_000_000],
};

/**
 * What no analysis could mend.
 *
 * @throws DomainError naming the plot, the value or the factor
 */
export function checkTrial(trial: Trial, today: string): void {
  checkDays(trial, today);
  checkPlots(trial);
  checkReplication(trial);
  checkValues(trial);
}

function checkDays({ startedOn, endedOn, values }: Trial, today: string): void {
  if (endedOn !== undefined && startedOn !== undefined && endedOn < startedOn)
    refuse("endedOn", "is before the trial began", `${startedOn} or later`, endedOn);
  values.forEach(({ on }, i) => {
    if (on > today) refuse(`values.${i}.on`, "is a day to come", `${today} or earlier`, on);
  });
}

function checkPlots({ design, factors, plots }: Trial): void {
  if (design !== "factorial-blocks" && factors.length > 1)
    refuse("factors", "are more than this design compares", "1 factor", factors.length);
  if (design === "factorial-blocks" && factors.length < 2)
    refuse("factors", "are too few for a factorial", "2 or 3 factors", factors.length);
  if (design === "paired-strips" && factors[0]?.levels.length !== 2)
    refuse("factors.0.levels", "must be two in paired strips", "2 levels", factors[0]?.levels.length);
  const taken = new Set<string>();
  plots.forEach((plot, i) => {
    if (plot.levels.length !== factors.length)
      refuse(
        `plots.${i}.levels`,
        "must name one level of each factor",
        `${factors.length}`,
        plot.levels.length,
      );
    plot.levels.forEach((level, f) => {
      const known = factors[f]?.levels.map((l) => l.id) ?? [];
      if (!known.includes(level))
        refuse(`plots.${i}.levels.${f}`, "is no level of its factor", known.join(", "), level);
    });
    const wantsBlock = design !== "completely-randomised";
    if (wantsBlock && plot.block === undefined)
      refuse(`plots.${i}.block`, "is needed in this design", "the plot's block");
    const place = wantsBlock ? `${plot.block} ${plot.levels.join(" ")}` : plot.id;
    if (taken.has(place) || taken.has(`id ${plot.id}`))
      refuse(`plots.${i}`, "stands twice: a block holds each treatment once", "each treatment once a block");
    taken.add(place);
    taken.add(`id ${plot.id}`);
  });
}

/** Two plots alike are the least from which chance can be judged; a level that no plot has is no treatment. */
function checkReplication({ factors, plots }: Trial): void {
  factors.forEach((factor, f) => {
    factor.levels.forEach((level, l) => {
      const n = plots.filter((p) => p.levels[f] === level.id).length;
      if (n < 2)
        refuse(
          `factors.${f}.levels.${l}`,
          `has ${n} plots: without repeats chance cannot be judged`,
          "at least 2 plots",
          n,
        );
    });
  });
}

function checkValues({ plots, responses, values }: Trial): void {
  const plotIds = new Set(plots.map((p) => p.id));
  const kinds = new Map(responses.map((r) => [r.id, r.kind]));
  const said = new Set<string>();
  values.forEach(({ plotId, responseId, value }, i) => {
    if (!plotIds.has(plotId))
      refuse(`values.${i}.plotId`, "names no plot of this trial", "a plot's id", plotId);
    const kind = kinds.get(responseId);
    if (!kind) refuse(`values.${i}.responseId`, "names nothing measured here", "a response's id", responseId);
    if (said.has(`${plotId} ${responseId}`))
      refuse(`values.${i}`, "gives the same plot a second value", "one value a plot and response");
    said.add(`${plotId} ${responseId}`);
    const [low, high] = BOUNDS[kind];
    if (value !== undefined && (value < low || value > high))
      refuse(`values.${i}.value`, `cannot be for ${kind}`, `${low} to ${high}`, value);
  });
}

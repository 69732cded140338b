import { RESPONSE_KINDS, type ResponseKind } from "../../states/trial.ts";

/** A treatment by the levels it is made of, as `x1` to `x3` of which there are `xn`. */
const who = (x: "x" | "y"): string =>
  `{${x}n, select, 1 {{${x}1}} 2 {{${x}1} with {${x}2}} other {{${x}1} with {${x}2} and {${x}3}}}`;

/** How one treatment was ahead of another, for each thing that is measured. */
const AHEAD: Record<ResponseKind, string> = {
  "marketable-kg": `with ${who("x")} a plot gave {by} more marketable fruit than with ${who("y")}`,
  "total-kg": `with ${who("x")} a plot gave {by} more fruit than with ${who("y")}`,
  "fruit-count": `with ${who("x")} a plot gave {by} fruits more than with ${who("y")}`,
  "mean-fruit-g": `with ${who("x")} a fruit weighed {by} more than with ${who("y")}`,
  "first-pick-day": `with ${who("x")} the first pick came {by} later than with ${who("y")}`,
  "coloured-kg": `with ${who("x")} a plot gave {by} more coloured fruit than with ${who("y")}`,
  "height-cm": `with ${who("x")} plants stood {by} taller than with ${who("y")}`,
  "lodged-pct": `with ${who("x")} {by} more of the plants lodged than with ${who("y")}`,
  "culls-pct": `with ${who("x")} {by} more of the fruit was culled than with ${who("y")}`,
  "capsaicinoids-mg-per-kg": `with ${who("x")} the dry fruit held {by} more capsaicinoids than with ${who("y")}`,
  other: `with ${who("x")} a plot measured {by} more than with ${who("y")}`,
};

const WHAT: Record<ResponseKind, string> = {
  "marketable-kg": "marketable fruit a plot",
  "total-kg": "fruit a plot",
  "fruit-count": "fruits a plot",
  "mean-fruit-g": "weight of a fruit",
  "first-pick-day": "day of the first pick",
  "coloured-kg": "coloured fruit a plot",
  "height-cm": "height of the plants",
  "lodged-pct": "plants that lodged",
  "culls-pct": "fruit that was culled",
  "capsaicinoids-mg-per-kg": "capsaicinoids in the dry fruit",
  other: "what was measured",
};

const HOW: Record<ResponseKind, string> = {
  "marketable-kg": "Weigh what you would sell from each plot at every pick, and add it up.",
  "total-kg": "Weigh all fruit of each plot at every pick, culls too, and add it up.",
  "fruit-count": "Count the fruit of each plot at every pick, and add it up.",
  "mean-fruit-g": "Weigh all fruit of each plot together and divide by their number.",
  "first-pick-day": "Write down the day of the first pick of each plot, as days since setting out.",
  "coloured-kg": "Weigh the coloured fruit of each plot at every pick, and add it up.",
  "height-cm": "Measure five plants in the middle of each plot from soil to tip, and write down their mean.",
  "lodged-pct":
    "Count the plants of each plot that lean more than half over, and write them down in percent of all its plants.",
  "culls-pct": "Weigh the culls of each plot, and write them down in percent of all its fruit.",
  "capsaicinoids-mg-per-kg":
    "Send one sample of ripe fruit of each plot to a laboratory, all by the same method, and write down capsaicin and dihydrocapsaicin together on dry mass.",
  other: "Measure each plot the same way, on the same day, by the same person.",
};

const each = (prefix: string, words: Record<ResponseKind, string>, frame = (s: string) => s) =>
  Object.fromEntries(RESPONSE_KINDS.map((kind) => [`${prefix}.${kind}`, frame(words[kind])]));

/** What trial says, in English. Keys start with the rule's id. */
export const trial: Record<string, string> = {
  ...each("trial.what", WHAT),
  ...each("trial.step.measure", HOW),
  ...each(
    "trial.decision.differ",
    AHEAD,
    (ahead) =>
      `In this trial, ${ahead}: between {low} and {high}, as far as {plots} plots on one farm in {season} can tell ({confidence} % interval). Another season or place may differ.`,
  ),
  "trial.decision.differ-somewhere":
    "In this trial the treatments differed in {what} by more than chance, but {plots} plots on one farm in {season} cannot tell which from which.",
  "trial.decision.none-seen":
    "No difference in {what} was seen. That does not mean there is none: with {plots} plots on one farm in {season}, a difference smaller than about {missed} could well have been missed.",
  "trial.decision.layout":
    "Lay out {plots} plots as the table says: {treatments} treatments, {repeats} plots of each.",
  "trial.decision.measure":
    "{done} of {wanted} numbers are in. Measure the plots in the table, or say why a plot has none.",
  "trial.decision.cannot-judge.too-few":
    "Too few plots were measured to judge {what}: what is left cannot tell treatments from chance.",
  "trial.decision.cannot-judge.no-spread":
    "Nothing can be said of {what}: plots that were treated alike do not differ at all, so chance cannot be judged.",
  "trial.decision.cannot-judge.level-lost": "Nothing can be said of {what}: one treatment has no plot left.",
  "trial.decision.cannot-judge.cannot-tell":
    "Nothing can be said of {what}: the plots that are left do not stand together in the same blocks.",

  "trial.step.mark":
    "Mark each plot with its number before anything is done to it. Print the labels for that.",
  "trial.step.as-drawn":
    "Give each plot what the table says, even where the order looks odd. It was drawn by lot, with seed {seed}; moving plots to better ground undoes that.",
  "trial.step.alike": "Treat all plots alike in everything else: water, feed, ties, pick on the same day.",
  "trial.step.blocks":
    "Do one block after the other, each whole on one day, so that a day's difference falls on all treatments of the block.",
  "trial.step.edges": "Measure the middle of each plot and leave out the plants at its ends.",
  "trial.step.lost":
    "If a plot is lost or mixed up, write down why. Never put in zero for it and never guess.",
  "trial.step.more-is-better":
    "More is better here: if it holds again, {xn, select, 1 {{x1}} 2 {{x1} with {x2}} other {{x1} with {x2} and {x3}}} is the one to keep.",
  "trial.step.less-is-better":
    "Less is better here: if it holds again, {yn, select, 1 {{y1}} 2 {{y1} with {y2}} other {{y1} with {y2} and {y3}}} is the one to keep.",
  "trial.step.repeat": "Repeat it in another season before you change the whole farm.",
  "trial.step.larger":
    "To find a smaller difference, use more blocks. At the spread of these plots, {blocks} blocks would find half of what this trial could, eight times in ten.",
  "trial.step.look-again":
    "Look again at plot {plot}: it lies far from what its treatment and block would give. Change it only if it was written down wrong.",
  "trial.step.still-lacking":
    "{count, plural, one {One thing that is measured is not all in yet} other {# things that are measured are not all in yet}}; the table says which plots.",

  "trial.ends.layout": "The trial's beginning ends this.",
  "trial.ends.measure": "The last number ends this.",
  "trial.ends.analysed": "A number that is put right, or another season's trial, ends this.",

  "trial.stakes.layout": "Plots that are not laid out by lot tell nothing afterwards.",
  "trial.stakes.measure": "A plot that is not measured in time is lost to the comparison.",
  "trial.stakes.analysed": "Nothing is lost by waiting.",

  "trial.limit.one-farm":
    "One farm, one season. Soil, weather and hands of another place or year are not in it.",
  "trial.limit.seasons": "One farm. The numbers were taken over more than one year.",
  "trial.limit.left-out":
    "{count, plural, one {One plot is} other {# plots are}} left out of {what}; the table says which and why. The means allow for the blocks they stood in.",
  "trial.limit.left-out-pairs":
    "{count, plural, one {One strip is} other {# strips are}} left out of {what}; the table says which and why. A strip without its partner tells nothing and is left out too.",
  "trial.limit.left-out-alone":
    "{count, plural, one {One plot is} other {# plots are}} left out of {what}; the table says which and why.",
  "trial.limit.lost-unevenly":
    "Plots of some treatments were lost more than those of others. If the treatment itself killed them, the comparison flatters it.",
  "trial.limit.many-responses":
    "{count} things were measured, each judged for itself. Where nothing differs, about one in {oneIn} would still look as if it did.",
  "trial.limit.lsd-only":
    "{count, plural, one {One more pair differs} other {# more pairs differ}} by the least significant difference, which does not allow for how many pairs were looked at. Do not build on that.",
  "trial.limit.interplay":
    "What one factor does depends on another here. Read the combinations; averages over the other factor mislead.",
  "trial.limit.confounded":
    "The layout cannot tell the combinations from the blocks, so only each factor by itself is compared.",
  "trial.limit.shares":
    "Shares near nothing or near all vary less than those between. Read the interval with care, and look at the residuals.",
  "trial.limit.few": "With few plots, the pictures of the residuals show only gross faults.",
  "trial.limit.scoville":
    "Scoville units are the laboratory's milligrams times {factor}, which is for capsaicin and dihydrocapsaicin. A laboratory that counts other capsaicinoids in, or uses another factor, gives other units.",

  "trial.change.season": "The same trial in another season, and on another farm.",
  "trial.change.blocks": "More blocks, which narrow the interval.",
  "trial.change.numbers": "A number that was written down wrong.",
  "trial.change.layout":
    "Another seed, other beds or another length of plot lay it out anew, before it has begun.",
  "trial.change.values": "Each number that comes in.",

  "trial.table.layout": "Plots as one walks them",
  "trial.table.lacking": "What is still to be measured",
  "trial.table.means": "Means of {what}, with {confidence} % intervals",
  "trial.table.anova": "Analysis of variance of {what}",
  "trial.table.pairs": "Differences of {what}, two by two",
  "trial.table.left-out": "Plots left out of {what}",
  "trial.column.plot": "Plot",
  "trial.column.block": "Block",
  "trial.column.treatment": "Treatment",
  "trial.column.bed": "Bed",
  "trial.column.from": "From",
  "trial.column.to": "To",
  "trial.column.what": "What",
  "trial.column.plots": "Plots",
  "trial.column.mean": "Mean",
  "trial.column.low": "Low",
  "trial.column.high": "High",
  "trial.column.scoville": "Scoville units",
  "trial.column.source": "Source",
  "trial.column.df": "Degrees of freedom",
  "trial.column.ss": "Sum of squares",
  "trial.column.ms": "Mean square",
  "trial.column.f": "F",
  "trial.column.p": "p",
  "trial.column.difference": "Difference",
  "trial.column.lsd": "LSD",
  "trial.column.hsd": "Tukey",
  "trial.column.tells": "Told apart",
  "trial.column.why": "Why",

  "trial.who": who("x"),
  "trial.pair": `${who("x")} less ${who("y")}`,
  "trial.bed": "{bed}",
  "trial.source.block": "Blocks",
  "trial.source.treatment": "Treatments",
  "trial.source.factor": "{a}",
  "trial.source.two": "{a} and {b} together",
  "trial.source.three": "{a}, {b} and {c} together",
  "trial.source.residual": "Plots treated alike",
  "trial.source.total": "Total",
  "trial.tells.both": "yes",
  "trial.tells.lsd": "by LSD only",
  "trial.tells.no": "no",
  "trial.why.plants-lost": "plants lost",
  "trial.why.not-measured": "not measured",
  "trial.why.mixed-up": "mixed up",
  "trial.why.spoiled": "spoiled",
  "trial.why.not-told": "nobody said",
  "trial.why.partner": "its partner in the pair is out",

  "trial.chart.means": "Means of {what}, and the ends of their {confidence} % intervals",
  "trial.chart.residuals": "What the model leaves, against what it expects: {what}",
  "trial.chart.normal": "What the model leaves, against a normal sample: {what}",
  "trial.chart.mean": "Mean",
  "trial.chart.low": "Low end",
  "trial.chart.high": "High end",
  "trial.chart.plots": "Plots",
  "trial.chart.line": "Where a normal sample would lie",
  "trial.chart.zero": "Nothing left",
  "trial.axis.treatment": "Treatment",
  "trial.axis.expected": "Expected by the model",
  "trial.axis.left": "Left over",
  "trial.axis.normal": "Normal quantile",

  "trial.evidence.cite": "The office's own trial, {season}, {plots} plots.",
  "trial.evidence.design.completely-randomised": "Completely randomised, seed {seed}",
  "trial.evidence.design.randomised-blocks": "Randomised blocks, seed {seed}",
  "trial.evidence.design.paired-strips": "Pairs of strips, order drawn by lot, seed {seed}",
  "trial.evidence.design.factorial-blocks": "Factorial in randomised blocks, seed {seed}",
  "trial.evidence.size":
    "One farm, {season}; {plots} plots, {repeats} of each treatment{leftOut, plural, =0 {} one {; one plot left out} other {; # plots left out}}",
  "trial.evidence.effect.differ": "{difference}, {confidence} % interval {low} to {high}",
  "trial.evidence.effect.none-seen": "None seen; smaller than about {missed} could well have been missed",
  "trial.evidence.effect.differ-somewhere": "Treatments differ, pairs cannot be told apart",
  "trial.evidence.limits": "One farm in {season}. Another season, soil or variety may differ.",
  "trial.evidence.would-change": "The same trial in another season or on another farm.",
};

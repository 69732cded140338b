import type { Table } from "../../core/rule.ts";
import type { AnovaLine } from "../../quantities/statistics/anova.ts";
import type { Plot, Trial } from "../../states/trial.ts";
import { bedNamed, type Message, say, treatmentNamed } from "../../text/message.ts";
import type { Analysis, Compared } from "../../trials/analyse.ts";
import type { ResponseValues } from "../../trials/readValues.ts";
import { scovilleOf, unitOf, whoOf } from "../../trials/sentence.ts";

const column = (name: string, unit?: Table["columns"][number]["unit"]): Table["columns"][number] => ({
  name: say(`trial.column.${name}`),
  ...(unit && { unit }),
});
const whatOf = ({ response }: ResponseValues) => ({ what: { word: `trial.what.${response.kind}` } });

function bedOf({ plots }: Trial): (plot: Plot) => Message {
  const ids = [...new Set(plots.map((p) => p.bedId))];
  return ({ bedId }) => say("trial.bed", { bed: bedNamed(bedId, ids.indexOf(bedId) + 1) });
}
const byNumber = (plots: readonly Plot[]) => [...plots].sort((a, b) => a.number - b.number);

export function layoutTable(trial: Trial): Table {
  const bed = bedOf(trial);
  return {
    id: "layout",
    title: say("trial.table.layout"),
    columns: ["plot", "block", "treatment", "bed"]
      .map((name) => column(name))
      .concat(column("from", "m"), column("to", "m")),
    rows: byNumber(trial.plots).map((plot) => [
      plot.number,
      plot.block ?? null,
      say("trial.who", whoOf(trial, plot.levels, "x")),
      bed(plot),
      plot.fromM,
      Math.round((plot.fromM + plot.lengthM) * 1000) / 1000,
    ]),
  };
}

export function lackingTable(trial: Trial, read: readonly ResponseValues[]): Table {
  const bed = bedOf(trial);
  return {
    id: "lacking",
    title: say("trial.table.lacking"),
    columns: ["what", "plot", "block", "treatment", "bed"].map((name) => column(name)),
    rows: read.flatMap((r) =>
      r.lacking.map((plot) => [
        say(`trial.what.${r.response.kind}`),
        plot.number,
        plot.block ?? null,
        say("trial.who", whoOf(trial, plot.levels, "x")),
        bed(plot),
      ]),
    ),
  };
}

export function leftOutTable(trial: Trial, values: ResponseValues): Table[] {
  if (values.leftOut.length === 0) return [];
  return [
    {
      id: `left-out-${values.response.id}`,
      title: say("trial.table.left-out", whatOf(values)),
      columns: ["plot", "block", "treatment", "why"].map((name) => column(name)),
      rows: values.leftOut.map(({ plot, why }) => [
        plot.number,
        plot.block ?? null,
        say("trial.who", whoOf(trial, plot.levels, "x")),
        say(`trial.why.${why}`),
      ]),
    },
  ];
}

/** Means of every family with their intervals; capsaicinoids in Scoville units too. */
export function meansTable(trial: Trial, { values, families }: Analysis): Table {
  const unit = unitOf(values.response.kind);
  const hot = values.response.kind === "capsaicinoids-mg-per-kg";
  return {
    id: `means-${values.response.id}`,
    title: say("trial.table.means", {
      ...whatOf(values),
      confidence: Number((100 * (1 - trial.alpha)).toPrecision(3)),
    }),
    columns: [
      column("treatment"),
      column("plots"),
      column("mean", unit),
      column("low", unit),
      column("high", unit),
      ...(hot ? [column("scoville")] : []),
    ],
    rows: families.flatMap(({ means }) =>
      means.map(({ levels, plots, mean, low, high }) => [
        say("trial.who", whoOf(trial, levels, "x")),
        plots,
        mean,
        low,
        high,
        ...(hot ? [Math.round(scovilleOf(mean))] : []),
      ]),
    ),
  };
}

export function anovaTableOf(trial: Trial, { values, table }: Analysis): Table {
  return {
    id: `anova-${values.response.id}`,
    title: say("trial.table.anova", whatOf(values)),
    columns: ["source", "df", "ss", "ms", "f", "p"].map((name) => column(name)),
    rows: table.map((line) => [
      sourceSaid(trial, line),
      line.df,
      digits(line.ss, 6),
      digits(line.ms, 6),
      digits(line.f, 4),
      digits(line.p, 3),
    ]),
  };
}

/** More digits than these say nothing; the working has them all. */
const digits = (value: number | null, most: number): number | null =>
  value === null ? null : Number(value.toPrecision(most));

/** Terms are named by the places of their factors. */
function sourceSaid(trial: Trial, { source }: AnovaLine): Message {
  if (!/^\d/.test(source)) return say(`trial.source.${source}`);
  if (trial.factors.length === 1) return say("trial.source.treatment");
  const [a, b, c] = source.split(":").map((place) => {
    const factor = trial.factors[Number(place) - 1];
    return treatmentNamed(factor?.id ?? "", Number(place));
  });
  if (!a) throw new Error(`no factor in ${source}`);
  if (!b) return say("trial.source.factor", { a });
  return c ? say("trial.source.three", { a, b, c }) : say("trial.source.two", { a, b });
}

/** Every pair of the families that may be read, with both measures of how large a difference must be. */
export function pairsTable(trial: Trial, { values }: Analysis, read: readonly Compared[]): Table[] {
  const unit = unitOf(values.response.kind);
  const rows = read.flatMap(({ means, pairs }) =>
    pairs.map((pair) => {
      const size = Math.abs(pair.difference);
      return [
        say("trial.pair", {
          ...whoOf(trial, means[pair.a]?.levels ?? [], "x"),
          ...whoOf(trial, means[pair.b]?.levels ?? [], "y"),
        }),
        pair.difference,
        pair.low,
        pair.high,
        pair.lsd,
        pair.hsd,
        say(`trial.tells.${size > pair.hsd ? "both" : size > pair.lsd ? "lsd" : "no"}`),
      ];
    }),
  );
  if (rows.length === 0) return [];
  const measured = ["difference", "low", "high", "lsd", "hsd"].map((name) => column(name, unit));
  return [
    {
      id: `pairs-${values.response.id}`,
      title: say("trial.table.pairs", whatOf(values)),
      columns: [column("treatment"), ...measured, column("tells")],
      rows,
    },
  ];
}

import type { Chart, Table } from "../../core/rule.ts";
import type { Working } from "../../core/working.ts";
import { type Message, say } from "../../text/message.ts";
import type { Ranking } from "./ranking.ts";
import type { Item, Weighed } from "./weigh.ts";

export const causeNamed = ({ cause }: Weighed): { word: string } => ({
  word: `look-closer.cause.${cause.id}`,
});

const signed = (points: number): string => `${points < 0 ? "-" : "+"}${Math.abs(points)}`;

/** A line for each shown cause, to add up with a pencil. */
export function pointsLines(w: Working, { shown }: Ranking): void {
  for (const { cause, items, points } of shown) {
    const sum = items
      .filter((i) => i.points !== null)
      .map((i) => `${i.kind} ${i.what} ${signed(i.points ?? 0)}`)
      .join(", ");
    const [source] = cause.sources;
    w.line(
      `W(${cause.id})`,
      "points for this cause; each doubles the odds",
      sum,
      points,
      "points",
      source ?? null,
    );
  }
}

export function pointsChart({ shown }: Ranking): Chart {
  return {
    id: "look-closer-points",
    title: say("look-closer.chart.title"),
    x: { name: say("look-closer.chart.cause"), kind: "number", labels: shown.map(nameOf) },
    y: { name: say("look-closer.chart.points"), unit: "points" },
    series: [
      {
        id: "points",
        name: say("look-closer.chart.points"),
        style: "bars",
        points: shown.map(({ points }, i) => [i + 1, points]),
      },
    ],
  };
}

/** What speaks for and against each shown cause, and what nobody looked at: a row a thing. */
export function cluesTable({ shown }: Ranking): Table {
  return {
    id: "look-closer-clues",
    title: say("look-closer.table.title"),
    columns: ["cause", "what", "speaks", "points"].map((column) => ({
      name: say(`look-closer.column.${column}`),
    })),
    rows: shown.flatMap((weighed) =>
      weighed.items
        .toSorted((a, b) => orderOf(a) - orderOf(b))
        .map((item) => [nameOf(weighed), itemSaid(item), speaks(item), item.points]),
    ),
  };
}

const nameOf = ({ cause }: Weighed): Message => say(`look-closer.cause.${cause.id}`);

const itemSaid = ({ kind, what }: Item): Message =>
  say(`look-closer.item.${kind}`, { what: { word: `look-closer.${kind}.${what}` } });

/** For first, then against, then what says nothing or was not looked at. */
const orderOf = ({ points }: Item): number => (points === null ? 3 : points > 0 ? 0 : points < 0 ? 1 : 2);

const speaks = ({ points }: Item): Message =>
  say(
    points === null
      ? "look-closer.speaks.open"
      : points > 0
        ? "look-closer.speaks.for"
        : points < 0
          ? "look-closer.speaks.against"
          : "look-closer.speaks.neither",
  );

import type { Table } from "../../core/rule.ts";
import { bedNamedIn, blockNamed } from "../../layout/breach.ts";
import type { ModelBlock } from "../../layout/model.ts";
import type { Stand } from "../../layout/stand.ts";
import { type Message, measure, say } from "../../text/message.ts";
import type { Looked } from "./looked.ts";

/** More steps than this nobody reads; the table has them all. */
const MOST_STEPS = 40;

/** Blocks bed by bed, along each bed and across it: the order in which they are set. */
const inOrder = ({ stands }: Looked): [number, Stand][] =>
  stands
    .flatMap((s, i): [number, Stand][] => (s ? [[i, s]] : []))
    .sort(([, a], [, b]) => a.bed - b.bed || a.fromM - b.fromM || a.row - b.row);

const lengths = (s: Stand) => ({ from: measure(s.fromM, "m"), to: measure(s.toM, "m") });

export function placementSteps(l: Looked): Message[] {
  const all = inOrder(l);
  const steps = all.slice(0, MOST_STEPS).map(([i, s]) => {
    const { block } = l.m.blocks[i] as ModelBlock;
    return say("company.step.place", {
      block: blockNamed(l.m, i),
      bed: bedNamedIn(l.m, s.bed),
      first: s.row,
      last: s.rowEnd - 1,
      rows: block.rows,
      plants: block.plants,
      spacing: measure(block.plantSpacingM * 100, "cm"),
      ...lengths(s),
    });
  });
  return all.length > MOST_STEPS ? [...steps, say("company.step.table", { n: all.length })] : steps;
}

export const placementTable = (l: Looked): Table => ({
  id: "placement",
  title: say("company.table.title"),
  columns: [
    { name: say("company.table.bed") },
    { name: say("company.table.planting") },
    { name: say("company.table.rows") },
    { name: say("company.table.from"), unit: "m" },
    { name: say("company.table.to"), unit: "m" },
    { name: say("company.table.plants") },
    { name: say("company.table.water") },
  ],
  rows: inOrder(l).map(([i, s]) => {
    const { block } = l.m.blocks[i] as ModelBlock;
    return [
      say("company.table.bed-name", { bed: bedNamedIn(l.m, s.bed) }),
      say("company.table.planting-name", { block: blockNamed(l.m, i) }),
      say("company.table.row-range", { first: s.row, last: s.rowEnd - 1, rows: block.rows }),
      s.fromM,
      s.toM,
      block.plants,
      say(`company.table.water-${block.water}`),
    ];
  }),
});

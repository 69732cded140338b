import type { Table } from "../../core/rule.ts";
import type { Rest } from "../../layout/rest.ts";
import { say } from "../../text/message.ts";

/** Each pathogen with its last host, the rest it had and the rest it asks for. */
export const restTable = (rests: readonly Rest[]): Table => ({
  id: "rests",
  title: say("rotation.table.title"),
  columns: [
    { name: say("rotation.table.disease") },
    { name: say("rotation.table.last") },
    { name: say("rotation.table.season") },
    { name: say("rotation.table.rested") },
    { name: say("rotation.table.needed") },
    { name: say("rotation.table.verdict") },
  ],
  rows: rests.map((r) => [
    say(`rotation.disease.${r.disease ?? "pepper"}`),
    r.last ? say(`rotation.crop.${r.last.crop}`) : say("rotation.table.none"),
    // As words: a year is no amount.
    r.last ? say("rotation.table.year", { year: String(r.last.season) }) : null,
    r.restedYears,
    r.neededYears,
    say(`rotation.table.${r.verdict}`, { from: String(r.from) }),
  ]),
});

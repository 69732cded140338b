import type { Table } from "../core/rule.ts";
import { type Message, say } from "../text/message.ts";
import { claims } from "./register.ts";

/** Whose reading a claim is. */
export type Side = "practice" | "published" | "gap";

/**
 * Published findings and common practice side by side, a claim a row: what it says, from where, how it was found, how
 * large, where it does not apply. The words are the register's own, so that an answer and a source's page never differ.
 *
 * @param inForce ids of the claims that speak for the reading in force
 */
export function readingsTable(
  id: string,
  rows: readonly [Side, string][],
  inForce: readonly string[],
): Table {
  return {
    id,
    title: say("reading.title"),
    columns: ["side", "finding", "from", "design", "effect", "limits"].map((column) => ({
      name: say(`reading.column.${column}`),
    })),
    rows: rows.map(([side, claim]) => readingRow(side, claim, inForce.includes(claim))),
  };
}

function readingRow(side: Side, id: string, inForce: boolean): Message[] {
  const claim = claims.get(id);
  if (!claim) throw new Error(`no claim ${id}`);
  return [
    // A gap is nobody's reading, whatever leans on it.
    say(`reading.side.${side}${inForce && side !== "gap" ? "-in-force" : ""}`, {
      grade: { word: `reading.grade.${claim.grade}` },
    }),
    say(`reading.${id}.finding`),
    side === "gap" ? say("reading.from.gap") : say(`reading.${id}.from`),
    say(`reading.${id}.design`),
    claim.effect === null ? say("reading.effect.none") : say(`reading.${id}.effect`),
    say(`reading.${id}.limits`),
  ];
}

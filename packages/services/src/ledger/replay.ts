import { ledgerEntries, ledgerStates, type Tx } from "@pith/db";
import { and, eq } from "drizzle-orm";
import { found } from "../errors.ts";
import type { EntryBody } from "./body.ts";
import { canonicalText, sha256Hex } from "./canonical.ts";
import { type Computer, compute, versionOf } from "./compute.ts";
import { type Difference, differencesOf } from "./differences.ts";
import { runtimeName } from "./origin.ts";
import { computerOf, type LedgerTools } from "./tools.ts";

export interface Replay {
  identical: boolean;
  /** Why it could not be computed again, where so. */
  cannot: string | null;
  differences: Difference[];
  /** Byte for byte on the engine that computed it; elsewhere decisions exactly and numbers to 1e-9. */
  compared: "bytes" | "numbers-to-1e-9";
  /** SHA-256 of the kept rules that computed it again; null where this program's own did. */
  bundle: string | null;
}

/**
 * Computes an issued entry again from the state it was computed from and compares. @throws ServiceError not-found where
 * there is no such entry
 */
export async function replay(tx: Tx, officeId: string, seq: number, tools?: LedgerTools): Promise<Replay> {
  const [row] = await tx
    .select()
    .from(ledgerEntries)
    .where(and(eq(ledgerEntries.officeId, officeId), eq(ledgerEntries.seq, seq)));
  const { body: text, hash } = found(row, "ledger entry");
  if ((await sha256Hex(text)) !== hash) return cannot("Its content does not give its hash: it was changed.");
  const body = JSON.parse(text) as EntryBody;
  if (body.kind !== "issued" || body.answer === null || body.said === null || body.state === null) {
    const what = body.kind === "answered" ? "records an answer" : "withdraws an advice";
    return cannot(`Entry ${seq} ${what}; only what was issued was computed.`);
  }
  const [stored] = await tx
    .select({ state: ledgerStates.state })
    .from(ledgerStates)
    .where(and(eq(ledgerStates.officeId, officeId), eq(ledgerStates.sha256, body.state)));
  if (!stored) return cannot("The state it was computed from is missing.");
  if ((await sha256Hex(stored.state)) !== body.state) {
    return cannot("The state it was computed from was changed.");
  }
  const { id, version } = body.rule;
  const here = versionOf(id);
  let computer: Computer = { versionOf, compute };
  if (here !== version) {
    const now =
      here === undefined ? "this program does not have that rule" : `this program has version ${here}`;
    const because = (why: string) => cannot(`It was computed by version ${version} of ${id}; ${now}. ${why}`);
    if (!body.rulesBundle) return because("The entry names no kept rules.");
    const kept = await computerOf(tools, body.rulesBundle);
    if (typeof kept === "string") return because(`${kept.charAt(0).toUpperCase()}${kept.slice(1)}.`);
    computer = kept;
  }
  const again = computer.compute(id, JSON.parse(stored.state), body.said.units);
  const bundle = here === version ? null : (body.rulesBundle ?? null);
  if (again.kind !== "advice") return { ...compare(body, { kind: again.kind }, undefined), bundle };
  // Through JSON, as the entry went: a field that is undefined is not there.
  const throughJson = (value: unknown) => JSON.parse(canonicalText(value));
  return { ...compare(body, throughJson(again.answer), throughJson(again.said)), bundle };
}

function compare(body: EntryBody, answer: unknown, said: unknown): Replay {
  const sameEngine = body.runtime === runtimeName();
  const stored = { answer: body.answer, ...(sameEngine && { said: body.said }) };
  // How a number is written out may follow the engine's own language data, so words are compared on the same one only.
  const now = { answer, ...(sameEngine && { said }) };
  const differences = differencesOf(stored, now, !sameEngine);
  return {
    identical: differences.length === 0,
    cannot: null,
    differences,
    compared: sameEngine ? "bytes" : "numbers-to-1e-9",
    bundle: null,
  };
}

const cannot = (why: string): Replay => ({
  identical: false,
  cannot: why,
  differences: [],
  compared: "bytes",
  bundle: null,
});

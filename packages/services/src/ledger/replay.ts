import { ledgerEntries, ledgerStates, type Tx } from "@pith/db";
import { answerOf, parseAtTheDoor, rules, StateSchema } from "@pith/rules";
import { and, eq } from "drizzle-orm";
import { found } from "../errors.ts";
import { sayAnswer } from "../saying/sayAnswer.ts";
import { type EntryBody, issuedAnswer } from "./body.ts";
import { canonicalText, sha256Hex } from "./canonical.ts";
import { type Difference, differencesOf } from "./differences.ts";
import { runtimeName } from "./origin.ts";

export interface Replay {
  identical: boolean;
  /** Why it could not be computed again, where so. */
  cannot: string | null;
  differences: Difference[];
  /** Byte for byte on the engine that computed it; elsewhere decisions exactly and numbers to 1e-9. */
  compared: "bytes" | "numbers-to-1e-9";
}

/**
 * Computes an issued entry again from the state it was computed from and compares. @throws ServiceError not-found where
 * there is no such entry
 */
export async function replay(tx: Tx, officeId: string, seq: number): Promise<Replay> {
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
  const rule = rules.find((r) => r.id === id);
  if (rule?.version !== version) {
    const now = rule ? `this program has version ${rule.version}` : "this program does not have that rule";
    return cannot(`It was computed by version ${version} of ${id}; ${now}.`);
  }

  const again = answerOf(rule, parseAtTheDoor(StateSchema, JSON.parse(stored.state)));
  if (again.kind !== "advice") {
    return compare(body, { kind: again.kind }, undefined);
  }
  const said = sayAnswer(again, { language: "en", units: body.said.units });
  // Through JSON, as the entry went: a field that is undefined is not there.
  return compare(body, JSON.parse(canonicalText(issuedAnswer(again))), JSON.parse(canonicalText(said)));
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
  };
}

const cannot = (why: string): Replay => ({
  identical: false,
  cannot: why,
  differences: [],
  compared: "bytes",
});

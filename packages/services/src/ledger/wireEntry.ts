import type { LedgerEntry } from "@pith/contract";
import type { ledgerEntries } from "@pith/db";
import type { EntryBody } from "./body.ts";

/** An entry as it is listed; one whose content cannot be read says so instead of hiding. */
export function wireEntry(row: typeof ledgerEntries.$inferSelect): LedgerEntry {
  const { seq, farmId, at, hash, prevHash } = row;
  const body = readable(row.body);
  return {
    seq,
    farmId,
    kind: row.kind as LedgerEntry["kind"],
    at,
    hash,
    prevHash,
    ruleId: body?.rule.id ?? null,
    advisoryId: body?.advisory ?? null,
    summary: body ? summaryOf(body) : "Its content cannot be read.",
  };
}

export const summaryOf = ({ said, outcome }: EntryBody): string =>
  said?.decision ??
  (outcome ? { done: "Done", "not-done": "Not done", cannot: "Cannot" }[outcome.kind] : "Withdrawn");

function readable(body: string): EntryBody | undefined {
  try {
    return JSON.parse(body) as EntryBody;
  } catch {
    return undefined;
  }
}

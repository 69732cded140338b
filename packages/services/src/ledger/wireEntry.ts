import type { LedgerEntry } from "@pith/contract";
import type { ledgerEntries } from "@pith/db";
import type { Language } from "@pith/rules";
import type { EntryBody } from "./body.ts";

type Outcome = NonNullable<EntryBody["outcome"]>["kind"];

const WORDS: Record<Language, Record<Outcome | "withdrawn" | "unreadable", string>> = {
  en: {
    done: "Done",
    "not-done": "Not done",
    cannot: "Cannot",
    withdrawn: "Withdrawn",
    unreadable: "Its content cannot be read.",
  },
  es: {
    done: "Hecho",
    "not-done": "No se hizo",
    cannot: "No se puede",
    withdrawn: "Retirado",
    unreadable: "No se puede leer su contenido.",
  },
};

/**
 * An entry as it is listed; one whose content cannot be read says so instead of hiding. What was decided is in the words
 * of the entry itself.
 */
export function wireEntry(row: typeof ledgerEntries.$inferSelect, language: Language = "en"): LedgerEntry {
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
    summary: body ? summaryOf(body, language) : WORDS[language].unreadable,
  };
}

export const summaryOf = ({ said, outcome }: EntryBody, language: Language = "en"): string =>
  said?.decision ?? WORDS[language][outcome?.kind ?? "withdrawn"];

function readable(body: string): EntryBody | undefined {
  try {
    return JSON.parse(body) as EntryBody;
  } catch {
    return undefined;
  }
}

import type { Expected, Said } from "@pith/contract";
import type { Answer, Severity } from "@pith/rules";
import type { Issuing } from "../advice/issuing.ts";

/**
 * What an entry of the ledger says, as canonical JSON (RFC 8785). Ids and numbers, and the advice in our own words: no
 * person's name and nothing a person wrote; of that it holds a salted hash.
 */
export interface EntryBody {
  /** 1 had no rulesBundle. */
  v: 1 | 2;
  office: string;
  seq: number;
  at: string;
  kind: "issued" | "answered" | "withdrawn";
  farm: string;
  /** The user who did it. */
  actor: string;
  advisory: string;
  subject: { kind: string; id: string };
  rule: { id: string; version: number };
  /** Which rules, cautions and words computed and said it: see rulesManifest. */
  rulesManifest: string;
  /** SHA-256 of the kept code of the rules that computed it; null where the program ran from its sources. Since 2. */
  rulesBundle?: string | null;
  /** Engine and version that computed it: others differ in the last digits of exp, sin and pow. */
  runtime: string;
  /** SHA-256 of the state it was computed from; null where nothing was computed. */
  state: string | null;
  /** The whole answer, without what is only drawn from it; null where nothing was computed. */
  answer: IssuedAnswer | null;
  /** What was said, word by word, with beds by number; null where nothing was said. */
  said: Said | null;
  /** SHA-256 of (salt, what the farmer reads), which names the beds; null where nothing was said. */
  renderedSha256: string | null;
  evidence: string[];
  cautions: { id: string; version: number; severity: Severity; text: { en: string } }[];
  expected: Expected | null;
  /** What became of it; null in an entry that issues or withdraws. */
  outcome: { kind: "done" | "not-done" | "cannot"; actual: Record<string, unknown> | null } | null;
  /** How it came to be issued and how long it stands; in an entry that issues, since there is more than one way. */
  issuing?: Issuing;
  /** SHA-256 of (salt, words) of a note or reason; null where nobody wrote one. */
  textSha256: string | null;
  /** Hash of the entry before it; 64 zeros for the first. */
  prev: string;
}

/** What the caller of append says; the rest follows from context and chain. */
export type EntryFacts = Omit<
  EntryBody,
  "v" | "office" | "seq" | "at" | "actor" | "rulesManifest" | "rulesBundle" | "runtime" | "prev"
>;

/** What an entry holds that tells what became of an advice: nothing was computed, nothing new was said. */
export const NOTHING_COMPUTED = {
  state: null,
  answer: null,
  said: null,
  renderedSha256: null,
  evidence: [],
  cautions: [],
} satisfies Partial<EntryFacts>;

export type IssuedAnswer = Omit<Extract<Answer, { kind: "advice" }>, "charts">;

/** An answer as the ledger keeps it: charts are drawn from the state and add nothing to what was advised. */
export function issuedAnswer({ charts: _, ...answer }: Extract<Answer, { kind: "advice" }>): IssuedAnswer {
  return answer;
}

export const NO_HASH = "0".repeat(64);

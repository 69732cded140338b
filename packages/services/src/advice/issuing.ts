import type { StandingOrderTerms } from "@pith/contract";
import type { advisories } from "@pith/db";
import type { EntryBody } from "../ledger/body.ts";
import { faultInRendering } from "../ledger/rendered.ts";
import { isWaiting } from "./standing.ts";

/**
 * What an entry that issues says of how it came to be issued and of how long it stands. That it took the place of
 * another is said here and not in an entry of the other's: it is one deed.
 */
export interface Issuing {
  /** In which languages the farmer may read it; each holds every caution. */
  languages: string[];
  /** When it lapses unanswered: nobody decides that later, so no entry tells of it. */
  expiresAt: string | null;
  /** The advice that it takes the place of. */
  supersedes: string[];
  /** The second agent who read it, where two did. */
  confirmedBy: string | null;
  /** The permission it went out on, whole, where nobody issued it by hand. */
  standingOrder: {
    id: string;
    version: number;
    signedBy: string;
    confirmedBy: string | null;
    terms: StandingOrderTerms;
  } | null;
}

type Row = typeof advisories.$inferSelect;

/** What is wrong where the advice that stands beside an entry is not as the entry issued it. */
export function faultInIssuing(body: EntryBody, advisory: Row, others: Row[]): string | null {
  const { issuing, cautions } = body;
  if (!issuing) return null; // of before there was more than one way
  const same =
    advisory.expiresAt === issuing.expiresAt &&
    advisory.confirmedBy === issuing.confirmedBy &&
    advisory.standingOrderId === (issuing.standingOrder?.id ?? null) &&
    advisory.standingOrderVersion === (issuing.standingOrder?.version ?? null);
  if (!same) return "it is not said to have been issued as it was";
  if (others.some((one) => issuing.supersedes.includes(one.id) && isWaiting(one.status))) {
    return "the advice that it took the place of still stands";
  }
  return faultInRendering(advisory.rendered, cautions, issuing.languages);
}

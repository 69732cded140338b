import { type Advisory, adviceRoutes } from "@pith/contract";
import { call } from "../../server/api.ts";

interface Wanted {
  farmId?: string;
  plantingId?: string;
  ruleId?: string;
  open?: "yes" | "no";
}

/** Every advice of the kind, newest first, over all pages: where one that is missing would be taken for one that is not there. */
export async function allAdvisories(officeId: string, wanted: Wanted): Promise<Advisory[]> {
  const all: Advisory[] = [];
  let after: string | null = null;
  do {
    const page: { advisories: Advisory[]; next: string | null } = await call(adviceRoutes.listAdvisories, {
      params: { officeId },
      query: { ...wanted, limit: 200, ...(after !== null && { after }) },
    });
    all.push(...page.advisories);
    after = page.next;
  } while (after !== null);
  return all;
}

/** What is due soonest first; what has no last day is last, the newest of it first. */
export const byDue = (a: Advisory, b: Advisory): number =>
  (a.windowTo ?? "9999").localeCompare(b.windowTo ?? "9999") ||
  (a.windowFrom ?? "").localeCompare(b.windowFrom ?? "") ||
  b.ledgerSeq - a.ledgerSeq;

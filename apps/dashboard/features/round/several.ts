"use server";

import { adviceRoutes } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { attempt } from "../../server/api.ts";
import { agentSeat } from "../../server/seat.ts";
import { problemWords } from "../forms/words.ts";

/** One of several, as it was read. */
export interface ReadDraft {
  id: string;
  stateSha256: string;
  needsSecond: boolean;
}

export interface SeveralState {
  /** What became of each, by the draft's id; null before anything was sent. */
  outcomes: Record<
    string,
    { done: "issued" | "asked"; id: string } | { done: "refused"; why: string }
  > | null;
}

/**
 * Issues each of them by itself, one after the other: what has changed since it was read is refused and the others go
 * out. Where the office wants two people, it is sent to the second instead.
 */
export async function issueSeveral(read: ReadDraft[], before: SeveralState): Promise<SeveralState> {
  const { officeId } = await agentSeat();
  const [t, words] = await Promise.all([getTranslations("advice"), problemWords()]);
  const outcomes: SeveralState["outcomes"] = { ...before.outcomes };
  for (const { id, stateSha256, needsSecond } of read) {
    const earlier = outcomes[id];
    if (earlier && earlier.done !== "refused") continue;
    const input = { params: { officeId, draftId: id }, json: { stateSha256, note: null } };
    const sent = await attempt(async (client) =>
      needsSecond
        ? { done: "asked" as const, id: (await client.call(adviceRoutes.askSecond, input)).id }
        : { done: "issued" as const, id: (await client.call(adviceRoutes.issueDraft, input)).id },
    );
    if (sent.done) {
      outcomes[id] = sent.value;
      continue;
    }
    const { status, detail, title } = sent.problem;
    const why = status === 409 ? t("changedSince") : status === 503 ? words.unreachable : (detail ?? title);
    outcomes[id] = { done: "refused", why };
  }
  return { outcomes };
}

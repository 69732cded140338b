"use server";

import { adviceRoutes } from "@pith/contract";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { attempt } from "../../server/api.ts";
import { agentSeat } from "../../server/seat.ts";
import type { FormState } from "../forms/plan.ts";
import { problemWords } from "../forms/words.ts";
import type { IssueState } from "./IssueDesk.tsx";
import { refusalOf } from "./refusal.ts";

/** Issues what was read: the hash names it, so a draft that has changed since is refused. */
export async function issue(
  draft: { id: string; stateSha256: string },
  before: IssueState,
  data: FormData,
): Promise<IssueState> {
  const { officeId } = await agentSeat();
  const note = String(data.get("note") ?? "").trim();
  const issued = await attempt((client) =>
    client.call(adviceRoutes.issueDraft, {
      params: { officeId, draftId: draft.id },
      json: { stateSha256: draft.stateSha256, note: note === "" ? null : note },
    }),
  );
  if (issued.done) redirect(`/issued/${issued.value.id}?saved=issued`);
  return { attempt: before.attempt + 1, message: await refusalOf(issued.problem) };
}

/** Not now: until a day; without a day it comes back. */
export async function setAside(before: FormState, data: FormData): Promise<FormState> {
  const { officeId } = await agentSeat();
  const draftId = String(data.get("draft") ?? "");
  const until = String(data.get("until") ?? "");
  const bringBack = data.get("bring-back") === "yes";
  const words = await problemWords();
  const refused = (message: string): FormState => ({
    attempt: before.attempt + 1,
    message: null,
    problems: { until: message },
    typed: { until },
  });
  if (until === "" && !bringBack) return refused(words.needed);
  const done = await attempt((client) =>
    client.call(adviceRoutes.setDraftAside, {
      params: { officeId, draftId },
      json: { until: bringBack ? null : until },
    }),
  );
  if (!done.done) {
    return refused(done.problem.errors?.[0]?.message ?? done.problem.detail ?? words.unreachable);
  }
  revalidatePath("/round");
  return { ...before, problems: {}, typed: null, message: null };
}

/** Computes the drafts again from what is stored now. */
export async function adviseAgain(farmId: string | null, filters: string): Promise<string> {
  const { officeId } = await agentSeat();
  const advised = await attempt((client) =>
    client.call(adviceRoutes.adviseAgain, {
      params: { officeId },
      json: farmId === null ? {} : { farmId },
    }),
  );
  if (!advised.done) return refusalOf(advised.problem);
  const asked = new URLSearchParams(filters);
  // Further down would begin where nothing may stand any more.
  asked.delete("after");
  asked.set("saved", "advised");
  redirect(`/round?${asked}`);
}

export async function withdraw(advisoryId: string, before: FormState, data: FormData): Promise<FormState> {
  const { officeId } = await agentSeat();
  const words = await problemWords();
  const reason = String(data.get("reason") ?? "").trim();
  const refused = (message: string): FormState => ({
    attempt: before.attempt + 1,
    message: null,
    problems: { reason: message },
    typed: { reason },
  });
  if (reason === "") return refused(words.needed);
  const done = await attempt((client) =>
    client.call(adviceRoutes.withdrawAdvisory, { params: { officeId, advisoryId }, json: { reason } }),
  );
  if (!done.done) return refused(done.problem.detail ?? words.unreachable);
  redirect(`/issued/${advisoryId}?saved=withdrawn`);
}

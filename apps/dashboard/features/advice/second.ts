"use server";

import { adviceRoutes } from "@pith/contract";
import { redirect } from "next/navigation";
import { attempt } from "../../server/api.ts";
import { agentSeat } from "../../server/seat.ts";
import type { FormState } from "../forms/plan.ts";
import { problemWords } from "../forms/words.ts";
import type { IssueState } from "./IssueDesk.tsx";
import { refusalOf } from "./refusal.ts";

/** Sends what was read, and the agent's own words, to a second agent. */
export async function askSecond(
  draft: { id: string; stateSha256: string },
  before: IssueState,
  data: FormData,
): Promise<IssueState> {
  const { officeId } = await agentSeat();
  const note = String(data.get("note") ?? "").trim();
  const asked = await attempt((client) =>
    client.call(adviceRoutes.askSecond, {
      params: { officeId, draftId: draft.id },
      json: { stateSha256: draft.stateSha256, note: note === "" ? null : note },
    }),
  );
  if (asked.done) redirect("/round?saved=asked");
  return { attempt: before.attempt + 1, message: await refusalOf(asked.problem) };
}

/** The second yes. */
export async function confirmSecond(draft: { id: string; stateSha256: string }): Promise<string> {
  const { officeId } = await agentSeat();
  const issued = await attempt((client) =>
    client.call(adviceRoutes.confirmSecond, {
      params: { officeId, draftId: draft.id },
      json: { stateSha256: draft.stateSha256 },
    }),
  );
  if (issued.done) redirect(`/issued/${issued.value.id}?saved=issued`);
  return refusalOf(issued.problem);
}

export async function takeBackAsking(draftId: string): Promise<string> {
  const { officeId } = await agentSeat();
  const done = await attempt((client) =>
    client.call(adviceRoutes.sendBackSecond, { params: { officeId, draftId }, json: { reason: null } }),
  );
  if (done.done) redirect(`/drafts/${draftId}`);
  return refusalOf(done.problem);
}

export async function sendBack(draftId: string, before: FormState, data: FormData): Promise<FormState> {
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
    client.call(adviceRoutes.sendBackSecond, { params: { officeId, draftId }, json: { reason } }),
  );
  if (!done.done) return refused(await refusalOf(done.problem));
  redirect("/round?saved=sentBack");
}

"use server";

import { recordRoutes, whatIfRoutes } from "@pith/contract";
import type { WhatIf } from "@pith/rules";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { attempt } from "../../server/api.ts";
import { agentSeat } from "../../server/seat.ts";

export interface Where {
  farmId: string;
  plantingId: string;
}

/** Makes a draft of what is tried and leads to it. Comes back only with why not. */
export async function draft(where: Where, choices: WhatIf): Promise<{ refused: string }> {
  const { officeId } = await agentSeat();
  const done = await attempt((client) =>
    client.call(whatIfRoutes.draftWhatIf, { params: { officeId, ...where }, json: { choices } }),
  );
  if (done.done) redirect(`/drafts/${done.value.draftId}`);
  const { detail, title } = done.problem as { detail?: string; title: string };
  return { refused: detail ?? title };
}

/** Lets a drafted choice go, and its draft with it. */
export async function letGo(where: Where): Promise<void> {
  const { officeId } = await agentSeat();
  await attempt((client) => client.call(whatIfRoutes.letGoWhatIf, { params: { officeId, ...where } }));
  revalidatePath(`/farms/${where.farmId}/plantings/${where.plantingId}/what-if`);
}

/** Keeps what was tried and what was said of it among the planting's notes. */
export async function keepAsNote({ farmId, plantingId }: Where, on: string, text: string): Promise<boolean> {
  const { officeId } = await agentSeat();
  const json = { plantingId, on, kind: "remark" as const, value: null, text: text.slice(0, MOST_TEXT) };
  const done = await attempt((client) =>
    client.call(recordRoutes.notes.add, { params: { officeId, farmId }, json }),
  );
  return done.done;
}

/** As much as a note holds. */
const MOST_TEXT = 2000;

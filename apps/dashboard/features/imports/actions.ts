"use server";

import { importRoutes } from "@pith/contract";
import { redirect } from "next/navigation";
import { attempt } from "../../server/api.ts";
import { agentSeat } from "../../server/seat.ts";

/** What has become of an import; null where that cannot be learnt now. */
export async function statusOf(farmId: string, importId: string): Promise<string | null> {
  const { officeId } = await agentSeat();
  const read = await attempt((client) =>
    client.call(importRoutes.getImport, { params: { officeId, farmId, importId } }),
  );
  return read.done ? read.value.status : null;
}

/** Puts a preview away; nothing of it is stored. */
export async function discard(farmId: string, importId: string): Promise<void> {
  const { officeId } = await agentSeat();
  await attempt((client) =>
    client.call(importRoutes.discardImport, { params: { officeId, farmId, importId } }),
  );
  redirect(`/farms/${farmId}?saved=discarded#imports`);
}

/** Forgets how a laboratory's columns are read. */
export async function forgetLab(farmId: string, lab: string): Promise<void> {
  const { officeId } = await agentSeat();
  await attempt((client) => client.call(importRoutes.forgetLabMapping, { params: { officeId, lab } }));
  redirect(`/farms/${farmId}/import?taken-back=lab#laboratories`);
}

"use server";

import { recordRoutes } from "@pith/contract";
import { redirect } from "next/navigation";
import { attempt } from "../../server/api.ts";
import { seat } from "../../server/seat.ts";
import type { FormState } from "../forms/plan.ts";
import { type RecordKind, signsOf } from "./plans.ts";
import { type RecordTarget, sendRecord } from "./send.ts";

export async function addRecord(
  { back, ...target }: RecordTarget & { /** Where to go once it is recorded. */ back: string },
  before: FormState,
  data: FormData,
): Promise<FormState> {
  const sent = await sendRecord(target, before, data);
  if ("refused" in sent) return sent.refused;
  // A sign is better with photographs, and they need something to hang on.
  const next = target.kind === "signs" ? `${signsOf(sent.role, target.farmId)}/${sent.id}` : back;
  redirect(`${next}?saved=${target.kind}`);
}

/** Takes back what was recorded by mistake. */
export async function removeRecord(target: { farmId: string; kind: RecordKind; id: string; back: string }) {
  const mine = await seat();
  if (!mine) redirect("/");
  const { farmId, kind, id, back } = target;
  const params = { officeId: mine.officeId, farmId, id };
  const removed = await attempt((client) => client.call(recordRoutes[kind].remove, { params }));
  redirect(`${back}?${removed.done ? "taken-back" : "not-taken-back"}=${kind}`);
}

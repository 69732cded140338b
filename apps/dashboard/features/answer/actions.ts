"use server";

import { adviceRoutes } from "@pith/contract";
import type { UnitSystem } from "@pith/rules";
import { redirect } from "next/navigation";
import { attempt } from "../../server/api.ts";
import { farmerSeat } from "../../server/seat.ts";
import type { FormState } from "../forms/plan.ts";
import { sendAnswer } from "./send.ts";

export async function markRead(advisoryId: string): Promise<void> {
  const { officeId } = await farmerSeat();
  await attempt((client) => client.call(adviceRoutes.markRead, { params: { officeId, advisoryId } }));
}

/** The farmer's answer, from the page itself. */
export async function answer(
  target: { advisoryId: string; units: UnitSystem },
  before: FormState,
  data: FormData,
): Promise<FormState> {
  const sent = await sendAnswer(target, before, data);
  return "refused" in sent ? sent.refused : redirect("/today?saved=answer");
}

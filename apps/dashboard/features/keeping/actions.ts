"use server";

import { exportRoutes, ledgerRoutes, type Problem } from "@pith/contract";
import { revalidatePath } from "next/cache";
import { getTranslations } from "next-intl/server";
import { attempt } from "../../server/api.ts";
import { agentSeat } from "../../server/seat.ts";
import { problemWords } from "../forms/words.ts";
import type { Finding } from "../ledger/Check.tsx";

/** Signs where the ledger stands now. */
export async function signNow(): Promise<Finding> {
  const [{ officeId }, t] = await Promise.all([agentSeat(), getTranslations("keeping")]);
  const made = await attempt((client) => client.call(ledgerRoutes.makeCheckpoint, { params: { officeId } }));
  if (!made.done) return failed(made.problem);
  revalidatePath("/ledger");
  return { good: true, text: t("signed", { entries: made.value.checkpoint.seq }), details: [] };
}

/** Holds a moved farm's history against its checkpoint. */
export async function verifyHistory(historyId: string): Promise<Finding> {
  const [{ officeId }, t] = await Promise.all([agentSeat(), getTranslations("keeping")]);
  const held = await attempt((client) =>
    client.call(ledgerRoutes.verifyHistory, { params: { officeId, historyId } }),
  );
  if (!held.done) return failed(held.problem);
  const { whole, entries, keyId, firstBroken } = held.value;
  if (whole) return { good: true, text: t("historyHolds", { entries }), details: [t("key", { keyId })] };
  return {
    good: false,
    text: t("historyBroken", { seq: firstBroken?.seq ?? 0 }),
    details: firstBroken ? [firstBroken.why] : [],
  };
}

/** Erases the person whose name was typed. */
export async function erase(_: Finding | null, data: FormData): Promise<Finding> {
  const [{ officeId }, t] = await Promise.all([agentSeat(), getTranslations("keeping")]);
  const json = { userId: String(data.get("userId")), name: String(data.get("name")) };
  const done = await attempt((client) =>
    client.call(exportRoutes.erasePerson, { params: { officeId }, json }),
  );
  if (!done.done) return failed(done.problem);
  const { texts, photos } = done.value;
  return { good: true, text: t("erased", { texts, photos }), details: [] };
}

async function failed(problem: Problem): Promise<Finding> {
  const words = await problemWords();
  const text = problem.title === "unreachable" ? words.unreachable : (problem.detail ?? problem.title);
  return { good: false, text, details: [] };
}

"use server";

import { farmRoutes, openRoutes, type PlotValue, type Problem, trialRoutes } from "@pith/contract";
import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { attempt, call } from "../../server/api.ts";
import { agentSeat, seat } from "../../server/seat.ts";
import { type DesignState, designIn, fieldOf } from "./design.ts";

async function saidOf({ title, detail }: Problem): Promise<string> {
  const t = await getTranslations("form");
  return title === "unreachable" ? t("unreachable") : (detail ?? title);
}

/** Lays a trial out, or says how many blocks it would need; what the API refuses comes back beside its field. */
export async function designTrial(farmId: string, before: DesignState, data: FormData): Promise<DesignState> {
  const { officeId } = await agentSeat();
  if (data.get("ask") === "blocks") return { ...before, blocksSaid: await blocksSaid(data) };
  const { beds } = await call(farmRoutes.getFarm, { params: { officeId, farmId } });
  const json = designIn(data, (id) => beds.find((bed) => bed.id === id)?.siteId);
  const laid = await attempt((client) =>
    // The API judges the body, field by field.
    client.call(trialRoutes.addTrial, { params: { officeId, farmId }, json: json as never }),
  );
  if (laid.done) redirect(`/farms/${farmId}/trials/${laid.value.trial.id}?saved=trial`);
  const errors = laid.problem.errors ?? [];
  const t = await getTranslations("form");
  return {
    ...before,
    attempt: before.attempt + 1,
    message: errors.length > 0 ? t("seeFields") : await saidOf(laid.problem),
    problems: Object.fromEntries(
      errors.map((e) => [fieldOf(e.field), e.accepted ? `${e.message} (${e.accepted})` : e.message]),
    ),
  };
}

async function blocksSaid(data: FormData): Promise<string> {
  const t = await getTranslations("trials");
  const typed = (name: string) => Number(String(data.get(name) ?? "") || Number.NaN);
  const treatments = String(data.get("levels1") ?? "")
    .split("\n")
    .filter((line) => line.trim() !== "").length;
  const asked = await attempt((client) =>
    client.call(openRoutes.computeQuantity, {
      params: { id: "blocks-for-power" },
      json: { cv: typed("cv"), differencePct: typed("differencePct"), treatments: Math.max(2, treatments) },
    }),
  );
  if (!asked.done) return saidOf(asked.problem);
  return t("blocksNeeded", { blocks: Number(asked.value.value.blocks) });
}

interface Target {
  farmId: string;
  trialId: string;
}

/** What became of typed numbers. */
export interface NumbersState {
  saved: string | null;
  problem: string | null;
}

/** Writes the numbers that were typed, all of them or none. */
export async function keepNumbers(target: Target, values: PlotValue[]): Promise<NumbersState> {
  const mine = await seat();
  if (!mine) redirect("/");
  const t = await getTranslations("trials");
  const kept = await attempt((client) =>
    client.call(trialRoutes.keepPlotValues, {
      params: { officeId: mine.officeId, ...target },
      json: { values },
    }),
  );
  if (!kept.done) return { saved: null, problem: await saidOf(kept.problem) };
  return { saved: t("kept", { count: values.length }), problem: null };
}

/** Begins, ends or draws a trial again. Says why where it could not. */
export async function changeTrial(
  { farmId, trialId }: Target,
  change: { startedOn?: string; endedOn?: string; draw?: true },
): Promise<string> {
  const { officeId } = await agentSeat();
  const { draw, ...days } = change;
  const seed = draw && (crypto.getRandomValues(new Uint32Array(1))[0] ?? 0);
  const done = await attempt((client) =>
    client.call(trialRoutes.changeTrial, {
      params: { officeId, farmId, trialId },
      json: { ...days, ...(seed !== undefined && { seed }) },
    }),
  );
  if (!done.done) return saidOf(done.problem);
  redirect(`/farms/${farmId}/trials/${trialId}?saved=trial`);
}

/** Takes a trial back that has no numbers yet. */
export async function removeTrial({ farmId, trialId }: Target): Promise<string> {
  const { officeId } = await agentSeat();
  const gone = await attempt((client) =>
    client.call(trialRoutes.removeTrial, { params: { officeId, farmId, trialId } }),
  );
  if (!gone.done) return saidOf(gone.problem);
  redirect(`/farms/${farmId}/trials?taken-back=trial`);
}

/** Puts what a trial found among the office's own evidence. */
export async function trialToEvidence(
  { farmId, trialId }: Target,
  _: string | null,
  data: FormData,
): Promise<string | null> {
  const { officeId } = await agentSeat();
  const kept = await attempt((client) =>
    client.call(trialRoutes.trialAsEvidence, {
      params: { officeId, farmId, trialId },
      json: { rule: String(data.get("rule") ?? "") },
    }),
  );
  if (!kept.done) return saidOf(kept.problem);
  redirect("/evidence?saved=evidence#own");
}

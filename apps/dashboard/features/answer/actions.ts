"use server";

import { adviceRoutes, farmRoutes } from "@pith/contract";
import type { UnitSystem } from "@pith/rules";
import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { attempt, call } from "../../server/api.ts";
import { farmerSeat } from "../../server/seat.ts";
import type { FormState } from "../forms/plan.ts";
import { problemState, readForm } from "../forms/read.ts";
import { problemWords } from "../forms/words.ts";
import { actualPlan, actualSchema, actualStart } from "./plan.ts";

export async function markRead(advisoryId: string): Promise<void> {
  const { officeId } = await farmerSeat();
  await attempt((client) => client.call(adviceRoutes.markRead, { params: { officeId, advisoryId } }));
}

/** The farmer's answer: done with what was really done, not done or cannot with a reason. */
export async function answer(
  target: { advisoryId: string; units: UnitSystem },
  before: FormState,
  data: FormData,
): Promise<FormState> {
  const { officeId } = await farmerSeat();
  const { advisoryId, units } = target;
  const params = { officeId, advisoryId };
  const advisory = await call(adviceRoutes.getAdvisory, { params });
  const [farm, words, t] = await Promise.all([
    call(farmRoutes.getFarm, { params: { officeId, farmId: advisory.farmId } }),
    problemWords(),
    getTranslations("answer"),
  ]);
  const plan = actualPlan(advisory, farm);
  const read = readForm(plan, actualSchema, data, units, words, actualStart(advisory, farm));
  const refused = (problem: Parameters<typeof problemState>[2], problems = read.problems) =>
    problemState(before, { ...read, problems }, problem, plan, actualSchema, units, words);

  const kind = String(data.get("kind") ?? "");
  const reason = String(data.get("reason") ?? "").trim();
  if (kind !== "done" && kind !== "not-done" && kind !== "cannot") {
    return refused(null, { kind: t("chooseOne") });
  }
  if (kind === "done" && Object.keys(read.problems).length > 0) return refused(null);
  if (kind !== "done" && reason === "") return refused(null, { reason: t("reasonNeeded") });

  const nothing = { materialId: null, amountKg: null, areaM2: null, minutes: null, litres: null };
  const saved = await attempt((client) =>
    client.call(adviceRoutes.answerAdvisory, {
      params,
      json: {
        kind,
        // The API judges the numbers; the form's shape follows the same schema.
        actual: kind === "done" ? ({ ...nothing, ...read.json } as never) : null,
        reason: reason === "" ? null : reason,
      },
    }),
  );
  if (!saved.done) return refused(saved.problem);
  redirect("/today?saved=answer");
}

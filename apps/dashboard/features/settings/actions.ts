"use server";

import { farmRoutes } from "@pith/contract";
import { SettingsSchema } from "@pith/rules";
import { redirect } from "next/navigation";
import { attempt, call, unlessChanged } from "../../server/api.ts";
import { agentSeat } from "../../server/seat.ts";
import type { FormState } from "../forms/plan.ts";
import { problemState, readForm } from "../forms/read.ts";
import { problemWords } from "../forms/words.ts";
import { settingsPlan } from "./plan.ts";

export async function saveSettings(
  tag: string | null,
  before: FormState,
  data: FormData,
): Promise<FormState> {
  const { officeId } = await agentSeat();
  const [office, words] = await Promise.all([
    call(farmRoutes.getOffice, { params: { officeId } }),
    problemWords(),
  ]);
  const plan = settingsPlan();
  const read = readForm(plan, SettingsSchema, data, "metric", words, office.settings);
  const refused = (problem: Parameters<typeof problemState>[2]) =>
    problemState(before, read, problem, plan, SettingsSchema, "metric", words);
  if (Object.keys(read.problems).length > 0) return refused(null);
  const saved = await attempt((client) =>
    // The API judges the body; the form's shape follows the same schema.
    client.call(farmRoutes.changeOfficeSettings, {
      params: { officeId },
      // Which readings the office follows is set beside the evidence, and stays.
      json: { choices: office.settings.choices, ...read.json } as never,
      ...unlessChanged(tag),
    }),
  );
  if (!saved.done) return refused(saved.problem);
  redirect("/settings?saved=settings");
}

"use server";

import { farmRoutes } from "@pith/contract";
import { type ChoiceId, choices } from "@pith/rules";
import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { attempt, callTagged, unlessChanged } from "../../server/api.ts";
import { agentSeat } from "../../server/seat.ts";

/** Follows one reading where sources conflict; the default is followed by choosing nothing. Says why where it failed. */
export async function followReading(id: ChoiceId, _: string | null, data: FormData): Promise<string | null> {
  const { officeId } = await agentSeat();
  const choice = choices.find((c) => c.id === id);
  const option = String(data.get("option") ?? "");
  const { value, tag } = await callTagged(farmRoutes.getOffice, { params: { officeId } });
  const { settings } = value;
  const { [id]: __, ...others } = settings.choices ?? {};
  const chosen = option === choice?.default ? others : { ...others, [id]: option };
  // Settings are replaced whole, so all others go along as they are.
  const saved = await attempt((client) =>
    client.call(farmRoutes.changeOfficeSettings, {
      params: { officeId },
      json: { ...settings, choices: chosen },
      ...unlessChanged(tag),
    }),
  );
  if (!saved.done) {
    const t = await getTranslations("form");
    return saved.problem.title === "unreachable"
      ? t("unreachable")
      : (saved.problem.detail ?? saved.problem.title);
  }
  redirect(`/evidence?saved=reading#choice-${id}`);
}

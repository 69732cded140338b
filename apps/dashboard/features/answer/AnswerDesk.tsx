import type { Advisory, FarmDetail } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { viewOf } from "../forms/view.ts";
import { formWords, frameWords } from "../forms/words.ts";
import { AnswerForm } from "./AnswerForm.tsx";
import { answer } from "./actions.ts";
import { actualPlan, actualSchema, actualStart } from "./plan.ts";

/** The farmer's answer, filled in with what was advised, so that numbers are corrected and not typed. */
export async function AnswerDesk({
  advisory,
  farm,
  who,
}: {
  advisory: Advisory;
  farm: FarmDetail;
  who: string;
}) {
  const plan = actualPlan(advisory, farm);
  const [t, words, frame] = await Promise.all([getTranslations("answer"), formWords("actual"), frameWords()]);
  const { units } = farm.farm;
  const [section] = viewOf(plan, actualSchema, actualStart(advisory, farm), units, words);
  return (
    <AnswerForm
      action={answer.bind(null, { advisoryId: advisory.id, units })}
      fields={section?.fields ?? []}
      alongside={section?.each ?? null}
      kind={advisory.answer?.kind ?? ""}
      reason={advisory.answer?.reason ?? ""}
      seen={String(advisory.answer?.ledgerSeq ?? "")}
      offline={{
        url: `/today/${advisory.id}/answer?units=${units}`,
        page: `/today/${advisory.id}`,
        next: "/today?saved=answer",
        onlyNewest: true,
        label: `${t("submit")}: ${advisory.said.decision}`,
        who,
      }}
      words={{
        ...frame,
        legend: t("legend"),
        done: t("done"),
        doneHint: t("doneHint"),
        notDone: t("notDone"),
        notDoneHint: t("notDoneHint"),
        cannot: t("cannot"),
        cannotHint: t("cannotHint"),
        reason: t("reason"),
        reasonIfAny: t("reasonIfAny"),
        submit: t("submit"),
      }}
    />
  );
}

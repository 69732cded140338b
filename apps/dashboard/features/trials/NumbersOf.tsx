import type { FarmDetail, TrialDetail } from "@pith/contract";
import { localDay, MISSING_REASONS } from "@pith/rules";
import { getTranslations } from "next-intl/server";
import { keepNumbers } from "./actions.ts";
import { Numbers } from "./Numbers.tsx";
import { namedPlots } from "./treatments.ts";

/** The numbers of a trial to type. The treatment is left out: who measures does better not to think of it. */
export async function NumbersOf({ read, detail }: { read: TrialDetail; detail: FarmDetail }) {
  const t = await getTranslations("trials");
  const { trial, values } = read;
  const bedOf = (id: string) => detail.beds.find((bed) => bed.id === id)?.name ?? "";
  const zone = detail.sites.find((site) => site.id === trial.siteId)?.timeZone ?? "UTC";
  return (
    <Numbers
      plots={namedPlots(trial).map((p) => ({
        id: p.id,
        name: t("plotInBed", { number: p.number, bed: bedOf(p.bedId) }),
      }))}
      responses={trial.responses.map((r) => ({ id: r.id, label: r.unit ? `${r.name}, ${r.unit}` : r.name }))}
      values={values}
      today={localDay(new Date().toISOString(), zone)}
      keep={keepNumbers.bind(null, { farmId: detail.farm.id, trialId: trial.id })}
      words={{
        value: t("value"),
        why: t("why"),
        there: t("there"),
        reasons: MISSING_REASONS.map((id) => ({ id, label: t(`reasons.${id}`) })),
        save: t("keep"),
        busy: t("keeping"),
        nothing: t("nothingNew"),
        notANumber: t("notANumber"),
        offline: t("offline"),
      }}
    />
  );
}

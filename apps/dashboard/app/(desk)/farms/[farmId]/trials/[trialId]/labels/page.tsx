import { farmRoutes, trialRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { namedPlots } from "../../../../../../../features/trials/treatments.ts";
import { inText } from "../../../../../../../format/units.ts";
import { call } from "../../../../../../../server/api.ts";
import { agentSeat } from "../../../../../../../server/seat.ts";
import { PrintButton } from "../../../../../../../ui/PrintButton.tsx";
import { Row } from "../../../../../../../ui/Row.tsx";

interface Props {
  params: Promise<{ farmId: string; trialId: string }>;
}

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("trials");
  return { title: t("labels") };
}

/** A label for each plot, to print, cut and put on a stake. */
export default async function LabelsPage({ params }: Props) {
  const [{ officeId }, { farmId, trialId }, t] = await Promise.all([
    agentSeat(),
    params,
    getTranslations("trials"),
  ]);
  const [detail, { trial }] = await Promise.all([
    call(farmRoutes.getFarm, { params: { officeId, farmId } }),
    call(trialRoutes.getTrial, { params: { officeId, farmId, trialId } }),
  ]);
  const length = (m: number) => inText(m, "m", detail.farm.units);
  return (
    <>
      <p className="crumbs no-print">
        <Link href={`/farms/${farmId}/trials/${trialId}`}>{trial.name}</Link>
      </p>
      <Row className="no-print">
        <h1>{t("labels")}</h1>
        <p>{t("labelsHelp")}</p>
        <PrintButton label={t("print")} />
      </Row>
      <ol className="plain plot-labels">
        {namedPlots(trial).map((plot) => (
          <li key={plot.id} className="plot-label">
            <p className="plot-label-number">{plot.number}</p>
            <p>
              <strong>{plot.letter}</strong> {plot.treatment}
              {plot.block !== null && <>, {t("block", { block: plot.block })}</>}
            </p>
            <p className="small">
              {t("place", {
                bed: detail.beds.find((bed) => bed.id === plot.bedId)?.name ?? "",
                from: length(plot.fromM),
                to: length(plot.toM),
              })}
            </p>
            <p className="faint small">{trial.name}</p>
          </li>
        ))}
      </ol>
    </>
  );
}

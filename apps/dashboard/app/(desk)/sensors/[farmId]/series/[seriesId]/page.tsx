import { farmRoutes, sensorRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { Form } from "../../../../../../features/forms/Form.tsx";
import { viewOf } from "../../../../../../features/forms/view.ts";
import { formWords, frameWords } from "../../../../../../features/forms/words.ts";
import { saveSeries } from "../../../../../../features/sensors/actions.ts";
import { ordinary, seriesPlan, seriesSchema } from "../../../../../../features/sensors/plan.ts";
import { call } from "../../../../../../server/api.ts";
import { agentSeat } from "../../../../../../server/seat.ts";
import { Row } from "../../../../../../ui/Row.tsx";

interface Props {
  params: Promise<{ farmId: string; seriesId: string }>;
}

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("sensors");
  return { title: t("add") };
}

/** Adds a series, or changes where one stands and when it counts as silent. */
export default async function SeriesPage({ params }: Props) {
  const [{ officeId }, { farmId, seriesId }, t, frame] = await Promise.all([
    agentSeat(),
    params,
    getTranslations("sensors"),
    frameWords(),
  ]);
  const where = { officeId, farmId };
  const [farm, { series }] = await Promise.all([
    call(farmRoutes.getFarm, { params: where }),
    call(sensorRoutes.listSeries, { params: where }),
  ]);
  const known = series.find((s) => s.id === seriesId);
  if (!known && seriesId !== "new") notFound();
  const plan = seriesPlan(farm);
  const words = await formWords(plan.labels);
  return (
    <>
      <p className="crumbs">
        <Link href={`/sensors/${farmId}`}>{t("title")}</Link>
      </p>
      <Row notes={<p className="small">{t("formHelp")}</p>}>
        <h1>{known ? known.label : t("add")}</h1>
        <Form
          action={saveSeries.bind(null, { farmId, seriesId: known ? known.id : null })}
          sections={viewOf(plan, seriesSchema, known ?? ordinary, farm.farm.units, words)}
          submit={t("save")}
          cancel={{ href: `/sensors/${farmId}`, label: t("cancel") }}
          words={frame}
        />
      </Row>
    </>
  );
}

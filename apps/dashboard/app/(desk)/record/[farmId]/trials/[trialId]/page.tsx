import { farmRoutes, trialRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { NumbersOf } from "../../../../../../features/trials/NumbersOf.tsx";
import { call } from "../../../../../../server/api.ts";
import { writingSeat } from "../../../../../../server/seat.ts";
import { Row } from "../../../../../../ui/Row.tsx";

interface Props {
  params: Promise<{ farmId: string; trialId: string }>;
}

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("trials");
  return { title: t("one") };
}

/** The farm's own people type what they measured, plot by plot. */
export default async function FarmersTrialPage({ params }: Props) {
  const [{ officeId }, { farmId, trialId }, t] = await Promise.all([
    writingSeat(),
    params,
    getTranslations("trials"),
  ]);
  const [detail, read] = await Promise.all([
    call(farmRoutes.getFarm, { params: { officeId, farmId } }),
    call(trialRoutes.getTrial, { params: { officeId, farmId, trialId } }),
  ]);
  return (
    <>
      <p className="crumbs">
        <Link href="/record">{t("toRecord")}</Link>
      </p>
      <Row>
        <h1>{read.trial.name}</h1>
        <p className="decision-under">{read.said.decision}</p>
        <NumbersOf read={read} detail={detail} />
      </Row>
    </>
  );
}

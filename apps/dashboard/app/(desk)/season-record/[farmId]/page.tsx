import { seasonRecordRoutes } from "@pith/contract";
import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { SeasonSheet } from "../../../../features/seasonRecord/SeasonSheet.tsx";
import { call } from "../../../../server/api.ts";
import { seat } from "../../../../server/seat.ts";

interface Props {
  params: Promise<{ farmId: string }>;
  searchParams: Promise<{ season?: string }>;
}

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("seasonRecord");
  return { title: t("page") };
}

/** The season's record of a farm, the same for its people and the office's. */
export default async function SeasonRecordPage({ params, searchParams }: Props) {
  const [mine, { farmId }, { season }, t] = await Promise.all([
    seat(),
    params,
    searchParams,
    getTranslations("seasonRecord"),
  ]);
  if (!mine) redirect("/");
  const asked = /^\d{4}$/.test(season ?? "") ? { season: Number(season) } : {};
  const record = await call(seasonRecordRoutes.getSeasonRecord, {
    params: { officeId: mine.officeId, farmId },
    query: asked,
  });
  const back =
    mine.role === "agent"
      ? { href: `/farms/${farmId}`, label: record.farm }
      : { href: "/record", label: t("toRecord") };
  return <SeasonSheet record={record} farmId={farmId} officeName={mine.officeName} back={back} />;
}

import type { Metadata } from "next";
import { getTranslations } from "next-intl/server";
import { RecordPage } from "../../../../../features/records/RecordPage.tsx";
import { writingSeat } from "../../../../../server/seat.ts";

interface Props {
  params: Promise<{ farmId: string; kind: string }>;
  searchParams: Promise<{ planting?: string }>;
}

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("records");
  return { title: t("title") };
}

export default async function Page({ params, searchParams }: Props) {
  const [seat, { farmId, kind }, { planting }] = await Promise.all([writingSeat(), params, searchParams]);
  return <RecordPage seat={seat} farmId={farmId} kind={kind} back={"/record"} plantingId={planting} />;
}

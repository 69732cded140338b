import type { Metadata } from "next";
import { getTranslations } from "next-intl/server";
import { RecordPage } from "../../../../../../features/records/RecordPage.tsx";
import { agentSeat } from "../../../../../../server/seat.ts";

interface Props {
  params: Promise<{ farmId: string; kind: string }>;
  searchParams: Promise<{ planting?: string }>;
}

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("records");
  return { title: t("title") };
}

export default async function Page({ params, searchParams }: Props) {
  const [seat, { farmId, kind }, { planting }] = await Promise.all([agentSeat(), params, searchParams]);
  return (
    <RecordPage
      seat={seat}
      farmId={farmId}
      kind={kind}
      back={planting ? `/farms/${farmId}/plantings/${planting}` : `/farms/${farmId}`}
      plantingId={planting}
    />
  );
}

import type { Metadata } from "next";
import { getTranslations } from "next-intl/server";
import { SignPage } from "../../../../../../features/signs/SignPage.tsx";
import { agentSeat } from "../../../../../../server/seat.ts";

interface Props {
  params: Promise<{ farmId: string; signId: string }>;
  searchParams: Promise<Record<string, string>>;
}

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("photos");
  return { title: t("title") };
}

export default async function Page({ params, searchParams }: Props) {
  const [seat, { farmId, signId }, asked] = await Promise.all([agentSeat(), params, searchParams]);
  return <SignPage seat={seat} farmId={farmId} signId={signId} asked={asked} />;
}

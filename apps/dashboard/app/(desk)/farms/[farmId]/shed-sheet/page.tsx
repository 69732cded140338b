import type { Metadata } from "next";
import { getTranslations } from "next-intl/server";
import { gatherSheet } from "../../../../../features/shed/gather.ts";
import { ShedSheet } from "../../../../../features/shed/ShedSheet.tsx";
import { agentSeat } from "../../../../../server/seat.ts";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("shedSheet");
  return { title: t("page") };
}

/** The sheet for the shed's wall, as the agent prints it: issued advice, and drafts where none was issued. */
export default async function ShedSheetPage({ params }: { params: Promise<{ farmId: string }> }) {
  const [seat, { farmId }] = await Promise.all([agentSeat(), params]);
  const sheet = await gatherSheet(seat, farmId);
  const back = { href: `/farms/${farmId}#materials`, label: sheet.detail.farm.name };
  return <ShedSheet sheet={sheet} officeName={seat.officeName} back={back} />;
}

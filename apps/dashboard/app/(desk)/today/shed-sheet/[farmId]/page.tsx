import type { Metadata } from "next";
import { getTranslations } from "next-intl/server";
import { gatherSheet } from "../../../../../features/shed/gather.ts";
import { ShedSheet } from "../../../../../features/shed/ShedSheet.tsx";
import { farmerSeat } from "../../../../../server/seat.ts";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("shedSheet");
  return { title: t("page") };
}

/** The sheet for the shed's wall, as the farmer prints it: issued advice alone. */
export default async function ShedSheetPage({ params }: { params: Promise<{ farmId: string }> }) {
  const [seat, { farmId }, t] = await Promise.all([farmerSeat(), params, getTranslations("today")]);
  const sheet = await gatherSheet(seat, farmId);
  return <ShedSheet sheet={sheet} officeName={seat.officeName} back={{ href: "/today", label: t("back") }} />;
}

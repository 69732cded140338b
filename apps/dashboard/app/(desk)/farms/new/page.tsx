import type { Metadata } from "next";
import { getTranslations } from "next-intl/server";
import { FarmForm } from "../../../../features/farm/FarmForm.tsx";
import { agentSeat } from "../../../../server/seat.ts";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("farms");
  return { title: t("addTitle") };
}

export default async function NewFarmPage() {
  await agentSeat();
  return <FarmForm farm={null} tag={null} />;
}

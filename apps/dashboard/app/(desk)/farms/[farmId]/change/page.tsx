import { farmRoutes } from "@pith/contract";
import type { Metadata } from "next";
import { getTranslations } from "next-intl/server";
import { FarmForm } from "../../../../../features/farm/FarmForm.tsx";
import { callTagged } from "../../../../../server/api.ts";
import { agentSeat } from "../../../../../server/seat.ts";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("farm");
  return { title: t("changeFarm") };
}

export default async function ChangeFarmPage({ params }: { params: Promise<{ farmId: string }> }) {
  const [{ officeId }, { farmId }] = await Promise.all([agentSeat(), params]);
  const { value, tag } = await callTagged(farmRoutes.getFarm, { params: { officeId, farmId } });
  return <FarmForm farm={value.farm} tag={tag} />;
}

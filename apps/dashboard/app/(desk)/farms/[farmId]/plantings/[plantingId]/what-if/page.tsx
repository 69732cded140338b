import { farmRoutes, whatIfRoutes } from "@pith/contract";
import type { PlantingState, ValveState } from "@pith/rules";
import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { NextIntlClientProvider } from "next-intl";
import { getMessages, getTranslations } from "next-intl/server";
import { readerOf } from "../../../../../../../features/advice/reader.ts";
import { letGo } from "../../../../../../../features/whatIf/actions.ts";
import { Desk } from "../../../../../../../features/whatIf/Desk.tsx";
import { askedIn } from "../../../../../../../features/whatIf/sliders.ts";
import { dayAt } from "../../../../../../../format/dates.ts";
import { call } from "../../../../../../../server/api.ts";
import { agentSeat } from "../../../../../../../server/seat.ts";

interface Props {
  params: Promise<{ farmId: string; plantingId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("whatIf");
  return { title: t("title") };
}

/** Trying things on a planting: the rules run in the browser, on the states that the server would advise on. */
export default async function WhatIfPage({ params, searchParams }: Props) {
  const [{ officeId }, where, asked, t, messages] = await Promise.all([
    agentSeat(),
    params,
    searchParams,
    getTranslations("whatIf"),
    getMessages(),
  ]);
  const [detail, { planting, valve, drafted }] = await Promise.all([
    call(farmRoutes.getFarm, { params: { officeId, farmId: where.farmId } }),
    call(whatIfRoutes.getWhatIf, { params: { officeId, ...where } }),
  ]);
  const named = detail.plantings.find(({ id }) => id === where.plantingId);
  if (!named) notFound();
  const state = planting as unknown as PlantingState;
  const { whatIf, chart, caution, working } = messages;
  const back = `/farms/${where.farmId}/plantings/${where.plantingId}`;
  return (
    <>
      <p className="crumbs">
        <Link href={`/farms/${where.farmId}#plantings`}>{detail.farm.name}</Link> ·{" "}
        <Link href={back}>{named.varietyName}</Link>
      </p>
      <header className="what-if-head">
        <h1>{t("heading", { name: named.varietyName })}</h1>
        <p className="decision-under">{t("under")}</p>
      </header>
      {drafted && (
        <form action={letGo.bind(null, where)} className="notice">
          {drafted.draftId ? <Link href={`/drafts/${drafted.draftId}`}>{t("drafted")}</Link> : t("drafted")}{" "}
          <button type="submit" className="plainly">
            {t("letGo")}
          </button>
        </form>
      )}
      <NextIntlClientProvider messages={{ whatIf, chart, caution, working }}>
        <Desk
          where={where}
          planting={state}
          valve={valve as unknown as ValveState | null}
          asked={askedIn(asked)}
          today={dayAt(state.asOf, state.site.timeZone)}
          reader={readerOf(detail)}
        />
      </NextIntlClientProvider>
    </>
  );
}

import { jobRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { ActButton } from "../../../../features/forms/ActButton.tsx";
import { adviseOffice } from "../../../../features/work/actions.ts";
import { LookAgain } from "../../../../features/work/LookAgain.tsx";
import { Runs } from "../../../../features/work/Runs.tsx";
import { call } from "../../../../server/api.ts";
import { agentSeat } from "../../../../server/seat.ts";
import { readerZone } from "../../../../server/zone.ts";
import { Row } from "../../../../ui/Row.tsx";
import { Saved } from "../../../../ui/Saved.tsx";
import { ToOffice } from "../../../../ui/ToOffice.tsx";

const PAGE = 30;

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("work");
  return { title: t("title") };
}

/** What is done without anybody waiting for it: what is under way, what was given up, what was done lately. */
export default async function WorkPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | undefined>>;
}) {
  const [{ officeId, lead }, asked, zone, t] = await Promise.all([
    agentSeat(),
    searchParams,
    readerZone(),
    getTranslations("work"),
  ]);
  const params = { officeId };
  const { after } = asked;
  const [{ runs: failed }, { runs, next }] = await Promise.all([
    call(jobRoutes.listRuns, { params, query: { status: "failed", limit: 200 } }),
    call(jobRoutes.listRuns, { params, query: { limit: PAGE, after } }),
  ]);
  const open = runs.filter((run) => run.status === "waiting" || run.status === "running");
  const ended = runs.filter((run) => run.status === "done" || run.status === "overtaken");
  const isUnderWay = open.some((run) => run.status === "running" || run.attempts === 0);
  return (
    <>
      <ToOffice />
      <Saved asked={asked} />
      <Row notes={<p>{t("help")}</p>}>
        <h1>{t("title")}</h1>
        <p className="decision-under" role="status">
          {t("count", { open: open.length, failed: failed.length })}
        </p>
        {isUnderWay && <LookAgain />}
        <ActButton action={adviseOffice} label={t("adviseOffice")} busy={t("wanting")} weight="quiet" />
      </Row>
      {failed.length > 0 && (
        <Row
          id="given-up"
          side={<h2>{t("givenUp")}</h2>}
          notes={<p>{lead ? t("givenUpHelp") : t("givenUpForLead")}</p>}
        >
          <Runs runs={failed} zone={zone} mayRetry={lead} />
        </Row>
      )}
      {open.length > 0 && (
        <Row id="under-way" side={<h2>{t("underWay")}</h2>}>
          <Runs runs={open} zone={zone} mayRetry={false} />
        </Row>
      )}
      <Row id="lately" side={<h2>{t("lately")}</h2>}>
        {ended.length === 0 ? <p>{t("empty")}</p> : <Runs runs={ended} zone={zone} mayRetry={false} />}
        <p className="actions">
          {after && (
            <Link className="tap" href="/office/work">
              {t("newest")}
            </Link>
          )}
          {next && (
            <Link className="tap" href={`/office/work?after=${encodeURIComponent(next)}`}>
              {t("older")}
            </Link>
          )}
        </p>
      </Row>
    </>
  );
}

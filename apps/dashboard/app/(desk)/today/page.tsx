import { type Advisory, adviceRoutes, farmRoutes, recordRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { allAdvisories, byDue } from "../../../features/advice/allAdvisories.ts";
import { WaitingHere } from "../../../features/offline/WaitingHere.tsx";
import { ClosedNotice } from "../../../features/records/ClosedNotice.tsx";
import { longDayText, todayIn } from "../../../format/dates.ts";
import { call } from "../../../server/api.ts";
import { farmerSeat, whoOf } from "../../../server/seat.ts";
import { readerZone } from "../../../server/zone.ts";
import { Cautions } from "../../../ui/Cautions.tsx";
import { Row } from "../../../ui/Row.tsx";
import { Saved } from "../../../ui/Saved.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("today");
  return { title: t("title") };
}

/** The farmer's day: what is still to do, what is to be careful of, by when; below it what was answered. */
export default async function TodayPage({ searchParams }: { searchParams: Promise<Record<string, string>> }) {
  const [mine, asked, zone, t, plans, paper] = await Promise.all([
    farmerSeat(),
    searchParams,
    readerZone(),
    getTranslations("today"),
    getTranslations("bedPlan"),
    getTranslations("paper"),
  ]);
  const { officeId } = mine;
  const [standing, { advisories }, closed] = await Promise.all([
    allAdvisories(officeId, { open: "yes" }),
    call(adviceRoutes.listAdvisories, { params: { officeId }, query: { open: "no", limit: 60 } }),
    closedOfFarms(officeId),
  ]);
  const open = standing.toSorted(byDue);
  const answered = advisories.filter((one) => one.answer !== null);
  const past = advisories.filter((one) => one.answer === null && isPast(one.status)).slice(0, MOST_PAST);
  const several = closed.length > 1;
  const sheets = await farmsWithSheet(officeId);
  return (
    <>
      <Saved asked={asked} />
      <WaitingHere
        who={whoOf(mine)}
        pages={[
          "/today",
          "/record",
          ...sheets.map(([farmId]) => `/today/shed-sheet/${farmId}`),
          ...open.map(({ id }) => `/today/${id}`),
          ...answered.map(({ id }) => `/today/${id}`),
        ]}
      />
      <Row side={<p className="label">{longDayText(todayIn(zone))}</p>}>
        <h1>{t("count", { count: open.length })}</h1>
        {open.length === 0 && <p className="decision-under">{t("empty")}</p>}
        {closed.map((one) => (
          <ClosedNotice key={one.detail.farm.id} {...one} />
        ))}
        {open.length > 0 && (
          <p className="no-print">
            <a className="tap" href="/today/week.pdf">
              {paper("weekPdf")}
            </a>
          </p>
        )}
        {sheets.map(([farmId, farm]) => (
          <p key={farmId} className="no-print">
            <Link className="tap" href={`/today/shed-sheet/${farmId}`} prefetch={false}>
              {t("shedSheet", { farm })}
            </Link>
          </p>
        ))}
        {closed.map(({ detail: { farm } }) => (
          <p key={farm.id} className="no-print">
            <Link className="tap" href={`/farms/${farm.id}/bed-plan`} prefetch={false}>
              {plans("chooserTitle", { farm: farm.name })}
            </Link>
          </p>
        ))}
      </Row>
      {open.map((one) => (
        <Slip key={one.id} advisory={one} several={several} />
      ))}
      {past.length > 0 && (
        <Row side={<h2>{t("past")}</h2>}>
          <ul className="listing">
            {past.map((one) => (
              <li key={one.id}>
                <Link className="tap" href={`/today/${one.id}`} prefetch={false}>
                  {one.said.decision}
                </Link>
                <p className="faint">
                  {isPast(one.status) && t(one.status)} {one.withdrawnReason} · {one.subjectName}
                </p>
              </li>
            ))}
          </ul>
        </Row>
      )}
      {answered.length > 0 && (
        <Row side={<h2>{t("answered")}</h2>}>
          <ul className="listing">
            {answered.map((one) => (
              <li key={one.id}>
                <Link className="tap" href={`/today/${one.id}`}>
                  {one.said.decision}
                </Link>
                <p className="faint">
                  {t(`answers.${one.answer?.kind ?? "done"}`)} · {one.subjectName}
                </p>
              </li>
            ))}
          </ul>
        </Row>
      )}
      <Row className="no-print">
        <p>
          <Link className="tap" href="/account/delivery">
            {t("delivery")}
          </Link>
        </p>
      </Row>
    </>
  );
}

/** What the farmer was told and need not do any more: so many of the newest, so that nobody wonders where it went. */
const MOST_PAST = 10;
const isPast = (status: Advisory["status"]): status is "expired" | "superseded" | "withdrawn" =>
  status === "expired" || status === "superseded" || status === "withdrawn";

/** Farms that were told what to feed, by name. */
async function farmsWithSheet(officeId: string): Promise<[farmId: string, name: string][]> {
  const fed = await allAdvisories(officeId, { ruleId: "feeding" });
  const told = fed.filter(({ status }) => status !== "withdrawn" && status !== "superseded");
  return [...new Map(told.map((one) => [one.farmId, one.farmName]))];
}

/** Beds that a label closes now, farm by farm. */
async function closedOfFarms(officeId: string) {
  const { farms } = await call(farmRoutes.listFarms, { params: { officeId } });
  return Promise.all(
    farms.map(async ({ id: farmId }) => {
      const params = { officeId, farmId };
      const [detail, { closed }] = await Promise.all([
        call(farmRoutes.getFarm, { params }),
        call(recordRoutes.getRecords, { params, query: {} }),
      ]);
      return { detail, closed };
    }),
  );
}

async function Slip({ advisory, several }: { advisory: Advisory; several: boolean }) {
  const [t, caution, advice] = await Promise.all([
    getTranslations("today"),
    getTranslations("caution"),
    getTranslations("advice"),
  ]);
  const { said } = advisory;
  const worst = said.cautions[0]?.severity;
  return (
    <Row className="draft">
      <p className="faint">
        {advisory.subjectName}
        {several && ` · ${advisory.farmName}`}
        {advisory.status === "issued" && <strong> {t("new")}</strong>}
      </p>
      <h2 className="headline">
        <Link href={`/today/${advisory.id}`} prefetch={false}>
          {said.decision}
        </Link>
      </h2>
      {said.window && <p>{said.window}</p>}
      {(worst === "danger" || worst === "warning") && (
        <p className="caution-word no-print">{t("careful", { severity: caution(worst) })}</p>
      )}
      {/* On paper nothing can be opened, so that its cautions stand with it. */}
      <div className="print-only">
        <Cautions cautions={said.cautions} />
        <p className="faint">
          {advice("ledger")} {advisory.ledgerSeq} · {advisory.ledgerHash}
        </p>
      </div>
    </Row>
  );
}

import { adviceRoutes, type Draft, deliveryRoutes, farmRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { adviseAgain } from "../../../features/advice/actions.ts";
import { Calls } from "../../../features/delivery/Calls.tsx";
import { Alarms } from "../../../features/round/Alarms.tsx";
import { RoundKeys } from "../../../features/round/RoundKeys.tsx";
import { SetAside } from "../../../features/round/SetAside.tsx";
import { Automatic } from "../../../features/standingOrders/Automatic.tsx";
import { clockText, dayAt, todayIn, weekdayText } from "../../../format/dates.ts";
import { call } from "../../../server/api.ts";
import { agentSeat } from "../../../server/seat.ts";
import { readerZone } from "../../../server/zone.ts";
import { Row } from "../../../ui/Row.tsx";
import { RuleName } from "../../../ui/RuleName.tsx";
import { Saved } from "../../../ui/Saved.tsx";

/** So many of what standing orders issued are shown; the rest stand on their own page. */
const MOST_AUTOMATIC = 10;

interface Asked extends Record<string, string | undefined> {
  farm?: string;
  show?: string;
  after?: string;
}

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("round");
  return { title: t("title") };
}

/** What needs a decision, over all farms, most urgent first, each with the reason for its place. */
export default async function RoundPage({ searchParams }: { searchParams: Promise<Asked> }) {
  const [{ officeId }, asked, zone, t] = await Promise.all([
    agentSeat(),
    searchParams,
    readerZone(),
    getTranslations("round"),
  ]);
  const [{ alarms, drafts, total, next }, { farms }, { advisories: automatic }, { calls }] =
    await Promise.all([
      call(adviceRoutes.getRound, {
        params: { officeId },
        query: {
          farmId: asked.farm || undefined,
          all: asked.show === "all" ? "yes" : undefined,
          setAside: asked.show === "aside" ? "only" : undefined,
          after: asked.after || undefined,
        },
      }),
      call(farmRoutes.listFarms, { params: { officeId } }),
      call(adviceRoutes.listAdvisories, {
        params: { officeId },
        query: { farmId: asked.farm || undefined, automatic: "yes", open: "yes", limit: MOST_AUTOMATIC },
      }),
      call(deliveryRoutes.listCalls, { params: { officeId } }),
    ]);
  const further = new URLSearchParams(
    Object.entries({ farm: asked.farm, show: asked.show, after: next ?? undefined }).flatMap(
      ([name, value]) => (value ? [[name, value]] : []),
    ),
  );
  const today = todayIn(zone);

  const waiting = drafts.filter((d) => d.second !== null && !d.second.changed && d.second.sentBack === null);

  return (
    <>
      <Saved asked={asked} />
      <Row
        side={<p className="label">{weekdayText(today)}</p>}
        notes={<p className="keys faint">{t.rich("keys", { kbd: (chunks) => <kbd>{chunks}</kbd> })}</p>}
      >
        <h1>{t("title")}</h1>
        <p className="decision-under">{t("count", { count: total })}</p>
        <form className="filters" method="get">
          <div className="field">
            <label htmlFor="farm">{t("farm")}</label>
            <select id="farm" name="farm" defaultValue={asked.farm ?? ""}>
              <option value="">{t("allFarms")}</option>
              {farms.map((farm) => (
                <option key={farm.id} value={farm.id}>
                  {farm.name}
                </option>
              ))}
            </select>
          </div>
          <div className="field">
            <label htmlFor="show">{t("show")}</label>
            <select id="show" name="show" defaultValue={asked.show ?? ""}>
              <option value="">{t("showAdvice")}</option>
              <option value="all">{t("showAll")}</option>
              <option value="aside">{t("showAside")}</option>
            </select>
          </div>
          <button type="submit" className="quiet">
            {t("apply")}
          </button>
        </form>
      </Row>
      <Calls calls={calls} zone={zone} />
      <Alarms alarms={alarms} zone={zone} />
      {waiting.length > 0 && (
        <Row side={<h2>{t("waiting")}</h2>}>
          <ul className="listing">
            {waiting.map((one) => (
              <li key={one.id}>
                <Link className="listing-head" href={`/drafts/${one.id}#issue`} prefetch={false}>
                  {one.headline}
                </Link>
                <p className="faint">
                  {one.subjectName} · {one.farmName} ·{" "}
                  {t(one.second?.mine ? "waitingMine" : "waitingFrom", { name: one.second?.askedBy ?? "" })}
                </p>
              </li>
            ))}
          </ul>
        </Row>
      )}
      {automatic.length > 0 && (
        <Row side={<h2>{t("automatic")}</h2>} notes={<Link href="/standing-orders">{t("orders")}</Link>}>
          <Automatic advisories={automatic} zone={zone} />
        </Row>
      )}
      {drafts.length === 0 ? (
        <Row>
          <p>{asked.farm || asked.show ? t("emptyFiltered") : t("empty")}</p>
        </Row>
      ) : (
        <RoundKeys>
          {drafts.map((draft) => (
            <Entry key={draft.id} draft={draft} zone={zone} today={today} />
          ))}
        </RoundKeys>
      )}
      {next !== null && (
        <Row>
          <p>
            <Link className="tap" href={`/round?${further}`}>
              {t("further")}
            </Link>
          </p>
        </Row>
      )}
      <Row>
        <form action={adviseAgain.bind(null, asked.farm ?? null)}>
          <button type="submit" className="quiet">
            {t("adviseAgain")}
          </button>{" "}
          <span className="faint">{t("adviseAgainHelp")}</span>
        </form>
        <p>
          <Link className="tap" href="/account/delivery">
            {t("delivery")}
          </Link>
        </p>
      </Row>
    </>
  );
}

async function Entry({ draft, zone, today }: { draft: Draft; zone: string; today: string }) {
  const t = await getTranslations("round");
  return (
    <Row
      className="draft"
      side={<ByWhen draft={draft} zone={zone} today={today} />}
      notes={
        <>
          <p>{draft.reason}</p>
          <SetAside draft={draft} />
        </>
      }
    >
      <p className="faint">
        <RuleName id={draft.ruleId} />
        {draft.kind !== "advice" && <span className="unknown"> · {t(`kinds.${draft.kind}`)}</span>}
      </p>
      <h2 className="headline">
        <Link href={`/drafts/${draft.id}`} data-entry prefetch={false}>
          {draft.headline}
        </Link>
      </h2>
      <p>
        {draft.subjectName} · <Link href={`/farms/${draft.farmId}`}>{draft.farmName}</Link>
      </p>
    </Row>
  );
}

async function ByWhen({ draft, zone, today }: { draft: Draft; zone: string; today: string }) {
  const t = await getTranslations("round");
  if (draft.actBy === null) return <span className="faint">{t("noHurry")}</span>;
  const day = dayAt(draft.actBy, zone);
  return (
    <>
      <span className="faint">{t("actBy")} </span>
      <strong>{day === today ? t("today") : weekdayText(day)}</strong>{" "}
      <time dateTime={draft.actBy}>{clockText(draft.actBy, zone)}</time>
      {day < today && <span className="unknown"> {t("past")}</span>}
    </>
  );
}

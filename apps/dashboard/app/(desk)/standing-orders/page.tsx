import { adviceRoutes, farmRoutes, type IssuingSettings, standingOrderRoutes } from "@pith/contract";
import { rules } from "@pith/rules";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { Form } from "../../../features/forms/Form.tsx";
import { frameWords } from "../../../features/forms/words.ts";
import { Automatic } from "../../../features/standingOrders/Automatic.tsx";
import { saveIssuing } from "../../../features/standingOrders/actions.ts";
import { longDayText } from "../../../format/dates.ts";
import { call } from "../../../server/api.ts";
import { agentSeat } from "../../../server/seat.ts";
import { readerZone } from "../../../server/zone.ts";
import { Choose } from "../../../ui/Choose.tsx";
import { Row } from "../../../ui/Row.tsx";
import { RuleName } from "../../../ui/RuleName.tsx";
import { isRule } from "../../../ui/ruleNames.ts";
import { Saved } from "../../../ui/Saved.tsx";
import { ToOffice } from "../../../ui/ToOffice.tsx";

const READERS = ["never", "rules", "danger", "always"] as const;

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("standingOrders");
  return { title: t("title") };
}

/** What goes out without an agent's hand, what it has issued, and for what two people are wanted. */
export default async function StandingOrdersPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string>>;
}) {
  const [{ officeId, lead }, asked, zone, t, ruleNames] = await Promise.all([
    agentSeat(),
    searchParams,
    readerZone(),
    getTranslations("standingOrders"),
    getTranslations("rules"),
  ]);
  const params = { officeId };
  const [{ orders }, { advisories }, { farms }, settings] = await Promise.all([
    call(standingOrderRoutes.listStandingOrders, {
      params,
      query: { ended: asked.show === "all" ? "yes" : "no" },
    }),
    call(adviceRoutes.listAdvisories, { params, query: { automatic: "yes", limit: 20 } }),
    call(farmRoutes.listFarms, { params }),
    call(standingOrderRoutes.getIssuingSettings, { params }),
  ]);
  return (
    <>
      <ToOffice />
      <Saved asked={asked} />
      <Row notes={<p>{t("help")}</p>}>
        <h1>{t("title")}</h1>
        <p className="decision-under">
          {t("count", { count: orders.filter((o) => o.state === "in-force").length })}
        </p>
        <ul className="listing">
          {orders.map((order) => (
            <li key={order.id}>
              <Link className="listing-head" href={`/standing-orders/${order.id}`} prefetch={false}>
                <RuleName id={order.ruleId} />, {order.farmName}
              </Link>
              <p className="faint">
                <span className={order.state === "in-force" ? "" : "unknown"}>
                  {t(`states.${order.state}`)}
                </span>{" "}
                · {t("until", { day: longDayText(order.terms.endsOn) })} ·{" "}
                {t("hasIssued", { count: order.issued })}
              </p>
            </li>
          ))}
        </ul>
        {asked.show !== "all" && (
          <p>
            <Link className="tap" href="/standing-orders?show=all">
              {t("showEnded")}
            </Link>
          </p>
        )}
      </Row>
      <Row side={<h2>{t("new")}</h2>} notes={<p>{t("newHelp")}</p>}>
        <form className="filters" method="get" action="/standing-orders/new">
          <Choose
            name="farm"
            label={t("farm")}
            chosen={farms[0]?.id}
            options={farms.map(({ id, name }) => [id, name] as const)}
          />
          <Choose
            name="rule"
            label={t("rule")}
            chosen="cold-tonight"
            options={orderable.map(({ id }) => [id, isRule(id) ? ruleNames(id) : id] as const)}
          />
          <button type="submit" className="quiet">
            {t("goOn")}
          </button>
        </form>
      </Row>
      {advisories.length > 0 && (
        <Row side={<h2>{t("issued")}</h2>} notes={<p>{t("takeBackHelp")}</p>}>
          <Automatic advisories={advisories} zone={zone} />
        </Row>
      )}
      <SecondReader settings={settings} lead={lead} />
    </>
  );
}

/** What an agent chooses by hand no order chooses before. */
const orderable = rules.filter(({ subject }) => subject !== "what-if");

/** For which advice the office wants two people: a lead says so, an agent reads it. */
async function SecondReader({ settings, lead }: { settings: IssuingSettings; lead: boolean }) {
  const [t, names, words] = await Promise.all([
    getTranslations("standingOrders"),
    getTranslations("rules"),
    frameWords(),
  ]);
  const nameOf = (id: string) => (names.has(id as "irrigate") ? names(id as "irrigate") : id);
  const field = { unit: null, hint: null, required: true, choices: [] };
  return (
    <Row id="second" side={<h2>{t("second")}</h2>} notes={<p>{t("secondHelp")}</p>}>
      {lead ? (
        <Form
          action={saveIssuing}
          sections={[
            {
              title: null,
              each: null,
              fields: [
                {
                  ...field,
                  name: "secondReader",
                  label: t("secondFor"),
                  kind: "choice",
                  value: settings.secondReader,
                  choices: READERS.map((value) => ({ value, label: t(`secondReaders.${value}`) })),
                },
              ],
            },
            {
              title: t("namedRules"),
              each: null,
              fields: rules.map(({ id }) => ({
                ...field,
                name: `rule.${id}`,
                label: nameOf(id),
                kind: "flag" as const,
                value: settings.ruleIds.includes(id) ? "yes" : "",
              })),
            },
          ]}
          submit={t("saveSecond")}
          words={words}
        />
      ) : (
        <>
          <p>{t(`secondReaders.${settings.secondReader}`)}</p>
          {settings.secondReader === "rules" && <p>{settings.ruleIds.map(nameOf).join(", ")}</p>}
        </>
      )}
    </Row>
  );
}

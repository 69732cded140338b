import { adviceRoutes, standingOrderRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { ActButton } from "../../../../features/forms/ActButton.tsx";
import { Form } from "../../../../features/forms/Form.tsx";
import { frameWords } from "../../../../features/forms/words.ts";
import { Automatic } from "../../../../features/standingOrders/Automatic.tsx";
import { change, sign } from "../../../../features/standingOrders/actions.ts";
import { sectionsOf } from "../../../../features/standingOrders/form.ts";
import { seenOf } from "../../../../features/standingOrders/seen.ts";
import { Terms } from "../../../../features/standingOrders/Terms.tsx";
import { call } from "../../../../server/api.ts";
import { agentSeat } from "../../../../server/seat.ts";
import { readerZone } from "../../../../server/zone.ts";
import { Row } from "../../../../ui/Row.tsx";
import { Saved } from "../../../../ui/Saved.tsx";

interface Props {
  params: Promise<{ orderId: string }>;
  searchParams: Promise<Record<string, string>>;
}

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("standingOrders");
  return { title: t("one") };
}

/** One order: whether it issues, its limits, how to stop it, what it has issued, and signing it anew. */
export default async function StandingOrderPage({ params, searchParams }: Props) {
  const [{ officeId }, { orderId }, asked, zone, t, rules, words] = await Promise.all([
    agentSeat(),
    params,
    searchParams,
    readerZone(),
    getTranslations("standingOrders"),
    getTranslations("rules"),
    frameWords(),
  ]);
  const [{ orders }, { advisories }] = await Promise.all([
    call(standingOrderRoutes.listStandingOrders, { params: { officeId }, query: { ended: "yes" } }),
    call(adviceRoutes.listAdvisories, {
      params: { officeId },
      query: { standingOrderId: orderId, limit: 50 },
    }),
  ]);
  const order = orders.find(({ id }) => id === orderId);
  if (!order) notFound();
  const ended = order.state === "ended";
  const rule = order.ruleId as "irrigate";
  const seen = ended ? null : await seenOf(officeId, order.farmId, order.ruleId);
  // What it covers already can be chosen, whether or not it is filed.
  const codes = [...new Set([...order.terms.decisionCodes, ...(seen?.codes ?? [])])];
  const amounts = [...new Set([...Object.keys(order.terms.mostAmounts), ...(seen?.amounts ?? [])])];
  const act = (deed: Parameters<typeof change>[1], label: string) => (
    <ActButton action={change.bind(null, order.id, deed)} label={label} busy={t("working")} weight="quiet" />
  );
  return (
    <article>
      <p className="crumbs">
        <Link href="/standing-orders">{t("title")}</Link>
      </p>
      <Saved asked={asked} />
      <Row
        side={<p className="label">{t("one")}</p>}
        notes={<p className="faint">{t("version", { version: order.version, rule: order.ruleVersion })}</p>}
      >
        <p>
          <Link href={`/farms/${order.farmId}`}>{order.farmName}</Link>
        </p>
        <h1>{rules.has(rule) ? rules(rule) : rule}</h1>
        <p className="decision-under">
          <strong>{t(`states.${order.state}`)}.</strong> {t(`means.${order.state}`)}
        </p>
        <Terms order={order} />
        {!ended && (
          <div className="actions no-print">
            {order.state === "waiting" && !order.mine && act({ confirm: order.version }, t("confirm"))}
            {order.state === "paused"
              ? act({ pause: false }, t("goOnIssuing"))
              : act({ pause: true }, t("pause"))}
            {act("revoke", t("revoke"))}
          </div>
        )}
      </Row>
      <Row side={<h2>{t("issued")}</h2>} notes={<p>{t("takeBackHelp")}</p>}>
        {advisories.length === 0 ? (
          <p>{t("nothingIssued")}</p>
        ) : (
          <Automatic advisories={advisories} zone={zone} />
        )}
      </Row>
      {!ended && (
        <Row className="no-print" side={<h2>{t("signAnew")}</h2>} notes={<p>{t("signAnewHelp")}</p>}>
          <Form
            action={sign.bind(null, { orderId: order.id })}
            sections={await sectionsOf({ ruleId: order.ruleId, codes, amounts }, order.terms)}
            submit={t("sign")}
            words={words}
          />
        </Row>
      )}
    </article>
  );
}

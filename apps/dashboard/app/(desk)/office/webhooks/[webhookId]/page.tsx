import { webhookRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { notFound, redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { ActButton } from "../../../../../features/forms/ActButton.tsx";
import { removeWebhook, rotateSecret, sendTest, turn } from "../../../../../features/webhooks/actions.ts";
import { keyOf } from "../../../../../features/webhooks/events.ts";
import { NewSecret } from "../../../../../features/webhooks/NewSecret.tsx";
import { instantText } from "../../../../../format/dates.ts";
import { call } from "../../../../../server/api.ts";
import { agentSeat } from "../../../../../server/seat.ts";
import { readerZone } from "../../../../../server/zone.ts";
import { Row } from "../../../../../ui/Row.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("webhooks");
  return { title: t("one") };
}

/** One address: whether it is told, by which secret, and what came of the last attempts. */
export default async function WebhookPage({ params }: { params: Promise<{ webhookId: string }> }) {
  const [{ officeId, lead }, { webhookId }, zone, t] = await Promise.all([
    agentSeat(),
    params,
    readerZone(),
    getTranslations("webhooks"),
  ]);
  if (!lead) redirect("/office");
  const [{ webhooks }, { attempts }] = await Promise.all([
    call(webhookRoutes.listWebhooks, { params: { officeId } }),
    call(webhookRoutes.listWebhookAttempts, { params: { officeId, webhookId } }),
  ]);
  const webhook = webhooks.find((one) => one.id === webhookId);
  if (!webhook) notFound();
  const { url, events, disabledAt, failingSince, previousUntil } = webhook;
  return (
    <>
      <p className="crumbs">
        <Link href="/office/webhooks">{t("title")}</Link>
      </p>
      <Row>
        <h1 className="address">{url}</h1>
        <p className="decision-under">{events.map((event) => t(`event.${keyOf(event)}`)).join(" · ")}</p>
        {disabledAt !== null && (
          <p className="unknown">{t("off", { since: instantText(disabledAt, zone) })}</p>
        )}
        {disabledAt === null && failingSince !== null && (
          <p className="unknown">{t("failing", { since: instantText(failingSince, zone) })}</p>
        )}
        {previousUntil !== null && <p>{t("both", { until: instantText(previousUntil, zone) })}</p>}
        <div className="flow">
          {disabledAt === null && (
            <ActButton action={sendTest.bind(null, webhookId)} label={t("test")} busy={t("form.saving")} />
          )}
          <NewSecret rotate={rotateSecret.bind(null, webhookId)} words={t.raw("form" as never)} />
          <ActButton
            action={turn.bind(null, webhookId, disabledAt !== null)}
            label={t(disabledAt === null ? "turnOff" : "turnOn")}
            busy={t("form.saving")}
            weight="quiet"
          />
          <ActButton
            action={removeWebhook.bind(null, webhookId)}
            label={t("remove")}
            busy={t("form.saving")}
            weight="quiet"
          />
        </div>
      </Row>
      <Row side={<h2>{t("attempts")}</h2>} notes={<p>{t("attemptsHelp")}</p>}>
        {attempts.length === 0 ? (
          <p>{t("noAttempts")}</p>
        ) : (
          <table className="ruled">
            <thead>
              <tr>
                <th scope="col">{t("at")}</th>
                <th scope="col">{t("what")}</th>
                <th scope="col">{t("outcome")}</th>
              </tr>
            </thead>
            <tbody>
              {attempts.map((one) => (
                <tr key={`${one.messageId} ${one.at}`}>
                  <td>{instantText(one.at, zone)}</td>
                  <td>{t(`event.${keyOf(one.event)}`)}</td>
                  <td>
                    {one.outcome}
                    {one.status !== null && ` (${one.status})`}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
      </Row>
    </>
  );
}

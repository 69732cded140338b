import { webhookRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { AddForm } from "../../../../features/webhooks/AddForm.tsx";
import { addWebhook } from "../../../../features/webhooks/actions.ts";
import { keyOf } from "../../../../features/webhooks/events.ts";
import { instantText } from "../../../../format/dates.ts";
import { call } from "../../../../server/api.ts";
import { agentSeat } from "../../../../server/seat.ts";
import { readerZone } from "../../../../server/zone.ts";
import { Row } from "../../../../ui/Row.tsx";
import { ToOffice } from "../../../../ui/ToOffice.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("webhooks");
  return { title: t("title") };
}

/** Where the office's own systems are told of what happens. A lead's page. */
export default async function WebhooksPage() {
  const { officeId, officeName, lead } = await agentSeat();
  if (!lead) redirect("/office");
  const [zone, t, { offered, webhooks }] = await Promise.all([
    readerZone(),
    getTranslations("webhooks"),
    call(webhookRoutes.listWebhooks, { params: { officeId } }),
  ]);
  return (
    <>
      <ToOffice />
      <Row notes={<p>{t("help")}</p>}>
        <h1>{t("title")}</h1>
        <p className="decision-under">{t("under", { office: officeName })}</p>
        {webhooks.length === 0 ? (
          <p>{t("none")}</p>
        ) : (
          <ul className="listing">
            {webhooks.map((one) => (
              <li key={one.id}>
                <Link className="tap address" href={`/office/webhooks/${one.id}`}>
                  {one.url}
                </Link>
                <p className="faint">{one.events.map((event) => t(`event.${keyOf(event)}`)).join(" · ")}</p>
                {one.disabledAt !== null && (
                  <p className="unknown">{t("off", { since: instantText(one.disabledAt, zone) })}</p>
                )}
                {one.disabledAt === null && one.failingSince !== null && (
                  <p className="unknown">{t("failing", { since: instantText(one.failingSince, zone) })}</p>
                )}
              </li>
            ))}
          </ul>
        )}
      </Row>
      <Row side={<h2>{t("more")}</h2>}>
        {offered ? (
          <AddForm
            action={addWebhook}
            words={{ ...t.raw("form" as never), event: t.raw("event" as never) }}
          />
        ) : (
          <p>{t("notOffered")}</p>
        )}
      </Row>
    </>
  );
}

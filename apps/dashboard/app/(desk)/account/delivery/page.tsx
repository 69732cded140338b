import { calendarRoutes, type DeliverySettings, deliveryRoutes, farmRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import {
  addBrowser,
  makeCalendar,
  removeBrowser,
  saveWishes,
  stopCalendar,
} from "../../../../features/delivery/actions.ts";
import { CalendarLink } from "../../../../features/delivery/CalendarLink.tsx";
import { ThisBrowser } from "../../../../features/delivery/ThisBrowser.tsx";
import { WishesForm } from "../../../../features/delivery/WishesForm.tsx";
import { ActButton } from "../../../../features/forms/ActButton.tsx";
import { instantText } from "../../../../format/dates.ts";
import { call } from "../../../../server/api.ts";
import { seat } from "../../../../server/seat.ts";
import { readerZone } from "../../../../server/zone.ts";
import { Row } from "../../../../ui/Row.tsx";
import { Saved } from "../../../../ui/Saved.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("delivery");
  return { title: t("title") };
}

/** How one is told: by which way and when, on which phones, and as a calendar of each farm. */
export default async function DeliveryPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string>>;
}) {
  const mine = await seat();
  if (!mine) redirect("/");
  const { officeId, officeName, role } = mine;
  const [asked, zone, t, account, settings, { farms }] = await Promise.all([
    searchParams,
    readerZone(),
    getTranslations("delivery"),
    getTranslations("account"),
    call(deliveryRoutes.getDelivery, { params: { officeId } }),
    call(farmRoutes.listFarms, { params: { officeId } }),
  ]);
  const links = await Promise.all(
    farms.map(async (farm) => ({
      farm,
      ...(await call(calendarRoutes.getCalendarLink, { params: { officeId, farmId: farm.id } })),
    })),
  );
  const { offered, browsers, sent } = settings;
  return (
    <>
      <p className="crumbs">
        <Link href="/account">{account("title")}</Link>
      </p>
      <Saved asked={asked} />
      <Row notes={<p>{t("help")}</p>}>
        <h1>{t("title")}</h1>
        <p className="decision-under">
          {t(role === "agent" ? "underAgent" : "under", { office: officeName })}
        </p>
        <WishesForm action={saveWishes} settings={settings} words={await wishesWords(settings)} />
      </Row>
      {offered.pushKey && (
        <Row id="browsers" side={<h2>{t("browsers")}</h2>}>
          <ThisBrowser
            pushKey={offered.pushKey}
            told={browsers.map((one) => one.endpointSha256)}
            add={addBrowser}
            words={t.raw("here" as never)}
          />
          <ul className="listing">
            {browsers.map((one) => (
              <li key={one.id}>
                <p>
                  {t("browser", { service: one.service })}{" "}
                  <span className="faint">{instantText(one.addedAt, zone)}</span>
                </p>
                <ActButton
                  action={removeBrowser.bind(null, one.id)}
                  label={t("removeBrowser")}
                  busy={t("form.saving")}
                  weight="quiet"
                />
              </li>
            ))}
          </ul>
        </Row>
      )}
      <Row id="calendars" side={<h2>{t("calendar.title")}</h2>} notes={<p>{t("calendar.help")}</p>}>
        <ul className="listing">
          {links.map(({ farm, link }) => (
            <li key={farm.id} className="flow">
              <p>
                {farm.name}{" "}
                <span className="faint">
                  {link === null
                    ? t("calendar.none")
                    : t(link.lastUsedAt ? "calendar.asked" : "calendar.notAsked", {
                        made: instantText(link.madeAt, zone),
                        asked: link.lastUsedAt ? instantText(link.lastUsedAt, zone) : "",
                      })}
                </span>
              </p>
              <CalendarLink
                make={makeCalendar.bind(null, farm.id)}
                again={link !== null}
                words={{ ...t.raw("calendar" as never), ...t.raw("once" as never) }}
              />
              {link !== null && (
                <ActButton
                  action={stopCalendar.bind(null, farm.id)}
                  label={t("calendar.stop")}
                  busy={t("form.saving")}
                  weight="quiet"
                />
              )}
            </li>
          ))}
        </ul>
      </Row>
      {sent.length > 0 && (
        <Row side={<h2>{t("sent")}</h2>}>
          <table className="ruled">
            <thead>
              <tr>
                <th scope="col">{t("due")}</th>
                <th scope="col">{t("way")}</th>
                <th scope="col">{t("outcome")}</th>
              </tr>
            </thead>
            <tbody>
              {sent.map((one) => (
                <tr key={`${one.advisoryId} ${one.channel} ${one.about}`}>
                  <td>
                    <Link
                      href={`/${role === "agent" ? "issued" : "today"}/${one.advisoryId}`}
                      prefetch={false}
                    >
                      {instantText(one.dueAt, zone)}
                    </Link>
                  </td>
                  <td>{t(`form.${one.channel}`)}</td>
                  <td>{one.state === "waiting" && one.outcome === null ? t("waits") : one.outcome}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Row>
      )}
    </>
  );
}

/** Hints say what is set up here; the rest are the form's labels. */
async function wishesWords({ offered, mailTo }: DeliverySettings) {
  const t = await getTranslations("delivery");
  return {
    ...t.raw("form" as never),
    mailHint: offered.mail ? t("mailHint", { address: mailTo ?? "" }) : t("mailNone"),
    pushHint: offered.pushKey ? t("pushHint") : t("pushNone"),
  };
}

import { farmRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { call } from "../../../server/api.ts";
import { agentSeat } from "../../../server/seat.ts";
import { Row } from "../../../ui/Row.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("farms");
  return { title: t("title") };
}

/** The client farms, with what is open at each. */
export default async function FarmsPage() {
  const [{ officeId }, t] = await Promise.all([agentSeat(), getTranslations("farms")]);
  const { farms } = await call(farmRoutes.listFarms, { params: { officeId } });
  return (
    <>
      <Row>
        <h1>{t("title")}</h1>
        <p className="actions">
          <Link className="tap" href="/farms/new">
            {t("add")}
          </Link>
        </p>
      </Row>
      <Row wide>
        {farms.length === 0 ? (
          <p>{t("empty")}</p>
        ) : (
          <table className="ruled">
            <caption className="unseen">{t("title")}</caption>
            <thead>
              <tr>
                <th scope="col">{t("farm")}</th>
                <th scope="col">{t("contact")}</th>
                <th scope="col" className="value">
                  {t("plantings")}
                </th>
                <th scope="col" className="value">
                  {t("open")}
                </th>
                <th scope="col" className="value">
                  {t("unanswered")}
                </th>
              </tr>
            </thead>
            <tbody>
              {farms.map((farm) => (
                <tr key={farm.id}>
                  <th scope="row" className="listing-head">
                    <Link href={`/farms/${farm.id}`}>{farm.name}</Link>
                  </th>
                  <td className="full">{[farm.contactName, farm.phone].filter(Boolean).join(", ")}</td>
                  <td className="value" data-head={t("plantings")}>
                    {farm.plantings}
                  </td>
                  <td className="value" data-head={t("open")}>
                    <Link
                      href={`/round?farm=${farm.id}`}
                      aria-label={t("openOf", { count: farm.openDrafts, farm: farm.name })}
                    >
                      {farm.openDrafts}
                    </Link>
                  </td>
                  <td className="value" data-head={t("unanswered")}>
                    {farm.unanswered}
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

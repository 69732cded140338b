import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { OFFICE_PAGES } from "../../../features/office/pages.ts";
import { agentSeat } from "../../../server/seat.ts";
import { Row } from "../../../ui/Row.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("office");
  return { title: t("title") };
}

/** The office's own affairs, each with what is done there. */
export default async function OfficeHome() {
  const [{ officeName, lead }, t] = await Promise.all([agentSeat(), getTranslations("office")]);
  return (
    <Row>
      <h1>{t("title")}</h1>
      <p className="decision-under">{officeName}</p>
      <ul className="listing">
        {OFFICE_PAGES.filter((page) => lead || !page.lead).map(({ key, href }) => (
          <li key={key}>
            <Link className="tap" href={href}>
              {t(`pages.${key}.name`)}
            </Link>
            <p className="faint">{t(`pages.${key}.what`)}</p>
          </li>
        ))}
      </ul>
    </Row>
  );
}

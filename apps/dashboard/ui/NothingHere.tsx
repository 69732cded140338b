import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { Row } from "./Row.tsx";

export async function NothingHere() {
  const t = await getTranslations("site");
  return (
    <Row>
      <title>{`${t("notFound")} · Pith`}</title>
      <h1>{t("notFound")}</h1>
      <p className="decision-under">{t("notFoundHelp")}</p>
      <Link className="tap" href="/">
        {t("home")}
      </Link>
    </Row>
  );
}

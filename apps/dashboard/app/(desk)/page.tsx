import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { homeOf, seat } from "../../server/seat.ts";
import { Row } from "../../ui/Row.tsx";

/** Leads everybody to their own first page. */
export default async function Home() {
  const mine = await seat();
  if (mine) redirect(homeOf(mine.role));
  const t = await getTranslations("site");
  return (
    <Row>
      <h1>{t("noOffice")}</h1>
      <p>{t("noOfficeHelp")}</p>
    </Row>
  );
}

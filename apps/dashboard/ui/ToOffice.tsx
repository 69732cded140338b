import Link from "next/link";
import { getTranslations } from "next-intl/server";

/** The way back from a page of the office to the list of them. */
export async function ToOffice() {
  const t = await getTranslations("office");
  return (
    <p className="crumbs">
      <Link href="/office">{t("title")}</Link>
    </p>
  );
}

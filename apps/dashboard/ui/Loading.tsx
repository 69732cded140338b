import { getTranslations } from "next-intl/server";

/** Shown while a page is fetched. The day and the round come whole instead: they are what a slow phone opens first. */
export async function Loading() {
  const t = await getTranslations("site");
  return (
    <p className="faint" role="status">
      {t("loading")}
    </p>
  );
}

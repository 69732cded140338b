import { getTranslations } from "next-intl/server";

export default async function Loading() {
  const t = await getTranslations("site");
  return (
    <p className="faint" role="status">
      {t("loading")}
    </p>
  );
}

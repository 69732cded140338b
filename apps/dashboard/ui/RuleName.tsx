import { getTranslations } from "next-intl/server";

/** A rule by the name that people call it. */
export async function RuleName({ id }: { id: string }) {
  const t = await getTranslations("rules");
  const key = id as "irrigate";
  return <span className="label">{t.has(key) ? t(key) : id}</span>;
}

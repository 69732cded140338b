import { getTranslations } from "next-intl/server";

/** Says what was just done, where an action led back to a page. */
export async function Saved({ asked }: { asked: Record<string, string | undefined> }) {
  const t = await getTranslations("saved");
  const key = Object.entries(asked)
    .map(([verb, what]) => `${verb}.${what}` as "saved.farms")
    .find((k) => /^(saved|taken-back|not-taken-back)\./.test(k) && t.has(k));
  if (!key) return null;
  return (
    <p className="notice" role="status">
      {t(key)}
    </p>
  );
}

import type { Metadata } from "next";
import { getTranslations } from "next-intl/server";
import { JoinDesk } from "../../features/session/JoinDesk.tsx";
import { WayIn } from "../../features/session/WayIn.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("join");
  return { title: t("title") };
}

/** Where an invitation's link leads. */
export default async function JoinPage() {
  const t = await getTranslations("join");
  const keys = ["reading", "gone", "name", "password", "passwordHint", "submit", "busy", "signIn"] as const;
  const roles = ["lead", "agent", "farmer", "reader"] as const;
  const words = Object.fromEntries([...keys, ...roles].map((key) => [key, t(key)])) as Record<
    (typeof keys)[number] | (typeof roles)[number],
    string
  >;
  return (
    <WayIn title={t("title")} notes={<p>{t("notes")}</p>}>
      <JoinDesk words={words} asked={t.raw("asked") as string} farms={t.raw("farms") as string} />
    </WayIn>
  );
}

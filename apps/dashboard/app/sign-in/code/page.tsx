import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { takeCode } from "../../../features/session/actions.ts";
import { LineForm } from "../../../features/session/LineForm.tsx";
import { WayIn } from "../../../features/session/WayIn.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("signIn");
  return { title: t("codeTitle") };
}

/** The second step: six digits of the app, or a code kept on paper. */
export default async function CodePage({ searchParams }: { searchParams: Promise<{ next?: string }> }) {
  const [{ next = "/" }, t] = await Promise.all([searchParams, getTranslations("signIn")]);
  return (
    <WayIn title={t("codeTitle")} notes={<p>{t("codeNotes")}</p>}>
      <LineForm
        action={takeCode.bind(null, next)}
        lines={[
          { name: "code", label: t("code"), type: "code", hint: t("codeHint") },
          { name: "remember", label: t("rememberBrowser"), type: "flag" },
        ]}
        submit={t("submit")}
        busy={t("busy")}
        beside={<Link href="/sign-in">{t("again")}</Link>}
      />
    </WayIn>
  );
}

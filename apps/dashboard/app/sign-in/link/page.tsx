import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { openLink } from "../../../features/session/actions.ts";
import { LineForm } from "../../../features/session/LineForm.tsx";
import { WayIn } from "../../../features/session/WayIn.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("signIn");
  return { title: t("openTitle") };
}

/** Where a letter's link leads. One press more: a filter that opens every link must not use it up. */
export default async function OpenLinkPage() {
  const t = await getTranslations("signIn");
  return (
    <WayIn title={t("openTitle")}>
      <p>{t("openAbout")}</p>
      <LineForm
        action={openLink}
        lines={[]}
        withToken
        submit={t("open")}
        busy={t("busy")}
        after={<Link href="/sign-in">{t("title")}</Link>}
      />
    </WayIn>
  );
}

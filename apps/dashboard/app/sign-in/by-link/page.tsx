import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { askForLetter } from "../../../features/session/actions.ts";
import { LineForm } from "../../../features/session/LineForm.tsx";
import { WayIn } from "../../../features/session/WayIn.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("signIn");
  return { title: t("linkTitle") };
}

export default async function ByLinkPage() {
  const t = await getTranslations("signIn");
  return (
    <WayIn title={t("linkTitle")} notes={<p>{t("letterNotes")}</p>}>
      <p>{t("linkAbout")}</p>
      <LineForm
        action={askForLetter.bind(null, "link")}
        lines={[{ name: "email", label: t("email"), type: "email", autoComplete: "username" }]}
        submit={t("sendLetter")}
        busy={t("sending")}
        beside={<Link href="/sign-in">{t("withPassword")}</Link>}
      />
    </WayIn>
  );
}

import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { confirmEmail } from "../../../features/session/actions.ts";
import { LineForm } from "../../../features/session/LineForm.tsx";
import { WayIn } from "../../../features/session/WayIn.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("signIn");
  return { title: t("confirmTitle") };
}

/** Where a letter's link leads. One press more: a filter that opens every link must not use it up. */
export default async function ConfirmPage() {
  const t = await getTranslations("signIn");
  return (
    <WayIn title={t("confirmTitle")}>
      <p>{t("confirmAbout")}</p>
      <LineForm
        action={confirmEmail}
        lines={[]}
        withToken
        submit={t("confirm")}
        busy={t("busy")}
        after={<Link href="/sign-in">{t("title")}</Link>}
      />
    </WayIn>
  );
}

import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { setPassword } from "../../../features/session/actions.ts";
import { LineForm } from "../../../features/session/LineForm.tsx";
import { WayIn } from "../../../features/session/WayIn.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("signIn");
  return { title: t("newPasswordTitle") };
}

export default async function NewPasswordPage() {
  const t = await getTranslations("signIn");
  return (
    <WayIn title={t("newPasswordTitle")} notes={<p>{t("newPasswordNotes")}</p>}>
      <LineForm
        action={setPassword}
        lines={[
          {
            name: "newPassword",
            label: t("newPassword"),
            type: "password",
            autoComplete: "new-password",
            hint: t("passwordHint"),
          },
        ]}
        withToken
        submit={t("keepPassword")}
        busy={t("busy")}
        after={<Link href="/sign-in">{t("title")}</Link>}
      />
    </WayIn>
  );
}

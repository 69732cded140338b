import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { signIn } from "../../features/session/actions.ts";
import { LineForm } from "../../features/session/LineForm.tsx";
import { WayIn } from "../../features/session/WayIn.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("signIn");
  return { title: t("title") };
}

export default async function SignInPage({ searchParams }: { searchParams: Promise<{ next?: string }> }) {
  const [{ next = "/" }, t] = await Promise.all([searchParams, getTranslations("signIn")]);
  return (
    <WayIn title={t("title")} notes={<p>{t("about")}</p>}>
      <LineForm
        action={signIn.bind(null, next)}
        lines={[
          { name: "email", label: t("email"), type: "email", autoComplete: "username" },
          { name: "password", label: t("password"), type: "password", autoComplete: "current-password" },
        ]}
        submit={t("submit")}
        busy={t("busy")}
      />
      <ul className="listing">
        <li>
          <Link className="tap" href="/sign-in/by-link">
            {t("byLink")}
          </Link>
        </li>
        <li>
          <Link className="tap" href="/sign-in/forgotten">
            {t("forgotten")}
          </Link>
        </li>
      </ul>
    </WayIn>
  );
}

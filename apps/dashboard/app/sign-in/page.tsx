import type { Metadata } from "next";
import { getTranslations } from "next-intl/server";
import { signIn } from "../../features/session/actions.ts";
import { SignInForm } from "../../features/session/SignInForm.tsx";
import { Colophon } from "../../ui/Colophon.tsx";
import { Masthead } from "../../ui/Masthead.tsx";
import { Row } from "../../ui/Row.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("signIn");
  return { title: t("title") };
}

export default async function SignInPage({ searchParams }: { searchParams: Promise<{ next?: string }> }) {
  const [{ next = "/" }, t] = await Promise.all([searchParams, getTranslations("signIn")]);
  return (
    <>
      <Masthead seat={null} />
      <main id="main">
        <Row notes={<p>{t("about")}</p>}>
          <h1>{t("title")}</h1>
          <SignInForm
            action={signIn.bind(null, next)}
            words={{ email: t("email"), password: t("password"), submit: t("submit"), busy: t("busy") }}
          />
        </Row>
      </main>
      <Colophon seat={null} />
    </>
  );
}

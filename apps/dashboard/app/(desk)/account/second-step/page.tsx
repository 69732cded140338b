import { openRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { BeginSecondStep } from "../../../../features/account/SecondStep.tsx";
import { secondStepWords } from "../../../../features/account/words.ts";
import { call } from "../../../../server/api.ts";
import { seat } from "../../../../server/seat.ts";
import { Row } from "../../../../ui/Row.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("account.secondStep");
  return { title: t("title") };
}

/** Sets up the second step. Where an office asks it of its staff, this is all they see until it is done. */
export default async function SecondStepPage() {
  const [{ user }, mine, t, account, words] = await Promise.all([
    call(openRoutes.me, {}),
    seat(),
    getTranslations("account.secondStep"),
    getTranslations("account"),
    secondStepWords(),
  ]);
  if (user.secondStep) redirect("/account");
  return (
    <>
      {!mine?.needsSecondStep && (
        <p className="crumbs">
          <Link href="/account">{account("title")}</Link>
        </p>
      )}
      <Row notes={<p>{t("notes")}</p>}>
        <h1>{t("title")}</h1>
        <p className="decision-under">
          {mine?.needsSecondStep ? t("asked", { office: mine.officeName }) : t("what")}
        </p>
        <BeginSecondStep words={words} />
      </Row>
    </>
  );
}

import { farmRoutes } from "@pith/contract";
import { rules } from "@pith/rules";
import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { Form } from "../../../../features/forms/Form.tsx";
import { frameWords } from "../../../../features/forms/words.ts";
import { sign } from "../../../../features/standingOrders/actions.ts";
import { sectionsOf } from "../../../../features/standingOrders/form.ts";
import { seenOf } from "../../../../features/standingOrders/seen.ts";
import { call } from "../../../../server/api.ts";
import { agentSeat } from "../../../../server/seat.ts";
import { Row } from "../../../../ui/Row.tsx";
import { RuleName } from "../../../../ui/RuleName.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("standingOrders");
  return { title: t("new") };
}

/** The terms of a new order, for the rule and farm that were chosen. */
export default async function NewOrderPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string>>;
}) {
  const [{ officeId }, asked, t, words] = await Promise.all([
    agentSeat(),
    searchParams,
    getTranslations("standingOrders"),
    frameWords(),
  ]);
  const { farm: farmId = "", rule: ruleId = "" } = asked;
  if (!rules.some(({ id }) => id === ruleId)) notFound();
  const [{ farm }, seen] = await Promise.all([
    call(farmRoutes.getFarm, { params: { officeId, farmId } }),
    seenOf(officeId, farmId, ruleId),
  ]);
  return (
    <>
      <p className="crumbs">
        <Link href="/standing-orders">{t("title")}</Link>
      </p>
      <Row notes={<p>{t("signHelp")}</p>}>
        <p>
          <RuleName id={ruleId} /> · {farm.name}
        </p>
        <h1>{t("new")}</h1>
        <Form
          action={sign.bind(null, { farmId, ruleId })}
          sections={await sectionsOf({ ruleId, ...seen }, null)}
          submit={t("sign")}
          cancel={{ href: "/standing-orders", label: t("leave") }}
          words={words}
        />
      </Row>
    </>
  );
}

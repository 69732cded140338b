import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { addOwnSource } from "../../../../features/evidence/actions.ts";
import { ownSourcePlan, ownSourceSchema } from "../../../../features/evidence/plan.ts";
import { Form } from "../../../../features/forms/Form.tsx";
import { viewOf } from "../../../../features/forms/view.ts";
import { formWords, frameWords } from "../../../../features/forms/words.ts";
import { agentSeat } from "../../../../server/seat.ts";
import { Row } from "../../../../ui/Row.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("evidence.own");
  return { title: t("add") };
}

/** Takes evidence of the office's own, with the particulars that the published has. */
export default async function NewSourcePage() {
  await agentSeat();
  const [t, te, plan, words, frame] = await Promise.all([
    getTranslations("evidence.own"),
    getTranslations("evidence"),
    ownSourcePlan(),
    formWords("ownEvidence"),
    frameWords(),
  ]);
  return (
    <>
      <p className="crumbs">
        <Link href="/evidence">{te("title")}</Link>
      </p>
      <Row notes={<p>{t("help")}</p>}>
        <h1>{t("add")}</h1>
        <Form
          action={addOwnSource}
          sections={viewOf(plan, ownSourceSchema, {}, "metric", words)}
          submit={t("save")}
          cancel={{ href: "/evidence", label: t("cancel") }}
          words={frame}
        />
      </Row>
    </>
  );
}

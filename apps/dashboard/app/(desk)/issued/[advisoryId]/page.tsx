import { adviceRoutes, farmRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { AdviceBody } from "../../../../features/advice/AdviceBody.tsx";
import { AnswerGiven } from "../../../../features/advice/AnswerGiven.tsx";
import { withdraw } from "../../../../features/advice/actions.ts";
import { LedgerMark } from "../../../../features/advice/LedgerMark.tsx";
import { readerOf } from "../../../../features/advice/reader.ts";
import { Form } from "../../../../features/forms/Form.tsx";
import { frameWords } from "../../../../features/forms/words.ts";
import { instantText } from "../../../../format/dates.ts";
import { call } from "../../../../server/api.ts";
import { agentSeat } from "../../../../server/seat.ts";
import { readerZone } from "../../../../server/zone.ts";
import { Cautions } from "../../../../ui/Cautions.tsx";
import { Row } from "../../../../ui/Row.tsx";
import { RuleName } from "../../../../ui/RuleName.tsx";
import { Saved } from "../../../../ui/Saved.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("advice");
  return { title: t("issued") };
}

interface Props {
  params: Promise<{ advisoryId: string }>;
  searchParams: Promise<Record<string, string>>;
}

/** What was issued, as it was issued, and what became of it. */
export default async function IssuedPage({ params, searchParams }: Props) {
  const [{ officeId }, { advisoryId }, asked, zone, t, orders, words] = await Promise.all([
    agentSeat(),
    params,
    searchParams,
    readerZone(),
    getTranslations("advice"),
    getTranslations("standingOrders"),
    frameWords(),
  ]);
  const advisory = await call(adviceRoutes.getAdvisory, { params: { officeId, advisoryId } });
  const farm = await call(farmRoutes.getFarm, { params: { officeId, farmId: advisory.farmId } });
  const { said, status } = advisory;
  const standing = ["issued", "read", "expired"].includes(status);

  return (
    <article>
      <p className="crumbs">
        <Link href="/round">{t("backToRound")}</Link>
      </p>
      <Saved asked={asked} />
      <Row
        side={
          <>
            <p>
              <RuleName id={advisory.ruleId} />
            </p>
            <p className="faint small">{t(`statuses.${status}`)}</p>
          </>
        }
        notes={
          <>
            <p>
              {advisory.standingOrder
                ? orders("issuedBy", { name: advisory.issuedBy, when: instantText(advisory.issuedAt, zone) })
                : t("issuedBy", { name: advisory.issuedBy, when: instantText(advisory.issuedAt, zone) })}
            </p>
            {advisory.standingOrder && (
              <p>
                <Link href={`/standing-orders/${advisory.standingOrder.id}`} prefetch={false}>
                  {orders("seeOrder", { version: advisory.standingOrder.version })}
                </Link>
              </p>
            )}
            {advisory.confirmedBy && <p>{t("confirmedBy", { name: advisory.confirmedBy })}</p>}
            {advisory.supersededBy && (
              <p>
                <Link href={`/issued/${advisory.supersededBy}`} prefetch={false}>
                  {t("seeLater")}
                </Link>
              </p>
            )}
            <p className="no-print">
              <a className="tap" href={`/issued/${advisory.id}/advice.pdf`}>
                {t("pdf")}
              </a>
            </p>
            <LedgerMark advisory={advisory} />
          </>
        }
      >
        <p>
          {advisory.subjectName} · <Link href={`/farms/${advisory.farmId}`}>{advisory.farmName}</Link>
        </p>
        <h1 className="decision">{said.decision}</h1>
        {said.window && <p className="decision-under">{said.window}</p>}
        <Cautions cautions={said.cautions} />
        {advisory.note && (
          <p>
            <span className="label">{t("noteFrom", { name: advisory.issuedBy })}</span> {advisory.note}
          </p>
        )}
      </Row>
      <Row id="answer" side={<h2>{t("answer")}</h2>}>
        <AnswerGiven advisory={advisory} farm={farm} zone={zone} />
        {advisory.withdrawnReason && (
          <p>
            <span className="label">{t("withdrawnBecause")}</span> {advisory.withdrawnReason}
          </p>
        )}
      </Row>
      <AdviceBody answer={advisory.answerOfRule} said={said} reader={readerOf(farm, said.units)} />
      {standing && (
        <Row className="no-print" side={<h2>{t("withdraw")}</h2>} notes={<p>{t("withdrawHelp")}</p>}>
          <Form
            action={withdraw.bind(null, advisory.id)}
            sections={[
              {
                title: null,
                each: null,
                fields: [
                  {
                    name: "reason",
                    label: t("withdrawReason"),
                    kind: "long",
                    unit: null,
                    hint: null,
                    required: true,
                    value: "",
                    choices: [],
                  },
                ],
              },
            ]}
            submit={t("withdrawNow")}
            words={words}
          />
        </Row>
      )}
    </article>
  );
}

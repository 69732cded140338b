import { adviceRoutes, farmRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { AnswerGiven } from "../../../../features/advice/AnswerGiven.tsx";
import { FieldTables } from "../../../../features/advice/FieldTables.tsx";
import { LedgerMark } from "../../../../features/advice/LedgerMark.tsx";
import { readerOf } from "../../../../features/advice/reader.ts";
import { SlipBody } from "../../../../features/advice/Slip.tsx";
import { AnswerDesk } from "../../../../features/answer/AnswerDesk.tsx";
import { MarkRead } from "../../../../features/answer/MarkRead.tsx";
import { instantText } from "../../../../format/dates.ts";
import { call } from "../../../../server/api.ts";
import { farmerSeat, whoOf } from "../../../../server/seat.ts";
import { readerZone } from "../../../../server/zone.ts";
import { Row } from "../../../../ui/Row.tsx";
import { Saved } from "../../../../ui/Saved.tsx";

interface Props {
  params: Promise<{ advisoryId: string }>;
  searchParams: Promise<Record<string, string>>;
}

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("today");
  return { title: t("one") };
}

/** One advice for the farmer: what, by when, be careful of, how; then what they did about it. */
export default async function AdvisoryPage({ params, searchParams }: Props) {
  const [mine, { advisoryId }, asked, zone, t] = await Promise.all([
    farmerSeat(),
    params,
    searchParams,
    readerZone(),
    getTranslations("today"),
  ]);
  const { officeId, mayWrite } = mine;
  const advisory = await call(adviceRoutes.getAdvisory, { params: { officeId, advisoryId } });
  const farm = await call(farmRoutes.getFarm, { params: { officeId, farmId: advisory.farmId } });
  const { said, status, answer } = advisory;
  const gone = status === "withdrawn" || status === "superseded";
  return (
    <article>
      <p className="crumbs">
        <Link href="/today">{t("back")}</Link>
      </p>
      <Saved asked={asked} />
      {mayWrite && status === "issued" && <MarkRead advisoryId={advisory.id} />}
      <Row
        notes={
          <>
            <p>
              {t(advisory.standingOrder ? "fromOrder" : "from", {
                name: advisory.issuedBy,
                when: instantText(advisory.issuedAt, zone),
              })}
            </p>
            <p className="no-print">
              <a className="tap" href={`/today/${advisory.id}/advice.pdf`}>
                {t("pdf")}
              </a>
            </p>
            <LedgerMark advisory={advisory} />
          </>
        }
      >
        {gone && (
          <p className="refusal">
            {t(status)} {advisory.withdrawnReason}
            {advisory.supersededBy && (
              <Link href={`/today/${advisory.supersededBy}`} prefetch={false}>
                {t("seeLater")}
              </Link>
            )}
          </p>
        )}
        {status === "expired" && <p className="refusal">{t("expired")}</p>}
        <p className="faint">{advisory.subjectName}</p>
        <h1 className="decision">{said.decision}</h1>
        <SlipBody
          said={said}
          note={
            advisory.note && (
              <p>
                <span className="label">{t("note", { name: advisory.issuedBy })}</span> {advisory.note}
              </p>
            )
          }
        />
      </Row>
      <FieldTables answer={advisory.answerOfRule} reader={readerOf(farm, said.units)} />
      {answer && (
        <Row side={<h2>{t("yourAnswer")}</h2>}>
          <AnswerGiven advisory={advisory} farm={farm} zone={zone} />
        </Row>
      )}
      {mayWrite && !gone && (
        <Row className="no-print" side={<h2>{answer ? t("correct") : t("whatHappened")}</h2>}>
          <AnswerDesk advisory={advisory} farm={farm} who={whoOf(mine)} />
        </Row>
      )}
      {said.wouldChange.length > 0 && (
        <Row side={<h2>{t("tellUs")}</h2>}>
          <ul className="listing">
            {said.wouldChange.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
        </Row>
      )}
    </article>
  );
}

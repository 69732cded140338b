import { farmRoutes, trialRoutes } from "@pith/contract";
import { localDay, type Reader, rules } from "@pith/rules";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { AdviceBody } from "../../../../../../features/advice/AdviceBody.tsx";
import { readerOf } from "../../../../../../features/advice/reader.ts";
import { ActButton } from "../../../../../../features/forms/ActButton.tsx";
import { changeTrial, removeTrial, trialToEvidence } from "../../../../../../features/trials/actions.ts";
import { Layout } from "../../../../../../features/trials/Layout.tsx";
import { NumbersOf } from "../../../../../../features/trials/NumbersOf.tsx";
import { ToEvidence } from "../../../../../../features/trials/ToEvidence.tsx";
import { namedPlots } from "../../../../../../features/trials/treatments.ts";
import { dayText } from "../../../../../../format/dates.ts";
import { call } from "../../../../../../server/api.ts";
import { agentSeat } from "../../../../../../server/seat.ts";
import { Cautions } from "../../../../../../ui/Cautions.tsx";
import { PrintButton } from "../../../../../../ui/PrintButton.tsx";
import { Row } from "../../../../../../ui/Row.tsx";
import { Saved } from "../../../../../../ui/Saved.tsx";

interface Props {
  params: Promise<{ farmId: string; trialId: string }>;
  searchParams: Promise<Record<string, string>>;
}

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("trials");
  return { title: t("one") };
}

/** One trial from its layout to the sentence that a grower can repeat. */
export default async function TrialPage({ params, searchParams }: Props) {
  const [{ officeId }, { farmId, trialId }, asked, t, names] = await Promise.all([
    agentSeat(),
    params,
    searchParams,
    getTranslations("trials"),
    getTranslations("rules"),
  ]);
  const [detail, read] = await Promise.all([
    call(farmRoutes.getFarm, { params: { officeId, farmId } }),
    call(trialRoutes.getTrial, { params: { officeId, farmId, trialId } }),
  ]);
  const { trial, values, answer, said } = read;
  const target = { farmId, trialId };
  const zone = detail.sites.find((site) => site.id === trial.siteId)?.timeZone ?? "UTC";
  const today = localDay(new Date().toISOString(), zone);
  const analysed = answer.kind === "advice" && /differ|none-seen/.test(answer.decision.code);
  return (
    <>
      <p className="crumbs">
        <Link href={`/farms/${farmId}`}>{detail.farm.name}</Link>,{" "}
        <Link href={`/farms/${farmId}/trials`}>{t("title")}</Link>
      </p>
      <Saved asked={asked} />
      <Row
        notes={
          <dl className="facts">
            <dt>{t("form.design")}</dt>
            <dd>{t(`designs.${trial.design}`)}</dd>
            <dt>{t("seed")}</dt>
            <dd>{trial.seed}</dd>
            <dt>{t("began")}</dt>
            <dd>{trial.startedOn ? dayText(trial.startedOn) : t("notYet")}</dd>
            <dt>{t("ended")}</dt>
            <dd>{trial.endedOn ? dayText(trial.endedOn) : t("notYet")}</dd>
          </dl>
        }
      >
        <h1>{trial.name}</h1>
        <p className="decision">{said.decision}</p>
        <Cautions cautions={said.cautions} />
        <div className="actions no-print">
          {trial.startedOn === null && (
            <ActButton
              action={changeTrial.bind(null, target, { startedOn: today })}
              label={t("begin")}
              busy={t("keeping")}
            />
          )}
          {trial.startedOn !== null && trial.endedOn === null && (
            <ActButton
              action={changeTrial.bind(null, target, { endedOn: today })}
              label={t("end")}
              busy={t("keeping")}
              weight="quiet"
            />
          )}
          {trial.startedOn === null && values.length === 0 && (
            <>
              <ActButton
                action={changeTrial.bind(null, target, { draw: true })}
                label={t("drawAgain")}
                busy={t("keeping")}
                weight="quiet"
              />
              <ActButton
                action={removeTrial.bind(null, target)}
                label={t("remove")}
                busy={t("keeping")}
                weight="quiet"
              />
            </>
          )}
          <Link className="tap" href={`/farms/${farmId}/trials/${trialId}/labels`}>
            {t("labels")}
          </Link>
          <PrintButton label={t("print")} />
        </div>
      </Row>
      <Row id="layout" side={<h2>{t("layout")}</h2>} wide>
        <Layout plots={namedPlots(trial)} detail={detail} />
      </Row>
      <Row id="numbers" side={<h2>{t("numbers")}</h2>} className="no-print">
        <NumbersOf read={read} detail={detail} />
      </Row>
      <AdviceBody answer={answer} said={said} reader={readerWith(readerOf(detail), trial.factors)} />
      {analysed && (
        <Row id="evidence" side={<h2>{t("evidence")}</h2>}>
          <ToEvidence
            action={trialToEvidence.bind(null, target)}
            rules={rules.map(({ id }) => ({ id, label: names(id as "irrigate") }))}
            words={{ about: t("about"), put: t("put"), busy: t("keeping") }}
          />
        </Row>
      )}
    </>
  );
}

/** Treatments by the names their people gave them. */
function readerWith(
  reader: Reader,
  factors: { id: string; name: string; levels: { id: string; name: string }[] }[],
): Reader {
  const bedNames = new Map(reader.bedNames);
  for (const factor of factors) {
    bedNames.set(factor.id, factor.name);
    for (const level of factor.levels) bedNames.set(level.id, level.name);
  }
  return { ...reader, bedNames };
}

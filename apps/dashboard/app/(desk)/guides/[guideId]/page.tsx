import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { ActButton } from "../../../../features/forms/ActButton.tsx";
import { chooseGuide, putGuideAway } from "../../../../features/guides/actions.ts";
import { isUnverified } from "../../../../features/guides/GuideList.tsx";
import { GuideTables } from "../../../../features/guides/GuideTables.tsx";
import { citationOf, guideOf, guidesOfOffice } from "../../../../features/guides/guides.ts";
import { dayText } from "../../../../format/dates.ts";
import { Row } from "../../../../ui/Row.tsx";
import { Saved } from "../../../../ui/Saved.tsx";

interface Props {
  params: Promise<{ guideId: string }>;
  searchParams: Promise<Record<string, string>>;
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { guide } = await guideOf((await params).guideId);
  return { title: guide.title };
}

/** One guide, whole, and what the office does with it. */
export default async function GuidePage({ params, searchParams }: Props) {
  const { guideId } = await params;
  const [{ guide, own }, { chosen }, asked, t, statuses] = await Promise.all([
    guideOf(guideId),
    guidesOfOffice(),
    searchParams,
    getTranslations("guides"),
    getTranslations("ranges.statuses"),
  ]);
  const cited = await citationOf(guide);
  const page = `/guides/${guide.id}`;
  const used = guide.id === chosen;
  return (
    <>
      <Saved asked={asked} />
      <Row notes={<p>{t("useHelp")}</p>}>
        <p className="crumbs">
          <Link href="/guides">{t("title")}</Link>
        </p>
        <h1>{guide.title}</h1>
        {used && <p className="decision-under">{t("isInUse")}</p>}
        <dl className="facts guide-facts">
          <dt>{t("region")}</dt>
          <dd>{guide.region}</dd>
          <dt>{t("known")}</dt>
          <dd className={isUnverified(guide.status) ? "unknown" : undefined}>{statuses(guide.status)}</dd>
          <dt>{t("source")}</dt>
          <dd>
            {cited}
            {!own && (
              <>
                {" "}
                <Link href={`/evidence#source-${guide.source.key}`}>{t("inEvidence")}</Link>
              </>
            )}
          </dd>
          <dt>{t("madeFor")}</dt>
          <dd>{t(`medium.${guide.medium}`)}</dd>
          {own && (
            <>
              <dt>{t("addedOn")}</dt>
              <dd>{dayText(own.addedAt.slice(0, 10))}</dd>
            </>
          )}
          {guide.note && (
            <>
              <dt>{t("note")}</dt>
              <dd>{guide.note}</dd>
            </>
          )}
        </dl>
        {isUnverified(guide.status) && !used && <p className="unknown">{t("unverifiedUse")}</p>}
        <div className="actions guide-acts no-print">
          <ActButton
            action={chooseGuide.bind(null, used ? null : guide.id, page)}
            label={used ? t("leave") : t("use")}
            busy={t("busy")}
            weight={used ? "quiet" : "press"}
          />
          <a className="tap" href={`${page}/guide.json`} download>
            {t("download")}
          </a>
          {own && (
            <details>
              <summary>{t("putAway")}</summary>
              <p>{t(used ? "putAwayUsed" : "putAwayHelp")}</p>
              <ActButton
                action={putGuideAway.bind(null, own.id)}
                label={t("putAwaySure")}
                busy={t("busy")}
                weight="quiet"
              />
            </details>
          )}
        </div>
      </Row>
      <GuideTables guide={guide} />
    </>
  );
}

import { adviceRoutes, type FarmDetail, farmRoutes, type Planting, recordRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { AdvisoryList } from "../../../../../../features/advice/AdvisoryList.tsx";
import { readerOf } from "../../../../../../features/advice/reader.ts";
import { readDrawn } from "../../../../../../features/planting/drawn.ts";
import { Timeline } from "../../../../../../features/planting/Timeline.tsx";
import { timelineOf } from "../../../../../../features/planting/timeline.ts";
import { ClosedNotice } from "../../../../../../features/records/ClosedNotice.tsx";
import { RecordLinks } from "../../../../../../features/records/RecordLinks.tsx";
import { RecordsList, recordsQuery } from "../../../../../../features/records/RecordsList.tsx";
import { dayText, instantText, todayIn } from "../../../../../../format/dates.ts";
import { inText } from "../../../../../../format/units.ts";
import { call } from "../../../../../../server/api.ts";
import { agentSeat } from "../../../../../../server/seat.ts";
import { Row } from "../../../../../../ui/Row.tsx";
import { RuleName } from "../../../../../../ui/RuleName.tsx";
import { Saved } from "../../../../../../ui/Saved.tsx";

interface Props {
  params: Promise<{ farmId: string; plantingId: string }>;
  searchParams: Promise<Record<string, string>>;
}

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("planting");
  return { title: t("title") };
}

/** So many of the newest are listed; the others stand on a page of their own. */
const MOST_ISSUED = 20;

/** One planting: its facts, what is advised, what was issued, and everything seen and done there. */
export default async function PlantingPage({ params, searchParams }: Props) {
  const [{ officeId }, { farmId, plantingId }, asked, t, whatIf] = await Promise.all([
    agentSeat(),
    params,
    searchParams,
    getTranslations("planting"),
    getTranslations("whatIf"),
  ]);
  const where = { officeId, farmId };
  const [detail, { drafts }, { advisories, next }, records] = await Promise.all([
    call(farmRoutes.getFarm, { params: where }),
    call(adviceRoutes.getRound, { params: { officeId }, query: { plantingId, all: "yes", setAside: "yes" } }),
    call(adviceRoutes.listAdvisories, { params: { officeId }, query: { plantingId, limit: MOST_ISSUED } }),
    call(recordRoutes.getRecords, { params: where, query: { plantingId, ...recordsQuery(asked) } }),
  ]);
  const planting = detail.plantings.find((one) => one.id === plantingId);
  if (!planting) notFound();
  const bed = detail.beds.find((one) => one.id === planting.bedId);
  const site = detail.sites.find((one) => one.id === bed?.siteId);
  const drawn = await readDrawn(officeId, plantingId, drafts);
  const stage = drawn.find(({ ruleId }) => ruleId === "stage");
  const today = todayIn(site?.timeZone);

  return (
    <>
      <p className="crumbs">
        <Link href={`/farms/${farmId}#plantings`}>{detail.farm.name}</Link>
      </p>
      <Saved asked={asked} />
      <Row notes={<Facts planting={planting} detail={detail} />}>
        <h1>{planting.varietyName}</h1>
        <p className="decision-under">
          {t("under", { plants: planting.plants, bed: bed?.name ?? t("noBed") })}
        </p>
        <ClosedNotice closed={records.closed} detail={detail} bedId={planting.bedId} />
        <p className="actions">
          <Link className="tap" href={`/farms/${farmId}/edit/plantings/${plantingId}`}>
            {t("change")}
          </Link>
          <Link className="tap" href={`/farms/${farmId}/plantings/${plantingId}/what-if`}>
            {whatIf("link")}
          </Link>
        </p>
      </Row>
      <Row id="timeline" side={<h2>{t("timeline")}</h2>} wide>
        {stage && (
          <p className="season-now">
            <Link href={stage.href}>{stage.decision}</Link>
          </p>
        )}
        <Timeline
          season={timelineOf({ planting, detail, records, drawn, today })}
          reader={readerOf(detail)}
          caption={t("timelineCaption", { name: planting.varietyName })}
        />
      </Row>
      <Row id="drafts" side={<h2>{t("drafts")}</h2>} wide>
        {drafts.length === 0 ? (
          <p>{t("noDrafts")}</p>
        ) : (
          <ul className="listing">
            {drafts.map((draft) => (
              <li key={draft.id}>
                <Link className="listing-head" href={`/drafts/${draft.id}`}>
                  {draft.headline}
                </Link>
                <p className="faint">
                  <RuleName id={draft.ruleId} />
                  {draft.kind !== "advice" && <span className="unknown"> · {t(`kinds.${draft.kind}`)}</span>}
                  {draft.setAsideUntil !== null && (
                    <> · {t("asideUntil", { day: dayText(draft.setAsideUntil, today) })}</>
                  )}
                </p>
              </li>
            ))}
          </ul>
        )}
      </Row>
      <Row id="issued" side={<h2>{t("issued")}</h2>} wide>
        <AdvisoryList advisories={advisories} base="/issued" />
        {next !== null && <Link href={`/issued?planting=${plantingId}`}>{t("allIssued")}</Link>}
      </Row>
      <Row id="records" side={<h2>{t("records")}</h2>} wide>
        <RecordLinks base={`/farms/${farmId}/record`} query={`?planting=${plantingId}`} />
        <RecordsList
          records={records}
          detail={detail}
          back={`/farms/${farmId}/plantings/${plantingId}`}
          who="agent"
          mayWrite
        />
      </Row>
    </>
  );
}

async function Facts({ planting, detail }: { planting: Planting; detail: FarmDetail }) {
  const [t, words] = await Promise.all([getTranslations("planting"), getTranslations("words.plantings")]);
  const { units } = detail.farm;
  const material = detail.materials.find((one) => one.id === planting.feeding.materialId);
  const bed = detail.beds.find((one) => one.id === planting.bedId);
  const site = detail.sites.find((one) => one.id === bed?.siteId);
  const flags = (["staked", "grafted", "overwintered"] as const).filter((flag) => planting[flag]);
  const also = [
    ...flags,
    ...(typeof planting.pungent === "boolean"
      ? ([planting.pungent ? "pungent" : "notPungent"] as const)
      : []),
    ...(planting.saveSeed ? (["saveSeed"] as const) : []),
  ];
  const facts: [string, string | null][] = [
    [t("type"), words(`marketType.${planting.marketType}`)],
    [t("species"), words(`species.${planting.species}`)],
    [t("sown"), dayText(planting.sownOn)],
    [t("planned"), planting.plannedSetOutOn && dayText(planting.plannedSetOutOn)],
    [t("setOut"), planting.setOutOn && dayText(planting.setOutOn)],
    [t("ended"), planting.endedOn && dayText(planting.endedOn)],
    [t("pickAt"), planting.pickAt ? words(`pickAt.${planting.pickAt}`) : null],
    [t("height"), planting.heightCm ? inText(planting.heightCm, "cm", units) : null],
    [
      t("base"),
      typeof planting.baseTemperatureC === "number" ? inText(planting.baseTemperatureC, "C", units) : null,
    ],
    [
      t("maturity"),
      planting.daysToMaturity &&
        t("maturityLine", {
          days: planting.daysToMaturity.days,
          from: words(`daysToMaturity.from.${planting.daysToMaturity.from}`),
          to: words(`daysToMaturity.to.${planting.daysToMaturity.to}`),
        }),
    ],
    [t("spacing"), inText(planting.plantSpacingM, "m", units)],
    [t("rows"), String(planting.rowsPerBed)],
    [t("goal"), planting.yieldGoalTPerHa === null ? null : inText(planting.yieldGoalTPerHa, "t/ha", units)],
    [t("fedWith"), material?.name ?? null],
    // Its credit stands wherever the forecast may have had a say.
    [
      t("forecast"),
      site?.forecast
        ? [instantText(site.forecast.issuedAt, site.timeZone), site.forecast.attribution]
            .filter(Boolean)
            .join(". ")
        : null,
    ],
    [t("also"), also.length > 0 ? also.map((word) => t(word)).join(", ") : null],
  ];
  return (
    <dl className="facts">
      {facts.flatMap(([name, value]) =>
        value === null ? [] : [<dt key={name}>{name}</dt>, <dd key={`${name} value`}>{value}</dd>],
      )}
    </dl>
  );
}

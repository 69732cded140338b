import { adviceRoutes, farmRoutes, importRoutes, recordRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { AdvisoryList } from "../../../../features/advice/AdvisoryList.tsx";
import { WorthMeasuring } from "../../../../features/evidence/WorthMeasuring.tsx";
import { MaterialsTable } from "../../../../features/farm/MaterialsTable.tsx";
import {
  BedsTable,
  PlantingsTable,
  SitesTable,
  StructuresTable,
  ValvesTable,
} from "../../../../features/farm/tables.tsx";
import { ClosedNotice } from "../../../../features/records/ClosedNotice.tsx";
import { RecordLinks } from "../../../../features/records/RecordLinks.tsx";
import { RecordsList, recordsQuery } from "../../../../features/records/RecordsList.tsx";
import { SprayLog } from "../../../../features/records/SprayLog.tsx";
import { wholeRecords } from "../../../../features/records/wholeRecords.ts";
import { instantText } from "../../../../format/dates.ts";
import { attempt, call } from "../../../../server/api.ts";
import { agentSeat } from "../../../../server/seat.ts";
import { Row } from "../../../../ui/Row.tsx";
import { Saved } from "../../../../ui/Saved.tsx";

interface Props {
  params: Promise<{ farmId: string }>;
  searchParams: Promise<Record<string, string>>;
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const [{ officeId }, { farmId }] = await Promise.all([agentSeat(), params]);
  // A farm that is not there is for the page to say.
  const read = await attempt((client) => client.call(farmRoutes.getFarm, { params: { officeId, farmId } }));
  return read.done ? { title: read.value.farm.name } : {};
}

/** One client farm: what stands there, on what ground, what is in the shed, what was advised and done. */
export default async function FarmPage({ params, searchParams }: Props) {
  const [{ officeId }, { farmId }, asked, t, log] = await Promise.all([
    agentSeat(),
    params,
    searchParams,
    getTranslations("farm"),
    getTranslations("sprayLog"),
  ]);
  const where = { officeId, farmId };
  const [detail, { drafts }, records, book, { advisories, next }, { imports }] = await Promise.all([
    call(farmRoutes.getFarm, { params: where }),
    call(adviceRoutes.getRound, { params: { officeId }, query: { farmId, all: "yes", limit: 1000 } }),
    call(recordRoutes.getRecords, { params: where, query: recordsQuery(asked) }),
    // What lies in the shed and what was sprayed are wholes, whichever page of the records is open below.
    wholeRecords(where, ["deliveries", "sprays"]),
    call(adviceRoutes.listAdvisories, { params: { officeId }, query: { farmId, limit: 20 } }),
    call(importRoutes.listImports, { params: where }),
  ]);
  const { farm } = detail;
  const [worth, trials] = await Promise.all([getTranslations("worthMeasuring"), getTranslations("trials")]);
  const [plans, paper] = await Promise.all([getTranslations("bedPlan"), getTranslations("paper")]);
  const add = (thing: string, label: string) => (
    <Link className="tap" href={`/farms/${farmId}/edit/${thing}/new`}>
      {label}
    </Link>
  );

  return (
    <>
      <p className="crumbs">
        <Link href="/farms">{t("allFarms")}</Link>
      </p>
      <Saved asked={asked} />
      <Row
        notes={
          <dl className="facts">
            {farm.contactName && (
              <>
                <dt>{t("contact")}</dt>
                <dd>{farm.contactName}</dd>
              </>
            )}
            {farm.phone && (
              <>
                <dt>{t("phone")}</dt>
                <dd>
                  <a href={`tel:${farm.phone.replace(/[^+\d]/g, "")}`}>{farm.phone}</a>
                </dd>
              </>
            )}
            {farm.email && (
              <>
                <dt>{t("email")}</dt>
                <dd>
                  <a href={`mailto:${farm.email}`}>{farm.email}</a>
                </dd>
              </>
            )}
            <dt>{t("units")}</dt>
            <dd>{t(`unitSystems.${farm.units}`)}</dd>
          </dl>
        }
      >
        <h1>{farm.name}</h1>
        <p className="decision-under">
          {t("summary", {
            plantings: farm.plantings,
            drafts: farm.openDrafts,
            unanswered: farm.unanswered,
          })}
        </p>
        <ClosedNotice closed={records.closed} detail={detail} />
        <p className="actions">
          <Link className="tap" href={`/round?farm=${farmId}`}>
            {t("toRound")}
          </Link>
          <a className="tap" href={`/farms/${farmId}/week.pdf`}>
            {paper("weekPdf")}
          </a>
          <Link className="tap" href={`/season-record/${farmId}`} prefetch={false}>
            {t("seasonRecord")}
          </Link>
          <Link className="tap" href={`/farms/${farmId}/import`}>
            {t("import")}
          </Link>
          <Link className="tap" href={`/farms/${farmId}/change`}>
            {t("changeFarm")}
          </Link>
        </p>
      </Row>
      <Row id="plantings" side={<h2>{t("plantings")}</h2>} wide>
        <PlantingsTable detail={detail} drafts={drafts} />
        {add("plantings", t("addPlanting"))}
      </Row>
      <Row id="beds" side={<h2>{t("beds")}</h2>} wide>
        <BedsTable detail={detail} history={records.bedHistory} />
        <p className="actions">
          {add("beds", t("addBed"))}
          <Link className="tap" href={`/farms/${farmId}/record/bedHistory`}>
            {t("addBefore")}
          </Link>
          <Link className="tap" href={`/farms/${farmId}/bed-plan`}>
            {plans("crumb")}
          </Link>
          <Link className="tap" href={`/farms/${farmId}/trials`}>
            {trials("title")}
          </Link>
        </p>
      </Row>
      <Row id="valves" side={<h2>{t("valves")}</h2>} wide>
        <ValvesTable detail={detail} />
        {add("valves", t("addValve"))}
      </Row>
      <Row id="structures" side={<h2>{t("structures")}</h2>} wide>
        <StructuresTable detail={detail} drafts={drafts} />
        {add("structures", t("addStructure"))}
      </Row>
      <Row id="sites" side={<h2>{t("sites")}</h2>} wide>
        <SitesTable detail={detail} />
        <p className="actions">
          {add("sites", t("addSite"))}
          <Link className="tap" href={`/sensors/${farmId}`} prefetch={false}>
            {t("sensors")}
          </Link>
        </p>
      </Row>
      <Row id="materials" side={<h2>{t("shed")}</h2>} wide>
        <MaterialsTable detail={detail} records={book} />
        <p className="actions">
          {add("materials", t("addMaterial"))}
          <Link className="tap" href={`/farms/${farmId}/record/deliveries`}>
            {t("writeDelivery")}
          </Link>
          <Link className="tap" href={`/farms/${farmId}/shed-sheet`}>
            {t("shedSheet")}
          </Link>
        </p>
      </Row>
      <Row id="worth" side={<h2>{worth("title")}</h2>} notes={<p className="small">{worth("help")}</p>}>
        <WorthMeasuring farmId={farmId} waiting={worth("loading")} failed={worth("failed")} />
      </Row>
      <Row id="sprays" side={<h2>{log("title")}</h2>} wide>
        <SprayLog sprays={book.sprays} detail={detail} />
        <p className="actions">
          <Link className="tap" href={`/farms/${farmId}/record/sprays`}>
            {log("write")}
          </Link>
        </p>
      </Row>
      <Row id="advice" side={<h2>{t("advice")}</h2>} wide>
        <AdvisoryList advisories={advisories} base="/issued" />
        {next !== null && <Link href={`/issued?farm=${farmId}`}>{t("allIssued")}</Link>}
      </Row>
      <Row id="records" side={<h2>{t("records")}</h2>} wide>
        <RecordLinks base={`/farms/${farmId}/record`} />
        <RecordsList records={records} detail={detail} back={`/farms/${farmId}`} who="agent" mayWrite />
      </Row>
      <Row id="imports" side={<h2>{t("imports")}</h2>} wide>
        {imports.length === 0 ? (
          <p>{t("noImports")}</p>
        ) : (
          <ul className="listing">
            {imports.map((one) => (
              <li key={one.id}>
                <Link href={`/farms/${farmId}/imports/${one.id}`}>{one.fileName}</Link>{" "}
                <span className="faint">
                  {t("importLine", {
                    status: t(`importStatuses.${one.status}`),
                    when: instantText(one.createdAt, detail.sites[0]?.timeZone),
                    accepted: one.acceptedCount,
                    refused: one.refusedCount,
                  })}
                </span>
              </li>
            ))}
          </ul>
        )}
        <Link className="tap" href={`/farms/${farmId}/import`}>
          {t("import")}
        </Link>
      </Row>
    </>
  );
}

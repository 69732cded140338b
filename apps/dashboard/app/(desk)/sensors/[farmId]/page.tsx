import { type FarmDetail, farmRoutes, type SensorKey, type Series, sensorRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { KeyActs, NewKey } from "../../../../features/sensors/Keys.tsx";
import { SeriesChart } from "../../../../features/sensors/SeriesChart.tsx";
import { SeriesTable } from "../../../../features/sensors/SeriesTable.tsx";
import { instantText } from "../../../../format/dates.ts";
import { call } from "../../../../server/api.ts";
import { config } from "../../../../server/config.ts";
import { seat } from "../../../../server/seat.ts";
import { Row } from "../../../../ui/Row.tsx";
import { Saved } from "../../../../ui/Saved.tsx";

interface Props {
  params: Promise<{ farmId: string }>;
  searchParams: Promise<Record<string, string>>;
}

const DAYS_SHOWN = 14;

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("sensors");
  return { title: t("title") };
}

/** What a farm's sensors say, for its people and the office's; the office also adds series and hands out keys. */
export default async function SensorsPage({ params, searchParams }: Props) {
  const [mine, { farmId }, asked, t] = await Promise.all([
    seat(),
    params,
    searchParams,
    getTranslations("sensors"),
  ]);
  if (!mine) redirect("/");
  const where = { officeId: mine.officeId, farmId };
  const mayChange = mine.role === "agent";
  const [farm, { series }, { keys }] = await Promise.all([
    call(farmRoutes.getFarm, { params: where }),
    call(sensorRoutes.listSeries, { params: where }),
    mayChange ? call(sensorRoutes.listSensorKeys, { params: where }) : { keys: [] as SensorKey[] },
  ]);
  const silent = series.filter((s) => s.silentSince !== null).length;
  const drawn = series.find((s) => s.id === asked.series) ?? series.find((s) => s.last !== null);
  return (
    <>
      <p className="crumbs">
        {mayChange ? (
          <Link href={`/farms/${farmId}`}>{farm.farm.name}</Link>
        ) : (
          <Link href="/record">{t("toRecord")}</Link>
        )}
      </p>
      <Saved asked={asked} />
      <Row notes={<p className="small">{t("help")}</p>}>
        <h1>{t("title")}</h1>
        <p className="decision-under">
          {t("summary", { farm: farm.farm.name, count: series.length, silent })}
        </p>
      </Row>
      <Row id="series" side={<h2>{t("seriesTitle")}</h2>} wide>
        {series.length === 0 ? (
          <p>{mayChange ? t("empty") : t("emptyForFarmer")}</p>
        ) : (
          <SeriesTable series={series} farm={farm} mayChange={mayChange} />
        )}
        {mayChange && (
          <p className="actions">
            <Link className="tap" href={`/sensors/${farmId}/series/new`}>
              {t("add")}
            </Link>
          </p>
        )}
      </Row>
      {drawn && (
        <Row id="chart" side={<h2>{t("chart.side")}</h2>} wide>
          <Drawn where={where} series={drawn} farm={farm} />
        </Row>
      )}
      {mayChange && series.length > 0 && (
        <Row id="keys" side={<h2>{t("keys.title")}</h2>} notes={<p className="small">{t("keys.help")}</p>}>
          <Keys farmId={farmId} keys={keys} series={series} zone={farm.sites[0]?.timeZone} />
        </Row>
      )}
    </>
  );
}

async function Drawn({
  where,
  series,
  farm,
}: {
  where: { officeId: string; farmId: string };
  series: Series;
  farm: FarmDetail;
}) {
  // Two weeks to the last reading, so that a series that fell silent still shows what it said.
  const to = new Date(Date.parse(series.last?.at ?? series.addedAt) + 3_600_000);
  const from = new Date(to.getTime() - DAYS_SHOWN * 86_400_000);
  const params = { ...where, seriesId: series.id };
  const [{ hours }, { days }] = await Promise.all([
    call(sensorRoutes.getReadingHours, {
      params,
      query: { from: from.toISOString(), to: to.toISOString() },
    }),
    call(sensorRoutes.getReadingDays, {
      params,
      query: { from: from.toISOString().slice(0, 10), to: to.toISOString().slice(0, 10) },
    }),
  ]);
  const zone = farm.sites.find((site) => site.id === series.siteId)?.timeZone ?? "UTC";
  return <SeriesChart series={series} hours={hours} days={days} units={farm.farm.units} zone={zone} />;
}

async function Keys({
  farmId,
  keys,
  series,
  zone,
}: {
  farmId: string;
  keys: SensorKey[];
  series: Series[];
  zone: string | undefined;
}) {
  const t = await getTranslations("sensors.keys");
  const words = {
    name: t("name"),
    series: t("series"),
    make: t("make"),
    busy: t("busy"),
    rotate: t("rotate"),
    revoke: t("revoke"),
    once: t("once"),
    overlap: t("overlap"),
    send: t("send"),
  };
  const { apiOrigin } = config();
  const labels = new Map(series.map((s) => [s.id, s.label]));
  const now = new Date().toISOString();
  const stateOf = (key: SensorKey) => {
    if (key.revokedAt !== null) return t("revoked", { when: instantText(key.revokedAt, zone) });
    if (key.endsAt === null) return null;
    return t(key.endsAt <= now ? "ended" : "ends", { when: instantText(key.endsAt, zone) });
  };
  const inUse = (key: SensorKey) => key.revokedAt === null && (key.endsAt === null || key.endsAt > now);
  const line = (key: SensorKey) => (
    <li key={key.id}>
      <strong>{key.name}</strong> <code>{key.prefix}…</code>
      <br />
      <span className="faint small">
        {key.seriesIds.map((id) => labels.get(id) ?? "").join(", ")}.{" "}
        {key.lastUsedAt === null
          ? t("neverUsed")
          : t("lastUsed", { when: instantText(key.lastUsedAt, zone) })}{" "}
        {stateOf(key)}
      </span>
      {inUse(key) && <KeyActs farmId={farmId} keyId={key.id} origin={apiOrigin} words={words} />}
    </li>
  );
  const [open, over] = [keys.filter(inUse), keys.filter((key) => !inUse(key))];
  return (
    <>
      {keys.length === 0 && <p>{t("none")}</p>}
      {open.length > 0 && <ul className="listing">{open.map(line)}</ul>}
      {over.length > 0 && (
        <details>
          <summary>{t("over", { count: over.length })}</summary>
          <ul className="listing">{over.map(line)}</ul>
        </details>
      )}
      <h3>{t("new")}</h3>
      <NewKey
        farmId={farmId}
        series={series.filter((s) => s.retiredAt === null).map(({ id, label }) => ({ id, label }))}
        origin={apiOrigin}
        words={words}
      />
    </>
  );
}

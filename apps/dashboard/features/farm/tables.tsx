import type { Draft, FarmDetail, Records } from "@pith/contract";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { dayText, instantText, todayIn } from "../../format/dates.ts";
import { inText } from "../../format/units.ts";

type BedHistory = Records["bedHistory"][number];

/** A farm's things as ruled tables. Each first cell opens the thing itself. */

interface Props {
  detail: FarmDetail;
}

const editOf = (detail: FarmDetail, thing: string, id: string) =>
  `/farms/${detail.farm.id}/edit/${thing}/${id}`;

export async function PlantingsTable({ detail, drafts }: Props & { drafts: Draft[] }) {
  const [t, words] = await Promise.all([getTranslations("farm"), getTranslations("words.plantings")]);
  if (detail.plantings.length === 0) return <p>{t("noPlantings")}</p>;
  const today = todayIn(detail.sites[0]?.timeZone);
  return (
    <table className="ruled">
      <caption className="unseen">{t("plantings")}</caption>
      <thead>
        <tr>
          <th scope="col">{t("variety")}</th>
          <th scope="col">{t("bed")}</th>
          <th scope="col">{t("stands")}</th>
          <th scope="col">{t("next")}</th>
        </tr>
      </thead>
      <tbody>
        {detail.plantings.map((planting) => {
          const next = drafts.find((d) => d.kind === "advice" && d.plantingIds.includes(planting.id));
          return (
            <tr key={planting.id}>
              <th scope="row">
                <Link href={`/farms/${detail.farm.id}/plantings/${planting.id}`}>{planting.varietyName}</Link>{" "}
                <span className="faint">{words(`marketType.${planting.marketType}`)}</span>
              </th>
              <td>{detail.beds.find((bed) => bed.id === planting.bedId)?.name}</td>
              <td>
                {planting.endedOn !== null
                  ? t("endedOn", { day: dayText(planting.endedOn, today) })
                  : planting.setOutOn !== null
                    ? t("outSince", { day: dayText(planting.setOutOn, today) })
                    : planting.plannedSetOutOn !== null
                      ? t("plannedFor", { day: dayText(planting.plannedSetOutOn, today) })
                      : t("indoors")}
              </td>
              <NextDecision draft={next} />
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

/** What waits for a decision about a row, most urgent first. */
async function NextDecision({ draft }: { draft: Draft | undefined }) {
  const t = await getTranslations("farm");
  return (
    <td className="full">
      {draft ? (
        <Link href={`/drafts/${draft.id}`}>{draft.headline}</Link>
      ) : (
        <span className="faint">{t("nothingOpen")}</span>
      )}
    </td>
  );
}

export async function BedsTable({ detail, history }: Props & { history: BedHistory[] }) {
  const [t, words] = await Promise.all([getTranslations("farm"), getTranslations("words.beds")]);
  if (detail.beds.length === 0) return <p>{t("noBeds")}</p>;
  const units = detail.farm.units;
  const now = (periods: { from: string; to: string | null }[], today: string) =>
    periods.findIndex((p) => p.from <= today && (p.to === null || p.to >= today));
  const today = todayIn(detail.sites[0]?.timeZone);
  return (
    <table className="ruled">
      <caption className="unseen">{t("beds")}</caption>
      <thead>
        <tr>
          <th scope="col">{t("bed")}</th>
          <th scope="col">{t("size")}</th>
          <th scope="col">{t("soil")}</th>
          <th scope="col">{t("coverNow")}</th>
          <th scope="col">{t("valve")}</th>
          <th scope="col">{t("before")}</th>
        </tr>
      </thead>
      <tbody>
        {detail.beds.map((bed) => {
          const cover = bed.covers[now(bed.covers, today)]?.cover ?? "none";
          const mulch = bed.mulches[now(bed.mulches, today)]?.mulch ?? "none";
          return (
            <tr key={bed.id}>
              <th scope="row">
                <Link href={editOf(detail, "beds", bed.id)}>{bed.name}</Link>
              </th>
              <td className="number">
                {inText(bed.lengthM, "m", units)} × {inText(bed.widthM, "m", units)}
              </td>
              <td>
                {bed.soil.texture ? (
                  words(`soil.texture.${bed.soil.texture}`)
                ) : (
                  <span className="unknown">{t("unknown")}</span>
                )}
              </td>
              <td>
                {words(`covers.cover.${cover}`)}; {words(`mulches.mulch.${mulch}`)}
              </td>
              <td>{detail.valves.find((valve) => valve.id === bed.valveId)?.name}</td>
              <td className="full" data-head={t("before")}>
                <Before history={history.filter((one) => one.bedId === bed.id)} />
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

/** What stood in a bed in seasons before, as somebody wrote it down, the last first. */
async function Before({ history }: { history: BedHistory[] }) {
  const [t, words] = await Promise.all([getTranslations("farm"), getTranslations("words.bedHistory")]);
  if (history.length === 0) return <span className="unknown">{t("noBefore")}</span>;
  return (
    <ul className="plain">
      {history
        .toSorted((a, b) => b.season - a.season)
        .map(({ id, season, crop, disease }) => (
          <li key={id}>
            {disease === null
              ? t("beforeLine", { season: String(season), crop: words(`crop.${crop}`) })
              : t("beforeSick", {
                  season: String(season),
                  crop: words(`crop.${crop}`),
                  disease: words(`disease.${disease}`),
                })}
          </li>
        ))}
    </ul>
  );
}

export async function ValvesTable({ detail }: Props) {
  const [t, words] = await Promise.all([getTranslations("farm"), getTranslations("words.valves")]);
  if (detail.valves.length === 0) return <p>{t("noValves")}</p>;
  const units = detail.farm.units;
  return (
    <table className="ruled">
      <caption className="unseen">{t("valves")}</caption>
      <thead>
        <tr>
          <th scope="col">{t("valve")}</th>
          <th scope="col">{t("method")}</th>
          <th scope="col" className="value">
            {t("flow")}
          </th>
          <th scope="col" className="value">
            {t("efficiency")}
          </th>
        </tr>
      </thead>
      <tbody>
        {detail.valves.map((valve) => (
          <tr key={valve.id}>
            <th scope="row">
              <Link href={editOf(detail, "valves", valve.id)}>{valve.name}</Link>
            </th>
            <td>{words(`method.${valve.method}`)}</td>
            <td className="value" data-head={t("flow")}>
              {inText(valve.flowLPerH, "L/h", units)}
            </td>
            <td className="value" data-head={t("efficiency")}>
              {inText(valve.efficiency, "share", units)}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

export async function StructuresTable({ detail, drafts }: Props & { drafts: Draft[] }) {
  const [t, words] = await Promise.all([getTranslations("farm"), getTranslations("words.structures")]);
  if (detail.structures.length === 0) return <p>{t("noStructures")}</p>;
  const units = detail.farm.units;
  return (
    <table className="ruled">
      <caption className="unseen">{t("structures")}</caption>
      <thead>
        <tr>
          <th scope="col">{t("structure")}</th>
          <th scope="col" className="value">
            {t("floor")}
          </th>
          <th scope="col">{t("heatedWith")}</th>
          <th scope="col">{t("next")}</th>
        </tr>
      </thead>
      <tbody>
        {detail.structures.map((structure) => {
          // A bed with plants may bear the same name; drafts about a house are about no planting.
          const next = drafts.find(
            (d) => d.kind === "advice" && d.plantingIds.length === 0 && d.subjectName === structure.name,
          );
          return (
            <tr key={structure.id}>
              <th scope="row">
                <Link href={editOf(detail, "structures", structure.id)}>{structure.name}</Link>{" "}
                <span className="faint">{words(`glazing.${structure.glazing}`)}</span>
              </th>
              <td className="value" data-head={t("floor")}>
                {inText(structure.floorAreaM2, "m2", units)}
              </td>
              <td>
                {structure.heaters.length > 0 ? (
                  structure.heaters.map((heater) => words(`heaters.fuel.${heater.fuel}`)).join(", ")
                ) : (
                  <span className="faint">{t("notHeated")}</span>
                )}
              </td>
              <NextDecision draft={next} />
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

export async function SitesTable({ detail }: Props) {
  const t = await getTranslations("farm");
  if (detail.sites.length === 0) return <p>{t("noSites")}</p>;
  const units = detail.farm.units;
  return (
    <table className="ruled">
      <caption className="unseen">{t("sites")}</caption>
      <thead>
        <tr>
          <th scope="col">{t("site")}</th>
          <th scope="col">{t("place")}</th>
          <th scope="col" className="value">
            {t("elevation")}
          </th>
          <th scope="col">{t("weather")}</th>
        </tr>
      </thead>
      <tbody>
        {detail.sites.map((site) => (
          <tr key={site.id}>
            <th scope="row">
              <Link href={editOf(detail, "sites", site.id)}>{site.name}</Link>
            </th>
            <td className="number">
              {t("coordinates", {
                latitude: Math.abs(site.latitudeDeg),
                northOrSouth: site.latitudeDeg < 0 ? "south" : "north",
                longitude: Math.abs(site.longitudeDeg),
                eastOrWest: site.longitudeDeg < 0 ? "west" : "east",
              })}
            </td>
            <td className="value" data-head={t("elevation")}>
              {inText(site.elevationM, "m", units)}
            </td>
            <td className="full">
              {site.weather ? (
                t("weatherSpan", {
                  from: dayText(site.weather.from),
                  to: dayText(site.weather.to),
                  days: site.weather.days,
                })
              ) : (
                <span className="unknown">{t("noWeather")}</span>
              )}
              <ForecastOf site={site} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** When its forecast is from, with the credit that is owed, and what is wrong with its service. */
async function ForecastOf({ site }: { site: FarmDetail["sites"][number] }) {
  const t = await getTranslations("farm");
  const { forecast, sourceState, timeZone } = site;
  return (
    <>
      {forecast && (
        <span className="faint">
          {" "}
          {t("forecastOf", { when: instantText(forecast.issuedAt, timeZone) })} {forecast.attribution}
        </span>
      )}
      {sourceState?.lastError && (
        <span className="unknown">
          {" "}
          {t("sourceFails", {
            when: instantText(sourceState.lastTriedAt, timeZone),
            error: sourceState.lastError,
          })}
        </span>
      )}
    </>
  );
}

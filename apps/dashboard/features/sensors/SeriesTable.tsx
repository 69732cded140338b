import type { FarmDetail, Series } from "@pith/contract";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { instantText } from "../../format/dates.ts";
import { readingText } from "./units.ts";

interface Props {
  series: Series[];
  /** Null where the farm's ground is not the reader's to see in whole. */
  farm: FarmDetail;
  mayChange: boolean;
}

/** A farm's series: what each read last, when, and what is wrong with it, in words. */
export async function SeriesTable({ series, farm, mayChange }: Props) {
  const [t, quantities, covers] = await Promise.all([
    getTranslations("sensors"),
    getTranslations("words.series.quantity"),
    getTranslations("words.series.cover"),
  ]);
  const farmId = farm.farm.id;
  const nameOf = (things: { id: string; name: string }[], id: string | null) =>
    things.find((thing) => thing.id === id)?.name ?? "";
  const placeOf = (s: Series) => {
    const bed = nameOf(farm.beds, s.bedId);
    if (s.bedId === null) return t("open", { site: nameOf(farm.sites, s.siteId) });
    if (s.cover !== null) return t("under", { bed, cover: covers(s.cover) });
    return s.depthCm === null ? bed : t("atDepth", { bed, cm: s.depthCm });
  };
  const stateOf = (s: Series, zone: string) => {
    if (s.retiredAt !== null) return t("retired", { when: instantText(s.retiredAt, zone) });
    if (s.silentSince !== null) {
      return s.last === null ? t("neverSent") : t("silent", { when: instantText(s.silentSince, zone) });
    }
    if (s.last === null) return t("waiting");
    return s.last.flags.length === 0 ? t("fine") : s.last.flags.map((flag) => t(`flags.${flag}`)).join(" ");
  };
  return (
    <div className="table-scroll">
      <table className="ruled">
        <caption className="unseen">{t("title")}</caption>
        <thead>
          <tr>
            <th scope="col">{t("series")}</th>
            <th scope="col">{t("place")}</th>
            <th scope="col" className="number">
              {t("last")}
            </th>
            <th scope="col">{t("when")}</th>
            <th scope="col">{t("state")}</th>
          </tr>
        </thead>
        <tbody>
          {series.map((s) => {
            const zone = farm.sites.find((site) => site.id === s.siteId)?.timeZone ?? "UTC";
            return (
              <tr key={s.id}>
                <th scope="row">
                  <Link href={`/sensors/${farmId}?series=${s.id}#chart`}>{s.label}</Link>
                  <br />
                  <span className="faint small">
                    {quantities(s.quantity)} · {s.name}
                    {mayChange && (
                      <>
                        {" · "}
                        <Link href={`/sensors/${farmId}/series/${s.id}`}>{t("change")}</Link>
                      </>
                    )}
                  </span>
                </th>
                <td>{placeOf(s)}</td>
                <td className="number">
                  {s.last ? readingText(s.last.value, s, farm.farm.units) : t("none")}
                </td>
                <td>{s.last ? instantText(s.last.at, zone) : t("none")}</td>
                <td className={s.silentSince === null ? undefined : "series-silent"}>{stateOf(s, zone)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}

import type { Series } from "@pith/contract";
import type { UnitSystem } from "@pith/rules";
import { getTranslations } from "next-intl/server";
import { dayText, instantText } from "../../format/dates.ts";
import { Plot } from "../../ui/Plot.tsx";
import { type At, lineOf, scalesOf, threeOf } from "../../ui/scales.ts";
import { unitOfSeries } from "./units.ts";

interface Hour {
  hour: string;
  lowest: number | null;
  highest: number | null;
  mean: number | null;
  total: number | null;
}
interface Day {
  day: string;
  readings: number;
  flagged: number;
  lowest: number | null;
  highest: number | null;
  mean: number | null;
  total: number | null;
}

interface Props {
  series: Series;
  hours: Hour[];
  days: Day[];
  units: UnitSystem;
  zone: string;
}

const HOUR_MS = 3_600_000;

/** Two weeks of a series by the hour, drawn in ink, in words and, by the day, as a table. Flagged readings are left out. */
export async function SeriesChart({ series, hours, days, units, zone }: Props) {
  const t = await getTranslations("sensors.chart");
  const unit = unitOfSeries(series, units);
  const ofRain = series.quantity === "rain";
  const shown = (value: number | null) => (value === null ? null : unit.fromSi(value));
  const points = hours.flatMap((h) => {
    const value = shown(ofRain ? h.total : h.mean);
    return value === null ? [] : [{ at: Date.parse(h.hour), hour: h.hour, value }];
  });
  if (points.length === 0) return <p>{t("nothing")}</p>;
  const places = points.map((p) => p.at);
  const scales = scalesOf(
    places,
    points.map((p) => p.value),
  );
  const figure = new Intl.NumberFormat("en", { maximumFractionDigits: 2 });
  const said = (value: number | null) => (value === null ? t("missing") : figure.format(value));
  const at = (p: (typeof points)[number]) => instantText(p.hour, zone);
  const hourAt = new Map(points.map((p) => [p.at, p]));
  const lowest = points.reduce((a, b) => (b.value < a.value ? b : a));
  const highest = points.reduce((a, b) => (b.value > a.value ? b : a));

  return (
    <figure className="chart">
      <figcaption>
        {t(ofRain ? "rainTitle" : "title", { label: series.label })}{" "}
        <span className="faint">({unit.label})</span>
      </figcaption>
      <Plot
        scales={scales}
        figure={(tick) => figure.format(tick)}
        named={threeOf(places).map((place) => {
          const p = hourAt.get(place);
          return { place, text: p ? at(p) : "" };
        })}
      >
        <path className="mark" d={lineOf(withGaps(points), scales)} />
      </Plot>
      <p className="small">
        {t("range", {
          low: said(lowest.value),
          lowAt: at(lowest),
          high: said(highest.value),
          highAt: at(highest),
          unit: unit.label,
        })}
      </p>
      <details>
        <summary>{t("asTable")}</summary>
        <table className="ruled">
          <caption className="unseen">{t("byDay", { label: series.label, unit: unit.label })}</caption>
          <thead>
            <tr>
              <th scope="col">{t("day")}</th>
              {(ofRain ? (["total"] as const) : (["lowest", "highest", "mean"] as const)).map((column) => (
                <th key={column} scope="col" className="number">
                  {t(column)}
                </th>
              ))}
              <th scope="col" className="number">
                {t("readings")}
              </th>
              <th scope="col" className="number">
                {t("flagged")}
              </th>
            </tr>
          </thead>
          <tbody>
            {days.map((d) => (
              <tr key={d.day}>
                <th scope="row">{dayText(d.day)}</th>
                {(ofRain ? [d.total] : [d.lowest, d.highest, d.mean]).map((value, i) => (
                  <td key={["a", "b", "c"][i]} className="number">
                    {said(shown(value))}
                  </td>
                ))}
                <td className="number">{d.readings}</td>
                <td className="number">{d.flagged}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </figure>
  );
}

/** A line does not lead over hours that nobody read. */
const withGaps = (points: { at: number; value: number }[]): At[] =>
  points.flatMap(({ at, value }, i) => {
    const before = points[i - 1]?.at ?? at;
    const gap: At[] = at - before > 3 * HOUR_MS ? [{ place: before, value: null }] : [];
    return [...gap, { place: at, value }];
  });

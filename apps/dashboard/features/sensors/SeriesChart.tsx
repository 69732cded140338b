import type { Series } from "@pith/contract";
import type { UnitSystem } from "@pith/rules";
import { getTranslations } from "next-intl/server";
import { dayText, instantText } from "../../format/dates.ts";
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

const WIDTH = 1000;
const HEIGHT = 400;
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
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return <p>{t("nothing")}</p>;
  const values = points.map((p) => p.value);
  const ticks = ticksOf(Math.min(...values), Math.max(...values));
  const [low, high] = [ticks[0] as number, ticks.at(-1) as number];
  const toX = (at: number) => (WIDTH * (at - first.at)) / Math.max(last.at - first.at, HOUR_MS);
  const toY = (value: number) => HEIGHT - (HEIGHT * (value - low)) / Math.max(high - low, 1e-9);
  // A line does not lead over hours that nobody read.
  const line = points
    .map((p, i) => {
      const joined = i > 0 && p.at - (points[i - 1]?.at ?? 0) <= 3 * HOUR_MS;
      return `${joined ? "L" : "M"}${toX(p.at).toFixed(1)} ${toY(p.value).toFixed(1)}${joined ? "" : "h0.1"}`;
    })
    .join("");
  const figure = new Intl.NumberFormat("en", { maximumFractionDigits: 2 });
  const said = (value: number | null) => (value === null ? t("missing") : figure.format(value));
  const at = (p: (typeof points)[number]) => instantText(p.hour, zone);
  const lowest = points.reduce((a, b) => (b.value < a.value ? b : a));
  const highest = points.reduce((a, b) => (b.value > a.value ? b : a));

  return (
    <figure className="chart">
      <figcaption>
        {t(ofRain ? "rainTitle" : "title", { label: series.label })}{" "}
        <span className="faint">({unit.label})</span>
      </figcaption>
      <div className="chart-plot" aria-hidden="true">
        <div className="chart-y">
          {ticks.toReversed().map((tick) => (
            <span key={tick}>{figure.format(tick)}</span>
          ))}
        </div>
        <svg
          className="chart-field"
          viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
          preserveAspectRatio="none"
          aria-hidden="true"
        >
          {ticks.map((tick) => (
            <path
              key={tick}
              className="chart-grid"
              d={`M0 ${toY(tick)}H${WIDTH}`}
              vectorEffect="non-scaling-stroke"
            />
          ))}
          <path className="mark" d={line} />
        </svg>
        <div className="chart-x">
          {[first, points[Math.floor(points.length / 2)] ?? last, last].map((p, i) => (
            <span key={["from", "middle", "to"][i]}>{at(p)}</span>
          ))}
        </div>
      </div>
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

/** Four or five round figures that hold all values. */
function ticksOf(low: number, high: number): number[] {
  const span = Math.max(high - low, 0.1);
  const power = 10 ** Math.floor(Math.log10(span / 4));
  const step = power * ([1, 2, 5, 10].find((n) => n * power >= span / 4) ?? 10);
  const from = Math.floor(low / step);
  const to = Math.ceil(high / step);
  return Array.from({ length: to - from + 1 }, (_, i) => Number(((from + i) * step).toPrecision(10)));
}

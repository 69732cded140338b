import type { DraftDetail } from "@pith/contract";
import { type Message, type Reader, render } from "@pith/rules";
import { useTranslations } from "next-intl";
import { dayText, localHourText } from "../format/dates.ts";
import { localeOf } from "../format/language.ts";
import { readerUnit } from "../format/measured.ts";
import { BarRows } from "./BarRows.tsx";
import { ChartBands, placeBands } from "./ChartBands.tsx";
import { Plot } from "./Plot.tsx";
import { type At, areaOf, lineOf, type Scales, scalesOf, TALL, threeOf, WIDE } from "./scales.ts";

type ChartData = Extract<DraftDetail["answer"], { kind: "advice" }>["charts"][number];
type Series = ChartData["series"][number];

/** Round numbers wanted beneath a field. */
const NUMBERS = 4;

/**
 * A rule's numbers drawn in ink: the first line solid, the next dashed, limits in madder. Beneath it the same in words
 * and as a table.
 */
export function Chart({ chart, reader }: { chart: ChartData; reader: Reader }) {
  const t = useTranslations("chart");
  // Named, because a drawing may be made in a browser too.
  const locale = localeOf(reader.language);
  // The wire cannot name the rules' closed list of units; the messages come from the rules themselves.
  const say = (message: ChartData["title"]) => render(message as Message, reader);
  /** The reader's unit; what is counted has a word, and a pH has none beside a figure. */
  const unitOf = (unit: string) => {
    const own = readerUnit(unit, reader.units, reader.language);
    const key = `units.${unit === "leaves/day" ? "leavesPerDay" : unit}` as "units.leaves";
    return /^[a-zA-Z/]+$/.test(unit) && t.has(key) ? { ...own, label: t(key) } : own;
  };
  const y = unitOf(chart.y.unit);
  const x = chart.x.unit === undefined ? null : unitOf(chart.x.unit);
  const series = chart.series.map((s) => ({
    ...s,
    name: say(s.name),
    points: s.points.map(
      ([at, value]) =>
        [typeof at === "number" && x ? x.fromSi(at) : at, value === null ? null : y.fromSi(value)] as const,
    ),
  }));
  const values = series.flatMap((s) => s.points.flatMap(([, v]) => (v === null ? [] : [v])));
  const places = series.flatMap((s) => s.points.map(([at]) => placeOf(at)));
  if (values.length === 0) return null;
  const room = series.some((s) => s.style === "bars") ? barRoom(places) : 0;
  // Nought is no floor of temperatures.
  const scales = scalesOf(places, values, { room, fromNought: chart.y.unit !== "C" });
  const toX = (at: string | number) => scales.x(placeOf(at));
  const title = say(chart.title);
  const bands = placeBands(chart.bands ?? [], say, (at) => toX(at) / WIDE);
  const labels = chart.x.labels?.map(say);
  const xText = (at: string | number) => {
    if (chart.x.kind === "date" && typeof at === "string") return dayText(at, at, locale);
    const label = labels?.[placeOf(at) - 1];
    if (label !== undefined) return label;
    return x && typeof at === "number" ? `${plainNumber.format(at)} ${x.label}` : hourText(at, locale);
  };
  const atOf = new Map(series.flatMap((s) => s.points.map(([at]) => [placeOf(at), at] as const)));
  const columns = [...atOf].sort(([a], [b]) => a - b).map(([, at]) => at);
  const figure = new Intl.NumberFormat("en", { maximumFractionDigits: 2 });

  return (
    <figure className="chart">
      <figcaption>
        {title} <span className="faint">({y.label})</span>
      </figcaption>
      {labels ? (
        <BarRows
          labels={labels}
          series={series.map((s, index) => ({
            id: s.id,
            style: s.style,
            mark: markOf(chart.series, index),
            values: labels.map((_, i) => s.points.find(([at]) => placeOf(at) === i + 1)?.[1] ?? null),
          }))}
          figure={(value) => (value === null ? t("missing") : figure.format(value))}
        />
      ) : (
        <Plot
          scales={scales}
          figure={(tick) => figure.format(tick)}
          named={
            chart.x.kind === "number"
              ? scales.x.ticks(NUMBERS).map((place, i, all) => ({
                  place,
                  // Its unit once, after the last.
                  text: i === all.length - 1 ? xText(place) : plainNumber.format(place),
                }))
              : threeOf(places).map((place) => ({ place, text: xText(atOf.get(place) ?? place) }))
          }
          above={<ChartBands bands={bands} />}
        >
          {bands.map(({ letter, from, to }, i) => (
            <g key={letter}>
              {i % 2 === 1 && (
                <path className="band-field" d={`M${from * WIDE} 0H${to * WIDE}V${TALL}H${from * WIDE}Z`} />
              )}
              {from > 0 && <path className="band-edge" d={`M${from * WIDE} 0V${TALL}`} />}
            </g>
          ))}
          {series.map((s, index) => (
            <path
              key={s.id}
              className={markOf(chart.series, index)}
              d={outline(s.style, placed(s.points), barOf(index), scales)}
            />
          ))}
        </Plot>
      )}
      <ul className="chart-key">
        {bands.map(({ letter, name, starts, ends }) => (
          <li key={letter}>
            <em>{letter}</em> {t("band", { name, from: xText(starts), to: xText(ends) })}
          </li>
        ))}
        {series.map((s, index) => (
          <li key={s.id}>
            <svg viewBox="0 0 32 12" aria-hidden="true">
              <path
                className={markOf(chart.series, index)}
                d={s.style === "area" || s.style === "bars" ? "M0 1H32V11H0Z" : "M0 6H32"}
              />
            </svg>
            {labels ? s.name : inWords(s)}
          </li>
        ))}
      </ul>
      <details>
        <summary>{t("asTable")}</summary>
        <table className="ruled">
          <caption className="unseen">{title}</caption>
          <thead>
            <tr>
              <th scope="col">{x ? `${say(chart.x.name)}, ${x.label}` : say(chart.x.name)}</th>
              {series.map((s) => (
                <th key={s.id} scope="col">
                  {s.name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {columns.map((at) => (
              <tr key={at}>
                <th scope="row">{x && typeof at === "number" ? plainNumber.format(at) : xText(at)}</th>
                {series.map((s) => (
                  <td key={s.id} className="value" data-head={s.name}>
                    {cell(s, at)}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </figure>
  );

  /** Where a series of bars stands among those of its kind: side by side, so that none hides another. */
  function barOf(index: number) {
    const bars = chart.series.flatMap((s, i) =>
      s.style === "bars" && s.points.some(([, value]) => value !== null) ? [i] : [],
    );
    // Seven tenths of what is between two places, the rest is air.
    return { place: bars.indexOf(index), of: bars.length, width: 1.4 * (scales.x(room) - scales.x(0)) };
  }

  /** The series told in one sentence, for everybody. */
  function inWords(s: {
    name: string;
    style: Series["style"];
    points: (readonly [string | number, number | null])[];
  }) {
    const known = s.points.flatMap(([at, v]) => (v === null ? [] : [{ at, v }]));
    const peak = known.reduce((a, b) => (b.v > a.v ? b : a), known[0] ?? { at: "", v: 0 });
    const low = known.reduce((a, b) => (b.v < a.v ? b : a), peak);
    const show = (v: number) => (y.label === "pH" ? figure.format(v) : `${figure.format(v)} ${y.label}`);
    if (known.length === 0) return t("noValues", { name: s.name });
    if (peak.v === low.v) return t("constant", { name: s.name, value: show(peak.v) });
    return t("range", {
      name: s.name,
      low: show(low.v),
      lowAt: xText(low.at),
      high: show(peak.v),
      highAt: xText(peak.at),
    });
  }

  function cell(s: { points: (readonly [string | number, number | null])[] }, at: string | number) {
    const value = s.points.find(([a]) => placeOf(a) === placeOf(at))?.[1];
    return value === undefined || value === null ? t("missing") : figure.format(value);
  }
}

/** Lines of a kind are told apart by their dashes, counted within the kind. */
function markOf(all: Series[], index: number): string {
  const style = all[index]?.style ?? "line";
  const before = all.slice(0, index).filter((s) => s.style === style).length;
  return style === "line" ? `mark mark-${before % 4}` : `mark mark-${style} mark-${before % 2}`;
}

const placeOf = (at: string | number): number => (typeof at === "number" ? at : Date.parse(at) / 3_600_000);

const plainNumber = new Intl.NumberFormat("en", { maximumSignificantDigits: 3 });

const hourText = (at: string | number, locale: string): string =>
  typeof at === "number" ? plainNumber.format(at) : localHourText(at.slice(0, 16), locale);

/** Half of the least distance between two places, to the left and right of which bars need room. */
function barRoom(places: number[]): number {
  const sorted = [...new Set(places)].sort((a, b) => a - b);
  const steps = sorted.slice(1).map((at, i) => at - (sorted[i] ?? at));
  return steps.length > 0 ? Math.min(...steps) / 2 : 1;
}

const placed = (points: readonly (readonly [string | number, number | null])[]): At[] =>
  points.map(([at, value]) => ({ place: placeOf(at), value }));

function outline(
  style: Series["style"],
  points: At[],
  bar: { place: number; of: number; width: number },
  scales: Scales,
): string {
  if (style === "area") return areaOf(points, scales);
  if (style !== "bars" && style !== "points") return lineOf(points, scales);
  const { x, y } = scales;
  const wide = bar.width / bar.of;
  return points
    .flatMap(({ place, value }) => {
      if (value === null) return [];
      // A dot is a line of no length with round ends.
      if (style === "points") return [`M${x(place).toFixed(1)} ${y(value).toFixed(1)}h0`];
      const from = x(place) - bar.width / 2 + bar.place * wide;
      return [`M${from.toFixed(1)} ${TALL}V${y(value).toFixed(1)}h${wide.toFixed(1)}V${TALL}Z`];
    })
    .join("");
}

import type { DraftDetail } from "@pith/contract";
import { type Message, type Reader, render } from "@pith/rules";
import { getTranslations } from "next-intl/server";
import { dayText } from "../format/dates.ts";
import { readerUnit } from "../format/measured.ts";
import { BarRows } from "./BarRows.tsx";
import { ChartBands, placeBands } from "./ChartBands.tsx";

type ChartData = Extract<DraftDetail["answer"], { kind: "advice" }>["charts"][number];
type Series = ChartData["series"][number];

const WIDTH = 1000;
const HEIGHT = 400;

/**
 * A rule's numbers drawn in ink: the first line solid, the next dashed, limits in madder. Beneath it the same in words
 * and as a table. Figures stand beside the plot as text, so that they grow with the reader's type.
 */
export async function Chart({ chart, reader }: { chart: ChartData; reader: Reader }) {
  const t = await getTranslations("chart");
  // The wire cannot name the rules' closed list of units; the messages come from the rules themselves.
  const say = (message: ChartData["title"]) => render(message as Message, reader);
  const y = readerUnit(chart.y.unit, reader.units);
  const series = chart.series.map((s) => ({
    ...s,
    name: say(s.name),
    points: s.points.map(([at, value]) => [at, value === null ? null : y.fromSi(value)] as const),
  }));
  const values = series.flatMap((s) => s.points.flatMap(([, v]) => (v === null ? [] : [v])));
  const places = series.flatMap((s) => s.points.map(([at]) => placeOf(at)));
  if (values.length === 0) return null;
  const yTicks = roundTicks(Math.min(0, ...values), Math.max(...values));
  const [low, high] = [yTicks[0] as number, yTicks.at(-1) as number];
  const room = series.some((s) => s.style === "bars") ? barRoom(places) : 0;
  const [first, last] = [Math.min(...places) - room, Math.max(...places) + room];
  const toX = (at: string | number) => (WIDTH * (placeOf(at) - first)) / Math.max(last - first, 1e-9);
  const toY = (value: number) => HEIGHT - (HEIGHT * (value - low)) / Math.max(high - low, 1e-9);
  const title = say(chart.title);
  const bands = placeBands(chart.bands ?? [], say, (at) => toX(at) / WIDTH);
  const labels = chart.x.labels?.map(say);
  const xText = (at: string | number) => {
    if (chart.x.kind === "date" && typeof at === "string") return dayText(at, at);
    return labels?.[placeOf(at) - 1] ?? hourText(at);
  };
  const columns = [...new Map(series.flatMap((s) => s.points.map(([at]) => [placeOf(at), at] as const)))]
    .sort(([a], [b]) => a - b)
    .map(([, at]) => at);
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
        <div className="chart-plot" aria-hidden="true">
          <ChartBands bands={bands} />
          <div className="chart-y">
            {yTicks.toReversed().map((tick) => (
              <span key={tick}>{figure.format(tick)}</span>
            ))}
          </div>
          <svg
            className="chart-field"
            viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
            preserveAspectRatio="none"
            aria-hidden="true"
          >
            {bands.map(({ letter, from, to }, i) => (
              <g key={letter}>
                {i % 2 === 1 && (
                  <path
                    className="band-field"
                    d={`M${from * WIDTH} 0H${to * WIDTH}V${HEIGHT}H${from * WIDTH}Z`}
                  />
                )}
                {from > 0 && <path className="band-edge" d={`M${from * WIDTH} 0V${HEIGHT}`} />}
              </g>
            ))}
            {yTicks.map((tick) => (
              <path
                key={tick}
                className="chart-grid"
                d={`M0 ${toY(tick)}H${WIDTH}`}
                vectorEffect="non-scaling-stroke"
              />
            ))}
            {series.map((s, index) => (
              <path
                key={s.id}
                className={markOf(chart.series, index)}
                d={outline(s, barOf(index), toX, toY, toY(low))}
              />
            ))}
          </svg>
          <div className="chart-x">
            {[columns[0], columns[Math.floor(columns.length / 2)], columns.at(-1)].map((at, index) => (
              <span key={["from", "middle", "to"][index]}>{at === undefined ? "" : xText(at)}</span>
            ))}
          </div>
        </div>
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
              <th scope="col">{say(chart.x.name)}</th>
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
                <th scope="row">{xText(at)}</th>
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
    return { place: bars.indexOf(index), of: bars.length, width: (WIDTH * 1.4 * room) / (last - first || 1) };
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
    const show = (v: number) => `${figure.format(v)} ${y.label}`;
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
  return style === "line" ? `mark mark-${before % 3}` : `mark mark-${style} mark-${before % 2}`;
}

const placeOf = (at: string | number): number => (typeof at === "number" ? at : Date.parse(at) / 3_600_000);

const plainNumber = new Intl.NumberFormat("en", { maximumSignificantDigits: 3 });

const hourText = (at: string | number): string =>
  typeof at === "number" ? plainNumber.format(at) : at.slice(0, 16).replace("T", " ");

/** Four to six round figures that span the values. */
function roundTicks(low: number, high: number): number[] {
  const span = Math.max(high - low, 1e-6);
  const power = 10 ** Math.floor(Math.log10(span / 4));
  const step = ([1, 2, 2.5, 5, 10].find((m) => span / (m * power) <= 5) ?? 10) * power;
  const from = Math.floor(low / step);
  const to = Math.ceil(high / step);
  return Array.from({ length: to - from + 1 }, (_, i) => Number(((from + i) * step).toPrecision(12)));
}

/** Half of the least distance between two places, to the left and right of which bars need room. */
function barRoom(places: number[]): number {
  const sorted = [...new Set(places)].sort((a, b) => a - b);
  const steps = sorted.slice(1).map((at, i) => at - (sorted[i] ?? at));
  return steps.length > 0 ? Math.min(...steps) / 2 : 1;
}

function outline(
  s: { style: Series["style"]; points: (readonly [string | number, number | null])[] },
  bar: { place: number; of: number; width: number },
  toX: (at: string | number) => number,
  toY: (value: number) => number,
  base: number,
): string {
  const round = (v: number) => Number(v.toFixed(1));
  if (s.style === "bars") {
    const width = bar.width / bar.of;
    const from = (at: string | number) => toX(at) - bar.width / 2 + bar.place * width;
    return s.points
      .flatMap(([at, v]) =>
        v === null ? [] : [`M${round(from(at))} ${base}V${round(toY(v))}h${round(width)}V${base}Z`],
      )
      .join("");
  }
  // A dot is a line of no length with round ends.
  if (s.style === "points")
    return s.points
      .flatMap(([at, v]) => (v === null ? [] : [`M${round(toX(at))} ${round(toY(v))}h0`]))
      .join("");
  // A gap in the data is a gap in the line.
  const runs: string[][] = [[]];
  for (const [at, v] of s.points) {
    if (v === null) runs.push([]);
    else runs.at(-1)?.push(`${round(toX(at))} ${round(toY(v))}`);
  }
  return runs
    .filter((run) => run.length > 0)
    .map((run) => {
      const line = `M${run.join("L")}`;
      if (s.style !== "area") return line;
      return `${line}L${run.at(-1)?.split(" ")[0]} ${base}L${run[0]?.split(" ")[0]} ${base}Z`;
    })
    .join("");
}

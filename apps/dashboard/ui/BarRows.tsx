interface Series {
  id: string;
  style: "line" | "area" | "bars" | "limit" | "points";
  mark: string;
  values: (number | null)[];
}

interface Props {
  labels: string[];
  series: Series[];
  figure: (value: number | null) => string;
}

/** Height of a bar, and the gap around it [px]. */
const BAR = 12;
const GAP = 4;

/** Things that are counted, not measured along a line: each in its own row, bars from nought, a limit as a stroke across. */
export function BarRows({ labels, series, figure }: Props) {
  const values = series.flatMap((s) => s.values.map((v) => v ?? 0));
  const bars = series.filter((s) => s.style === "bars");
  // Where nothing is counted, rows are intervals, and those may lie below nought.
  const least = bars.length > 0 ? 0 : Math.min(0, ...values);
  const most = Math.max(...values, 1e-9);
  const percent = (value: number) =>
    `${Number(((100 * (Math.max(least, value) - least)) / (most - least)).toFixed(2))}%`;
  const rows = labels.map((label, i) => ({ label, i }));
  const height = GAP + Math.max(1, bars.length) * (BAR + GAP);
  return (
    <div className="bar-rows" aria-hidden="true">
      {rows.map(({ label, i }) => (
        <div key={i} className="bar-row">
          <span>{label}</span>
          <span className="number">
            {(bars.length > 0 ? bars : series).map((s) => figure(s.values[i] ?? null)).join(" · ")}
          </span>
          <svg height={height} aria-hidden="true">
            {bars.length === 0 && (
              <Interval values={series.map((s) => s.values[i] ?? null)} {...{ percent, height }} />
            )}
            {bars.map((s, k) => (
              <rect
                key={s.id}
                className={s.mark}
                x="0"
                y={GAP + k * (BAR + GAP)}
                width={percent(s.values[i] ?? 0)}
                height={BAR}
              />
            ))}
            {series.map((s) => {
              const value = s.values[i];
              if (s.style === "bars" || value === null || value === undefined) return null;
              return (
                <line
                  key={s.id}
                  className={s.mark}
                  x1={percent(value)}
                  x2={percent(value)}
                  y1="0"
                  y2={height}
                />
              );
            })}
          </svg>
        </div>
      ))}
    </div>
  );
}

/** A hairline through nought, and a line from the least to the most of a row. */
function Interval({
  values,
  percent,
  height,
}: {
  values: (number | null)[];
  percent: (value: number) => string;
  height: number;
}) {
  const known = values.filter((value) => value !== null);
  return (
    <>
      <line className="chart-grid" x1={percent(0)} x2={percent(0)} y1="0" y2="100%" />
      {known.length > 1 && (
        <line
          className="mark"
          x1={percent(Math.min(...known))}
          x2={percent(Math.max(...known))}
          y1={height / 2}
          y2={height / 2}
        />
      )}
    </>
  );
}

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
  const most = Math.max(...series.flatMap((s) => s.values.map((v) => v ?? 0)), 1e-9);
  const percent = (value: number) => `${Number(((100 * Math.max(0, value)) / most).toFixed(2))}%`;
  const bars = series.filter((s) => s.style === "bars");
  const rows = labels.map((label, i) => ({ label, i }));
  const height = GAP + bars.length * (BAR + GAP);
  return (
    <div className="bar-rows" aria-hidden="true">
      {rows.map(({ label, i }) => (
        <div key={i} className="bar-row">
          <span>{label}</span>
          <span className="number">{bars.map((s) => figure(s.values[i] ?? null)).join(" · ")}</span>
          <svg height={height} aria-hidden="true">
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

import type { DraftDetail } from "@pith/contract";

type BandData = NonNullable<
  Extract<DraftDetail["answer"], { kind: "advice" }>["charts"][number]["bands"]
>[number];

/** A named stretch of a chart; `from` and `to` are shares of its width. */
interface Band {
  letter: string;
  name: string;
  starts: BandData["from"];
  ends: BandData["to"];
  from: number;
  to: number;
}

/** Letters of a wide plot that fit into its whole width. */
const LETTERS_ACROSS = 100;

/** The bands that lie in the plot, each with the letter it is known by. */
export function placeBands(
  bands: BandData[],
  say: (name: BandData["name"]) => string,
  share: (at: string | number) => number,
): Band[] {
  const inside = (at: string | number) => Math.min(1, Math.max(0, share(at)));
  return bands
    .map(({ name, from, to }) => ({
      name: say(name),
      starts: from,
      ends: to,
      from: inside(from),
      to: inside(to),
    }))
    .filter(({ from, to }) => to > from)
    .map((band, i) => ({ ...band, letter: String.fromCharCode(97 + i) }));
}

/** A bracket over each band with its letter, and its name where there is room; the key beneath names them all. */
export function ChartBands({ bands }: { bands: Band[] }) {
  if (bands.length === 0) return null;
  const percent = (share: number) => `${Number((share * 100).toFixed(2))}%`;
  return (
    <svg className="chart-bands" aria-hidden="true">
      {bands.map(({ letter, name, from, to }) => (
        <g key={letter}>
          <line x1={percent(from + 0.002)} x2={percent(to - 0.002)} y1="20" y2="20" />
          <text x={percent((from + to) / 2)} y="14">
            {letter}
            {name.length + 2 < (to - from) * LETTERS_ACROSS && (
              <tspan className="band-name">{`\u2002${name}`}</tspan>
            )}
          </text>
        </g>
      ))}
    </svg>
  );
}

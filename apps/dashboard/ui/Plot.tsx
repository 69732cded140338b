import type { ReactNode } from "react";
import { type Scales, TALL, TICKS, WIDE } from "./scales.ts";

/** Letters of a name of which only two fit beneath a field on a phone. */
const LONG = 14;

interface Props {
  scales: Scales;
  figure: (value: number) => string;
  /** Named beneath the field, each where it stands. */
  named: readonly { place: number; text: string }[];
  above?: ReactNode;
  children: ReactNode;
}

/** A name near an end of the field stays within it, also with a unit and on a phone. */
const anchorOf = (at: number) => (at < WIDE * 0.04 ? "start" : at > WIDE * 0.86 ? "end" : "middle");

/** A field of ink with its figures beside it as text, so that they grow with the reader's type. */
export function Plot({ scales, figure, named, above, children }: Props) {
  const { x, y } = scales;
  const ticks = y.ticks(TICKS);
  return (
    <div className="chart-plot" aria-hidden="true">
      {above}
      <div className="chart-y">
        {ticks.toReversed().map((tick) => (
          <span key={tick}>{figure(tick)}</span>
        ))}
      </div>
      <svg
        className="chart-field"
        viewBox={`0 0 ${WIDE} ${TALL}`}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        {ticks.map((tick) => (
          <path
            key={tick}
            className="chart-grid"
            d={`M0 ${y(tick)}H${WIDE}`}
            vectorEffect="non-scaling-stroke"
          />
        ))}
        {children}
      </svg>
      <svg className="chart-x" aria-hidden="true">
        {named.map(({ place, text }) => (
          <text
            key={place}
            x={`${((x(place) / WIDE) * 100).toFixed(2)}%`}
            y="1em"
            className={text.length > LONG ? "long" : undefined}
            textAnchor={anchorOf(x(place))}
          >
            {text}
          </text>
        ))}
      </svg>
    </div>
  );
}

import { addDays } from "@pith/rules";
import { type Axis, shareOf } from "./axis.ts";
import type { Mark } from "./marks.ts";

/** One lane drawn in ink: what came is full, what is planned open, a forecast a line with ends, a closed span hatched. */
export function Strip({ axis, today, marks }: { axis: Axis; today: string; marks: Mark[] }) {
  return (
    <svg className="lane-strip" aria-hidden="true" focusable="false">
      <Ground axis={axis} today={today} />
      {marks.map((mark) => (
        <Drawn key={JSON.stringify(mark)} mark={mark} axis={axis} />
      ))}
    </svg>
  );
}

/** The months as hairlines and today's line; drawn in each lane, so that they run through all. */
export function Ground({ axis, today }: { axis: Axis; today: string }) {
  return (
    <>
      {axis.months.map(({ on }) => (
        <line key={on} className="lane-month" x1={at(axis, on)} x2={at(axis, on)} y1="0" y2="100%" />
      ))}
      {today >= axis.from && today <= axis.to && (
        <line className="lane-today" x1={at(axis, today)} x2={at(axis, today)} y1="0" y2="100%" />
      )}
    </>
  );
}

export const at = (axis: Axis, day: string): string => `${(shareOf(axis, day) * 100).toFixed(2)}%`;

const width = (axis: Axis, from: string, to: string): string =>
  `${((shareOf(axis, to) - shareOf(axis, from)) * 100).toFixed(2)}%`;

function Drawn({ mark, axis }: { mark: Mark; axis: Axis }) {
  const x = (day: string) => at(axis, day);
  switch (mark.kind) {
    case "done":
    case "planned":
      return <circle className={`lane-${mark.kind}`} cx={x(mark.on)} cy="50%" r="5" />;
    case "event":
      return <line className="lane-event" x1={x(mark.on)} x2={x(mark.on)} y1="22%" y2="78%" />;
    case "forecast": {
      const high = mark.high ?? axis.to;
      return (
        <g className={mark.high === null ? "lane-forecast open" : "lane-forecast"}>
          <line x1={x(mark.low)} x2={x(high)} y1="50%" y2="50%" />
          <line x1={x(mark.low)} x2={x(mark.low)} y1="32%" y2="68%" />
          {mark.high !== null && <line x1={x(high)} x2={x(high)} y1="32%" y2="68%" />}
          <circle cx={x(mark.likely)} cy="50%" r="4.5" />
        </g>
      );
    }
    case "window": {
      const to = mark.to ?? axis.to;
      return (
        <g className="lane-window">
          <rect x={x(mark.from)} width={width(axis, mark.from, to)} y="24%" height="52%" />
          <line x1={x(mark.from)} x2={x(mark.from)} y1="12%" y2="88%" />
          {mark.to !== null && mark.to <= axis.to && <line x1={x(to)} x2={x(to)} y1="12%" y2="88%" />}
        </g>
      );
    }
    case "closed":
      return (
        <rect
          className="lane-closed"
          x={x(mark.from)}
          // Closed and open again on one day is still to be seen.
          width={width(axis, mark.from, mark.to > mark.from ? mark.to : addDays(mark.from, 1))}
          y="18%"
          height="64%"
        />
      );
  }
}

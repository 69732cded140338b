import { type Reader, render } from "@pith/rules";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { monthText } from "../../format/dates.ts";
import { RuleName } from "../../ui/RuleName.tsx";
import type { Axis } from "./axis.ts";
import type { Mark } from "./marks.ts";
import { at, Ground, Strip } from "./Strip.tsx";
import { TimelineTable } from "./TimelineTable.tsx";
import type { Lane, Timeline as Season } from "./timeline.ts";
import { whenOf } from "./when.ts";

interface Props {
  season: Season;
  reader: Reader;
  caption: string;
}

/**
 * A planting's season: days, stages, what advice is open for and what happened, lane by lane over one axis of time. Each
 * lane says in words when; beneath, the same as a table by day.
 */
export async function Timeline({ season, reader, caption }: Props) {
  const t = await getTranslations("timeline");
  const { axis, today, groups } = season;
  return (
    <figure className="season">
      <figcaption className="unseen">{caption}</figcaption>
      <svg className="season-patterns" aria-hidden="true" focusable="false">
        <pattern id="closed-hatch" width="6" height="6" patternUnits="userSpaceOnUse">
          <path d="M-1 7 7 -1M-1 1 1 -1M5 7 7 5" />
        </pattern>
      </svg>
      {groups.map(({ id, lanes }, i) => (
        <section key={id} className="season-group" aria-label={t(`groups.${id}`)}>
          <div className="lane-head">
            <h3>{t(`groups.${id}`)}</h3>
            <Months axis={axis} today={today} todayWord={i === 0 ? t("today") : null} />
          </div>
          <dl className="lanes">
            {lanes.map((lane) => (
              <div key={lane.id} className="lane">
                <dt>
                  <LaneName lane={lane} reader={reader} />
                </dt>
                <dd className="lane-drawn">
                  <Strip axis={axis} today={today} marks={lane.marks} />
                </dd>
                <dd className="lane-when">{whenOf(lane, t)}</dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
      <Key kinds={new Set(groups.flatMap((g) => g.lanes.flatMap((l) => l.marks.map((m) => m.kind))))} />
      <TimelineTable season={season} reader={reader} />
    </figure>
  );
}

async function LaneName({ lane, reader }: { lane: Lane; reader: Reader }) {
  const t = await getTranslations("timeline");
  if (lane.name === null) return t(`lanes.${lane.id}` as "lanes.sown");
  if ("stage" in lane.name) return render(lane.name.stage, reader);
  const name = <RuleName id={lane.name.rule} />;
  return lane.href === undefined ? name : <Link href={lane.href}>{name}</Link>;
}

/** The months by name over a group's lanes, and today's word over its line. */
function Months({ axis, today, todayWord }: { axis: Axis; today: string; todayWord: string | null }) {
  const late = axis.months.length > 0 && today > (axis.months.at(-1)?.on ?? "");
  return (
    <svg className="lane-months" aria-hidden="true" focusable="false">
      <Ground axis={axis} today={today} />
      {axis.months.map(
        ({ on, labelled }) =>
          labelled && (
            <text key={on} x={at(axis, on)} dx="4" y="92%">
              {monthText(on)}
              {on.endsWith("-01-01") && <tspan className="lane-year">{`\u2002${on.slice(0, 4)}`}</tspan>}
            </text>
          ),
      )}
      {todayWord !== null && today >= axis.from && today <= axis.to && (
        <text
          className="lane-today-word"
          x={at(axis, today)}
          dx={late ? "-5" : "5"}
          y="38%"
          textAnchor={late ? "end" : "start"}
        >
          {todayWord}
        </text>
      )}
    </svg>
  );
}

const SAMPLES: Mark[] = [
  { kind: "done", on: "2001-01-11" },
  { kind: "planned", on: "2001-01-11" },
  { kind: "forecast", low: "2001-01-02", likely: "2001-01-11", high: "2001-01-20" },
  { kind: "window", from: "2001-01-03", to: "2001-01-19" },
  { kind: "event", on: "2001-01-11" },
  { kind: "closed", from: "2001-01-03", to: "2001-01-19" },
];
const SAMPLE_AXIS: Axis = { from: "2001-01-01", to: "2001-01-21", months: [] };

/** What each kind of mark says, of those that are drawn. */
async function Key({ kinds }: { kinds: Set<Mark["kind"]> }) {
  const t = await getTranslations("timeline");
  return (
    <ul className="chart-key season-key">
      {SAMPLES.filter(({ kind }) => kinds.has(kind)).map((mark) => (
        <li key={mark.kind}>
          <Strip axis={SAMPLE_AXIS} today="" marks={[mark]} />
          {t(`marks.${mark.kind}`)}
        </li>
      ))}
    </ul>
  );
}

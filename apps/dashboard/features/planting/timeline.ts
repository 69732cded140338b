import type { FarmDetail, Planting, Records } from "@pith/contract";
import { addDays, type Message } from "@pith/rules";
import { dayAt } from "../../format/dates.ts";
import { type Axis, axisOf } from "./axis.ts";
import { coldNightsOf } from "./coldNights.ts";
import { type Drawn, WINDOW_RULES } from "./drawn.ts";
import type { Mark } from "./marks.ts";

/** One planting's season as lanes over one ruled axis of time; without words, so that it can be drawn and told alike. */

export interface Lane {
  id: string;
  /** A stage or a rule's window names itself; everything else is named by its id. */
  name: { stage: Message } | { rule: string } | null;
  /** The advice that it comes from. */
  href?: string;
  marks: Mark[];
}

const GROUPS = ["days", "stages", "windows", "happened"] as const;
type GroupId = (typeof GROUPS)[number];

export interface Timeline {
  axis: Axis;
  today: string;
  groups: { id: GroupId; lanes: Lane[] }[];
}

interface Given {
  planting: Planting;
  detail: FarmDetail;
  records: Records;
  drawn: Drawn[];
  today: string;
}

export function timelineOf(given: Given): Timeline {
  const lanes: Record<GroupId, Lane[]> = {
    days: daysOf(given.planting),
    stages: stagesOf(given.drawn),
    windows: windowsOf(given.drawn, given.today),
    happened: happenedOf(given),
  };
  const groups = GROUPS.map((id) => ({ id, lanes: lanes[id].filter((l) => l.marks.length > 0) })).filter(
    (group) => group.lanes.length > 0,
  );
  const marks = groups.flatMap((group) => group.lanes.flatMap((lane) => lane.marks));
  return { axis: axisOf(marks, given.planting, given.today), today: given.today, groups };
}

const day = (kind: "done" | "planned", on: string | null): Mark[] => (on === null ? [] : [{ kind, on }]);

function daysOf({ sownOn, plannedSetOutOn, setOutOn, endedOn }: Planting): Lane[] {
  return [
    { id: "sown", name: null, marks: day("done", sownOn) },
    {
      id: "set-out",
      name: null,
      marks: [
        ...(setOutOn === plannedSetOutOn ? [] : day("planned", plannedSetOutOn)),
        ...day("done", setOutOn),
      ],
    },
    { id: "cleared", name: null, marks: day("done", endedOn) },
  ];
}

/** Rows of the rule's table of stages: name, how it is known, earliest, likely, latest. */
function stagesOf(drawn: Drawn[]): Lane[] {
  const found = drawn.find((one) => one.ruleId === "stage");
  if (found?.answer.kind !== "advice") return [];
  const { answer, href } = found;
  const rows = answer.table?.find((table) => table.id === "stages")?.rows ?? [];
  return rows.flatMap(([name, how, low, likely, high], i): Lane[] => {
    if (!isMessage(name) || !isMessage(how)) return [];
    const noted = how.key === "stage.how.noted";
    const marks: Mark[] =
      typeof low !== "string" || typeof likely !== "string"
        ? []
        : noted
          ? [{ kind: "done", on: likely }]
          : [{ kind: "forecast", low, likely, high: typeof high === "string" ? high : null }];
    return [{ id: `stage-${i}`, name: { stage: name as Message }, href, marks }];
  });
}

const isMessage = (cell: unknown): cell is { key: string; params: object } =>
  typeof cell === "object" && cell !== null && "key" in cell;

function windowsOf(drawn: Drawn[], today: string): Lane[] {
  return WINDOW_RULES.flatMap((ruleId): Lane[] =>
    drawn
      .filter((one) => one.ruleId === ruleId)
      .flatMap(({ href, answer }) => {
        if (answer.kind !== "advice") return [];
        const { from, to } = answer.window;
        if (from === null && to === null) return [];
        return [
          {
            id: ruleId,
            name: { rule: ruleId },
            href,
            marks: [{ kind: "window", from: from ?? today, to }],
          },
        ];
      }),
  );
}

function happenedOf({ planting, detail, records, drawn }: Given): Lane[] {
  const events = (id: string, days: string[]): Lane => ({
    id,
    name: null,
    marks: [...new Set(days)].sort().map((on) => ({ kind: "event", on })),
  });
  const bed = detail.beds.find((one) => one.id === planting.bedId);
  const zone = detail.sites.find((one) => one.id === bed?.siteId)?.timeZone;
  const stood = (on: string) =>
    on >= planting.sownOn && (planting.endedOn === null || on <= planting.endedOn);
  const sprays = records.sprays
    .map((spray) => ({ ...spray, on: dayAt(spray.at, zone) }))
    .filter(({ on }) => stood(on))
    .toReversed();
  const until = ({ at, reEntryHours }: (typeof sprays)[number]) =>
    dayAt(new Date(Date.parse(at) + reEntryHours * 3_600_000), zone);
  const closed = (id: string, spans: { from: string; to: string }[]): Lane => ({
    id,
    name: null,
    marks: spans.map((span) => ({ kind: "closed", ...span })),
  });
  const days = (list: { on: string }[]) => list.map(({ on }) => on).filter(stood);
  return [
    events("fed", days(records.applications)),
    events("watered", days(records.waterings)),
    events("signs", days(records.signs)),
    events("sprayed", days(sprays)),
    closed(
      "closed-work",
      sprays.filter((s) => s.reEntryHours > 0).map((s) => ({ from: s.on, to: until(s) })),
    ),
    closed(
      "closed-picking",
      sprays
        .filter((s) => s.preHarvestDays > 0)
        .map((s) => ({ from: s.on, to: addDays(s.on, s.preHarvestDays) })),
    ),
    events("picked", days(records.harvests)),
    events("cold", coldNightsOf(drawn)),
    events("noted", days(records.notes)),
  ];
}

import type { Table } from "../../core/rule.ts";
import { dateRange } from "../../growth/dates.ts";
import { stageHeatAbove } from "../../growth/prior.ts";
import type { Growth } from "../../growth/stages.ts";
import { STAGE_SPREAD, type StageId, TABLE_SPREAD } from "../../tables/stageHeat.ts";
import { type Message, measure, onDay, say } from "../../text/message.ts";

const column = (key: string) => ({ name: say(`stage.column.${key}`) });

/** Every stage with its day: noted, or the earliest, the likely and the latest. */
export function stagesTable(g: Growth): Table {
  return {
    id: "stages",
    title: say("stage.table.stages"),
    columns: ["stage", "how", "low", "likely", "high"].map(column),
    rows: g.stages.map((s) => [
      say(`stage.name.${s.stage}`),
      say(s.notedOn === null ? "stage.how.forecast" : "stage.how.noted"),
      s.dates.low,
      s.dates.likely,
      s.dates.high,
    ]),
  };
}

/** The first pick as the farm's own seasons, the seed list and the table of heat have it; the one in force says so. */
export function sourcesTable(g: Growth, picked: StageId): Table {
  const { prior } = g;
  const asked = stageHeatAbove(picked, g.base.baseC);
  const byHeat = dateRange(g.course, {
    mean: asked,
    sd: asked * Math.hypot(TABLE_SPREAD, STAGE_SPREAD),
  }).likely;
  const inForce = (from: typeof prior.from): Message =>
    say(prior.from === from ? "stage.in-force.yes" : "stage.in-force.no");
  return {
    id: "sources",
    title: say("stage.table.sources", { stage: { word: `stage.name.${picked}` } }),
    columns: ["source", "says", "counted"].map(column),
    rows: [
      ...(prior.ownDays === null
        ? []
        : [
            [
              say("stage.source.own", { n: prior.own.length }),
              say("stage.says.days-out", { days: measure(prior.ownDays, "days") }),
              inForce("own"),
            ],
          ]),
      ...(prior.list
        ? [
            [
              say(`stage.source.list-${prior.list.stage}`),
              say(`stage.says.list-${prior.list.from}`, {
                days: measure(prior.list.days, "days"),
                day: onDay(prior.list.day),
              }),
              prior.list.share === null ? say("stage.in-force.no-years") : inForce("list"),
            ],
          ]
        : []),
      [say("stage.source.table"), byHeat ?? say("stage.says.no-day"), inForce("table")],
    ],
  };
}

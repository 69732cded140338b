import { addDays, localDay } from "../core/days.ts";
import { Working } from "../core/working.ts";
import type { Asked } from "../rules/hotter/ask.ts";
import { lineChart, yieldChart } from "../rules/hotter/chart.ts";
import { lineOfZone, recentDemand, startOf, writeLine } from "../rules/hotter/line.ts";
import { yieldLossOf } from "../rules/hotter/loss.ts";
import { weight } from "../soil-acidity/weight.ts";
import type { ValveState } from "../states/states.ts";
import { measure, onDay, say } from "../text/message.ts";
import { SEASON_DAYS } from "../water/stages.ts";
import { type Saying, saying } from "./saying.ts";

/**
 * What it does to the plants if so much of their water is withheld, by hotter's own reckoning and whether or not it would
 * agree to it: how dry they would get, and what it costs.
 */
export function sayWater(valve: ValveState, withheldPct: number): Saying {
  const asked = withheldPct > 0 && askedFor(valve, (100 - withheldPct) / 100);
  const demand = asked && recentDemand(asked);
  if (!asked || !demand) return saying();
  const zones = asked.zones.flatMap((entry) => lineOfZone(asked, entry, demand) ?? []);
  const [governing] = zones.toSorted((a, b) => a.cycleDays - b.cycleDays);
  if (!governing || zones.length < asked.zones.length) return saying();
  const w = new Working();
  writeLine(w, asked, governing, demand);
  const loss = yieldLossOf(asked, governing, zones, w);
  const { lineMm, rawMm } = governing.on(startOf(asked));
  return saying(
    [
      say("what-if.water.line", {
        withheld: measure(withheldPct, "pct"),
        line: measure(lineMm, "mm"),
        raw: measure(rawMm, "mm"),
      }),
      say("what-if.water.loss", {
        from: onDay(startOf(asked)),
        until: onDay(asked.to ?? addDays(governing.zone.setOutOn, SEASON_DAYS)),
        loss: measure(loss.lossPct, "pct"),
        plantings: asked.zones.length,
      }),
      ...(loss.kg === undefined ? [] : [say("what-if.water.kg", { kg: weight(loss.kg) })]),
    ],
    { working: w, charts: [yieldChart(asked, loss), lineChart(asked, governing)] },
  );
}

/** All that stands on the valve, in one strength, from the day that somebody named, else from today. */
function askedFor(state: ValveState, etShare: number): Asked | undefined {
  const today = localDay(state.asOf, state.site.timeZone);
  const [first, ...rest] = state.zones.flatMap((zone, index) => {
    const { setOutOn, endedOn } = zone.planting;
    if (setOutOn === undefined || setOutOn > today || (endedOn !== undefined && endedOn <= today)) return [];
    return [{ zone: { ...zone, setOutOn }, index }];
  });
  if (!first) return undefined;
  const { from = today, to } = first.zone.planting.deficit ?? {};
  return { state, today, zones: [first, ...rest], etShare, chosen: true, from, to };
}

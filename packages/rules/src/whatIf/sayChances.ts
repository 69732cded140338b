import { Working } from "../core/working.ts";
import { assessmentOf } from "../rules/set-out/day.ts";
import type { PlantingState } from "../states/states.ts";
import { measure, onDay, say, wordOf } from "../text/message.ts";
import { type Saying, saying } from "./saying.ts";

const WILSON = { key: "wilson-1927", locator: "score interval, 80 %" };
const percent = (share: number) => measure(100 * share, "pct");

/** What set-out reckons for the wanted day under what stands over the bed then. */
export function sayChances(state: PlantingState): Saying {
  if (!state.climatology) return saying();
  const a = assessmentOf(state, state.climatology);
  const date = a.asItStands.curve[a.wanted];
  if (!date?.beyond || !date.frost || !date.degreeHours) return saying();
  const { beyond, frost, degreeHours, n } = date;
  const allowed = a.line.allowedOn(a.wanted);
  const w = new Working();
  const covers = a.cover.covers.join(" + ") || "none";
  w.line("cover", "what stands over the bed on that day", "state", covers, "");
  w.line(
    "dT cover",
    "the night's minimum under it, above the air outside",
    "the low end of what is published",
    a.cover.offsetC,
    "C",
    a.cover.source,
  );
  w.line(
    "P",
    `chance of more than ${allowed.nights} nights or ${allowed.degreeHours} degree-hours below ${a.line.floorC} C in a fortnight`,
    `${beyond.hits} of ${n} years`,
    beyond.estimate,
    "fraction",
    WILSON,
  );
  w.line("P low", "its interval, with the site's and the years' doubt", "low end", beyond.low, "fraction");
  w.line("P high", "its interval, with the site's and the years' doubt", "high end", beyond.high, "fraction");
  w.line("P accepted", "what is accepted", "the office's, or the default", a.line.acceptedRisk, "fraction");
  w.line(
    "P frost",
    "chance of frost at the plants in that fortnight",
    `${date.frosts} of ${n} years`,
    frost.estimate,
    "fraction",
    WILSON,
  );
  w.line(
    "D50",
    "degree-hours below the floor in the middle year",
    "median of the years",
    degreeHours.p50,
    "C h",
  );
  w.line(
    "D90",
    "degree-hours below the floor in a cold year",
    "ninth tenth of the years",
    degreeHours.p90,
    "C h",
  );
  return saying(
    [
      say("what-if.set-out.chance", {
        day: onDay(date.day),
        cover: wordOf(`what-if.cover.${coverWord(a.cover.covers)}`),
        beyond: percent(beyond.estimate),
        low: percent(beyond.low),
        high: percent(beyond.high),
        accepted: percent(a.line.acceptedRisk),
        frost: percent(frost.estimate),
        frostAccepted: percent(a.line.frostRisk),
      }),
      say("what-if.set-out.dose", {
        middle: measure(degreeHours.p50, "C-hours"),
        cold: measure(degreeHours.p90, "C-hours"),
        floor: measure(a.line.floorC, "C"),
        allowed: measure(allowed.degreeHours, "C-hours"),
      }),
    ],
    { working: w },
  );
}

function coverWord(covers: readonly string[]): string {
  if (covers.includes("low-tunnel") && covers.includes("fleece")) return "fleece-and-low-tunnel";
  return covers[0] ?? "none";
}

import { addDays } from "../../core/days.ts";
import type { Step } from "../../core/rule.ts";
import type { Rest } from "../../layout/rest.ts";
import { type Message, measure, onDay, say, wordOf } from "../../text/message.ts";
import { INSIDE_LIMIT_C } from "../../warmth/ventMark.ts";
import type { Assessment } from "./assess.ts";
import { earliestLead } from "./earliest.ts";
import { keptOutParams } from "./keptOut.ts";
import { HARDENING_DAYS, READY_LEAVES, SOIL_FLOOR_C } from "./line.ts";
import type { Weighed } from "./weigh.ts";
import { weighSteps } from "./weighWords.ts";

/** What to do, in the order in which a grower would do it. */
export function setOutSteps(a: Assessment, weighed: Weighed | null, kept: Rest | undefined): Step[] {
  const wanted = a.asItStands.curve[a.wanted];
  const soilC = a.soilC[a.wanted] ?? Number.NaN;
  const steps: (Message | null)[] = [
    kept ? say("set-out.step.kept-out", keptOutParams(kept)) : null,
    a.decision === "wait" ? say("set-out.step.keep-warm", { c: measure(16, "C") }) : null,
    a.line.hardened
      ? null
      : say("set-out.step.harden", {
          days: measure(HARDENING_DAYS, "days"),
          day: onDay(addDays(a.today, HARDENING_DAYS)),
        }),
    a.line.leaves !== null && a.line.leaves < READY_LEAVES
      ? say("set-out.step.leaves", { leaves: a.line.leaves, ready: READY_LEAVES })
      : null,
    soilC < SOIL_FLOOR_C
      ? say("set-out.step.warm-soil", {
          day: onDay(wanted?.day ?? a.today),
          c: measure(soilC, "C"),
          floor: measure(SOIL_FLOOR_C, "C"),
        })
      : null,
    a.soil?.how === "measured"
      ? null
      : say("set-out.step.soil-thermometer", { c: measure(SOIL_FLOOR_C, "C") }),
    ...(a.decision === "wait" ? waitingSteps(a) : settingSteps(a)),
    ...coverSteps(a),
    ...weighSteps(a, weighed),
    wanted ? say("set-out.step.chance", chanceOf(a)) : null,
  ];
  return steps.flatMap((text) => (text ? [{ text }] : []));
}

function waitingSteps(a: Assessment): Message[] {
  const alternative = a.laterProtection;
  const lead = alternative?.way.earliest ?? null;
  const day = lead === null ? undefined : alternative?.way.curve[lead]?.day;
  return [
    ...(alternative && day !== undefined
      ? [
          say("set-out.step.earlier-with", {
            protection: { word: `set-out.protection.${alternative.kind.id}` },
            day: onDay(day),
          }),
          say("set-out.step.vent", { c: measure(INSIDE_LIMIT_C, "C") }),
        ]
      : []),
    say("set-out.step.ask-again"),
  ];
}

function settingSteps(a: Assessment): Message[] {
  return [
    ...(a.decision === "protect" && a.protection
      ? [
          say("set-out.step.put-up", {
            protection: { word: `set-out.protection.${a.protection.kind.id}` },
            c: measure(a.protection.kind.offsetC, "C-difference"),
          }),
        ]
      : []),
    say("set-out.step.evening"),
  ];
}

/** "Uncover or vent by" goes with every cover. */
function coverSteps(a: Assessment): Message[] {
  const standing = a.cover.covers;
  const removable =
    a.decision === "protect" || standing.includes("fleece") || standing.includes("low-tunnel");
  if (a.decision === "wait" && standing.length === 0) return [];
  if (!removable && standing.length === 0) return [];
  const openEarliest = earliestLead(a.open.within, a.wanted);
  const openDay = openEarliest === null ? undefined : a.open.curve[openEarliest]?.day;
  const vent = say("set-out.step.vent", { c: measure(INSIDE_LIMIT_C, "C") });
  if (!removable) return [vent];
  return [
    vent,
    openDay === undefined
      ? say("set-out.step.uncover-flowers")
      : say("set-out.step.uncover", { day: onDay(openDay) }),
  ];
}

function chanceOf(a: Assessment) {
  const way = a.protection?.way ?? a.asItStands;
  const lead = a.decision === "wait" ? (a.asItStands.earliest ?? a.wanted) : a.wanted;
  const date = way.curve[lead];
  const allowed = a.line.allowedOn(lead);
  const under = a.protection?.kind.id ?? (a.standsOn(lead) ? "standing" : "none");
  const pct = (p: number | undefined) => measure(100 * (p ?? 0), "pct");
  return {
    day: onDay(date?.day ?? a.today),
    cover: wordOf(`set-out.under.${under}`),
    beyond: pct(date?.beyond?.estimate),
    low: pct(date?.beyond?.low),
    high: pct(date?.beyond?.high),
    n: date?.n ?? 0,
    nights: allowed.nights,
    degreeHours: measure(allowed.degreeHours, "C-hours"),
    floor: measure(a.line.floorC, "C"),
    hits: date?.beyond?.hits ?? 0,
    frosts: date?.frosts ?? 0,
  };
}

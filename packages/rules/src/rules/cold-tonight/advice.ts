import { cautionsFor } from "../../cautions/register.ts";
import { epochDay, localDay } from "../../core/days.ts";
import type { AdviceBody, Case } from "../../core/rule.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Message, measure, say, wordOf } from "../../text/message.ts";
import { clockAt } from "../../warmth/nightOf.ts";
import { nightChart } from "./chart.ts";
import { actBy, harmOf, type Judged } from "./judge.ts";
import { byWhen, stepsOf, uncover } from "./steps.ts";
import { FROST_C, KILLED_C } from "./thresholds.ts";
import { nightWorking } from "./working.ts";

/** Ways that tell the minimum less than this apart agree. */
const AGREE_C = 0.5;

/** The warning for one night. */
export function adviceFrom(state: PlantingState, j: Judged): AdviceBody {
  const { night, decision } = j;
  const { working, estimated } = nightWorking(state, j);
  const mayFreeze = decision === "cover-tonight" && j.lowC <= FROST_C;
  return {
    kind: "advice",
    decision: {
      code: decision,
      text: say(`cold-tonight.decision.${mayFreeze ? "cover-tonight-may-freeze" : decision}`, {
        minimum: measure(j.plants.minimumC, "C"),
        floor: measure(j.floor.floorC, "C"),
        phase: wordOf(`cold-tonight.phase.${j.floor.phase}`),
        sunrise: clockAt(night.sunrise, state.site.timeZone),
        time: byWhen(state, j).time ?? "",
      }),
    },
    steps: stepsOf(state, j),
    window: {
      from: localDay(state.asOf, state.site.timeZone),
      to: night.morningDay,
      endsBy: say("cold-tonight.ends"),
    },
    stakes: {
      harm: harmOf(j),
      reason: say(`cold-tonight.stakes.${stakesKey(j)}`, {
        frost: measure(FROST_C, "C"),
        killed: measure(KILLED_C, "C"),
      }),
      actBy: new Date(actBy(j)).toISOString(),
    },
    working,
    estimated,
    evidence: evidenceOf(j),
    grade: "weak",
    limits: limitsOf(state, j),
    cautions: cautionsFor(...cautionsOf(j)),
    wouldChange: wouldChange(state, j),
    cases: casesOf(state, j),
    expected: { kind: "look", date: night.morningDay },
    amounts: {
      degreesBelow: Math.max(0, Math.ceil(j.floor.floorC - j.plants.minimumC)),
      // Each night is a warning of its own: the number differs from the night before, so that draft is replaced.
      night: 1 + (epochDay(night.morningDay) % 2),
    },
    charts: [nightChart(state, j)],
  };
}

const stakesKey = ({ plants, lowC, stand }: Judged): string => {
  if (plants.minimumC <= FROST_C) return "frost";
  if (lowC <= FROST_C) return "may-freeze";
  return stand === "inside" ? "slow" : "chill";
};

function evidenceOf({ plants, floor, stand }: Judged): string[] {
  const ways = new Set(plants.ways.map((way) => way.id));
  return [
    "cold-tonight.killed",
    "cold-tonight.floors",
    ...(floor.phase === "flowering" ? ["cold-tonight.flowers", "cold-tonight.parthenocarpic"] : []),
    ...(floor.phase === "fruit" ? ["cold-tonight.fruit"] : []),
    ...(ways.has("own-clear-nights") ? ["cold-tonight.own-nights"] : []),
    ...(ways.has("calm-cooling") ? ["cold-tonight.calm-cooling"] : []),
    ...(stand === "bed" ? ["cold-tonight.covers"] : []),
    "cold-tonight.fresh-forecast",
  ];
}

function cautionsOf({ stand, lowC }: Judged): string[] {
  const frost = lowC <= FROST_C;
  if (stand === "inside") return ["night-heat-fire"];
  if (stand === "trays") return frost ? ["cold-pools"] : [];
  return ["cover-overheats", "cold-pools", ...(frost ? ["frost-fire-and-ice", "frost-water"] : [])];
}

function limitsOf(state: PlantingState, j: Judged): Message[] {
  const { plants, outside, stand, floor } = j;
  const warmest = plants.ways.at(-1)?.minimumC ?? plants.minimumC;
  const paired = state.site.stationOffset?.nights ?? 0;
  return [
    say("cold-tonight.limit.no-chance"),
    ...(warmest - plants.minimumC >= AGREE_C
      ? [
          say("cold-tonight.limit.ways", {
            coldest: measure(plants.minimumC, "C"),
            warmest: measure(warmest, "C"),
            way: wordOf(`cold-tonight.way.${plants.ways[0]?.id ?? "forecast"}`),
            other: wordOf(`cold-tonight.way.${plants.ways.at(-1)?.id ?? "forecast"}`),
          }),
        ]
      : []),
    ...(stand === "inside"
      ? [say("cold-tonight.limit.heat")]
      : [
          say(paired > 0 ? "cold-tonight.limit.site" : "cold-tonight.limit.site-unknown", {
            plusMinus: measure(plants.plusMinusC, "C-difference"),
            nights: paired,
          }),
        ]),
    ...(stand !== "inside" && (outside.cloudPct === null || outside.windMPerS === null)
      ? [say("cold-tonight.limit.sky-unknown")]
      : []),
    ...(stand === "bed" && plants.cover.covers.length > 0 ? [say("cold-tonight.limit.cover")] : []),
    ...(outside.from === "days" && j.course.how === "forecast" ? [say("cold-tonight.limit.course")] : []),
    ...(j.course.how === "minimum-only" ? [say("cold-tonight.limit.no-course")] : []),
    ...(plants.latest === null && stand !== "trays" ? [say("cold-tonight.limit.no-readings")] : []),
    say(`cold-tonight.limit.floor-${floor.phase}`, { low: measure(8, "C"), high: measure(10, "C") }),
  ];
}

function wouldChange(state: PlantingState, { plants, stand, outside }: Judged): Message[] {
  return [
    say("cold-tonight.change.fresh"),
    ...(plants.latest === null && stand !== "trays" ? [say("cold-tonight.change.measure")] : []),
    ...(outside.from === "days" ? [say("cold-tonight.change.hours")] : []),
    ...(state.site.stationOffset === undefined && stand !== "inside"
      ? [say("cold-tonight.change.pairs")]
      : []),
  ];
}

/** A warning for this night that nobody answered: the cover may be up already, or not. */
function casesOf(state: PlantingState, j: Judged): Case[] {
  const open = state.unanswered.some((u) => u.rule === "cold-tonight" && u.issuedOn >= j.night.eveningDay);
  if (!open || j.stand !== "bed") return [];
  return [
    {
      when: say("cold-tonight.case.covered"),
      decision: say("cold-tonight.case.covered-decision"),
      steps: [{ text: uncover(state, j) }],
    },
    {
      when: say("cold-tonight.case.open"),
      decision: say("cold-tonight.case.open-decision", { time: byWhen(state, j).time ?? "" }),
      steps: [],
    },
  ];
}

import { cautionsFor } from "../../cautions/register.ts";
import { localDay } from "../../core/days.ts";
import type { AdviceBody, AnswerBody, NeedsMoreBody, Rule, Step } from "../../core/rule.ts";
import { baseOf } from "../../growth/base.ts";
import { later } from "../../growth/later.ts";
import { daysPerLeaf } from "../../growth/leaves.ts";
import { type Growth, growthOf, type StageForecast } from "../../growth/stages.ts";
import type { PlantingState } from "../../states/states.ts";
import { FAMILY_BASE_C } from "../../tables/baseTemperatures.ts";
import { pickAtOf } from "../../tables/pickStages.ts";
import type { StageId } from "../../tables/stageHeat.ts";
import { type Message, measure, onDay, say } from "../../text/message.ts";
import { climatologyYears } from "../../warmth/climatologyYears.ts";
import { refuseUnweighable } from "../set-out/door.ts";
import { FEWEST_YEARS } from "../set-out/line.ts";
import { stageCharts } from "./charts.ts";
import { type Standing, standingOf } from "./reading.ts";
import { sourcesTable, stagesTable } from "./tables.ts";
import { workingOf } from "./working.ts";

/** Where is this planting, and when will it be at the next stage? */
export const stageRule: Rule<"planting"> = {
  id: "stage",
  version: 1,
  question: "Where is this planting, and when will it be at the next stage?",
  subject: "planting",
  needs: [
    "the day sown, and notes of the stages seen",
    "days of weather since setting out; the temperature where seedlings grow on",
    "years of daily minima and maxima",
    "the variety's days to maturity, this farm's earlier first picks, its base temperature",
  ],
  run,
};

function run(state: PlantingState): AnswerBody {
  const { planting } = state;
  const today = localDay(state.asOf, state.site.timeZone);
  if (planting.endedOn !== undefined && planting.endedOn <= today) return no("stage.not.ended");
  if (planting.sownOn > today) return no("stage.not.unsown");
  if (planting.overwintered) return no("stage.not.overwintered");
  refuseUnweighable(state, state.climatology && climatologyYears(state.climatology));
  const growth = growthOf(state, today);
  if (growth === null) return missing("notes", "emerged");
  if (growth.course.filledDays < 0) return missing("weather", "weather");
  const standing = standingOf(growth);
  if (standing.next && standing.next.dates.likely === null && !state.climatology) {
    return missing("climatology", "climatology");
  }
  return adviceFrom(state, growth, standing);
}

const no = (key: string): AnswerBody => ({ kind: "does-not-apply", reason: say(key) });

const missing = (field: string, what: string): NeedsMoreBody => ({
  kind: "needs-more",
  missing: [{ field, measure: say(`stage.missing.${what}`), couldMove: say(`stage.missing.${what}-moves`) }],
  working: [],
  estimated: [],
});

function adviceFrom(state: PlantingState, g: Growth, at: Standing): AdviceBody {
  const w = workingOf(state, g);
  const picked: StageId = pickAtOf(state.planting).at === "green" ? "mature-green" : "colour";
  const pick = g.stages.find((s) => s.stage === picked) as StageForecast;
  return {
    kind: "advice",
    decision: { code: at.code, text: decisionOf(at) },
    steps: stepsOf(g, at, pick),
    window: {
      from: g.today,
      to: at.next?.dates.high ?? null,
      endsBy: say("stage.ends"),
    },
    stakes: { harm: at.code === "last" ? 0 : HARM_OF_NOT_LOOKING, reason: say("stage.stakes"), actBy: null },
    working: w.lines,
    estimated: w.estimated,
    evidence: [
      "stage.heat-sums",
      "stage.first-fruit",
      "stage.leaves-temperature",
      "stage.base-biquinho",
      "stage.base-compact",
      "stage.base-taquito",
      "stage.own-days",
      "stage.update",
      "stage.raising",
    ],
    grade: g.prior.from === "table" && g.looks.length === 0 ? "weak" : "practice",
    limits: limitsOf(state, g, pick),
    cautions: cautionsFor(),
    wouldChange: wouldChangeOf(state, g),
    cases: [],
    expected: at.next?.dates.low ? { kind: "look", date: later(at.next.dates.low, g.today) } : null,
    amounts: {},
    charts: stageCharts(g),
    table: [stagesTable(g), sourcesTable(g, picked)],
  };
}

/** Nothing is lost but the dates stay wide, and what is timed by them is timed worse (cp). */
const HARM_OF_NOT_LOOKING = 0.02;

const word = (s: StageForecast | null) => ({ word: `stage.name.${s?.stage ?? "sown"}` });

/** What can be said of a stage's days: all three, or that the latest, or that none, lies in the season looked at. */
function span(s: StageForecast): {
  kind: "between" | "open" | "none";
  params: Record<string, { day: string }>;
} {
  const { low, likely, high } = s.dates;
  if (likely === null || low === null) return { kind: "none", params: {} };
  const days = { low: onDay(low), likely: onDay(likely) };
  return high === null
    ? { kind: "open", params: days }
    : { kind: "between", params: { ...days, high: onDay(high) } };
}

function decisionOf({ now, next, code }: Standing): Message {
  if (next === null) return say(`stage.decision.last-${now?.notedOn === null ? "reckoned" : "noted"}`);
  const { kind, params } = span(next);
  const seen = code === "look" ? "reckoned" : now === null ? "sown" : "noted";
  return say(`stage.decision.${seen}-${kind}`, { now: word(now), next: word(next), ...params });
}

function stepsOf(g: Growth, at: Standing, pick: StageForecast): Step[] {
  const leafDays = daysPerLeaf(g);
  const young = at.now === null || BEFORE_BUDS.has(at.now.stage);
  const { kind, params } = span(pick);
  const texts: Message[] = [
    ...(at.code === "look" ? [say("stage.step.look", { now: word(at.now) })] : []),
    ...(at.next === null ? [say("stage.step.last")] : [say(`stage.step.sign-${at.next.stage}`)]),
    ...(at.next === null || at.next.dates.low === null
      ? []
      : [say("stage.step.from", { low: onDay(later(at.next.dates.low, g.today)), next: word(at.next) })]),
    ...(young ? [say("stage.step.leaves")] : []),
    ...(young && leafDays !== null ? [say("stage.step.leaf-days", { days: measure(leafDays, "days") })] : []),
    ...(pick.notedOn === null ? [say(`stage.step.pick-${kind}`, { stage: word(pick), ...params })] : []),
  ];
  return texts.map((text) => ({ text }));
}

const BEFORE_BUDS: ReadonlySet<StageId> = new Set<StageId>(["emerged", "seed-leaves", "true-leaves"]);

function limitsOf(state: PlantingState, g: Growth, pick: StageForecast): Message[] {
  const { base } = g;
  return [
    say(`stage.limit.base-${base.how}`, { base: measure(base.baseC, "C") }),
    ...(base.how === "variety" ? [] : [otherBases(state, g, pick)]),
    ...g.notes.odd.map((o) =>
      o.stage === "true-leaves"
        ? say("stage.limit.fewer-leaves", { day: onDay(o.on) })
        : say("stage.limit.order", { stage: { word: `stage.name.${o.stage}` }, day: onDay(o.on) }),
    ),
    say("stage.limit.table"),
    say("stage.limit.leaves"),
    ...(state.planting.species === "annuum" ? [] : [say("stage.limit.species")]),
    ...(state.planting.setOutOn === undefined ? [say("stage.limit.check")] : []),
    ...(state.climatology ? [] : [say("stage.limit.no-years")]),
    ...(g.course.years.length > 0 && g.course.years.length < FEWEST_YEARS
      ? [say("stage.limit.few-years", { n: g.course.years.length })]
      : []),
  ];
}

/** The same planting with the lowest and the highest base published: what not knowing the variety's own leaves open. */
function otherBases(state: PlantingState, g: Growth, pick: StageForecast): Message {
  const dayAt = (baseC: number): string | null => {
    const other = growthOf(state, g.today, { ...baseOf(state), baseC });
    return other?.stages.find((s) => s.stage === pick.stage)?.dates.likely ?? null;
  };
  const low = dayAt(FAMILY_BASE_C.low);
  const high = dayAt(FAMILY_BASE_C.high);
  const bases = { lowBase: measure(FAMILY_BASE_C.low, "C"), highBase: measure(FAMILY_BASE_C.high, "C") };
  const stage = word(pick);
  if (pick.notedOn !== null) return say("stage.limit.family-noted", bases);
  if (low !== null && high !== null) {
    return say("stage.limit.family", { ...bases, stage, low: onDay(low), high: onDay(high) });
  }
  return say("stage.limit.family-open", { ...bases, stage });
}

function wouldChangeOf(state: PlantingState, g: Growth): Message[] {
  const { planting } = state;
  return [
    say("stage.change.note"),
    ...(planting.baseTemperatureC === undefined ? [say("stage.change.base")] : []),
    ...(g.prior.own.length === 0 ? [say("stage.change.first-pick")] : []),
    ...(planting.daysToMaturity ? [] : [say("stage.change.list")]),
    ...(planting.propagation?.growingC === undefined ? [say("stage.change.growing")] : []),
    ...(state.climatology ? [] : [say("stage.missing.climatology")]),
  ];
}

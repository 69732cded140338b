import { cautionsFor } from "../../cautions/register.ts";
import { addDays, daysBetween, instantAt, localDay } from "../../core/days.ts";
import type { AdviceBody, AnswerBody, NeedsMoreBody, Rule } from "../../core/rule.ts";
import { Working } from "../../core/working.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Message, measure, onDay, say } from "../../text/message.ts";
import { earliestFrom, type SetOutDay } from "../set-out/day.ts";
import { emergenceChart } from "./chart.ts";
import {
  type Dates,
  datesBefore,
  type Raising,
  raisingOf,
  type SowCode,
  type SowPlan,
  seedsFor,
} from "./plan.ts";
import { stepsOf } from "./steps.ts";

/** When must these seeds be sown, and how many? */
export const sowByRule: Rule<"planting"> = {
  id: "sow-by",
  version: 1,
  question: "When must these seeds be sown, and how many?",
  subject: "planting",
  needs: [
    "the day planned for setting out, or eight years of daily minima and maxima",
    "temperature of the seed's medium",
    "germination on the packet or from a test, and seedlings usually lost",
    "plants wanted",
  ],
  run,
};

function run(state: PlantingState): AnswerBody {
  const { planting } = state;
  const today = localDay(state.asOf, state.site.timeZone);
  if (planting.endedOn !== undefined && planting.endedOn <= today) return no("sow-by.not.ended");
  if (planting.sownOn < today || planting.setOutOn !== undefined) return no("sow-by.not.sown");
  if (planting.overwintered) return no("sow-by.not.overwintered");
  const w = new Working();
  const raising = raisingOf(planting, w);
  const soonest = addDays(today, raising.leastDays);
  const out = outOn(state, soonest);
  if (out === undefined) return missingDay(raising, w);
  if (out === null) return no("sow-by.not.no-date");
  const dates = datesBefore(out.day, raising);
  datesLines(w, out, dates);
  const seeds = seedsFor(planting, raising, w);
  const code = codeOf(planting.sownOn, today, dates);
  return adviceFrom(state, { code, today, sownOn: planting.sownOn, out, dates, raising, seeds, soonest }, w);
}

const no = (key: string): AnswerBody => ({ kind: "does-not-apply", reason: say(key) });

/** The planned day, else the earliest that plants sown now could use. */
function outOn(state: PlantingState, soonest: string): SetOutDay | null | undefined {
  const planned = state.planting.plannedSetOutOn;
  if (planned !== undefined) return { day: planned, how: "planned" };
  const day = earliestFrom(state, soonest);
  return typeof day === "string" ? { day, how: "set-out" } : day;
}

const later = (a: string, b: string): string => (a > b ? a : b);

function codeOf(sownOn: string, today: string, { sowFrom, sowBy }: Dates): SowCode {
  if (sowBy < today) return "too-late";
  if (sownOn > sowBy) return "sow-earlier";
  return sownOn < sowFrom ? "sow-later" : "sow";
}

function missingDay(raising: Raising, w: Working): NeedsMoreBody {
  return {
    kind: "needs-more",
    missing: [
      {
        field: "planting.plannedSetOutOn",
        measure: say("sow-by.missing.day"),
        couldMove: say("sow-by.missing.day-moves", {
          least: measure(raising.leastDays, "days"),
          most: measure(raising.mostDays, "days"),
        }),
      },
    ],
    working: w.lines,
    estimated: w.estimated,
  };
}

function datesLines(w: Working, out: SetOutDay, d: Dates): void {
  const how = out.how === "planned" ? "planned" : "earliest within set-out's accepted risk, by past years";
  w.line("t_out", "day of setting out", how, d.setOut, "date");
  w.line("t_sow", "last day to sow", "t_out - 6 weeks - d, d rounded up", d.sowBy, "date");
  w.line("t_sow,first", "first day to sow", "t_out - 8 weeks - d", d.sowFrom, "date");
}

function adviceFrom(state: PlantingState, p: SowPlan, w: Working): AdviceBody {
  const late = p.code === "too-late";
  const by = late ? p.today : p.dates.sowBy;
  return {
    kind: "advice",
    decision: {
      code: p.code,
      text: say(`sow-by.decision.${p.code}`, {
        from: onDay(later(p.dates.sowFrom, p.today)),
        by: onDay(p.dates.sowBy),
        out: onDay(p.dates.setOut),
        sown: onDay(p.sownOn),
        soonest: onDay(p.soonest),
      }),
    },
    steps: stepsOf(state, p),
    window: {
      from: later(p.dates.sowFrom, p.today),
      to: late ? null : p.dates.sowBy,
      endsBy: say("sow-by.ends"),
    },
    stakes: {
      harm: late ? HARM_OF_LATENESS : HARM_OF_DELAY,
      reason: say(late ? "sow-by.stakes.late" : "sow-by.stakes.delay"),
      actBy: instantAt(by, 18, state.site.timeZone),
    },
    working: w.lines,
    estimated: w.estimated,
    evidence: ["sow-by.emergence", "sow-by.weeks", "sow-by.card-days", "sow-by.seeds", "sow-by.potting-on"],
    grade: "practice",
    limits: limitsOf(state, p),
    cautions: p.raising.mediumC < 25 ? cautionsFor("heater-fitting") : cautionsFor(),
    wouldChange: wouldChangeOf(state, p),
    cases: [],
    expected: null,
    amounts: { seeds: p.seeds.seeds },
    charts: [emergenceChart(p.raising)],
  };
}

/** Each day late is a day of the season (cp), a week or more of them a tenth of it (cp). */
const HARM_OF_DELAY = 0.05;
const HARM_OF_LATENESS = 0.1;

function limitsOf(state: PlantingState, p: SowPlan): Message[] {
  const growingC = state.planting.propagation?.growingC;
  return [
    say("sow-by.limit.weeks-memory"),
    say("sow-by.limit.table"),
    ...(growingC === undefined ? [] : [say("sow-by.limit.not-adjusted", { c: measure(growingC, "C") })]),
    ...(p.out.how === "set-out" ? [say("sow-by.limit.by-years")] : []),
    ...(state.planting.species === "annuum" ? [] : [say("sow-by.limit.species")]),
  ];
}

function wouldChangeOf(state: PlantingState, p: SowPlan): Message[] {
  const { propagation, plannedSetOutOn } = state.planting;
  return [
    ...(p.raising.mediumKnown ? [] : [say("sow-by.change.medium")]),
    ...(propagation?.germinationPct === undefined ? [say("sow-by.change.germination")] : []),
    ...(propagation?.lossPct === undefined ? [say("sow-by.change.loss")] : []),
    ...(plannedSetOutOn === undefined ? [say("sow-by.change.day")] : []),
    ...(daysBetween(p.today, p.dates.setOut) > 0 ? [say("sow-by.change.own-weeks")] : []),
  ];
}

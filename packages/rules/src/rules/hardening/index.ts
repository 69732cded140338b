import { cautionsFor } from "../../cautions/register.ts";
import { addDays, daysBetween, instantAt, localDay } from "../../core/days.ts";
import type { AdviceBody, AnswerBody, Case, Rule } from "../../core/rule.ts";
import { type SourceRef, Working } from "../../core/working.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Message, onDay, say } from "../../text/message.ts";
import { climatologyYears } from "../../warmth/climatologyYears.ts";
import { coldCheckOf } from "../../warmth/coldCheck.ts";
import { siteShift } from "../../warmth/siteShift.ts";
import { type SetOutDay, setOutDayOf } from "../set-out/day.ts";
import { refuseUnweighable } from "../set-out/door.ts";
import { hardeningCharts } from "./charts.ts";
import { type Hardening, planFrom } from "./plan.ts";
import { stepsOf } from "./steps.ts";
import { AHEAD_DAYS, FEWEST_DAYS, FIRST_DAYS_C, PLAN_DAYS, WINDY_M_PER_S } from "./thresholds.ts";

const PRACTICE: SourceRef = { key: "common-practice" };
const GUIDES: SourceRef = {
  key: "transplanting-guides",
  locator: "hardened 7-10 days: cooler, drier, more wind",
};

/** How are these seedlings hardened off? */
export const hardeningRule: Rule<"planting"> = {
  id: "hardening",
  version: 1,
  question: "How are these seedlings hardened off?",
  subject: "planting",
  needs: [
    "the day planned for setting out, or eight years of daily minima and maxima",
    "forecast at most a day old, with wind, where there is one",
    "notes on hardening, growing points and new leaves",
  ],
  run,
};

function run(state: PlantingState): AnswerBody {
  const { planting, notes } = state;
  const today = localDay(state.asOf, state.site.timeZone);
  if (planting.endedOn !== undefined && planting.endedOn <= today) return no(say("hardening.not.ended"));
  if (planting.setOutOn !== undefined && planting.setOutOn <= today) return no(say("hardening.not.out"));
  if (planting.sownOn >= today) return no(say("hardening.not.unsown"));
  const done = notes.find((n) => n.kind === "hardened" && n.on <= today);
  if (done) return no(say("hardening.not.done", { day: onDay(done.on) }));
  refuseUnweighable(state, state.climatology && climatologyYears(state.climatology));
  const out = setOutDayOf(state, today);
  if (out === null) return no(say("hardening.not.no-date"));
  if (out === undefined) return no(say("hardening.not.no-plan"));
  const ahead = daysBetween(today, out.day);
  if (ahead > AHEAD_DAYS) {
    return no(
      say("hardening.not.too-early", { day: onDay(addDays(out.day, -PLAN_DAYS)), out: onDay(out.day) }),
    );
  }
  return adviceFrom(state, hardeningOf(state, today, out));
}

const no = (reason: Message): AnswerBody => ({ kind: "does-not-apply", reason });

function hardeningOf(state: PlantingState, today: string, out: SetOutDay): Hardening {
  const floorC = state.settings.coldFloorC ?? 12;
  const planned = addDays(out.day, -PLAN_DAYS);
  const checked = coldCheckOf({
    notes: state.notes,
    weather: state.weather,
    site: state.site,
    bed: state.bed,
    today,
    floorC,
  }).noted;
  // Nobody notes each day outside. From the planned first day on they are taken to go out as advised; the other case
  // stands beside it.
  const begun = planned < today && today < out.day;
  const start = planned < today ? today : planned;
  const code = checked ? "hold" : begun ? "go-on" : "begin";
  return {
    code,
    today,
    out,
    first: begun ? planned : start,
    floorC,
    plan: planFrom({
      first: start,
      setOut: out.day,
      outside: begun ? Math.max(0, daysBetween(planned, today)) : 0,
      floorC,
      siteShiftC: siteShift(state.site, 1).shiftC,
      forecast: state.forecast?.days ?? [],
    }),
  };
}

function adviceFrom(state: PlantingState, h: Hardening): AdviceBody {
  const w = workingOf(state, h);
  const held = h.code === "hold";
  const next = h.plan.days[0]?.day ?? h.today;
  return {
    kind: "advice",
    decision: {
      code: h.code,
      text: say(`hardening.decision.${h.code}`, {
        day: onDay(next),
        ready: onDay(h.plan.readyOn),
        out: onDay(h.out.day),
        nth: h.plan.days[0]?.nth ?? 1,
      }),
    },
    steps: stepsOf(h),
    window: {
      from: held ? null : h.first,
      to: held ? null : h.out.day,
      endsBy: say(held ? "hardening.ends.hold" : "hardening.ends"),
    },
    stakes: {
      harm: held ? HARM_OF_CHECKED : HARM_OF_SOFT,
      reason: say(held ? "hardening.stakes.hold" : "hardening.stakes.soft"),
      actBy: held ? null : instantAt(next, 9, state.site.timeZone),
    },
    working: w.lines,
    estimated: w.estimated,
    evidence: [
      "hardening.days",
      "hardening.drier",
      "hardening.cold-limits",
      "hardening.cold-training",
      "hardening.nitrogen",
      "hardening.cold-checked",
    ],
    grade: "practice",
    limits: [
      say("hardening.limit.memory"),
      say("hardening.limit.pepper-cold"),
      ...(state.forecast ? [] : [say("hardening.limit.no-forecast")]),
      ...(h.out.how === "set-out" ? [say("hardening.limit.by-set-out", { day: onDay(h.out.day) })] : []),
    ],
    cautions: cautionsFor("cold-pools"),
    wouldChange: [
      say("hardening.change.note"),
      ...(state.forecast ? [] : [say("hardening.change.forecast")]),
      say("hardening.change.look"),
    ],
    cases: h.code === "go-on" ? [notBegun(state, h)] : h.out.day <= h.today ? [begunAlready()] : [],
    expected: { kind: "look", date: next },
    amounts: {},
    charts: held ? [] : hardeningCharts(h),
  };
}

/** Soft plants set out bare lose leaves and weeks (cp); checked plants hardened further may stop for good (cp). */
const HARM_OF_SOFT = 0.1;
const HARM_OF_CHECKED = 0.2;

/** What if they never went out: the same plan from today, and the day it would end. */
function notBegun(state: PlantingState, h: Hardening): Case {
  const afresh = planFrom({
    first: h.today,
    setOut: h.out.day,
    outside: 0,
    floorC: h.floorC,
    siteShiftC: siteShift(state.site, 1).shiftC,
    forecast: state.forecast?.days ?? [],
  });
  const late = afresh.readyOn > h.out.day;
  return {
    when: say("hardening.case.not-begun"),
    decision: say(late ? "hardening.case.later" : "hardening.case.begin", {
      ready: onDay(afresh.readyOn),
      out: onDay(h.out.day),
    }),
    steps: [],
  };
}

/** The day has come, and nobody has noted whether they went out before it. */
const begunAlready = (): Case => ({
  when: say("hardening.case.begun"),
  decision: say("hardening.case.ready"),
  steps: [],
});

function workingOf(state: PlantingState, h: Hardening): Working {
  const w = new Working();
  const how = h.out.how === "planned" ? "planned" : "set-out's earliest within the accepted risk";
  w.line("t_out", "day of setting out", how, h.out.day, "date");
  w.line("D_harden", "days of hardening", `at least ${FEWEST_DAYS}, planned`, PLAN_DAYS, "days", GUIDES);
  w.line("t_first", "first day outside", "t_out - D_harden, or today where that is past", h.first, "date");
  w.line("T_first", "air to carry them out on the sheltered days", "default", FIRST_DAYS_C, "C", PRACTICE);
  w.line(
    "floor",
    "air below this counts as cold",
    state.settings.coldFloorC === undefined ? "default" : "as the office set it",
    h.floorC,
    "C",
    PRACTICE,
  );
  w.line("u_max", "a day's mean wind that keeps them in", "default", WINDY_M_PER_S, "m/s", PRACTICE);
  const site = siteShift(state.site, 1);
  w.line("Δsite", "site's nights less its station's", `${site.pairedNights} paired nights`, site.shiftC, "C");
  for (const d of h.plan.days) {
    if (d.nightC === null && d.windMPerS === null) continue;
    const wind = d.windMPerS === null ? "wind not forecast" : `wind ${d.windMPerS} m/s`;
    w.line("Tmin", `night after ${d.day} at the plants; ${wind}`, "forecast + Δsite", d.nightC, "C");
  }
  w.line("t_ready", "hardened from", `the day after ${FEWEST_DAYS} days outside`, h.plan.readyOn, "date");
  if (h.code === "go-on") {
    w.estimate(
      "days outside so far",
      "taken as advised from the planned first day on; nobody notes them",
      PRACTICE,
    );
  }
  return w;
}

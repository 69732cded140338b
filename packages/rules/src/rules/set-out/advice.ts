import { cautionsFor } from "../../cautions/register.ts";
import { addDays, instantAt } from "../../core/days.ts";
import type { AdviceBody, Case } from "../../core/rule.ts";
import type { Rest } from "../../layout/rest.ts";
import type { PlantingState } from "../../states/states.ts";
import { measure, onDay, type Param, say } from "../../text/message.ts";
import type { ClimatologyYears } from "../../warmth/climatologyYears.ts";
import { coverOver } from "../../warmth/coverOver.ts";
import type { Assessment } from "./assess.ts";
import { setOutCharts } from "./charts.ts";
import { lastOfRun } from "./earliest.ts";
import { keptOut } from "./keptOut.ts";
import { HORIZON_DAYS, YEARS_FOR_TAILS } from "./line.ts";
import { setOutSteps } from "./steps.ts";
import type { Weighed } from "./weigh.ts";
import { weighChart, weighLacks } from "./weighWords.ts";
import { setOutWorking } from "./working.ts";

/** The advice that an assessment comes to. */
export function adviceFrom(
  state: PlantingState,
  a: Assessment,
  years: ClimatologyYears,
  weighed: Weighed | null,
): AdviceBody {
  const way = a.protection?.way ?? a.asItStands;
  const first = a.decision === "wait" ? a.asItStands.earliest : a.wanted;
  const dayAt = (lead: number) => way.curve[lead]?.day ?? null;
  const kept = keptOut(state, addDays(a.today, a.wanted));
  const { working, estimated } = setOutWorking(state, a, years, weighed, kept);
  // A cover that is only weighed may be put up all the same: its caution travels with it.
  const covered = weighed !== null || a.decision === "protect" || a.cover.covers.length > 0;
  const n = a.asItStands.curve[a.wanted]?.n ?? 0;
  return {
    kind: "advice",
    decision: { code: a.decision, text: decisionText(a, kept) },
    steps: setOutSteps(a, weighed, kept),
    window: {
      from: first === null ? null : dayAt(first),
      to: first === null ? null : dayAt(lastOfRun(way.within, first)),
      endsBy: say(a.decision === "wait" && first === null ? "set-out.ends.none" : "set-out.ends.colder"),
    },
    stakes: stakesOf(state, a),
    working,
    estimated,
    evidence: [
      "set-out.cold-sets-back",
      "set-out.parthenocarpic",
      "set-out.dose-not-one-night",
      "set-out.blend",
      "set-out.soil-warmth",
      "set-out.row-cover-offset",
      "set-out.row-cover-offset-trade",
      "set-out.tunnel-offset",
      "set-out.night-optimum",
      "set-out.vent",
      ...(weighed ? ["set-out.heat-units", "set-out.protection-costs"] : []),
    ],
    grade: n >= YEARS_FOR_TAILS ? "moderate" : "weak",
    limits: [...limitsOf(a, n), ...(weighed ? [say("set-out.limit.weighed")] : [])],
    cautions: covered ? cautionsFor("cover-overheats", "cold-pools") : cautionsFor("cold-pools"),
    wouldChange: [...wouldChange(state, a, n), ...weighLacks(weighed)],
    cases: casesOf(state),
    expected: expectedOf(a),
    // Dates move a draft through window and expected. A chance shown beside them would churn it with every forecast.
    amounts: a.protection ? { coverLiftC: a.protection.kind.offsetC } : {},
    charts: weighed ? [...setOutCharts(a), weighChart(a, weighed)] : setOutCharts(a),
  };
}

function decisionText(a: Assessment, kept: Rest | undefined) {
  const wanted = a.asItStands.curve[a.wanted];
  const day = onDay(wanted?.day ?? a.today);
  // Cold is not all: no day is named for a bed in which peppers are not to stand, without saying so.
  const rest: Record<string, Param> = kept ? { from: String(kept.from) } : {};
  if (a.decision === "go")
    return say(kept ? "set-out.decision.go-kept-out" : "set-out.decision.go", { day, ...rest });
  if (a.decision === "protect" && a.protection) {
    const open = a.asItStands.earliest;
    const protection = { word: `set-out.protection.${a.protection.kind.id}` };
    if (open === null) {
      const only = kept ? "set-out.decision.protect-only-kept-out" : "set-out.decision.protect-only";
      return say(only, { day, protection, ...rest });
    }
    return say(kept ? "set-out.decision.protect-kept-out" : "set-out.decision.protect", {
      day,
      protection,
      ...rest,
      open: onDay(a.asItStands.curve[open]?.day ?? a.today),
    });
  }
  const earliest = a.asItStands.earliest;
  if (earliest === null) return say("set-out.decision.none", { days: measure(HORIZON_DAYS, "days") });
  return say("set-out.decision.wait", { day: onDay(a.asItStands.curve[earliest]?.day ?? a.today) });
}

/** A frost kills the planting; a dose beyond the line costs it about a third (cp). Delay alone costs little (cp). */
const HARM_OF_FROST = 1;
const HARM_OF_DOSE = 0.3;
const HARM_OF_DELAY = 0.05;

function stakesOf(state: PlantingState, a: Assessment): AdviceBody["stakes"] {
  const wanted = a.asItStands.curve[a.wanted];
  const planned = state.planting.plannedSetOutOn !== undefined;
  // Seven in the morning: before anybody carries trays out.
  const actBy = planned && wanted ? instantAt(wanted.day, 7, state.site.timeZone) : null;
  if (a.decision === "go" || !planned || !wanted?.beyond || !wanted.frost) {
    return { harm: HARM_OF_DELAY, reason: say("set-out.stakes.delay"), actBy };
  }
  const harm = Math.min(1, wanted.frost.estimate * HARM_OF_FROST + wanted.beyond.estimate * HARM_OF_DOSE);
  return {
    harm,
    reason: say(a.standsOn(a.wanted) ? "set-out.stakes.cold-standing" : "set-out.stakes.cold", {
      beyond: measure(100 * wanted.beyond.estimate, "pct"),
      frost: measure(100 * wanted.frost.estimate, "pct"),
    }),
    actBy,
  };
}

function limitsOf(a: Assessment, n: number) {
  return [
    say("set-out.limit.line-is-practice"),
    ...(n < YEARS_FOR_TAILS ? [say("set-out.limit.few-years", { n })] : []),
    ...(a.members.forecastDays === 0 ? [say("set-out.limit.no-forecast")] : [say("set-out.limit.blend")]),
    ...(a.site.pairedNights === 0
      ? [say("set-out.limit.no-offset", { c: measure(a.site.plusMinusC, "C-difference") })]
      : []),
    ...(a.cover.covers.length > 0 || a.decision === "protect" ? [say("set-out.limit.cover")] : []),
    say("set-out.limit.soil-memory"),
  ];
}

function wouldChange(state: PlantingState, a: Assessment, n: number) {
  return [
    ...(a.members.forecastDays === 0 ? [say("set-out.change.forecast")] : []),
    ...(a.site.pairedNights === 0 ? [offsetChange(a)] : []),
    ...(a.soil?.how !== "measured" ? [say("set-out.change.soil")] : []),
    ...(n < YEARS_FOR_TAILS ? [say("set-out.change.years", { n })] : []),
    ...(a.line.hardened ? [] : [say("set-out.change.hardened")]),
    ...(a.line.leaves === null ? [say("set-out.change.leaves")] : []),
    ...(coverOver(state.bed, a.today).covers.length > 0 ? [say("set-out.change.inside")] : []),
  ];
}

function offsetChange(a: Assessment) {
  const day = (lead: number | null) => (lead === null ? null : (a.asItStands.curve[lead]?.day ?? null));
  const early = day(a.earliestIfWarmer);
  const late = day(a.earliestIfColder);
  if (early === null) return say("set-out.change.offset-none");
  if (late === null) return say("set-out.change.offset-open", { early: onDay(early) });
  return say("set-out.change.offset", { early: onDay(early), late: onDay(late) });
}

/** An earlier "set them out" that nobody answered: both readings are carried. */
function casesOf(state: PlantingState): Case[] {
  const open = state.unanswered.filter((u) => u.rule === "set-out").at(-1);
  if (!open) return [];
  return [
    {
      when: say("set-out.case.done", { day: onDay(open.due) }),
      decision: say("set-out.case.done-decision"),
      steps: [{ text: say("set-out.case.done-step") }],
    },
    {
      when: say("set-out.case.not-done"),
      decision: say("set-out.case.not-done-decision"),
      steps: [],
    },
  ];
}

function expectedOf(a: Assessment): AdviceBody["expected"] {
  const lead = a.decision === "wait" ? a.asItStands.earliest : a.wanted;
  const date = lead === null ? undefined : a.asItStands.curve[lead];
  return date ? { kind: "setting-out", date: date.day } : null;
}

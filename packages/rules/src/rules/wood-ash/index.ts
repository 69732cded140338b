import { cautionsFor } from "../../cautions/register.ts";
import { daysBetween, instantAt, localDay } from "../../core/days.ts";
import type { AdviceBody, AnswerBody, Case, Rule, Step } from "../../core/rule.ts";
import { Working } from "../../core/working.ts";
import { feedingDates } from "../../food/curve.ts";
import { type AcidSoil, acidSoilOf, TEST_HOLDS_DAYS } from "../../soil-acidity/soil.ts";
import { limeIsDue } from "../../soil-acidity/target.ts";
import { weight } from "../../soil-acidity/weight.ts";
import type { PlantingState } from "../../states/states.ts";
import { STRICTEST_CEILING } from "../../tables/woodAsh.ts";
import { type Message, measure, onDay, say } from "../../text/message.ts";
import { bedAreaM2 } from "../../water/ground.ts";
import { type Ash, type AshChoice, ashesOf } from "./ash.ts";
import { openAsh } from "./given.ts";
import { type Reading, readAsh, tooHighPh } from "./judge.ts";
import { needsMore, needsPh } from "./missing.ts";
import { afterCropSteps, atTargetSteps, barredSteps, ceilingSteps, spreadSteps } from "./steps.ts";
import { writeWorking } from "./working.ts";

const LAST_HOUR = 20;
/** Bought potash and lime do what ash would; only money is saved (common practice). */
const HARM_OF_NOT_SPREADING = 0.02;

/** May the shed's wood ash feed and lime this planting's bed? */
export const woodAshRule: Rule<"planting"> = {
  id: "wood-ash",
  version: 2,
  question: "May wood ash supply potash and lime here, how much, and when?",
  subject: "planting",
  needs: [
    "wood ash in the shed: what was burnt, its analysis, how much there is",
    "a soil test with pH, buffer pH and potassium with its extractant",
    "a yield goal and the day plants go out",
    "ammonium, urea, lime and ash given lately",
  ],
  run,
};

function run(state: PlantingState): AnswerBody {
  const today = localDay(state.asOf, state.site.timeZone);
  const { endedOn, setOutOn } = state.planting;
  if (endedOn !== undefined && endedOn <= today) return no(say("wood-ash.not.ended"));
  const choice = ashesOf(state, today);
  if (!choice) return no(say("wood-ash.not.none"));
  const soil = acidSoilOf(state.soilTests, today);
  if (state.bed.kind === "containers") return no(say("wood-ash.not.containers"));
  if (!choice.ash) return refusing(state, choice, "not-this-ash", barredSteps(choice), new Working());
  if (!soil) return needsPh(state);
  const w = new Working();
  if (tooHighPh(soil)) {
    writeWorking(w, soil);
    return refusing(state, choice, "ph-too-high", ceilingSteps(soil.waterPh), w, soil);
  }
  const office = state.settings.limeTargetPh;
  if (!limeIsDue(soil.waterPh, office)) {
    writeWorking(w, soil);
    return refusing(state, choice, "no-lime-need", atTargetSteps(soil.waterPh, office), w, soil);
  }
  if (setOutOn !== undefined && setOutOn <= today) {
    writeWorking(w, soil);
    const { end } = feedingDates(setOutOn, state.notes, today);
    return refusing(state, choice, "after-crop", afterCropSteps(end), w, soil, end);
  }
  const reading = readAsh(state, choice.ash, soil, today, true, w);
  if (Array.isArray(reading)) return needsMore(state, choice.ash, soil, reading, w);
  writeWorking(w, soil, reading);
  return adviceFrom(state, choice, choice.ash, reading, w, today);
}

const no = (reason: Message): AnswerBody => ({ kind: "does-not-apply", reason });

const EVIDENCE = [
  "wood-ash.potash",
  "wood-ash.lime-value",
  "wood-ash.leached",
  "wood-ash.cap",
  "wood-ash.cap-others",
  "wood-ash.ceiling",
  "wood-ash.ceiling-others",
  "wood-ash.ammonium",
  "wood-ash.seedlings",
  "wood-ash.do-not-use",
  "wood-ash.caustic",
  "wood-ash.embers",
  "wood-ash.metals",
  "wood-ash.certified",
  "wood-ash.speed",
];

/** The caustic dust first, always: it is the one that cannot be undone. */
function cautionIds(state: PlantingState, ash: Ash | undefined): string[] {
  const organic = state.bed.certification !== "none";
  const restricted = organic && ash?.material.certifiedUse === "restricted";
  return [
    "ash-caustic",
    "ash-embers",
    "ash-not-with-ammonium",
    ...(restricted ? ["certifier-first"] : []),
    "nutrient-law",
  ];
}

/** An answer that says no, with its cautions: somebody has that ash in hand. */
function refusing(
  state: PlantingState,
  choice: AshChoice,
  code: string,
  steps: Step[],
  w: Working,
  soil?: AcidSoil,
  from?: string,
): AdviceBody {
  return {
    kind: "advice",
    decision: {
      code,
      text: say(`wood-ash.decision.${code}`, {
        ph: soil?.waterPh.toFixed(1) ?? "",
        ceiling: STRICTEST_CEILING.ph.toFixed(1),
        from: onDay(from ?? localDay(state.asOf, state.site.timeZone)),
      }),
    },
    steps,
    window: { from: from ?? null, to: null, endsBy: say("wood-ash.ends") },
    stakes: { harm: 0, reason: say("wood-ash.stakes.none"), actBy: null },
    working: w.lines,
    estimated: w.estimated,
    evidence: EVIDENCE,
    grade: "weak",
    limits: [say("wood-ash.limit.sources")],
    cautions: cautionsFor(...cautionIds(state, choice.ash)),
    wouldChange: [say(`wood-ash.change.${code}`)],
    cases: [],
    expected: null,
    amounts: { ashKg: 0, ...(soil && { ph: soil.waterPh }) },
    charts: [],
  };
}

function decisionText(state: PlantingState, r: Reading): Message {
  return say(`wood-ash.decision.${r.code}`, {
    kg: weight(r.plan.kg),
    area: measure(bedAreaM2(state.bed), "m2"),
    from: onDay(r.timing.from),
    to: onDay(r.timing.to ?? r.timing.from),
  });
}

function adviceFrom(
  state: PlantingState,
  choice: AshChoice,
  ash: Ash,
  r: Reading,
  w: Working,
  today: string,
): AdviceBody {
  const gives = r.code === "spread" || r.code === "wait";
  const open = openAsh(state, today);
  return {
    kind: "advice",
    decision: { code: r.code, text: decisionText(state, r) },
    steps: spreadSteps(state, r, choice),
    window: {
      from: gives ? r.timing.from : null,
      to: gives ? (r.timing.to ?? null) : null,
      endsBy: say("wood-ash.ends"),
    },
    stakes: {
      harm: gives ? HARM_OF_NOT_SPREADING : 0,
      reason: say(gives ? "wood-ash.stakes.spread" : "wood-ash.stakes.none"),
      actBy:
        gives && r.timing.to !== undefined ? instantAt(r.timing.to, LAST_HOUR, state.site.timeZone) : null,
    },
    working: w.lines,
    estimated: w.estimated,
    evidence: EVIDENCE,
    grade: "weak",
    limits: limitsOf(r, today),
    cautions: cautionsFor(...cautionIds(state, ash)),
    wouldChange: wouldChangeOf(r),
    cases: open.length > 0 ? casesOf(state, choice, ash, r, today) : [],
    expected: gives
      ? {
          kind: "application",
          date: r.timing.from,
          materialId: ash.material.id,
          amountKg: r.plan.kg,
          areaM2: bedAreaM2(state.bed),
        }
      : null,
    amounts: {
      ashKg: gives ? r.plan.kg : 0,
      k2oKgPerHa: gives ? r.plan.k2oKgPerHa.low : 0,
      limeKgPerHa: gives ? r.plan.limeKgPerHa.low : 0,
    },
    charts: [],
  };
}

function limitsOf(r: Reading, today: string): Message[] {
  const limits = [say("wood-ash.limit.sources"), say("wood-ash.limit.cap"), say("wood-ash.limit.records")];
  const { stockKg } = r.ash.material;
  if (stockKg !== undefined && stockKg > 0) {
    limits.push(say("wood-ash.limit.shared-stock", { stock: weight(stockKg) }));
  }
  if (!(r.content.analysed.k2o && r.content.analysed.cce)) limits.push(say("wood-ash.limit.unanalysed"));
  if (r.need.method !== "exchangeable-acidity" && r.plan.predictedPh !== null) {
    limits.push(say("wood-ash.limit.predicted"));
  }
  const { sampledOn } = r.soil.test;
  if (daysBetween(sampledOn, today) > TEST_HOLDS_DAYS) {
    limits.push(say("wood-ash.limit.old", { day: onDay(sampledOn), year: sampledOn.slice(0, 4) }));
  }
  return limits;
}

const wouldChangeOf = (r: Reading): Message[] => [
  ...(r.content.analysed.k2o && r.content.analysed.cce ? [] : [say("wood-ash.change.analysis")]),
  say("wood-ash.change.test"),
  ...(r.code === "no-potash-need" ? [say("wood-ash.change.potash")] : []),
];

/** Ash that was advised and never answered: spread or not, either way. */
function casesOf(state: PlantingState, choice: AshChoice, ash: Ash, done: Reading, today: string): Case[] {
  const day = onDay(openAsh(state, today).at(-1)?.due ?? today);
  const not = readAsh(state, ash, done.soil, today, false, new Working());
  const of = (when: string, r: Reading): Case => ({
    when: say(when, { day }),
    decision: decisionText(state, r),
    steps: spreadSteps(state, r, choice),
  });
  return [of("wood-ash.case.done", done), ...(Array.isArray(not) ? [] : [of("wood-ash.case.not-done", not)])];
}

import { cautionsFor } from "../../cautions/register.ts";
import { localDay } from "../../core/days.ts";
import type { AdviceBody, AnswerBody, Rule } from "../../core/rule.ts";
import { Working } from "../../core/working.ts";
import type { ShedPlan } from "../../food/blend/plan.ts";
import { SHORT_WEIGHT } from "../../food/blend/shortest.ts";
import { solveShed } from "../../food/blend/solveShed.ts";
import type { ShedState } from "../../states/states.ts";
import { MATERIAL_FACTS } from "../../tables/materials.ts";
import { type Message, measure, say } from "../../text/message.ts";
import { labourLacks, labourLines, labourOf, labourSteps } from "./labour.ts";
import { stepsOf } from "./steps.ts";
import { bindingTable, chartsOf, conflictTables, sharesTable, suppliedTable, whyTable } from "./tables.ts";
import { money, type Words, wordsFor } from "./words.ts";
import { workingOf } from "./working.ts";

/** A plan this far from the least there can be is said to be so; below, nobody would see it on a bill. */
const GAP_WORTH_SAYING = 1e-6;

/** What to take from the shed and what to buy, for all plantings together? */
export const shedRule: Rule<"shed"> = {
  id: "shed",
  version: 2,
  question: "What to take from the shed, and what to buy, for all plantings together?",
  subject: "shed",
  needs: [
    "what each planting still needs and what may be used there",
    "what the shed holds, with labels",
    "prices and bag sizes of what can be bought",
    "what givings took on this farm, and the wage",
  ],
  run,
};

function run(state: ShedState): AnswerBody {
  if (state.demands.length === 0) return { kind: "does-not-apply", reason: say("shed.not.no-demands") };
  const plan = solveShed(state);
  if (plan.verdict === "nothing-asked")
    return { kind: "does-not-apply", reason: say("shed.not.nothing-asked") };
  if (state.shed.length === 0) {
    const missing = {
      field: "shed",
      measure: say("shed.missing.shed"),
      couldMove: say("shed.missing.shed-moves", { plantings: state.demands.length }),
    };
    return { kind: "needs-more", missing: [missing], working: [], estimated: [] };
  }
  return adviceFrom(state, plan, wordsFor(state));
}

type Code = "buy" | "in-hand" | "cannot-be-met";

function adviceFrom(state: ShedState, plan: ShedPlan, words: Words): AdviceBody {
  const w = new Working();
  workingOf(state, plan, w);
  const labour = labourOf(state, plan);
  labourLines(w, labour);
  for (const e of plan.estimated) w.estimate(e.input, e.how, e.source);
  const today = localDay(state.asOf, state.timeZone);
  const unpriced = plan.materials.some((m) => m.unpriced);
  const code: Code =
    plan.verdict === "cannot-be-met" ? "cannot-be-met" : plan.cost > 0 || unpriced ? "buy" : "in-hand";
  const short = plan.plantings.filter((p) => p.allotment.short.length > 0).length;
  const params = { cost: money(plan.cost), short, plantings: plan.plantings.length };
  return {
    kind: "advice",
    decision: { code, text: say(`shed.decision.${code}${unpriced ? "-unpriced" : ""}`, params) },
    steps: [...stepsOf(state, plan, words), ...labourSteps(labour, plan.cost)],
    window: { from: today, to: null, endsBy: say("shed.ends") },
    stakes: { harm: 0, reason: say("shed.stakes"), actBy: null },
    working: w.lines,
    estimated: w.estimated,
    evidence: ["shed.least-cost", "shed.whole-bags", "shed.contents", "shed.shortfall"],
    grade: "practice",
    limits: limitsOf(plan),
    cautions: cautionsFor(...cautionIds(state, plan)),
    wouldChange: [...changesOf(plan, words), ...labourLacks(labour)],
    cases: [],
    expected: null,
    amounts: amountsOf(plan),
    charts: chartsOf(plan, words),
    table: [
      ...conflictTables(plan, words),
      whyTable(plan, words),
      sharesTable(plan, words),
      suppliedTable(plan, words),
      ...bindingTable(plan, words),
    ].filter(({ rows }) => rows.length > 0),
  };
}

/** What a draft is renewed for: what is bought or taken. */
function amountsOf(plan: ShedPlan): Record<string, number> {
  const amounts: Record<string, number> = { cost: plan.cost };
  for (const m of plan.materials) {
    if (m.usedKg > 0 || m.boughtKg > 0) amounts[`usedKg.${m.materialId}`] = m.usedKg;
  }
  return amounts;
}

const cautionIds = (state: ShedState, plan: ShedPlan): string[] => {
  const used = new Set(plan.materials.filter((m) => m.usedKg > 0).map((m) => m.materialId));
  const ofMaterials = state.shed.flatMap((m) =>
    used.has(m.id) ? (MATERIAL_FACTS[m.kind]?.cautions ?? []) : [],
  );
  return ["nutrient-law", "fertiliser-handling", ...ofMaterials];
};

function limitsOf(plan: ShedPlan): Message[] {
  const limits = [say("shed.limit.prices")];
  const gap = plan.cost > 0 ? (plan.cost - plan.costAtLeast) / plan.cost : 0;
  if (gap > GAP_WORTH_SAYING) {
    const least = money(plan.costAtLeast);
    limits.push(say("shed.limit.search", { gap: measure(gap * 100, "pct"), least }));
  }
  if (plan.verdict === "cannot-be-met") {
    limits.push(say("shed.limit.weights", { main: SHORT_WEIGHT.N, others: SHORT_WEIGHT.Ca }));
  }
  return limits;
}

/** The prices, and the stock whose next kilogram is worth most. */
function changesOf(plan: ShedPlan, words: Words): Message[] {
  const changes = [say("shed.change.prices")];
  const stocks = plan.binding.flatMap((b) =>
    b.condition.kind === "stock" ? [{ ...b, of: b.condition.materialId }] : [],
  );
  const dearest = stocks.toSorted((a, b) => b.worthDivisible - a.worthDivisible)[0];
  if (dearest) {
    const params = { ...words.material(dearest.of), worth: money(dearest.worthDivisible) };
    changes.push(say("shed.change.stock", params));
  }
  return changes;
}

import { cautionsFor } from "../../cautions/register.ts";
import { daysBetween, instantAt, localDay } from "../../core/days.ts";
import type { AdviceBody, AnswerBody, Case, Expected, Rule, Stakes } from "../../core/rule.ts";
import { Working } from "../../core/working.ts";
import { METHOD_BASE } from "../../quantities/soil/limeMethods.ts";
import { acidSoilOf, TEST_HOLDS_DAYS } from "../../soil-acidity/soil.ts";
import { MONTHS_BETWEEN } from "../../soil-acidity/split.ts";
import { LIME_TARGET, LOWEST_PEPPER_PH } from "../../soil-acidity/target.ts";
import { LIME_MONTHS } from "../../soil-acidity/timing.ts";
import { weight } from "../../soil-acidity/weight.ts";
import type { BedState } from "../../states/states.ts";
import { LIME_MATERIALS, LIME_MATERIALS_SOURCE } from "../../tables/limeMaterials.ts";
import { type Message, measure, onDay, say, wordOf } from "../../text/message.ts";
import { bedAreaM2 } from "../../water/ground.ts";
import { phChart } from "./chart.ts";
import { type Judged, judge, rate } from "./judge.ts";
import type { MaterialRate } from "./materials.ts";
import { needsPh, needsRelation, needsTexture } from "./missing.ts";
import { methodWord, stepsOf } from "./steps.ts";
import { asIfDone, openLimings } from "./unanswered.ts";

const LAST_HOUR = 20;
/** What a season in soil of the wrong pH may cost: outside what peppers stand, and only off the target (common practice). */
const HARM = { outside: 0.2, off: 0.05, fine: 0.02 } as const;

/** What to do about a bed's pH, calcium and magnesium. */
export const limeRule: Rule<"bed"> = {
  id: "lime",
  version: 4,
  question: "Does this bed need lime or sulfur, how much, of what, and by when?",
  subject: "bed",
  needs: [
    "a soil test with pH, and buffer pH with its method or exchangeable acidity",
    "neutralising value and fineness of the lime in the shed",
    "lime given before, and when plants go out next",
    "for alkaline soil: its texture, and whether it fizzes with vinegar",
  ],
  run,
};

function run(state: BedState): AnswerBody {
  const today = localDay(state.asOf, state.site.timeZone);
  const soil = acidSoilOf(state.soilTests, today);
  if (state.bed.kind === "containers") return { kind: "does-not-apply", reason: say("lime.not.containers") };
  if (!soil) return needsPh(state.soilTests.length > 0);
  const w = new Working();
  // Nothing is given twice on a guess: what nobody answered is taken as done until somebody says otherwise.
  const open = openLimings(state, today);
  const j = judge(asIfDone(state, open, soil), soil, today, w);
  if (!("open" in j)) {
    const advice = adviceFrom(state, j, w, today);
    return open.length > 0 ? withCases(advice, state, j, open.at(-1)?.due ?? today, today) : advice;
  }
  if (j.open === "nothing") return { kind: "does-not-apply", reason: j.reason };
  if (j.open === "texture") return needsTexture(w);
  return needsRelation(soil, state.settings.limeTargetPh ?? LIME_TARGET.ph, j.why, w);
}

function adviceFrom(state: BedState, j: Judged, w: Working, today: string): AdviceBody {
  writeMaterial(j, w);
  if (j.task === "lime") writePh(j, w);
  const chart = j.task === "lime" ? phChart(j) : undefined;
  return {
    kind: "advice",
    decision: { code: codeOf(j), text: decisionText(state, j) },
    steps: stepsOf(state, j),
    window: {
      from: j.timing.from,
      to: j.timing.when === "late" ? null : (j.timing.by ?? null),
      endsBy: say("lime.ends"),
    },
    stakes: stakesOf(state, j),
    working: w.lines,
    estimated: w.estimated,
    evidence: EVIDENCE,
    grade: "weak",
    limits: limitsOf(j, today),
    cautions: cautionsFor(...cautionIds(j)),
    wouldChange: wouldChangeOf(state, j),
    cases: [],
    expected: expectedOf(state, j, today),
    amounts: amountsOf(j),
    charts: chart ? [chart] : [],
  };
}

/** Either way of lime or sulfur that nobody answered. */
function withCases(advice: AdviceBody, state: BedState, j: Judged, due: string, today: string): AdviceBody {
  const day = onDay(due);
  const caseOf = (when: string, one: Judged): Case => ({
    when: say(when, { day }),
    decision: decisionText(state, one),
    steps: stepsOf(state, one),
  });
  const ifNot = judge(state, j.soil, today, new Working());
  return {
    ...advice,
    steps: [{ text: say("lime.step.unanswered", { day }) }, ...advice.steps],
    cases: [caseOf("lime.case.done", j), ...("open" in ifNot ? [] : [caseOf("lime.case.not-done", ifNot)])],
  };
}

const EVIDENCE = [
  "lime.target",
  "lime.mehlich",
  "lime.adams-evans",
  "lime.smp",
  "lime.exchangeable-acidity",
  "lime.no-coefficients",
  "lime.depth",
  "lime.quality",
  "lime.fineness",
  "lime.still-working",
  "lime.splitting",
  "lime.dolomitic",
  "lime.gypsum",
  "lime.months",
  "lime.sulfur",
  "lime.sulfur-rhs",
  "lime.sulfur-handbook",
  "lime.free-lime",
];

function codeOf({ task, timing }: Judged): string {
  if (task !== "lime") return task;
  if (timing.when === "after-crop") return "lime-after-crop";
  if (timing.limedOn !== undefined) return "lime-next-part";
  return timing.ammoniumOn === undefined ? "lime" : "lime-wait";
}

function decisionText(state: BedState, j: Judged): Message {
  const shared = {
    ph: j.soil.waterPh.toFixed(1),
    target: j.targetPh.toFixed(1),
    area: measure(bedAreaM2(state.bed), "m2"),
    from: onDay(j.timing.from),
    months: MONTHS_BETWEEN.lime,
  };
  const key = `lime.decision.${codeOf(j)}`;
  if (j.task === "lime") {
    const [chosen] = j.materials.rates;
    const kg = weight(chosen.firstKg);
    return say(key, {
      ...shared,
      target: j.need.targetPh.toFixed(1),
      kg,
      material: wordOf(`material.${chosen.kind}`),
      ...rate((chosen.firstKg * 10_000) / bedAreaM2(state.bed)),
    });
  }
  if (j.task === "sulfur" || j.task === "fizz-first") {
    return say(j.timing.when === "after-crop" ? `${key}-after-crop` : key, {
      ...shared,
      target: j.plan.targetPh.toFixed(1),
      kg: weight(j.plan.materialBedKg / j.plan.applications),
      material: wordOf(`material.${j.plan.material?.kind ?? "sulfur"}`),
    });
  }
  return say(key, shared);
}

/** Lime presses until the last day that leaves it time; later it helps less each week but no day is the last. */
function stakesOf(state: BedState, j: Judged): Stakes {
  const { timing, soil } = j;
  const acts = j.task === "lime" || j.task === "sulfur" || j.task === "fizz-first";
  if (!acts) return { harm: HARM.fine, reason: say("lime.stakes.fine"), actBy: null };
  const outside = soil.waterPh < LOWEST_PEPPER_PH || j.task !== "lime";
  const by = timing.when === "in-time" ? timing.by : undefined;
  return {
    harm: outside ? HARM.outside : HARM.off,
    reason: say(outside ? "lime.stakes.outside" : "lime.stakes.off", { months: LIME_MONTHS.least }),
    actBy: by === undefined ? null : instantAt(by, LAST_HOUR, state.site.timeZone),
  };
}

function writeMaterial(j: Judged, w: Working): void {
  if (j.task !== "lime") return;
  const [chosen] = j.materials.rates;
  const { quality, kind } = chosen;
  const allowance =
    j.need.method === "adams-evans" && quality.untested.neutralisingValue && quality.untested.fineness;
  if (allowance) {
    w.estimate(
      "neutralisingValuePct",
      "agricultural lime, 1.5 times the pure amount",
      METHOD_BASE["adams-evans"].source,
    );
  } else {
    if (quality.untested.neutralisingValue) {
      w.estimate(
        "neutralisingValuePct",
        `${LIME_MATERIALS[kind].ccePct} %, as the pure kind`,
        LIME_MATERIALS_SOURCE,
      );
    }
    if (quality.untested.fineness) w.estimate("finenessPct", "taken as 100 %: no label or sieving was given");
  }
  w.estimate(
    "depthCm",
    `worked in as deep as the sample was taken, within 10 to 25 cm: ${j.soil.depthCm} cm`,
  );
  w.line(
    "lime",
    `${kind} to spread`,
    allowance ? "1.5 x need" : `need / (${quality.neutralisingValuePct} % x ${quality.finenessPct} %)`,
    chosen.kgPerHa,
    "kg/ha",
    { key: "osu-enp-2014", locator: "rate x 2000 / ENP (SN-624)" },
  );
  w.line("bed", "on the bed without its alleys", "lime x length x width / 10 000", chosen.bedKg, "kg");
  w.line(
    "parts",
    "applications",
    "1 up to 10, 2 up to 20, else 3, by lb/100 sq ft",
    chosen.applications,
    "",
    {
      key: "psu-home-garden",
      locator: "SN-622",
    },
  );
}

function writePh(j: Extract<Judged, { task: "lime" }>, w: Working): void {
  const { method } = j.need;
  const expression = `${method} turned round, for ${j.soil.depthCm} cm, after ${LIME_MONTHS.least} to ${LIME_MONTHS.most} months`;
  w.line(
    "pH first",
    "pH after the first application",
    expression,
    j.phAfterFirst,
    "pH",
    METHOD_BASE[method].source,
  );
  w.line("pH all", "pH after all of it", expression, j.phAfterAll, "pH", METHOD_BASE[method].source);
}

function limitsOf(j: Judged, today: string): Message[] {
  const limits = [say("lime.limit.soil")];
  if (j.task === "lime") {
    const { method } = j.need;
    limits.push(say(`lime.limit.${method}`), ...sharedStock(j.materials.rates));
    if (j.need.targetPh !== j.need.wantedPh) {
      limits.push(
        say("lime.limit.target-moved", {
          wanted: j.need.wantedPh.toFixed(1),
          target: j.need.targetPh.toFixed(1),
          method: methodWord(method),
        }),
      );
    }
  }
  if (j.task === "sulfur" || j.task === "fizz-first") limits.push(say("lime.limit.sulfur"));
  if (j.task === "gypsum" || j.task === "magnesium") limits.push(say("lime.limit.georgia"));
  const { sampledOn } = j.soil.test;
  if (daysBetween(sampledOn, today) > TEST_HOLDS_DAYS) {
    limits.push(say("lime.limit.old", { day: onDay(sampledOn), year: sampledOn.slice(0, 4) }));
  }
  return limits;
}

/** Each bed's answer sees the whole stock. */
const sharedStock = (rates: readonly MaterialRate[]): Message[] =>
  rates.flatMap(({ kind, material }) =>
    material?.stockKg === undefined || material.stockKg === 0
      ? []
      : [
          say("lime.limit.shared-stock", {
            stock: weight(material.stockKg),
            material: wordOf(`material.${kind}`),
          }),
        ],
  );

function cautionIds(j: Judged): string[] {
  const ids = ["nutrient-law"];
  if (j.task === "lime") {
    const caustic = j.materials.rates.some((r) => LIME_MATERIALS[r.kind].caustic);
    return [...(caustic ? ["lime-caustic"] : []), "lime-dust", "lime-not-with-ammonium", ...ids];
  }
  if (j.task === "sulfur" || j.task === "fizz-first") return ["sulfur-dust", ...ids];
  return ids;
}

function wouldChangeOf(state: BedState, j: Judged): Message[] {
  const changes: Message[] = [];
  if (j.task === "lime") {
    const [chosen] = j.materials.rates;
    if (chosen.quality.untested.fineness) {
      changes.push(say("lime.change.fineness", { kg: weight(chosen.bedKg / 0.6) }));
    }
    changes.push(
      say("lime.change.depth", {
        half: measure(j.soil.depthCm / 2, "cm"),
        kg: weight(chosen.bedKg / 2),
      }),
    );
    if (state.settings.limeTargetPh === undefined) changes.push(say("lime.change.target"));
    if (state.applications === undefined) changes.push(say("lime.change.history"));
    if (!j.magnesium) changes.push(say("lime.change.magnesium"));
  }
  if (j.timing.when === "no-date") changes.push(say("lime.change.set-out"));
  changes.push(say("lime.change.test"));
  return changes;
}

function expectedOf(state: BedState, j: Judged, today: string): Expected | null {
  const areaM2 = bedAreaM2(state.bed);
  if (j.task === "fizz-first") return { kind: "look", date: today };
  if (j.task === "lime") {
    const [chosen] = j.materials.rates;
    return {
      kind: "application",
      date: j.timing.from,
      ...(chosen.material && { materialId: chosen.material.id }),
      amountKg: chosen.firstKg,
      areaM2,
    };
  }
  if (j.task !== "sulfur") return null;
  const { material, materialBedKg, applications } = j.plan;
  return {
    kind: "application",
    date: j.timing.from,
    ...(material && { materialId: material.id }),
    amountKg: materialBedKg / applications,
    areaM2,
  };
}

function amountsOf(j: Judged): Record<string, number> {
  if (j.task === "lime") {
    const [chosen] = j.materials.rates;
    return {
      caco3KgPerHa: j.need.needKgPerHa,
      limeKgPerHa: chosen.kgPerHa,
      limeKg: chosen.bedKg,
      firstKg: chosen.firstKg,
    };
  }
  if (j.task === "sulfur" || j.task === "fizz-first") {
    return { sulfurKgPerHa: j.plan.kgPerHa, sulfurKg: j.plan.bedKg };
  }
  return { ph: j.soil.waterPh };
}

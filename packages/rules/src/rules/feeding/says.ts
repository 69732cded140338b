import type { AdviceBody } from "../../core/rule.ts";
import { ashApart } from "../../food/ashApart.ts";
import { isHardWater, latestWaterTest } from "../../food/fertigation.ts";
import { isRawManure } from "../../food/mayUse.ts";
import { oldTestDays } from "../../food/oldTest.ts";
import { forecastIsFresh } from "../../food/rainAhead.ts";
import { isSlow } from "../../food/schedule.ts";
import type { PlantingState } from "../../states/states.ts";
import { MATERIAL_FACTS } from "../../tables/materials.ts";
import { type Message, measure, onDay, say } from "../../text/message.ts";
import { type FeedingReading, type Frame, injectorOf, isHeldBack } from "./reading.ts";

/** The cautions of what is given, each once. */
export function cautionIds(
  state: PlantingState,
  { plan, schedule, dose }: FeedingReading,
  today: string,
): string[] {
  const materials = schedule.materials.map((m) => m.material);
  const ids = new Set(["fertiliser-handling", "nitrate-leaching", "nutrient-law"]);
  if ((plan.leftP2o5 ?? 0) > 0 || materials.some((m) => m.p2o5Pct > 0)) ids.add("phosphorus-runoff");
  if (state.feeding.method === "drip") ids.add("backflow");
  // Where acid is spoken of, what it does to people is said with it.
  if (injectorOf(state) && dose && isHardWater(latestWaterTest(state.waterTests, today)))
    ids.add("acid-handling");
  for (const material of materials) {
    // Raw manure is never dosed on a planting; what its kind warns of is not said of a composted lot.
    for (const id of MATERIAL_FACTS[material.kind]?.cautions ?? []) {
      if (id !== "manure-raw" || isRawManure(material)) ids.add(id);
    }
    // Ammonium hides in compounds and in materials whose kind nobody could name.
    if (material.kind === "compound" || material.kind === "other") ids.add("ash-not-with-ammonium");
    if (material.kind === "manure") ids.add(isRawManure(material) ? "manure-raw" : "grade-varies");
    if (isSlow(material.kind) || material.kind === "fish") ids.add("organic-dust");
    if (material.certifiedUse === "restricted" && state.bed.certification !== "none")
      ids.add("certifier-first");
  }
  return [...ids];
}

export function evidenceOf(state: PlantingState, r: FeedingReading, frame: Frame): string[] {
  const { plan, rain, water } = r;
  const has = (kind: string) => plan.credits.some((c) => c.kind === kind && c.how === "computed");
  return [
    "feeding.uptake",
    "feeding.daily-nitrogen",
    "feeding.schedule-memory",
    "feeding.midwest-timing",
    "feeding.nitrogen-plateau",
    "feeding.response",
    "feeding.potash-ratio",
    "feeding.potash-calcium",
    ...(isHeldBack(r, frame) ? ["feeding.hold-back"] : []),
    ...(rain ? ["feeding.leaching"] : []),
    ...(has("manure") || has("compost") ? ["feeding.manure-nitrogen"] : []),
    ...(has("organic-matter") || has("compost") ? ["feeding.release-memory"] : []),
    ...(plan.nitrate ? ["feeding.nitrate-test"] : []),
    ...(plan.plantTests.length > 0 ? ["feeding.plant-tests", "feeding.plant-tests-inconsistent"] : []),
    ...(injectorOf(state) ? ["feeding.tanks"] : []),
    ...(water ? ["feeding.solubility", "feeding.conductivity"] : []),
  ];
}

export function limitsOf(state: PlantingState, r: FeedingReading, frame: Frame): Message[] {
  const { today } = frame;
  const { plan } = r;
  const computed = plan.credits.filter((c) => c.how === "computed").map((c) => c.kind);
  const guides = [plan.p2o5.guide, plan.k2o.guide].filter((g) => g !== undefined);
  const limits = [say("feeding.limit.basis"), say("feeding.limit.climate")];
  if (isHeldBack(r, frame)) limits.push(say("feeding.limit.hold-back"));
  if (state.feeding.method !== "broadcast") limits.push(say("feeding.limit.strip"));
  if (r.schedule.materials.some((m) => isSlow(m.material.kind))) limits.push(say("feeding.limit.slow"));
  for (const day of oldTestDays(state, plan, today)) {
    limits.push(say("feeding.limit.old-test", { day: onDay(day), year: day.slice(0, 4) }));
  }
  const apart = ashApart(state, today);
  if (apart && r.demand.leftOut.some((l) => l.why === "ash-with-ammonium")) {
    limits.push(
      say(apart.sure ? "feeding.limit.ash-apart" : "feeding.limit.ash-apart-perhaps", {
        on: onDay(apart.on),
        from: onDay(apart.from),
      }),
    );
  }
  if (state.planting.species !== "annuum") limits.push(say("feeding.limit.species"));
  if (plan.p2o5.response === "may-respond" || plan.k2o.response === "may-respond") {
    limits.push(say("feeding.limit.may-respond"));
  }
  if (guides.some((g) => g.status === "memory")) limits.push(say("feeding.limit.guide-memory"));
  if (computed.includes("organic-matter")) limits.push(say("feeding.limit.organic-matter"));
  if (computed.includes("manure") || computed.includes("compost")) limits.push(say("feeding.limit.manure"));
  if (plan.plantTests.length > 0) limits.push(say("feeding.limit.plant-tests"));
  if (state.forecast && !forecastIsFresh(state)) limits.push(say("feeding.limit.forecast-old"));
  return limits;
}

export function wouldChangeOf(
  state: PlantingState,
  r: FeedingReading,
  frame: Frame,
): AdviceBody["wouldChange"] {
  const { plan } = r;
  const changes = [
    ...(isHeldBack(r, frame) ? [say("feeding.change.hold-back")] : []),
    say("feeding.change.goal", {
      low: measure(plan.need.low, "kg/ha"),
      high: measure(plan.need.high, "kg/ha"),
    }),
    say("feeding.change.leaching"),
  ];
  if (plan.p2o5.kgPerHa === null || plan.k2o.kgPerHa === null) changes.push(say("feeding.change.soil-test"));
  const { water } = state;
  const counted = plan.credits.some((c) => c.kind === "irrigation-water");
  if (water?.nitrateNMgPerL !== undefined && !counted) {
    changes.push(say("feeding.change.water-mm", { n: measure(water.nitrateNMgPerL, "kg/ha") }));
  }
  if (water?.nitrateNMgPerL === undefined && !counted) changes.push(say("feeding.change.water-nitrate"));
  if (!plan.dates.seen.buds) changes.push(say("feeding.change.buds", { day: onDay(plan.dates.buds) }));
  if (!plan.credits.some((c) => c.kind === "organic-matter"))
    changes.push(say("feeding.change.organic-matter"));
  if (plan.plantTests.length === 0) changes.push(say("feeding.change.plant-test"));
  return changes;
}

import { refuse } from "../../core/errors.ts";
import type { Working } from "../../core/working.ts";
import { ammoniumGiven } from "../../soil-acidity/ammonium.ts";
import {
  BRING_CALCIUM,
  BRING_MAGNESIUM,
  givenAfter,
  gypsumIsDue,
  type MagnesiumReading,
  magnesiumOf,
} from "../../soil-acidity/calciumMagnesium.ts";
import {
  type LimeNeed,
  limeNeedOf,
  type NoRelation,
  phAfter,
  relationOf,
} from "../../soil-acidity/limeNeed.ts";
import { ashSince, limedSince, stillWorkingKgPerHa } from "../../soil-acidity/residual.ts";
import type { AcidSoil } from "../../soil-acidity/soil.ts";
import { limeApplications } from "../../soil-acidity/split.ts";
import { HIGHEST_PEPPER_PH, LIME_TARGET, limeIsDue } from "../../soil-acidity/target.ts";
import {
  type LimeTiming,
  timingAfterAmmonium,
  timingAfterPart,
  timingOf,
} from "../../soil-acidity/timing.ts";
import type { BedState } from "../../states/states.ts";
import { type Message, measure, say, wordOf } from "../../text/message.ts";
import { type LimeMaterials, limeMaterials, perCaco3 } from "./materials.ts";
import { SOURING, type SulfurPlan, sulfurPlan } from "./sulfur.ts";

/** What stays the same whatever is to be done. */
export interface Ground {
  soil: AcidSoil;
  targetPh: number;
  timing: LimeTiming;
  magnesium: MagnesiumReading | undefined;
  /** Whether they are short where no lime is due, and nothing of them was logged since the test. */
  calciumAsks: boolean;
  magnesiumAsks: boolean;
}

export interface LimeTask {
  task: "lime";
  need: LimeNeed;
  /** Whether ash given since the sample was taken off. */
  ashCounted: boolean;
  materials: LimeMaterials;
  /** pH when the first application has acted; null where no relation says. */
  phAfterFirst: number | null;
  phAfterAll: number | null;
}
export type Judged = Ground &
  (
    | LimeTask
    | { task: "still-working"; need: LimeNeed; ashCounted: boolean }
    | { task: "sulfur" | "fizz-first"; plan: SulfurPlan }
    | { task: "free-lime" | "sulfur-at-work" }
    | { task: "gypsum" | "magnesium" }
  );

/** What keeps a rule from an answer. */
type Open =
  | { open: "nothing"; reason: Message }
  | { open: "no-relation"; why: NoRelation }
  | { open: "texture" };

export function judge(state: BedState, soil: AcidSoil, today: string, w: Working): Judged | Open {
  const office = state.settings.limeTargetPh;
  const targetPh = office ?? LIME_TARGET.ph;
  const magnesium = magnesiumOf(soil.test);
  const calciumAsks = gypsumIsDue(soil.test) && !givenAfter(state, BRING_CALCIUM, soil.test);
  const magnesiumAsks = magnesium?.low === true && !givenAfter(state, BRING_MAGNESIUM, soil.test);
  const timing = timingOf(state.setOutOn, today, state.standingSince);
  const ground: Ground = { soil, targetPh, timing, magnesium, calciumAsks, magnesiumAsks };
  writeTarget(soil, office, w);
  if (limeIsDue(soil.waterPh, office)) return limeOrWait(state, ground, today, w);
  if (soil.waterPh > HIGHEST_PEPPER_PH.ph) return acidify(state, ground, today, w);
  if (calciumAsks) return { ...ground, task: "gypsum" };
  if (magnesiumAsks) return { ...ground, task: "magnesium" };
  return { open: "nothing", reason: inRange(soil.waterPh, targetPh, office) };
}

function limeOrWait(state: BedState, anyTime: Ground, today: string, w: Working): Judged | Open {
  const { soil } = anyTime;
  const ammonium = ammoniumGiven(state.applications ?? [], state.shed ?? []);
  const ground = { ...anyTime, timing: timingAfterAmmonium(anyTime.timing, ammonium, today) };
  if (soil.organic) refuseOrganic(state, soil);
  const working = stillWorkingKgPerHa(state, soil, today, "low");
  const ashCounted = ashSince(state, soil, today).length > 0;
  const need = limeNeedOf(soil, ground.targetPh, working, w);
  if ("lacks" in need) return { open: "no-relation", why: need };
  if (need.callKgPerHa === 0) {
    return {
      open: "nothing",
      reason: say("lime.not.no-acidity", {
        ph: soil.waterPh.toFixed(1),
        method: wordOf(`lime.method.${need.method}`),
      }),
    };
  }
  if (need.needKgPerHa === 0) return { ...ground, task: "still-working", need, ashCounted };
  const materials = limeMaterials(state, need, ground.magnesium?.low ?? false, today);
  const [chosen] = materials.rates;
  const parts = limeApplications((chosen.kgPerHa * need.callKgPerHa) / need.needKgPerHa);
  const limedOn = parts > 1 ? limedSince(state, soil, today).at(-1) : undefined;
  const timing = limedOn === undefined ? ground.timing : timingAfterPart(ground.timing, limedOn);
  const share = chosen.bedKg > 0 ? chosen.firstKg / chosen.bedKg : 0;
  const effectFirst = (chosen.kgPerHa * share) / perCaco3(need, chosen.quality);
  return {
    ...ground,
    timing,
    task: "lime",
    need,
    ashCounted,
    materials,
    phAfterFirst: phAfter(soil, effectFirst + need.creditKgPerHa),
    phAfterAll: phAfter(soil, need.needKgPerHa + need.creditKgPerHa),
  };
}

/** NCDA's relation alone is printed for organic soils too; their target is far lower, so the office must have set it. */
function refuseOrganic(state: BedState, soil: AcidSoil): void {
  const relation = relationOf(soil);
  if ("lacks" in relation) return;
  if (relation.method !== "mehlich") {
    const message =
      "organic soil is limed here by the Mehlich buffer alone; this relation is of mineral soil";
    refuse(`${soil.path}.medium`, message, "mineral-soil", soil.test.medium);
  }
  if (state.settings.limeTargetPh === undefined) {
    refuse(
      "settings.limeTargetPh",
      "must be set for organic soil: the target held here is of mineral soil",
      "5 to 7.5",
    );
  }
}

function acidify(state: BedState, ground: Ground, today: string, w: Working): Judged | Open {
  const { soil } = ground;
  if (soil.test.freeLime === true) return { ...ground, task: "free-lime" };
  if (givenAfter(state, SOURING, soil.test)) return { ...ground, task: "sulfur-at-work" };
  const plan = sulfurPlan(state, soil, Math.min(ground.targetPh, HIGHEST_PEPPER_PH.ph), today, w);
  if (!plan) return { open: "texture" };
  return { ...ground, task: soil.test.freeLime === false ? "sulfur" : "fizz-first", plan };
}

function writeTarget(soil: AcidSoil, office: number | undefined, w: Working): void {
  w.line("pH", "pH of the soil in water", "newest test", soil.waterPh, "pH");
  if (office !== undefined) {
    w.line("target", "pH wanted", "set by the office", office, "pH");
    return;
  }
  const { low, high, ph, source, beside } = LIME_TARGET;
  w.line("target", "pH wanted", `within ${low} to ${high}`, ph, "pH", source);
  for (const other of beside)
    w.line("range", "pH wanted, as printed elsewhere", other.locator ?? "", ph, "pH", other);
}

function inRange(waterPh: number, targetPh: number, office: number | undefined): Message {
  const ph = waterPh.toFixed(1);
  if (office !== undefined) return say("lime.not.at-target", { ph, target: targetPh.toFixed(1) });
  const bounds = { ph, low: LIME_TARGET.low.toFixed(1), high: LIME_TARGET.high.toFixed(1) };
  if (waterPh <= LIME_TARGET.high) return say("lime.not.in-range", bounds);
  return say("lime.not.above-range", { ...bounds, most: HIGHEST_PEPPER_PH.ph.toFixed(1) });
}

/** A rate as people read it. */
export const rate = (kgPerHa: number) => ({
  perM2: measure(kgPerHa / 10, "g/m2"),
  perHa: measure(kgPerHa, "kg/ha"),
});

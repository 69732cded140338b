import type { Step } from "../../core/rule.ts";
import { LIME_TARGET } from "../../soil-acidity/target.ts";
import { weight } from "../../soil-acidity/weight.ts";
import type { PlantingState } from "../../states/states.ts";
import type { Range } from "../../tables/uptake.ts";
import {
  ASH_CAPS,
  ASH_PH_CEILINGS,
  LEACHED_ASH,
  STRICTEST_CAP,
  STRICTEST_CEILING,
} from "../../tables/woodAsh.ts";
import { type MeasureUnit, type Message, measure, onDay, say, wordOf } from "../../text/message.ts";
import { bedAreaM2, croppedAreaM2 } from "../../water/ground.ts";
import { plannedAmmonium } from "./ammonium.ts";
import type { AshChoice } from "./ash.ts";
import type { Reading } from "./judge.ts";

const asSteps = (said: Message[]): Step[] => said.map((text) => ({ text }));
const both = (name: string, { low, high }: Range, unit: MeasureUnit) => ({
  [`${name}Low`]: measure(low, unit),
  [`${name}High`]: measure(high, unit),
  [`${name}One`]: high - low < 1e-9 ? "yes" : "no",
});

/** Why each ash that may not be used stays out, and what to do with it. */
export function barredSteps({ barred }: AshChoice): Step[] {
  const said = barred.map(({ why }) => say(`wood-ash.step.${why}`));
  return asSteps([...said, say("wood-ash.step.dispose"), say("wood-ash.step.store")]);
}

/** No ash by pH: which ceiling was taken and what others say. */
export const ceilingSteps = (waterPh: number): Step[] =>
  asSteps([
    say("wood-ash.step.ceiling", {
      ph: waterPh.toFixed(1),
      least: STRICTEST_CEILING.ph.toFixed(1),
      most: Math.max(...ASH_PH_CEILINGS.map((c) => c.ph)).toFixed(1),
    }),
    say("wood-ash.step.never-for"),
    say("wood-ash.step.store"),
  ]);

/** No ash where the rule lime asks for none: the pH has reached what is wanted. */
export const atTargetSteps = (waterPh: number, officePh: number | undefined): Step[] =>
  asSteps([
    say("wood-ash.step.at-target", {
      ph: waterPh.toFixed(1),
      target: (officePh ?? LIME_TARGET.low).toFixed(1),
    }),
    say("wood-ash.step.never-for"),
    say("wood-ash.step.store"),
  ]);

export const afterCropSteps = (from: string): Step[] =>
  asSteps([
    say("wood-ash.step.after-crop", { from: onDay(from) }),
    say("wood-ash.step.store"),
    say("wood-ash.step.keep-dry", leached()),
  ]);

const leached = () => ({ leached: measure(LEACHED_ASH.k2oPct, "pct") });

/** How much, when, how, what it brings, and what it must not meet. */
export function spreadSteps(state: PlantingState, r: Reading, { barred }: AshChoice): Step[] {
  const gives = r.code === "spread" || r.code === "wait";
  const said = gives
    ? [
        ...amountSaid(state, r),
        ...boundsSaid(state, r),
        ...timingSaid(state, r),
        say("wood-ash.step.how", { depth: measure(r.soil.depthCm, "cm") }),
        ...bringsSaid(r),
        phSaid(r),
        say("wood-ash.step.never-for"),
        say("wood-ash.step.clean"),
        say("wood-ash.step.keep-dry", leached()),
        ...(r.content.analysed.k2o && r.content.analysed.cce ? [] : [say("wood-ash.step.analyse")]),
        say("wood-ash.step.store"),
      ]
    : [...noneSaid(r), say("wood-ash.step.never-for"), say("wood-ash.step.store")];
  return asSteps([...said, ...barred.map(({ why }) => say(`wood-ash.step.${why}`))]);
}

function amountSaid(state: PlantingState, r: Reading): Message[] {
  const areaM2 = bedAreaM2(state.bed);
  const { bulkDensityKgPerL } = r.ash.material;
  const shared = {
    kg: weight(r.plan.kg),
    area: measure(areaM2, "m2"),
    perM2: measure((r.plan.kg * 1000) / areaM2, "g/m2"),
    perHa: measure((r.plan.kg * 10_000) / areaM2, "kg/ha"),
    over: measure((r.plan.kg * 10_000) / croppedAreaM2(state.bed), "kg/ha"),
  };
  return [
    say("wood-ash.step.spread", shared),
    ...(bulkDensityKgPerL === undefined
      ? []
      : [say("wood-ash.step.volume", { litres: measure(r.plan.kg / bulkDensityKgPerL, "L") })]),
  ];
}

/** The smallest bound, and what each would have allowed. */
function boundsSaid(state: PlantingState, { plan }: Reading): Message[] {
  const areaM2 = bedAreaM2(state.bed);
  return [
    say(`wood-ash.step.bound-${plan.binding}`),
    say("wood-ash.step.bounds", {
      cap: weight(plan.allows.cap ?? 0),
      lime: weight(plan.allows.lime ?? 0),
      potash: weight(plan.allows.potash ?? 0),
    }),
    say("wood-ash.step.caps", {
      least: measure(STRICTEST_CAP.kgPerHa / 10, "g/m2"),
      most: measure(Math.max(...ASH_CAPS.map((c) => c.kgPerHa)) / 10, "g/m2"),
      bed: weight((STRICTEST_CAP.kgPerHa * areaM2) / 10_000),
    }),
  ];
}

function timingSaid(state: PlantingState, { timing }: Reading): Message[] {
  const days = { from: onDay(timing.from), to: onDay(timing.to ?? timing.from) };
  const planned = plannedAmmonium(state);
  const { ammonium } = timing;
  return [
    say("wood-ash.step.window", days),
    ...(ammonium
      ? [
          say(ammonium.sure ? "wood-ash.step.after-ammonium" : "wood-ash.step.after-ammonium-perhaps", {
            day: onDay(ammonium.on),
            from: onDay(timing.from),
          }),
        ]
      : []),
    ...(planned.length === 0
      ? [say("wood-ash.step.no-ammonium")]
      : planned.map((kind) =>
          say("wood-ash.step.planned-ammonium", { material: wordOf(`material.${kind}`) }),
        )),
  ];
}

function bringsSaid(r: Reading): Message[] {
  const { plan, food, need } = r;
  const share = (of: Range, whole: number): Range => ({
    low: (100 * of.low) / whole,
    high: (100 * of.high) / whole,
  });
  const leftK2o = food.leftK2o ?? 0;
  const leftP2o5 = food.leftP2o5 ?? 0;
  return [
    say("wood-ash.step.potash", {
      ...both("k2o", plan.k2oKgPerHa, "kg/ha"),
      ...both("share", share(plan.k2oKgPerHa, leftK2o), "pct"),
      need: measure(leftK2o, "kg/ha"),
    }),
    leftP2o5 > 0
      ? say("wood-ash.step.phosphate", {
          ...both("p2o5", plan.p2o5KgPerHa, "kg/ha"),
          ...both("share", share(plan.p2o5KgPerHa, leftP2o5), "pct"),
        })
      : say("wood-ash.step.phosphate-unneeded", both("p2o5", plan.p2o5KgPerHa, "kg/ha")),
    say("wood-ash.step.lime", {
      ...both("lime", plan.limeKgPerHa, "kg/ha"),
      ...both("share", share(plan.limeKgPerHa, need.needKgPerHa), "pct"),
      need: measure(need.needKgPerHa, "kg/ha"),
    }),
  ];
}

function phSaid(r: Reading): Message {
  const { predictedPh } = r.plan;
  if (predictedPh === null) return say("wood-ash.step.ph-unknown");
  const { low, high } = predictedPh;
  return say("wood-ash.step.ph", {
    now: r.soil.waterPh.toFixed(1),
    low: low.toFixed(2),
    high: high.toFixed(2),
    one: low.toFixed(2) === high.toFixed(2) ? "yes" : "no",
    method: wordOf(`wood-ash.method.${r.need.method}`),
    depth: measure(r.soil.depthCm, "cm"),
  });
}

function noneSaid({ code, timing }: Reading): Message[] {
  const days = { from: onDay(timing.from), to: onDay(timing.to ?? timing.from) };
  return [say(`wood-ash.step.${code}`, days)];
}

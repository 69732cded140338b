import type { Step } from "../../core/rule.ts";
import { coversOn } from "../../states/standing.ts";
import { COLD_NIGHT, DAY_LIMITS, NIGHT_LIMITS } from "../../tables/heatLimits.ts";
import { measure, type Param, say } from "../../text/message.ts";
import { type Heat, isHot } from "./heat.ts";
import type { Judged } from "./judge.ts";

const step = (key: string, params: Record<string, Param> = {}): Step => ({
  text: say(`too-hot.step.${key}`, params),
});

/** What was met and what comes, what to do about it, and what not to blame. */
export function stepsOf(j: Judged): Step[] {
  const { signs, past, ahead } = j;
  const hot = isHot(past) || isHot(ahead);
  return [
    ...(past.hours > 0 && hot ? [record("past", past)] : []),
    ...(isHot(ahead) ? [record("ahead", ahead), step("morning")] : []),
    ...(signs.includes("end-rot") ? endRotSteps(j) : []),
    ...(signs.includes("sunscald") ? [step("scald-pick")] : []),
    ...(signs.includes("flower-drop") ? flowerSteps(j) : []),
    ...(signs.includes("wilting-at-dawn") ? [step("dawn-wilt")] : []),
    ...(isHot(ahead) || signs.includes("sunscald") ? [step("shade"), step("leaves")] : []),
    ...(isHot(ahead) ? [step("pick-early")] : []),
    ...(hot && coversOn(j.state.bed, j.today).length > 0 ? [step("vent")] : []),
    ...(signs.includes("end-rot") ? [] : waterSteps(j)),
    ...(signs.includes("flower-drop") || hot ? [step("count")] : []),
  ];
}

function record(when: "past" | "ahead", heat: Heat): Step {
  return step(when, {
    hours: measure(heat.day[1]?.hours ?? 0, "hours"),
    degreeHours: measure(heat.day[1]?.degreeHours ?? 0, "C-hours"),
    limit: measure(DAY_LIMITS[1].limitC, "C"),
    nightHours: measure(heat.night[1]?.hours ?? 0, "hours"),
    nightDegreeHours: measure(heat.night[1]?.degreeHours ?? 0, "C-hours"),
    nightLimit: measure(NIGHT_LIMITS[1].limitC, "C"),
    max: measure(heat.maxC ?? 0, "C"),
  });
}

function waterSteps({ water }: Judged): Step[] {
  if (!water) return [step("water-unknown")];
  if (!water.uneven) return [step("water-even", { gap: measure(water.longestGapDays, "days") })];
  const gap = measure(water.longestGapDays, "days");
  const allowed = measure(water.allowedGapDays, "days");
  return water.longestGapDays > water.allowedGapDays
    ? [step("water-gap", { gap, allowed })]
    : [step("water-swing", { times: Math.round((water.swing ?? 1) * 10) / 10 })];
}

function endRotSteps(j: Judged): Step[] {
  const { calcium } = j;
  return [
    ...waterSteps(j),
    step("rot-pick"),
    step("hold-feed"),
    step(`calcium-${calcium.soil}`, { ca: measure(calcium.soilMgPerKg ?? 0, "mg/kg") }),
    step("sprays"),
  ];
}

function flowerSteps({ past }: Judged): Step[] {
  return [
    step("flowers-wait"),
    ...(past.coldNights > 0
      ? [
          step("cold-nights", {
            nights: past.coldNights,
            hours: measure(past.coldNightHours, "hours"),
            limit: measure(COLD_NIGHT.limitC, "C"),
          }),
        ]
      : []),
    ...(past.hours === 0 ? [step("flowers-unknown")] : []),
  ];
}

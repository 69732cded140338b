import { daysBetween } from "../../core/days.ts";
import type { Step } from "../../core/rule.ts";
import { measure, onDay, say } from "../../text/message.ts";
import { bedSteps } from "./bedSteps.ts";
import type { ValveReading } from "./decide.ts";
import { isDryOn } from "./drought.ts";
import { rainSteps } from "./rainSteps.ts";
import { seasonSteps } from "./seasonSteps.ts";
import { sensorSteps } from "./sensorSteps.ts";
import { bedCount, bedOf, type ValveSetting } from "./setting.ts";
import { firstShort } from "./zoneReading.ts";

const step = (...args: Parameters<typeof say>): Step => ({ text: say(...args) });
const MINUTES_PER_DAY = 1440;
const WILTING_COUNTS_DAYS = 2;

/** What to do, in the order in which it is done. */
export function stepsFor(setting: ValveSetting, reading: ValveReading): Step[] {
  return [
    ...wiltingStep(setting, reading),
    ...(reading.code === "water-now" ? waterSteps(setting, reading) : waitSteps(setting, reading)),
    ...deficitSteps(setting, reading),
    ...sensorSteps(setting, reading),
    ...rainSteps(setting, reading),
    ...seasonSteps(setting, reading),
  ];
}

function wiltingStep(setting: ValveSetting, { governing }: ValveReading): Step[] {
  const seen = setting.zones.some(({ zone }) =>
    zone.notes.some(
      (n) =>
        n.kind === "wilting-at-dawn" &&
        n.on <= setting.today &&
        daysBetween(n.on, setting.today) <= WILTING_COUNTS_DAYS,
    ),
  );
  return seen ? [step("irrigate.step.wilting", { missing: measure(governing.depletionMm, "mm") })] : [];
}

function waterSteps(setting: ValveSetting, r: ValveReading): Step[] {
  const { state } = setting;
  const steps = [
    step("irrigate.step.look-first"),
    step("irrigate.step.run", {
      minutes: measure(r.minutes, "minutes"),
      litres: measure(r.litres, "L"),
      gross: measure(r.grossMm, "mm"),
      net: measure(r.netMm, "mm"),
      efficiency: measure(100 * state.valve.efficiency, "pct"),
    }),
    ...leachingStep(setting, r),
  ];
  if (r.minutes > MINUTES_PER_DAY)
    steps.push(step("irrigate.step.too-slow", { hours: measure(r.minutes / 60, "hours") }));
  if (r.rounds > 1) steps.push(step("irrigate.step.rounds", { rounds: r.rounds }));
  steps.push(...bedSteps(setting, r));
  const surplus = Math.max(0, ...r.zones.map((z) => r.netMm - z.depletionMm));
  if (bedCount(setting) > 1) {
    steps.push(
      step("irrigate.step.thirstiest", {
        bed: bedOf(setting, r.governing.zone.bed),
        surplus: measure(surplus, "mm"),
      }),
    );
  }
  return [...steps, ...nextSteps(setting, r)];
}

/** When the watering after this one comes, in weather as expected and in the thirstiest and mildest of late. */
function nextSteps(setting: ValveSetting, { governing, netMm }: ValveReading): Step[] {
  const watered = {
    ...governing.start,
    depletionMm: Math.max(0, governing.depletionMm - netMm),
    wateredTopMm: 0,
  };
  const after = (et0Mm?: number) =>
    firstShort(setting, governing, watered, { rain: false, ...(et0Mm !== undefined && { et0Mm }) });
  const due = after();
  if (!due) return [];
  const [early, late] = [after(governing.et0Span.highMm), after(governing.et0Span.lowMm)];
  return early && late
    ? [
        step("irrigate.step.next-interval", {
          day: onDay(due.day),
          early: onDay(early.day),
          late: onDay(late.day),
        }),
      ]
    : [step("irrigate.step.next", { day: onDay(due.day) })];
}

function leachingStep(setting: ValveSetting, { leaching }: ValveReading): Step[] {
  if (!leaching || leaching.share === 0 || leaching.required === undefined) return [];
  return [
    step("irrigate.step.leach", {
      share: measure(100 * leaching.share, "pct"),
      ec: measure(setting.ecwDsPerM ?? 0, "dS/m"),
      required: measure(100 * leaching.required, "pct"),
      drained: measure(100 * leaching.drained, "pct"),
    }),
  ];
}

function waitSteps(setting: ValveSetting, r: ValveReading): Step[] {
  const { due, earliest, latest, dueWithRain } = r.governing;
  const steps: Step[] = [];
  if (r.code === "wait" && due && earliest && latest) {
    steps.push(
      step("irrigate.step.interval", {
        day: onDay(due.day),
        early: onDay(earliest.day),
        late: onDay(latest.day),
        net: measure(due.depletionMm, "mm"),
      }),
    );
  }
  if (r.code === "wait" && due && dueWithRain && dueWithRain.day > due.day) {
    steps.push(step("irrigate.step.with-rain", { day: onDay(dueWithRain.day) }));
  }
  steps.push(
    step("irrigate.step.left", {
      missing: measure(r.governing.depletionMm, "mm"),
      ready: measure(r.governing.today.rawMm, "mm"),
    }),
    step("irrigate.step.look-anyway"),
  );
  return bedCount(setting) > 1
    ? [...steps, step("irrigate.step.first-zone", { bed: bedOf(setting, r.governing.zone.bed) })]
    : steps;
}

/** A block that is kept dry on purpose: what that makes of the trigger, or why it is not held on this valve. */
function deficitSteps(setting: ValveSetting, { governing }: ValveReading): Step[] {
  const { today, drought } = setting;
  if (drought.kind === "shared") {
    const dry = setting.zones.filter(({ zone }) => isDryOn(zone, today));
    return dry.map(({ zone }) => step("irrigate.step.deficit-shared", { bed: bedOf(setting, zone.bed) }));
  }
  if (drought.kind !== "held") return drought.kind === "off" ? [step("irrigate.step.deficit-off")] : [];
  return [
    step("irrigate.step.deficit-alone", {
      trigger: measure(governing.today.triggerMm, "mm"),
      ready: measure(governing.today.rawMm, "mm"),
      share: measure(100 * drought.etShare, "pct"),
    }),
  ];
}

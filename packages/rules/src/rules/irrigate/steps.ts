import { daysBetween } from "../../core/days.ts";
import type { Step } from "../../core/rule.ts";
import { measure, onDay, say } from "../../text/message.ts";
import { bedAreaM2 } from "../../water/ground.ts";
import { bedCount, bedOf, type ValveReading, type ValveSetting } from "./readings.ts";

const step = (...args: Parameters<typeof say>): Step => ({ text: say(...args) });
/** Millilitres where a litre jug would not show it. */
const small = (litres: number) => (litres < 1 ? measure(litres * 1000, "mL") : measure(litres, "L"));
const MINUTES_PER_DAY = 1440;
const WILTING_COUNTS_DAYS = 2;

/** What to do, in the order in which it is done. */
export function stepsFor(setting: ValveSetting, reading: ValveReading): Step[] {
  return [
    ...wiltingStep(setting, reading),
    ...(reading.code === "water-now" ? waterSteps(setting, reading) : waitSteps(setting, reading)),
    ...forecastStep(setting),
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
  const { state, areaM2 } = setting;
  const after = r.governing.dueFrom(Math.max(0, r.governing.depletionMm - r.netMm));
  const beds = new Map(setting.zones.map(({ zone }) => [zone.bed.id, zone.bed]));
  const steps = [
    step("irrigate.step.look-first"),
    step("irrigate.step.run", {
      minutes: measure(r.minutes, "minutes"),
      litres: measure(r.litres, "L"),
      gross: measure(r.grossMm, "mm"),
      net: measure(r.netMm, "mm"),
      efficiency: measure(100 * state.valve.efficiency, "pct"),
    }),
  ];
  if (r.minutes > MINUTES_PER_DAY)
    steps.push(step("irrigate.step.too-slow", { hours: measure(r.minutes / 60, "hours") }));
  if (r.rounds > 1) steps.push(step("irrigate.step.rounds", { rounds: r.rounds }));
  for (const bed of beds.values()) {
    const litres = (r.litres * bedAreaM2(bed)) / areaM2;
    const plants = setting.zones
      .filter(({ zone }) => zone.bed.id === bed.id)
      .reduce((sum, { zone }) => sum + zone.planting.plants, 0);
    const shared = { bed: bedOf(setting, bed), litres: measure(litres, "L") };
    steps.push(
      bed.containers
        ? step("irrigate.step.container", {
            ...shared,
            each: small(litres / bed.containers.count),
          })
        : step("irrigate.step.bed", { ...shared, each: small(litres / plants) }),
    );
  }
  const surplus = Math.max(0, ...r.zones.map((z) => r.netMm - z.depletionMm));
  if (bedCount(setting) > 1) {
    steps.push(
      step("irrigate.step.thirstiest", {
        bed: bedOf(setting, r.governing.zone.bed),
        surplus: measure(surplus, "mm"),
      }),
    );
  }
  if (after) steps.push(step("irrigate.step.next", { day: onDay(after.day) }));
  return steps;
}

function waitSteps(setting: ValveSetting, r: ValveReading): Step[] {
  const { due, earliest, latest, dueWithRain } = r.governing;
  const steps: Step[] = [];
  if (due && earliest && latest) {
    steps.push(
      step("irrigate.step.interval", {
        day: onDay(due.day),
        early: onDay(earliest.day),
        late: onDay(latest.day),
        net: measure(due.depletionMm, "mm"),
      }),
    );
  }
  if (due && dueWithRain && dueWithRain.day > due.day) {
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

function forecastStep({ state, openDay }: ValveSetting): Step[] {
  const rainy = (state.forecast?.days ?? []).filter((d) => d.date >= openDay && (d.rainMm ?? 0) > 0);
  const last = rainy.at(-1);
  if (!last) return [];
  const total = rainy.reduce((sum, d) => sum + (d.rainMm ?? 0), 0);
  return [step("irrigate.step.forecast", { rain: measure(total, "mm"), day: onDay(last.date) })];
}

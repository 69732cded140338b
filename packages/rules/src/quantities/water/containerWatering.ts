import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { fao56 } from "../cite.ts";

export interface ContainerWateringInput {
  etcMmPerDay: number;
  /** Ground that belongs to one container [m2]. */
  areaM2: number;
  volumeL: number;
  /** Water that the medium holds for plants [m3/m3]. */
  availableM3PerM3: number;
  /** Share of it that plants draw without being held back. */
  depletionFraction: number;
  /** Share of what is given that is to drain, so that salt does not gather. */
  drainedFraction: number;
  /** No watering is put off longer than this [days]. */
  mostDays: number;
}

export interface ContainerWatering {
  useLPerDay: number;
  /** What plants draw without being held back [L]. */
  readyL: number;
  /** 1 or more where a container is emptied within a day. */
  timesADay: number;
  /** 1 or more where it lasts. */
  everyDays: number;
  netL: number;
  grossL: number;
}

/**
 * One watering of one container as a small, bounded root zone.
 *
 *   use = ETc x area        ready = p x volume x available water
 *   times a day = use / ready, rounded up; where a container lasts n whole days, once in n days
 *   given = use between two waterings / (1 - drained)
 *
 * 1 mm on 1 m2 is 1 L. Source: FAO-56, eq. 82, 83 for a bounded root zone; the share drained is the leaching fraction.
 */
export function containerWatering(input: ContainerWateringInput): ContainerWatering {
  const useLPerDay = input.etcMmPerDay * input.areaM2;
  const readyL = input.volumeL * input.availableM3PerM3 * input.depletionFraction;
  const timesADay = Math.max(1, Math.ceil(useLPerDay / readyL));
  const lasts = useLPerDay > 0 ? Math.floor(readyL / useLPerDay) : input.mostDays;
  const everyDays = Math.min(input.mostDays, Math.max(1, lasts));
  const netL = (useLPerDay * everyDays) / timesADay;
  return { useLPerDay, readyL, timesADay, everyDays, netL, grossL: netL / (1 - input.drainedFraction) };
}

/** `container-watering`: see {@link containerWatering}. */
export const containerWateringQuantity = defineQuantity({
  id: "container-watering",
  question: "How much water does a container take at a time, and how often?",
  schema: z.strictObject({
    etcMmPerDay: num("evapotranspiration of the stand", "mm/day", 0, 20),
    areaM2: num("ground that belongs to one container", "m2", 0.001, 1000),
    volumeL: num("volume of the container", "L", 0.05, 1000),
    availableM3PerM3: num("water that the medium holds for plants", "m3/m3", 0.01, 0.7),
    depletionFraction: num("share of it drawn without stress", "fraction", 0.1, 0.8),
    drainedFraction: num("share of what is given that is to drain", "fraction", 0, 0.6),
    mostDays: num("longest time between two waterings", "days", 1, 60),
  }),
  outputs: {
    useLPerDay: { meaning: "use of one container", unit: "L/day" },
    readyL: { meaning: "water it gives without holding plants back", unit: "L" },
    timesADay: { meaning: "waterings a day", unit: "1/day" },
    everyDays: { meaning: "days from one watering to the next", unit: "days" },
    netL: { meaning: "water that stays, at a time", unit: "L" },
    grossL: { meaning: "water to give, at a time", unit: "L" },
  },
  sources: [fao56("eq. 82, 83")],
  compute(input, w) {
    const value = containerWatering(input);
    const { etcMmPerDay, areaM2, volumeL, availableM3PerM3, depletionFraction, drainedFraction } = input;
    w.line(
      "V_use",
      "use of one container a day",
      `ETc x area = ${etcMmPerDay} x ${areaM2}`,
      value.useLPerDay,
      "L",
    );
    w.line(
      "V_ready",
      "water it gives without holding plants back",
      `p x available x volume = ${depletionFraction} x ${availableM3PerM3} x ${volumeL}`,
      value.readyL,
      "L",
      fao56("eq. 82, 83"),
    );
    w.line("n", "waterings a day", "V_use / V_ready, rounded up", value.timesADay, "1/day");
    w.line(
      "d",
      "days from one watering to the next",
      "V_ready / V_use, rounded down",
      value.everyDays,
      "days",
    );
    w.line("V", "water to give at a time", `V_use d / n / (1 - ${drainedFraction})`, value.grossL, "L");
    return value;
  },
});

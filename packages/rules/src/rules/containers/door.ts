import { refuse } from "../../core/errors.ts";
import type { Bed } from "../../states/parts.ts";
import type { PlantingState } from "../../states/states.ts";
import { refuseFahrenheit } from "../../warmth/plausibleTemperatures.ts";
import { checkForecastAge } from "../irrigate/checks.ts";

/** A planting whose plants stand in containers of a known size. */
export interface Potted {
  state: PlantingState;
  today: string;
  setOutOn: string;
  pots: NonNullable<Bed["containers"]>;
  /** At least 1: an empty container is not watered. */
  plantsPerPot: number;
}

/** Why the question does not arise, as the end of a text key; else the pots. Refuses containers without a size. */
export function pottedOf(state: PlantingState, today: string): Potted | "ground" | "ended" | "not-out" {
  const { bed, planting } = state;
  if (bed.kind !== "containers") return "ground";
  if (planting.endedOn !== undefined && planting.endedOn <= today) return "ended";
  if (planting.setOutOn === undefined || planting.setOutOn > today) return "not-out";
  const pots = bed.containers;
  if (!pots) refuse("bed.containers", "is missing: how many, and how large", "count and volumeL");
  const plantsPerPot = Math.max(1, planting.plants / pots.count);
  return { state, today, setOutOn: planting.setOutOn, pots, plantsPerPot };
}

/**
 * Refuses what no honest record holds: weather, drain or water tests of days to come, Fahrenheit called Celsius, a forecast
 * older than a day.
 *
 * @throws DomainError naming the field
 */
export function refuseUnreadable(state: PlantingState, today: string): void {
  refuseFahrenheit(state.weather, "weather");
  if (state.forecast) refuseFahrenheit(state.forecast.days, "forecast.days");
  checkForecastAge(state.forecast, state.asOf);
  refuseAfter(
    state.weather.map((w) => w.date),
    (i) => `weather.${i}.date`,
    today,
  );
  refuseAfter(
    (state.drainReadings ?? []).map((r) => r.on),
    (i) => `drainReadings.${i}.on`,
    today,
  );
  refuseAfter(
    (state.waterTests ?? []).map((t) => t.sampledOn),
    (i) => `waterTests.${i}.sampledOn`,
    today,
  );
}

function refuseAfter(days: string[], field: (i: number) => string, today: string): void {
  const i = days.findIndex((day) => day > today);
  if (i >= 0) refuse(field(i), "is after the day the advice is for", `at most ${today}`, days[i]);
}

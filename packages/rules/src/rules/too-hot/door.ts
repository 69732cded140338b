import { addDays } from "../../core/days.ts";
import { refuse } from "../../core/errors.ts";
import type { FieldNote } from "../../states/parts.ts";
import type { PlantingState } from "../../states/states.ts";
import { climatologyYears } from "../../warmth/climatologyYears.ts";
import {
  refuseFahrenheit,
  refuseFahrenheitReadings,
  refuseFahrenheitYears,
} from "../../warmth/plausibleTemperatures.ts";
import { checkForecastAge } from "../irrigate/checks.ts";

/** Days in the bed after which plants are taken to flower even if nobody noted buds (cp). */
const FLOWERING_AFTER_DAYS = 42;
/** A sign seen this long ago still counts (cp). */
const SIGN_DAYS = 14;
/** The diurnal model hangs on a sunset. */
const FURTHEST_DEG = 65;

const FLOWERING: readonly FieldNote["kind"][] = ["buds-visible", "first-flower", "fruit-set", "first-pick"];
const SIGNS = ["end-rot", "sunscald", "flower-drop", "wilting-at-dawn"] as const;
export type Sign = (typeof SIGNS)[number];

/** What was seen of late that people put down to heat, in the order in which it presses. */
export const signsOf = ({ notes }: PlantingState, today: string): Sign[] =>
  SIGNS.filter((kind) =>
    notes.some((n) => n.kind === kind && n.on <= today && n.on >= addDays(today, -SIGN_DAYS)),
  );

/** Why the question does not arise, as the end of a text key; else how flowering is known. */
export function standingOf(
  { planting, notes }: PlantingState,
  today: string,
  signs: Sign[],
): "ended" | "indoors" | "no-flowers" | "noted" | "by-days" {
  if (planting.endedOn !== undefined && planting.endedOn <= today) return "ended";
  if (planting.setOutOn === undefined || planting.setOutOn > today) return "indoors";
  if (signs.length > 0 || notes.some((n) => FLOWERING.includes(n.kind) && n.on <= today)) return "noted";
  return addDays(planting.setOutOn, FLOWERING_AFTER_DAYS) <= today ? "by-days" : "no-flowers";
}

/**
 * Refuses what cannot be weighed: latitudes without sunsets, a forecast older than a day, Fahrenheit called Celsius, water
 * given or tested on days to come.
 *
 * @throws DomainError naming the field
 */
export function refuseUnweighable(state: PlantingState, today: string): void {
  const { site, forecast, climatology } = state;
  if (Math.abs(site.latitudeDeg) > FURTHEST_DEG) {
    refuse("site.latitudeDeg", "is where some days have no sunset", "-65 to 65", site.latitudeDeg);
  }
  checkForecastAge(forecast, state.asOf);
  refuseFahrenheitReadings(state.plantTemperatures);
  if (climatology) refuseFahrenheitYears(climatology);
  const years = climatology && climatologyYears(climatology);
  refuseFahrenheit(state.weather, "weather", years);
  if (forecast) refuseFahrenheit(forecast.days, "forecast.days", years);
  const after = "is after the day the advice is for";
  for (const [i, { on }] of (state.waterings ?? []).entries()) {
    if (on > today) refuse(`waterings.${i}.on`, after, `at most ${today}`, on);
  }
  for (const [i, { sampledOn }] of (state.waterTests ?? []).entries()) {
    if (sampledOn > today) refuse(`waterTests.${i}.sampledOn`, after, `at most ${today}`, sampledOn);
  }
}

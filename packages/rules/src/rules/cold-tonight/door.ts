import { refuse } from "../../core/errors.ts";
import type { AnswerBody, NeedsMoreBody } from "../../core/rule.ts";
import type { Forecast } from "../../states/parts.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Message, measure, say } from "../../text/message.ts";
import { climatologyYears } from "../../warmth/climatologyYears.ts";
import { HOUR_MS } from "../../warmth/nightOf.ts";
import {
  refuseFahrenheit,
  refuseFahrenheitReadings,
  refuseFahrenheitYears,
} from "../../warmth/plausibleTemperatures.ts";

/** A forecast older than this says nothing of tonight (cp). */
const FRESH_H = 6;
/** One older than this is refused, as in every rule. */
const REFUSED_H = 24;
/** No hours of a forecast are all above this where peppers grow (cp). */
const HOTTEST_C = 45;
const HOURS_TO_JUDGE = 5;

/** Where the question does not arise; null where it does. */
export function whyNot({ planting }: PlantingState, today: string): AnswerBody | null {
  if (planting.endedOn !== undefined && planting.endedOn <= today) return no("cold-tonight.not.ended");
  if (planting.sownOn > today) return no("cold-tonight.not.unsown");
  return null;
}

const no = (key: string): AnswerBody => ({ kind: "does-not-apply", reason: say(key) });

/**
 * Refuses a latitude without sunsets, a forecast older than a day or from the future, Fahrenheit called Celsius.
 *
 * @throws DomainError naming the field
 */
export function refuseUnweighable(state: PlantingState): void {
  const { site, forecast, climatology } = state;
  if (Math.abs(site.latitudeDeg) > 65) {
    const message = "a night is only reckoned where the sun sets each day of the year";
    refuse("site.latitudeDeg", message, "-65 to 65", site.latitudeDeg);
  }
  refuseFahrenheitReadings(state.plantTemperatures);
  if (climatology) refuseFahrenheitYears(climatology);
  const years = climatology && climatologyYears(climatology);
  refuseFahrenheit(state.weather, "weather", years);
  if (!forecast) return;
  refuseFahrenheit(forecast.days, "forecast.days", years);
  const hours = forecast.hours ?? [];
  if (hours.length >= HOURS_TO_JUDGE && hours.every((h) => h.temperatureC > HOTTEST_C)) {
    refuse(
      "forecast.hours.0.temperatureC",
      "every hour of the forecast is hotter than any place stays: is this Fahrenheit?",
      `degrees Celsius, not all above ${HOTTEST_C}`,
      hours[0]?.temperatureC,
    );
  }
  const ageH = ageOf(forecast, state.asOf);
  if (ageH > REFUSED_H) {
    refuse(
      "forecast.issuedAt",
      "the forecast is older than a day: its source has stopped, which is itself an alarm",
      `at most ${REFUSED_H} h before asOf, and for tonight at most ${FRESH_H} h`,
      forecast.issuedAt,
    );
  }
  if (ageH < -1) {
    const message = "the forecast was issued after the moment this advice is for";
    refuse("forecast.issuedAt", message, "not after asOf", forecast.issuedAt);
  }
}

/** Hours between a forecast's issue and the moment of the advice. */
export const ageOf = (forecast: Forecast, asOf: string): number =>
  (Date.parse(asOf) - Date.parse(forecast.issuedAt)) / HOUR_MS;

/** What is missing before tonight's forecast can be read; null where it is there and fresh. */
export function missingForecast({ forecast, asOf }: PlantingState): NeedsMoreBody | null {
  if (!forecast) return missing("forecast", say("cold-tonight.missing.forecast"));
  const ageH = ageOf(forecast, asOf);
  if (ageH <= FRESH_H) return null;
  return missing(
    "forecast.issuedAt",
    say("cold-tonight.missing.stale", { age: measure(ageH, "hours"), fresh: measure(FRESH_H, "hours") }),
  );
}

/** One thing that would settle it. */
export const missing = (field: string, what: Message): NeedsMoreBody => ({
  kind: "needs-more",
  missing: [{ field, measure: what, couldMove: say("cold-tonight.missing.move") }],
  working: [],
  estimated: [],
});

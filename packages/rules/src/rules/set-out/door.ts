import { daysBetween } from "../../core/days.ts";
import { refuse } from "../../core/errors.ts";
import type { AnswerBody } from "../../core/rule.ts";
import type { PlantingState } from "../../states/states.ts";
import { say } from "../../text/message.ts";
import type { ClimatologyYears } from "../../warmth/climatologyYears.ts";
import {
  refuseFahrenheit,
  refuseFahrenheitSoil,
  refuseFahrenheitYears,
} from "../../warmth/plausibleTemperatures.ts";
import { HORIZON_DAYS } from "./line.ts";

/** Where the question does not arise; null where it does. */
export function whyNot(state: PlantingState, today: string): AnswerBody | null {
  const { planting } = state;
  if (planting.endedOn !== undefined && planting.endedOn <= today) return no("set-out.not.ended");
  if (planting.setOutOn !== undefined && planting.setOutOn <= today) return no("set-out.not.already-out");
  if (planting.sownOn > today) return no("set-out.not.unsown");
  if (planting.plannedSetOutOn !== undefined && daysBetween(today, planting.plannedSetOutOn) > HORIZON_DAYS) {
    return no("set-out.not.too-far");
  }
  return null;
}

const no = (key: string): AnswerBody => ({ kind: "does-not-apply", reason: say(key) });

const HOUR_MS = 3_600_000;

/** A forecast older than a day is refused: acting on it looks informed and is not. */
function refuseStaleForecast(state: PlantingState): void {
  if (!state.forecast) return;
  const ageH = (Date.parse(state.asOf) - Date.parse(state.forecast.issuedAt)) / HOUR_MS;
  if (ageH > 24) {
    refuse(
      "forecast.issuedAt",
      "the forecast is older than a day: fetch a fresh one or leave it out",
      "at most 24 hours before asOf",
      state.forecast.issuedAt,
    );
  }
  if (ageH < -1) {
    refuse(
      "forecast.issuedAt",
      "the forecast was issued after the moment this advice is for",
      "at most 24 hours before asOf",
      state.forecast.issuedAt,
    );
  }
}

/**
 * Refuses what cannot be weighed: a stale forecast, a latitude without sunsets, Fahrenheit called Celsius.
 *
 * @throws DomainError naming the field
 */
export function refuseUnweighable(state: PlantingState, years: ClimatologyYears | undefined): void {
  refuseStaleForecast(state);
  if (Math.abs(state.site.latitudeDeg) > 65) {
    refuse(
      "site.latitudeDeg",
      "the course of a day is only reconstructed where the sun sets each day of the year",
      "-65 to 65",
      state.site.latitudeDeg,
    );
  }
  if (state.climatology) refuseFahrenheitYears(state.climatology);
  refuseFahrenheitSoil(state.notes);
  refuseFahrenheit(state.weather, "weather", years);
  refuseFahrenheit(state.forecast?.days ?? [], "forecast.days", years);
}

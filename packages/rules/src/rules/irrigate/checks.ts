import { localDay } from "../../core/days.ts";
import { refuse } from "../../core/errors.ts";
import type { Forecast } from "../../states/parts.ts";
import type { ValveState } from "../../states/states.ts";
import { refuseFahrenheit } from "../../warmth/plausibleTemperatures.ts";

const HOURS_FORECAST_HOLDS = 24;

/** Refuses a forecast that is older than a day or not yet made, naming the field. */
export function checkForecastAge(forecast: Forecast | undefined, asOf: string): void {
  if (!forecast) return;
  const ageH = (Date.parse(asOf) - Date.parse(forecast.issuedAt)) / 3_600_000;
  if (ageH > HOURS_FORECAST_HOLDS) {
    refuse("forecast.issuedAt", "is older than a day", "at most 24 h before asOf", forecast.issuedAt);
  }
  if (ageH < 0) {
    refuse("forecast.issuedAt", "is after the time the advice is for", "not after asOf", forecast.issuedAt);
  }
}

/** Refuses what no honest record holds: weather or water of days to come, a day twice, containers without a size. */
export function checkRecords(state: ValveState): void {
  refuseFahrenheit(state.weather, "weather");
  const today = localDay(state.asOf, state.site.timeZone);
  const seen = new Set<string>();
  for (const [i, w] of state.weather.entries()) {
    const field = `weather.${i}.date`;
    if (w.date > today) refuse(field, "is after the day the advice is for", `at most ${today}`, w.date);
    if (seen.has(w.date)) refuse(field, "is there twice", "one entry a day", w.date);
    seen.add(w.date);
  }
  for (const [i, w] of state.waterings.entries()) {
    if (w.on > today) {
      refuse(`waterings.${i}.on`, "is after the day the advice is for", `at most ${today}`, w.on);
    }
  }
  for (const [i, { bed }] of state.zones.entries()) {
    if (bed.kind === "containers" && !bed.containers) {
      refuse(`zones.${i}.bed.containers`, "is missing: how many, and how large", "count and volumeL");
    }
  }
}

import { type Forecast, ForecastSchema } from "@pith/rules";
import { z } from "zod";
import { daysOf } from "./days.ts";
import { SourceFailure } from "./source.ts";
import { hoursOf, type Moment, stepsOf } from "./steps.ts";

/**
 * The institute's documented point forecast: a GeoJSON feature whose properties hold `meta` (when it was updated, in
 * which units) and a `timeseries` of instants, each with what holds then and for the 1 and 6 hours after it.
 */
const Details = z.record(z.string(), z.unknown());
const Period = z.object({ details: Details.optional() });
const Document = z.object({
  type: z.literal("Feature"),
  properties: z.object({
    meta: z.object({
      updated_at: z.iso.datetime({ offset: true }),
      units: z.record(z.string(), z.string()),
    }),
    timeseries: z
      .array(
        z.object({
          time: z.iso.datetime({ offset: true }),
          data: z.object({
            instant: z.object({ details: Details }),
            next_1_hours: Period.optional(),
            next_6_hours: Period.optional(),
          }),
        }),
      )
      .min(1)
      .max(1000),
  }),
});

/** Units that the numbers are taken in; any other is refused, never converted by guess. */
const UNITS: Readonly<Record<string, string>> = {
  air_temperature: "celsius",
  air_temperature_max: "celsius",
  air_temperature_min: "celsius",
  dew_point_temperature: "celsius",
  relative_humidity: "%",
  wind_speed: "m/s",
  cloud_area_fraction: "%",
  precipitation_amount: "mm",
  probability_of_precipitation: "%",
};

const MOST_DAYS = 16;
const MOST_HOURS = 240;

/**
 * Reads the service's answer into the rules' forecast: its hours, and whole local days of the site.
 *
 * @throws SourceFailure that names what in the answer cannot be used
 */
export function readForecast(text: string, name: string, timeZone: string): Forecast {
  const parsed = Document.safeParse(jsonIn(text, name));
  if (!parsed.success) throw unlike(name, parsed.error);
  const { meta, timeseries } = parsed.data.properties;
  const number = numberReader(meta.units, name);
  const moments = timeseries.map(({ time, data }): Moment => {
    const now = data.instant.details;
    const hour = data.next_1_hours?.details;
    const six = data.next_6_hours?.details;
    const temperatureC = number(now, "air_temperature");
    if (temperatureC === undefined) {
      throw new SourceFailure(`${name} gave no air_temperature at ${time}.`);
    }
    return {
      atMs: Date.parse(time),
      temperatureC,
      dewPointC: number(now, "dew_point_temperature"),
      rhPct: number(now, "relative_humidity"),
      windMPerS: number(now, "wind_speed"),
      cloudPct: number(now, "cloud_area_fraction"),
      hour: data.next_1_hours && {
        rainMm: number(hour, "precipitation_amount"),
        rainChancePct: number(hour, "probability_of_precipitation"),
      },
      six: data.next_6_hours && {
        rainMm: number(six, "precipitation_amount"),
        rainChancePct: number(six, "probability_of_precipitation"),
        tMaxC: number(six, "air_temperature_max"),
        tMinC: number(six, "air_temperature_min"),
      },
    };
  });
  const late = moments.find((m, i) => i > 0 && m.atMs <= (moments[i - 1]?.atMs ?? 0));
  if (late) {
    throw new SourceFailure(`${name} gave times that do not follow one another.`);
  }
  const forecast = ForecastSchema.safeParse({
    issuedAt: new Date(meta.updated_at).toISOString(),
    days: daysOf(moments, stepsOf(moments), timeZone).slice(0, MOST_DAYS),
    hours: hoursOf(moments).slice(0, MOST_HOURS),
  });
  if (!forecast.success) throw unlike(name, forecast.error);
  return forecast.data;
}

function jsonIn(text: string, name: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw new SourceFailure(`${name} answered with something that is not whole JSON.`);
  }
}

/** Reads a value after its unit was looked at; a value that is no number is refused. */
function numberReader(units: Record<string, string>, name: string) {
  return (details: Record<string, unknown> | undefined, field: string): number | undefined => {
    const value = details?.[field];
    if (value === undefined || value === null) return undefined;
    const unit = units[field];
    if (unit !== UNITS[field]) {
      const stated = unit === undefined ? "without a unit" : `in ${unit}`;
      throw new SourceFailure(`${name} gave ${field} ${stated}; it is read in ${UNITS[field]} only.`);
    }
    if (typeof value !== "number" || !Number.isFinite(value)) {
      throw new SourceFailure(`${name} gave ${field} as something that is not a number.`);
    }
    return value;
  };
}

function unlike(name: string, error: z.ZodError): SourceFailure {
  const [first] = error.issues;
  const where = first?.path.join(".") || "the document";
  return new SourceFailure(`${name} answered in a form that is not known: ${where} ${first?.message ?? ""}.`);
}

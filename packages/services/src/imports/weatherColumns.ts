import { type Dimension, spaced, unitInHeader } from "./units.ts";

/** A field of a weather row: how a header names it and what it measures. */
interface WeatherField {
  field: string;
  dimension: Dimension | "date";
  named: RegExp;
}

const FIELDS: WeatherField[] = [
  { field: "date", dimension: "date", named: /\bdate\b|^day$/ },
  { field: "dewPointC", dimension: "temperature", named: /\bdew/ },
  { field: "rhMaxPct", dimension: "percent", named: /\bmax.*\b(rh|humid)|\b(rh|humid\w*)\b.*max/ },
  { field: "rhMinPct", dimension: "percent", named: /\bmin.*\b(rh|humid)|\b(rh|humid\w*)\b.*min/ },
  { field: "rhMeanPct", dimension: "percent", named: /\b(rh|humid)/ },
  {
    field: "tMaxC",
    dimension: "temperature",
    named: /\btmax\b|\b(t|temp\w*)\b.*\b(max|high)|\b(max|high)\w*\b.*\b(t|temp)/,
  },
  {
    field: "tMinC",
    dimension: "temperature",
    named: /\btmin\b|\b(t|temp\w*)\b.*\b(min|low)|\b(min|low)\w*\b.*\b(t|temp)/,
  },
  { field: "rainMm", dimension: "rain", named: /\b(rain|rainfall|precip\w*|prcp)\b/ },
  { field: "windHeightM", dimension: "height", named: /\b(wind|anemometer)\b.*height/ },
  { field: "windMPerS", dimension: "wind", named: /\b(wind|awnd)\b/ },
  { field: "rsMjPerM2Day", dimension: "radiation", named: /\b(rs|solar|radiation|srad)\b/ },
  { field: "sunshineH", dimension: "hours", named: /\b(sun|sunshine|bright)/ },
];

export const weatherDimension = (field: string) => FIELDS.find((f) => f.field === field)?.dimension;

/** What a header of a weather file is read as. */
export function matchWeatherColumn(header: string) {
  const found = FIELDS.find((f) => f.named.test(spaced(header)));
  const stated = unitInHeader(header);
  return {
    header,
    field: found?.field ?? null,
    unit: found
      ? (stated ?? (found.dimension === "percent" ? "%" : found.dimension === "hours" ? "h" : null))
      : null,
    extractant: null,
  };
}

import type { SourceRef } from "../../core/working.ts";
import { Working } from "../../core/working.ts";
import { calmNightCooling } from "../../quantities/climate/calmNightCooling.ts";
import { radiativeMinimum } from "../../quantities/climate/radiativeMinimum.ts";
import type { PlantingState } from "../../states/states.ts";
import { type CoverOver, coverOver } from "../../warmth/coverOver.ts";
import { HOUR_MS, type Night } from "../../warmth/nightOf.ts";
import { siteShift } from "../../warmth/siteShift.ts";
import type { Outside } from "./outside.ts";
import {
  CALM_M_PER_S,
  eveningReading,
  forLift,
  isClearAndCalm,
  type PastNight,
  pastNights,
  type Reading,
  readingsOf,
} from "./pastNights.ts";

/** One way to tell the night's minimum at the plants. */
export interface Way {
  id:
    | "forecast"
    | "measured-lift"
    | "own-clear-nights"
    | "calm-cooling"
    | "corrected"
    | "read-tonight"
    | "same-heat";
  minimumC: number;
  expression: string;
  source: SourceRef | null;
}

/** What tonight brings at the plants: every way it can be told, the coldest of them first. */
export interface AtPlants {
  ways: Way[];
  minimumC: number;
  /** Half width of what the site's difference from its station leaves open [C]. */
  plusMinusC: number;
  cover: CoverOver;
  /** Added to the open air at the station to come to the plants [C]; null where no figure fits. */
  liftC: number | null;
  shiftC: number;
  /** The air outside, at the site, on which a protection is put. */
  outsideC: number;
  radiative: boolean;
  /** Readings since sunset. */
  tonight: Reading[];
  latest: Reading | null;
  working: Working;
}

/** Nights from which a lift is read at the least (cp). */
const FEWEST_NIGHTS = 3;
/** Clear, calm nights a regression needs at the least: as its quantity has it. */
const FEWEST_CLEAR_NIGHTS = 8;
/** A reading older than this is not "now" (cp). */
const CURRENT_H = 2;
/** The shortest night the quantities of a night reckon with. */
export const SHORTEST_NIGHT_H = 4;
const Z_80 = 1.2815515655446004;

const PRACTICE: SourceRef = { key: "common-practice" };

/**
 * The night's minimum at the plants by every way there is data for. The coldest governs, because being wrong that way
 * costs least. Null where plants stand inside and nobody reads a thermometer there.
 */
export function atPlants(
  state: PlantingState,
  night: Night,
  outside: Outside,
  stand: "inside" | "bed" | "trays",
): AtPlants | null {
  const working = new Working();
  const readings = stand === "trays" ? [] : readingsOf(state);
  const site = siteShift(state.site, 1);
  const cover: CoverOver =
    stand === "bed"
      ? coverThrough(state, night)
      : { covers: [], offsetC: stand === "trays" ? 0 : null, highC: null, source: null };
  const past = pastNights(state, readings, night, cover.covers);
  const lifts = forLift(past, night);
  const published = cover.offsetC === null ? null : site.shiftC + cover.offsetC;
  const tonight = readings.filter((r) => r.ms >= night.sunset);
  const outsideC = outside.minimumC + site.shiftC;
  const parts: Parts = { state, night, outside, past, published, shiftC: site.shiftC, cover, working };
  const ways: Way[] = [];
  if (published !== null) {
    ways.push({
      id: "forecast",
      minimumC: outside.minimumC + published,
      expression: `forecast ${outside.minimumC} + site ${site.shiftC} + cover ${cover.offsetC}`,
      source: cover.source,
    });
  }
  const spread = spreadOf(lifts.map((n) => n.minimumC - n.stationC));
  const liftMeasured = spread.n >= FEWEST_NIGHTS && stand === "bed" && cover.covers[0] !== "heated-house";
  if (liftMeasured) {
    ways.push({
      id: "measured-lift",
      minimumC: outside.minimumC + spread.mean,
      expression: `forecast ${outside.minimumC} + mean of plants less station ${spread.mean} over ${spread.n} nights`,
      source: null,
    });
  }
  if (published !== null) {
    const radiative = ownClearNights(parts, readings) ?? calmCooling(parts);
    if (radiative) ways.push(radiative);
  } else if (!liftMeasured) {
    const heat = sameHeat(past, lifts, outside.minimumC);
    if (heat) ways.push(heat);
  }
  const latest = readings.at(-1) ?? null;
  const corrected = published === null ? null : correctedNow(parts, latest, outside.minimumC + published);
  if (corrected) ways.push(corrected);
  if (tonight.length > 0) {
    ways.push({
      id: "read-tonight",
      minimumC: Math.min(...tonight.map((r) => r.temperatureC)),
      expression: "lowest reading at the plants since sunset",
      source: null,
    });
  }
  ways.sort((a, b) => a.minimumC - b.minimumC);
  const coldest = ways[0];
  if (!coldest) return null;
  return {
    ways,
    minimumC: coldest.minimumC,
    plusMinusC: stand === "inside" ? 0 : coldest.id === "measured-lift" ? spread.plusMinus : site.plusMinusC,
    cover,
    liftC: published ?? (liftMeasured ? spread.mean : null),
    shiftC: site.shiftC,
    outsideC,
    radiative: coldest.id === "own-clear-nights" || coldest.id === "calm-cooling",
    tonight,
    latest: latest && Date.parse(state.asOf) - latest.ms <= CURRENT_H * HOUR_MS ? latest : null,
    working,
  };
}

/** What stands over the bed all night: a cover noted for its evening or its morning alone is not counted on. */
function coverThrough({ bed }: PlantingState, { eveningDay, morningDay }: Night): CoverOver {
  const [evening, morning] = [coverOver(bed, eveningDay), coverOver(bed, morningDay)];
  return (morning.offsetC ?? Number.POSITIVE_INFINITY) < (evening.offsetC ?? Number.POSITIVE_INFINITY)
    ? morning
    : evening;
}

interface Parts {
  state: PlantingState;
  night: Night;
  outside: Outside;
  past: PastNight[];
  published: number | null;
  shiftC: number;
  cover: CoverOver;
  working: Working;
}

function spreadOf(values: number[]): { n: number; mean: number; plusMinus: number } {
  const n = values.length;
  if (n < 2) return { n, mean: Number.NaN, plusMinus: Number.NaN };
  const mean = values.reduce((sum, v) => sum + v, 0) / n;
  const variance = values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (n - 1);
  return { n, mean, plusMinus: Z_80 * Math.sqrt(variance * (1 + 1 / n)) };
}

/** The site's own clear, calm nights, where tonight is to be one and enough of them were read at the plants. */
function ownClearNights(parts: Parts, readings: Reading[]): Way | null {
  const { outside, past, night } = parts;
  if (!isClearAndCalm(outside.cloudPct, outside.windMPerS)) return null;
  const clear = past.filter((n) => n.clearAndCalm && n.eveningC !== null);
  if (clear.length < FEWEST_CLEAR_NIGHTS) return null;
  const evening = night.sunset + 2 * HOUR_MS;
  const open = outside.airC(evening);
  const airC =
    eveningReading(readings, night)?.temperatureC ??
    (open === null || parts.published === null ? null : open + parts.published);
  if (airC === null) return null;
  const dewy = outside.dewPointC !== null && clear.every((n) => n.dewPointC !== null);
  const answer = radiativeMinimum.compute({
    nightsAirC: clear.map((n) => n.eveningC),
    nightsMinimumC: clear.map((n) => n.minimumC),
    ...(dewy ? { nightsDewPointC: clear.map((n) => n.dewPointC) } : {}),
    airC,
    ...(dewy ? { dewPointC: outside.dewPointC } : {}),
  });
  parts.working.include(answer);
  return {
    id: "own-clear-nights",
    minimumC: answer.value.minimumC,
    expression: `two regressions over ${clear.length} clear, calm nights at the plants`,
    source: { key: "snyder-melo-abreu-2005", locator: "vol. 1, chapter 5" },
  };
}

/** Without nights of its own: what sky and dew point allow on a calm night. */
function calmCooling(parts: Parts): Way | null {
  const { outside, night, working, shiftC, cover } = parts;
  const open = outside.airC(night.sunset + 2 * HOUR_MS);
  if (night.lengthH < SHORTEST_NIGHT_H) return null;
  if (outside.windMPerS === null || outside.windMPerS >= CALM_M_PER_S) return null;
  if (outside.cloudPct === null || outside.dewPointC === null || open === null) return null;
  const answer = calmNightCooling.compute({
    airC: open + shiftC,
    dewPointC: outside.dewPointC,
    cloudPct: outside.cloudPct,
    nightH: night.lengthH,
  });
  working.include(answer);
  return {
    id: "calm-cooling",
    minimumC: answer.value.minimumC + (cover.offsetC ?? 0),
    expression: `calm night near the ground ${answer.value.minimumC} + cover ${cover.offsetC}`,
    source: { key: "brunt-1941", locator: "cooling of the ground on a clear night" },
  };
}

/** Where a reading after sunset is colder than the forecast has it by now, the rest of the night is taken as much colder. */
function correctedNow(
  { state, night, outside, published }: Parts,
  latest: Reading | null,
  byForecast: number,
): Way | null {
  if (!latest || latest.ms < night.sunset || published === null) return null;
  if (Date.parse(state.asOf) - latest.ms > CURRENT_H * HOUR_MS) return null;
  const open = outside.airC(latest.ms);
  if (open === null) return null;
  const off = latest.temperatureC - (open + published);
  if (off >= 0) return null;
  return {
    id: "corrected",
    minimumC: byForecast + off,
    expression: `forecast at the plants ${byForecast} less ${-off} by which it is too warm now`,
    source: PRACTICE,
  };
}

/**
 * Inside a heated house: what its heat held on the coldest night read, less what tonight is colder outside. A thermostat
 * with heat to spare holds more, so this is on the cautious side.
 */
function sameHeat(
  past: PastNight[],
  lifts: (PastNight & { stationC: number })[],
  tonightC: number,
): Way | null {
  const known = lifts.slice(0, 7);
  const coldest = known.reduce<(typeof known)[number] | null>(
    (a, n) => (a === null || n.stationC < a.stationC ? n : a),
    null,
  );
  if (coldest) {
    const lower = Math.max(0, coldest.stationC - tonightC);
    const held = Math.min(...known.map((n) => n.minimumC));
    return {
      id: "same-heat",
      minimumC: held - lower,
      expression: `lowest inside ${held} of ${known.length} nights, less ${lower} by which tonight is colder outside than any of them`,
      source: PRACTICE,
    };
  }
  const recent = past.slice(0, 3);
  if (recent.length === 0) return null;
  const held = Math.min(...recent.map((n) => n.minimumC));
  return {
    id: "same-heat",
    minimumC: held,
    expression: `lowest inside ${held} of ${recent.length} nights; how cold it was outside then is not known`,
    source: PRACTICE,
  };
}

import { type Estimated, type SourceRef, Working, type WorkingLine } from "../../core/working.ts";
import { nightTemperatureTrend } from "../../quantities/climate/nightTemperatureTrend.ts";
import type { PlantingState } from "../../states/states.ts";
import { clockAt, HOUR_MS } from "../../warmth/nightOf.ts";
import { SHORTEST_NIGHT_H } from "./atPlants.ts";
import { ageOf } from "./door.ts";
import type { Judged } from "./judge.ts";
import { FROST_C, KILLED } from "./thresholds.ts";

const PRACTICE: SourceRef = { key: "common-practice" };
const FAO: SourceRef = { key: "fao56", locator: "eq. 31-34" };
const TREND: SourceRef = { key: "snyder-melo-abreu-2005", locator: "vol. 1, chapter 5, square-root trend" };

/** The night line by line, and what in it was estimated. */
export function nightWorking(
  state: PlantingState,
  j: Judged,
): { working: WorkingLine[]; estimated: Estimated[] } {
  const w = new Working();
  const { night, floor, outside, plants, course } = j;
  const zone = state.site.timeZone;
  w.line("sunset", "sunset", "noon + N / 2", clockAt(night.sunset, zone), `clock, ${night.eveningDay}`, FAO);
  w.line(
    "sunrise",
    "sunrise",
    "noon - N / 2",
    clockAt(night.sunrise, zone),
    `clock, ${night.morningDay}`,
    FAO,
  );
  if (state.forecast) {
    w.line("age", "age of the forecast", "asOf - issuedAt", ageOf(state.forecast, state.asOf), "h");
  }
  w.line("phase", "how far the plants are", "notes and days in the bed", floor.phase, "", PRACTICE);
  w.line("floor", "one night below this may hurt them", floor.phase, floor.floorC, "C", floor.source);
  w.line("frost", "air that counts as frost", "upper end of 0 to -1 C", FROST_C, "C", KILLED);
  w.line(
    "Tout",
    "lowest of the night in the open, at the station",
    `forecast, ${outside.from}`,
    outside.minimumC,
    "C",
  );
  w.line("Δsite", "site's nights less its station's", "mean of paired nights", plants.shiftC, "C");
  if (outside.cloudPct !== null)
    w.line("cloud", "mean cloud of the night", "forecast", outside.cloudPct, "%");
  if (outside.windMPerS !== null) {
    w.line("u2", "mean wind of the night at 2 m", "forecast", outside.windMPerS, "m/s", {
      key: "fao56",
      locator: "eq. 47",
    });
  }
  if (outside.dewPointC !== null) w.line("Tdew", "dew point", "forecast", outside.dewPointC, "C");
  w.include(plants.working);
  for (const way of plants.ways) {
    w.line(
      `Tmin ${way.id}`,
      "night's minimum at the plants, told this way",
      way.expression,
      way.minimumC,
      "C",
      way.source,
    );
  }
  w.line("Tmin", "night's minimum at the plants", "the coldest of these", plants.minimumC, "C");
  w.line(
    "Tlow",
    "the same, less what the site leaves open",
    `Tmin - ${plants.plusMinusC}`,
    j.lowC,
    "C",
    PRACTICE,
  );
  courseLines(w, j);
  w.line("h", "hours of the night below the floor", "one an hour of the course", j.hoursBelow, "h");
  w.line("D", "degree-hours below the floor", "Σ max(0, floor - T)", j.degreeHours, "C h");
  if (j.crosses !== null) {
    w.line("crosses", "first below the floor, from now on", "course", clockAt(j.crosses, zone), "clock");
  }
  for (const p of j.protections) {
    w.line(
      `T ${p.id}`,
      "minimum it would leave",
      `Tmin - standing cover + ${p.offsetC}`,
      p.insideC,
      "C",
      p.source,
    );
  }
  estimates(w, state, j);
  w.line(
    "course",
    "how the hours were found",
    "",
    course.how,
    "",
    course.how.startsWith("trend") ? TREND : null,
  );
  return { working: w.lines, estimated: w.estimated };
}

/** The trend as its quantity prints it, where it begins two hours after sunset. */
function courseLines(w: Working, { course, night, outside, plants }: Judged): void {
  const open = outside.airC(night.sunset + 2 * HOUR_MS);
  if (course.how !== "trend" || open === null || plants.liftC === null) return;
  // The quantity begins at four hours of night.
  if (night.lengthH < SHORTEST_NIGHT_H) return;
  w.include(
    nightTemperatureTrend.compute({
      twoHoursAfterSunsetC: open + plants.liftC,
      sunriseC: plants.minimumC,
      nightH: night.lengthH,
    }),
  );
}

function estimates(w: Working, { site }: PlantingState, { outside, plants, stand, course }: Judged): void {
  if (stand !== "inside" && site.stationOffset === undefined) {
    w.estimate("site.stationOffset", "site taken as its station, give or take 2 C", PRACTICE);
  }
  if (outside.from === "days" && course.how !== "trend-from-reading") {
    w.estimate("hours of the night", "course of the day from its extremes", {
      key: "parton-logan-1981",
      locator: "air at 150 cm",
    });
  }
  if (plants.cover.offsetC && plants.cover.source) {
    w.estimate(
      "temperature under the cover",
      "outside minimum plus the cover's published offset",
      plants.cover.source,
    );
  }
  if (plants.ways[0]?.id === "same-heat") {
    w.estimate("temperature inside", "what its heat held on past nights", PRACTICE);
  }
}

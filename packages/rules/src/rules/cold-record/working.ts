import { type Estimated, type SourceRef, Working, type WorkingLine } from "../../core/working.ts";
import type { Judged } from "./judge.ts";
import { WARM_DAYS_TO_JUDGE } from "./signs.ts";

const PRACTICE: SourceRef = { key: "common-practice" };
const PARTON_LOGAN: SourceRef = { key: "parton-logan-1981", locator: "air at 150 cm" };

/** The record line by line, and what in it was estimated. */
export function coldWorking(j: Judged): { working: WorkingLine[]; estimated: Estimated[] } {
  const w = new Working();
  const { thresholds: t, hours, records } = j;
  w.line("phase", "how old the plants are", "notes and days in the bed", t.phase, "", PRACTICE);
  w.line("floor", "air below this counts as cold for them", t.phase, t.floorC, "C", t.floorSource);
  w.line(
    "h_known",
    "hours known since the record begins",
    `${hours.measured} measured at the plants + ${hours.reconstructed} reconstructed, from ${hours.firstDay}`,
    records.whole.knownHours,
    "h",
    hours.reconstructed > 0 ? PARTON_LOGAN : null,
  );
  w.line("h_missing", "hours missing; not filled", "no reading and no daily extremes", hours.missing, "h");
  w.line("h", "hours below the floor", "count of T < floor", records.whole.hoursBelow, "h");
  w.line("D", "degree-hours below the floor", "Σ max(0, floor - T)", records.whole.degreeHours, "C h");
  w.line("spell", "longest unbroken spell below the floor", "", records.whole.longestSpellH, "h");
  w.line(
    "Tmin",
    "lowest minimum",
    "lowest reading or daily minimum",
    Number.isFinite(hours.lowestMinimumC) ? hours.lowestMinimumC : null,
    "C",
  );
  w.line("F", "days with frost", "days with a minimum at or below 0 C", records.whole.frostDays, "days");
  w.line(
    "F_watched",
    "days with frost since a new leaf was noted",
    "the same",
    records.watched.frostDays,
    "days",
  );
  w.line(
    "D14",
    "degree-hours in the last fortnight",
    "Σ max(0, floor - T)",
    records.latest.degreeHours,
    "C h",
  );
  w.line(
    "N14",
    "nights below the floor in the last fortnight",
    "noon to noon",
    records.latest.nightsBelow,
    "nights",
  );
  w.line(
    "h14max",
    "hours below the floor in the worst fortnight",
    `${records.watched.firstDay} to ${records.watched.lastDay}`,
    records.watched.hoursBelow,
    "h",
  );
  w.line(
    "D14max",
    "degree-hours in the worst fortnight",
    "Σ max(0, floor - T)",
    records.watched.degreeHours,
    "C h",
  );
  w.line("N14max", "nights below the floor in it", "noon to noon", records.watched.nightsBelow, "nights");
  w.line(
    "D_allowed",
    "degree-hours allowed in a fortnight",
    "office or default",
    t.allowedDegreeHours,
    "C h",
    PRACTICE,
  );
  w.line(
    "N_allowed",
    "nights allowed in a fortnight",
    "office or default",
    t.allowedNights,
    "nights",
    PRACTICE,
  );
  if (t.nightFloorC !== null) {
    w.line("floor_night", "night floor for plants raised indoors", "20 to 7 h", t.nightFloorC, "C", PRACTICE);
    w.line(
      "h_night",
      "night hours below it in the last fortnight",
      "count",
      records.latest.coolNightHours,
      "h",
    );
    w.line(
      "D_night",
      "degree-hours of those nights below it",
      "Σ max(0, night floor - T), 20 to 7 h",
      records.latest.coolNightDegreeHours,
      "C h",
    );
  }
  if (j.signs.warmDaysWithoutLeaf !== null) {
    w.line(
      "warm",
      "warm days since the coldest day with no new leaf noted at their end",
      `mean of at least 18 C; ${WARM_DAYS_TO_JUDGE} decide`,
      j.signs.warmDaysWithoutLeaf,
      "days",
      PRACTICE,
    );
  }
  if (j.signs.daysToSpare !== null) {
    w.line(
      "spare",
      "days left between green fruit on plants sown today and the first autumn frost",
      "first frost of the earliest fifth of years less raising and the seed list's days",
      j.signs.daysToSpare,
      "days",
      { key: "transplanting-guides", locator: "6 to 8 weeks of raising" },
    );
  }
  estimates(w, j);
  return { working: w.lines, estimated: w.estimated };
}

function estimates(w: Working, { hours }: Judged): void {
  if (hours.reconstructed > 0) {
    w.estimate("hourly temperatures", "course of the day from its extremes", PARTON_LOGAN);
    if (hours.siteShiftC === null) w.estimate("site.stationOffset", "site taken as its station", PRACTICE);
  }
  if (hours.siteShiftC !== null) {
    w.line("Δsite", "site's nights less its station's", "mean of paired nights", hours.siteShiftC, "C");
  }
  for (const { covers, offsetC, source } of hours.estimatedUnder) {
    w.line("Δcover", "night minimum under the cover less outside", covers.join(" + "), offsetC, "C", source);
  }
  const source = hours.estimatedUnder[0]?.source;
  if (!source) return;
  w.estimate("temperature under the cover", "outside minimum plus the cover's published offset", source);
}

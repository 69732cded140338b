import { addDays, dayOfYear } from "../../core/days.ts";
import type { Members } from "../../warmth/blend.ts";
import { type DayDose, dayDose } from "../../warmth/dose.ts";
import { frostRisk } from "../../warmth/frostRisk.ts";
import { quantileOfSorted, type ShareOfYears, shareOfYears } from "../../warmth/shareOfYears.ts";
import { ESTABLISHMENT_DAYS, FEWEST_YEARS, FROST_C, HORIZON_DAYS, type Line } from "./line.ts";

/** Tenth, middle and ninetieth of a hundred springs. */
interface Spread {
  p10: number;
  p50: number;
  p90: number;
}

/** What setting out on one day would meet. Null parts: fewer than eight years have that window whole. */
export interface DateDose {
  day: string;
  lead: number;
  n: number;
  /** More nights or more degree-hours below the floor than this stage is allowed. */
  beyond: ShareOfYears | null;
  frost: ShareOfYears | null;
  /** At least one night below the floor; shown, never deciding. */
  oneNight: ShareOfYears | null;
  degreeHours: Spread | null;
  nights: Spread | null;
}

/** Days of weather that the last date's window needs. */
export const DAYS_NEEDED = HORIZON_DAYS + ESTABLISHMENT_DAYS;

/**
 * The distribution of the cold dose over the establishment window, for each of the next 90 days.
 *
 * @param nightShiftC what the site and its cover add to the station's minimum on the day of that lead [C]
 */
export function doseCurve(
  members: Members,
  today: string,
  latitudeDeg: number,
  line: Line,
  nightShiftC: (lead: number) => number,
): DateDose[] {
  const doses = members.days.map((days) => memberDoses(days, today, latitudeDeg, line.floorC, nightShiftC));
  return Array.from({ length: HORIZON_DAYS + 1 }, (_, lead) => dateDose(doses, today, lead, line));
}

function memberDoses(
  days: Members["days"][number],
  today: string,
  latitudeDeg: number,
  floorC: number,
  nightShiftC: (lead: number) => number,
): DayDose[] {
  const shifted = days.map((d, i) => {
    const tMinC = d.tMinC + nightShiftC(i - 1);
    // On a dull day a lifted minimum may pass the maximum, which then goes with it.
    return { tMinC, tMaxC: Math.max(d.tMaxC, tMinC) };
  });
  const firstDayOfYear = dayOfYear(today);
  return shifted.slice(1, -1).map((day, lead) =>
    // The day's length repeats yearly, so counting past the year's end does no harm.
    dayDose(
      latitudeDeg,
      ((firstDayOfYear + lead - 1) % 365) + 1,
      day,
      shifted[lead],
      shifted[lead + 2],
      floorC,
    ),
  );
}

function dateDose(doses: DayDose[][], today: string, lead: number, line: Line): DateDose {
  const allowed = line.allowedOn(lead);
  const nights: number[] = [];
  const degreeHours: number[] = [];
  let beyond = 0;
  const coldestC: number[] = [];
  let oneNight = 0;
  for (const member of doses) {
    let nightsBelow = 0;
    let sum = 0;
    let coldest = Number.POSITIVE_INFINITY;
    for (let i = lead; i < lead + ESTABLISHMENT_DAYS; i++) {
      const day = member[i] as DayDose;
      // A missing day makes the sum NaN, and the whole window is left out below.
      sum += day.degreeHours;
      if (day.minimumC < line.floorC) nightsBelow += 1;
      if (day.minimumC < coldest) coldest = day.minimumC;
    }
    if (Number.isNaN(sum)) continue;
    nights.push(nightsBelow);
    degreeHours.push(sum);
    if (nightsBelow > allowed.nights || sum > allowed.degreeHours) beyond += 1;
    coldestC.push(coldest);
    if (nightsBelow > 0) oneNight += 1;
  }
  const n = nights.length;
  const day = addDays(today, lead);
  if (n < FEWEST_YEARS) {
    return { day, lead, n, beyond: null, frost: null, oneNight: null, degreeHours: null, nights: null };
  }
  return {
    day,
    lead,
    n,
    beyond: shareOfYears(beyond, n),
    frost: frostRisk(coldestC, FROST_C),
    oneNight: shareOfYears(oneNight, n),
    degreeHours: spread(degreeHours),
    nights: spread(nights),
  };
}

function spread(values: number[]): Spread {
  const sorted = [...values].sort((a, b) => a - b);
  return {
    p10: quantileOfSorted(sorted, 0.1),
    p50: quantileOfSorted(sorted, 0.5),
    p90: quantileOfSorted(sorted, 0.9),
  };
}

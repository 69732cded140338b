import { addDays, dayOfYear } from "../../core/days.ts";
import { type DayShape, dayShape } from "../../quantities/climate/hourlyTemperatures.ts";
import type { Members } from "../../warmth/blend.ts";
import { degreeHoursBelow } from "../../warmth/dose.ts";
import { frostRisk } from "../../warmth/frostRisk.ts";
import { quantileOfSorted, type ShareOfYears, shareOfYears } from "../../warmth/shareOfYears.ts";
import { ESTABLISHMENT_DAYS, FEWEST_YEARS, FROST_C, HORIZON_DAYS, type Line } from "./line.ts";

/** Tenth, middle and ninetieth of a hundred springs. */
interface Spread {
  p10: number;
  p50: number;
  p90: number;
}

/**
 * What setting out on one day would meet. Null parts: fewer than eight years have that window whole; spreads also where
 * they were not asked for.
 */
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

/** Each year's nights and degree-hours, day by day from today: what the dates' windows are summed from. */
interface Nights {
  minimumC: Float64Array;
  degreeHours: Float64Array;
}

/** Room for one date's figures of each year, used again for the next date. */
type Scratch = Record<"nights" | "degreeHours" | "coldestC", Float64Array>;

/**
 * Turns a shift of the nights (site, cover) into the curve of the next 90 days. The spreads are only drawn for the bed as
 * it stands: sorting thirty years for each date and cover is most of the work.
 */
type DoseReader = (nightShiftC: (lead: number) => number, parts: "risk" | "risk-and-spread") => DateDose[];

/**
 * The distribution of the cold dose over the establishment window, for each of the next 90 days.
 *
 * What does not hang on the shift (calendar days, the shape of each day's course) is reckoned once for all covers.
 * The shift given to the reader is what the site and its cover add to the station's minimum on the day of that lead [C].
 */
export function doseReader(members: Members, today: string, latitudeDeg: number, line: Line): DoseReader {
  const firstDayOfYear = dayOfYear(today);
  // The day's length repeats yearly, so counting past the year's end does no harm.
  const shapes = Array.from({ length: DAYS_NEEDED }, (_, lead) =>
    dayShape(latitudeDeg, ((firstDayOfYear + lead - 1) % 365) + 1),
  );
  const days = Array.from({ length: HORIZON_DAYS + 1 }, (_, lead) => addDays(today, lead));
  const shiftC = new Float64Array(DAYS_NEEDED + 2);
  const room = () => new Float64Array(members.days.length);
  const scratch: Scratch = { nights: room(), degreeHours: room(), coldestC: room() };
  return (nightShiftC, parts) => {
    for (let i = 0; i < shiftC.length; i++) shiftC[i] = nightShiftC(i - 1);
    const years = members.days.map((year) => nightsOf(year, shapes, line.floorC, shiftC));
    return days.map((day, lead) => dateDose(years, day, lead, line, scratch, parts === "risk-and-spread"));
  };
}

function nightsOf(
  year: Members["days"][number],
  shapes: readonly DayShape[],
  floorC: number,
  shiftC: Float64Array,
): Nights {
  const length = shapes.length;
  const tMinC = new Float64Array(length + 2);
  const tMaxC = new Float64Array(length + 2);
  for (let i = 0; i < length + 2; i++) {
    const min = (year[i]?.tMinC ?? Number.NaN) + (shiftC[i] as number);
    tMinC[i] = min;
    // On a dull day a lifted minimum may pass the maximum, which then goes with it.
    tMaxC[i] = Math.max(year[i]?.tMaxC ?? Number.NaN, min);
  }
  const degreeHours = new Float64Array(length);
  for (let lead = 0; lead < length; lead++) {
    degreeHours[lead] = degreeHoursBelow(
      floorC,
      shapes[lead] as DayShape,
      tMinC[lead + 1] as number,
      tMaxC[lead + 1] as number,
      tMaxC[lead] as number,
      tMinC[lead + 2] as number,
    );
  }
  return { minimumC: tMinC.subarray(1, length + 1), degreeHours };
}

function dateDose(
  years: Nights[],
  day: string,
  lead: number,
  line: Line,
  scratch: Scratch,
  spreads: boolean,
): DateDose {
  const allowed = line.allowedOn(lead);
  const { floorC } = line;
  const end = lead + ESTABLISHMENT_DAYS;
  const { nights, degreeHours, coldestC } = scratch;
  let n = 0;
  let beyond = 0;
  let oneNight = 0;
  for (const { minimumC, degreeHours: dayByDay } of years) {
    let nightsBelow = 0;
    let sum = 0;
    let coldest = Number.POSITIVE_INFINITY;
    for (let i = lead; i < end; i++) {
      const minimum = minimumC[i] as number;
      // A missing day makes the sum NaN, and the whole window is left out below.
      sum += dayByDay[i] as number;
      if (minimum < floorC) nightsBelow += 1;
      if (minimum < coldest) coldest = minimum;
    }
    if (Number.isNaN(sum)) continue;
    nights[n] = nightsBelow;
    degreeHours[n] = sum;
    coldestC[n] = coldest;
    n += 1;
    if (nightsBelow > allowed.nights || sum > allowed.degreeHours) beyond += 1;
    if (nightsBelow > 0) oneNight += 1;
  }
  if (n < FEWEST_YEARS) {
    return { day, lead, n, beyond: null, frost: null, oneNight: null, degreeHours: null, nights: null };
  }
  return {
    day,
    lead,
    n,
    beyond: shareOfYears(beyond, n),
    frost: frostRisk(coldestC.subarray(0, n), FROST_C),
    oneNight: shareOfYears(oneNight, n),
    degreeHours: spreads ? spread(degreeHours.subarray(0, n)) : null,
    nights: spreads ? spread(nights.subarray(0, n)) : null,
  };
}

/** Sorts the values where they lie. */
function spread(values: Float64Array): Spread {
  const sorted = values.sort();
  return {
    p10: quantileOfSorted(sorted, 0.1),
    p50: quantileOfSorted(sorted, 0.5),
    p90: quantileOfSorted(sorted, 0.9),
  };
}

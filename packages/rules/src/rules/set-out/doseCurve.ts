import { dayOf, dayOfYear, epochDay } from "../../core/days.ts";
import type { Members } from "../../warmth/blend.ts";
import { type DoseShape, degreeHoursBelow, doseShape } from "../../warmth/dose.ts";
import { frostRisk, frostWithin } from "../../warmth/frostRisk.ts";
import { quantileOfSorted, type ShareOfYears, shareOfYears } from "../../warmth/shareOfYears.ts";
import { ESTABLISHMENT_DAYS, FEWEST_YEARS, FROST_C, HORIZON_DAYS, type Line } from "./line.ts";

/** Tenth, middle and ninetieth of a hundred springs. */
interface Spread {
  p10: number;
  p50: number;
  p90: number;
}

/**
 * What setting out on one day would meet. Null parts: fewer than eight years have that window whole; spreads and frost
 * also where they were not asked for.
 */
export interface DateDose {
  day: string;
  lead: number;
  n: number;
  /** More nights or more degree-hours below the floor than this stage is allowed. */
  beyond: ShareOfYears | null;
  frost: ShareOfYears | null;
  /** Years with frost in the window, and whether its risk is within the accepted one. */
  frosts: number;
  frostWithin: boolean;
  /** At least one night below the floor; shown, never deciding. */
  oneNight: ShareOfYears | null;
  degreeHours: Spread | null;
  nights: Spread | null;
}

/** Days of weather that the last date's window needs. */
export const DAYS_NEEDED = HORIZON_DAYS + ESTABLISHMENT_DAYS;

/** Each year's cold, day by day from today: what the dates' windows are read from. */
interface Nights {
  /** With a day before the first and a day after the last. */
  tMinC: Float64Array;
  tMaxC: Float64Array;
  degreeHours: Float64Array;
  /** Sum of the days before each, a missing day counted as nothing. */
  doseBefore: Float64Array;
  /** Days before each that have no dose, and nights before each below the floor. */
  missingBefore: Uint8Array;
  nightsBefore: Uint8Array;
  /** Lowest minimum of the window that begins on each date. */
  coldestC: Float64Array;
}

/** Written anew for each shift, and for each planting after the last is read: making such rows costs as much as filling them. */
const rows: Nights[] = [];

const emptyNights = (): Nights => ({
  tMinC: new Float64Array(DAYS_NEEDED + 2),
  tMaxC: new Float64Array(DAYS_NEEDED + 2),
  degreeHours: new Float64Array(DAYS_NEEDED),
  doseBefore: new Float64Array(DAYS_NEEDED + 1),
  missingBefore: new Uint8Array(DAYS_NEEDED + 1),
  nightsBefore: new Uint8Array(DAYS_NEEDED + 1),
  coldestC: new Float64Array(HORIZON_DAYS + 1),
});

/** Room for one date's figures of each year, used again for the next date. */
type Scratch = Record<"nights" | "degreeHours" | "coldestC", Float64Array>;

/**
 * How much of each date is wanted. The spreads are only drawn for the bed as it stands: summing and sorting thirty years
 * for each date and cover is most of the work. Where only a decision is wanted, the chances of frost and of one night are left out.
 */
export type Parts = "decision" | "risk" | "risk-and-spread";

/** Turns a shift of the nights (site, cover) into the curve of the next 90 days. */
type DoseReader = (nightShiftC: (lead: number) => number, parts: Parts) => DateDose[];

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
    doseShape(latitudeDeg, ((firstDayOfYear + lead - 1) % 365) + 1),
  );
  const first = epochDay(today);
  const days = Array.from({ length: HORIZON_DAYS + 1 }, (_, lead) => dayOf(first + lead));
  const shiftC = new Float64Array(DAYS_NEEDED + 2);
  const room = () => new Float64Array(members.years.length);
  const scratch: Scratch = { nights: room(), degreeHours: room(), coldestC: room() };
  while (rows.length < members.years.length) rows.push(emptyNights());
  const years = rows.slice(0, members.years.length);
  return (nightShiftC, parts) => {
    for (let i = 0; i < shiftC.length; i++) shiftC[i] = nightShiftC(i - 1);
    years.forEach((year, y) => {
      const station = { tMinC: members.tMinC[y] as Float64Array, tMaxC: members.tMaxC[y] as Float64Array };
      fillNights(year, station, shapes, line.floorC, shiftC);
    });
    return days.map((day, lead) => dateDose(years, day, lead, line, scratch, parts));
  };
}

function fillNights(
  year: Nights,
  station: Pick<Nights, "tMinC" | "tMaxC">,
  shapes: readonly DoseShape[],
  floorC: number,
  shiftC: Float64Array,
): void {
  const { tMinC, tMaxC, degreeHours, doseBefore, missingBefore, nightsBefore } = year;
  const length = shapes.length;
  for (let i = 0; i < length + 2; i++) {
    const min = (station.tMinC[i] as number) + (shiftC[i] as number);
    tMinC[i] = min;
    // On a dull day a lifted minimum may pass the maximum, which then goes with it.
    tMaxC[i] = Math.max(station.tMaxC[i] as number, min);
  }
  for (let lead = 0; lead < length; lead++) {
    const minimum = tMinC[lead + 1] as number;
    const dose = degreeHoursBelow(
      floorC,
      shapes[lead] as DoseShape,
      minimum,
      tMaxC[lead + 1] as number,
      tMaxC[lead] as number,
      tMinC[lead + 2] as number,
    );
    const missing = Number.isNaN(dose);
    degreeHours[lead] = dose;
    doseBefore[lead + 1] = (doseBefore[lead] as number) + (missing ? 0 : dose);
    missingBefore[lead + 1] = (missingBefore[lead] as number) + (missing ? 1 : 0);
    nightsBefore[lead + 1] = (nightsBefore[lead] as number) + (minimum < floorC ? 1 : 0);
  }
  fillColdest(year.coldestC, tMinC);
}

/** Days that may still be a window's coldest, in order; written anew for each year. */
const queue = new Int32Array(DAYS_NEEDED);

/** Lowest minimum of each date's window, in one pass: what is warmer than a later day can never be the lowest again. */
function fillColdest(coldest: Float64Array, tMinC: Float64Array): void {
  const length = tMinC.length - 2;
  let head = 0;
  let tail = 0;
  for (let day = 0; day < length; day++) {
    const minimum = tMinC[day + 1] as number;
    // Missing minima are never the lowest; windows that hold one are left out.
    if (!Number.isNaN(minimum)) {
      while (tail > head && (tMinC[(queue[tail - 1] as number) + 1] as number) >= minimum) tail -= 1;
      queue[tail++] = day;
    }
    const start = day - ESTABLISHMENT_DAYS + 1;
    if (start < 0) continue;
    while (head < tail && (queue[head] as number) < start) head += 1;
    if (start < coldest.length) {
      coldest[start] =
        head < tail ? (tMinC[(queue[head] as number) + 1] as number) : Number.POSITIVE_INFINITY;
    }
  }
}

/** Differences of running sums carry a rounding of their own; this near the line the window is summed day by day. */
const TOO_NEAR_C_H = 1e-6;

function windowDose(year: Nights, lead: number): number {
  let sum = 0;
  for (let i = lead; i < lead + ESTABLISHMENT_DAYS; i++) sum += year.degreeHours[i] as number;
  return sum;
}

function dateDose(
  years: Nights[],
  day: string,
  lead: number,
  line: Line,
  scratch: Scratch,
  parts: Parts,
): DateDose {
  const spreads = parts === "risk-and-spread";
  const allowed = line.allowedOn(lead);
  const end = lead + ESTABLISHMENT_DAYS;
  const { nights, degreeHours, coldestC } = scratch;
  let n = 0;
  let beyond = 0;
  let oneNight = 0;
  for (const year of years) {
    if (year.missingBefore[end] !== year.missingBefore[lead]) continue;
    const nightsBelow = (year.nightsBefore[end] as number) - (year.nightsBefore[lead] as number);
    const running = (year.doseBefore[end] as number) - (year.doseBefore[lead] as number);
    const near = Math.abs(running - allowed.degreeHours) < TOO_NEAR_C_H;
    const sum = spreads || near ? windowDose(year, lead) : running;
    nights[n] = nightsBelow;
    degreeHours[n] = sum;
    coldestC[n] = year.coldestC[lead] as number;
    n += 1;
    if (nightsBelow > allowed.nights || sum > allowed.degreeHours) beyond += 1;
    if (nightsBelow > 0) oneNight += 1;
  }
  if (n < FEWEST_YEARS) {
    const unknown = { beyond: null, frost: null, oneNight: null, degreeHours: null, nights: null };
    return { day, lead, n, ...unknown, frosts: 0, frostWithin: false };
  }
  const minimaC = coldestC.subarray(0, n);
  const frost = parts === "decision" ? null : frostRisk(minimaC, FROST_C);
  const frosts = frost
    ? { hits: frost.hits, within: frost.estimate <= line.frostRisk }
    : frostWithin(minimaC, FROST_C, line.frostRisk);
  return {
    day,
    lead,
    n,
    beyond: shareOfYears(beyond, n),
    frost,
    frosts: frosts.hits,
    frostWithin: frosts.within,
    oneNight: parts === "decision" ? null : shareOfYears(oneNight, n),
    degreeHours: spreads ? spread(degreeHours.subarray(0, n)) : null,
    nights: spreads ? spread(nights.subarray(0, n)) : null,
  };
}

/** So few values are put in order by hand in a third of the time that the library's sort takes to begin. */
const FEW = 40;

function putInOrder(values: Float64Array): Float64Array {
  if (values.length > FEW) return values.sort();
  for (let i = 1; i < values.length; i++) {
    const value = values[i] as number;
    let at = i;
    while (at > 0 && (values[at - 1] as number) > value) {
      values[at] = values[at - 1] as number;
      at -= 1;
    }
    values[at] = value;
  }
  return values;
}

/** Sorts the values where they lie. */
function spread(values: Float64Array): Spread {
  const sorted = putInOrder(values);
  return {
    p10: quantileOfSorted(sorted, 0.1),
    p50: quantileOfSorted(sorted, 0.5),
    p90: quantileOfSorted(sorted, 0.9),
  };
}

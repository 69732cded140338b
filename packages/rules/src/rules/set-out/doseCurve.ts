import { dayOf, dayOfYear, epochDay } from "../../core/days.ts";
import type { Members } from "../../warmth/blend.ts";
import { type DoseShape, doseShape } from "../../warmth/dose.ts";
import { frostRisk, frostWithin } from "../../warmth/frostRisk.ts";
import { putInOrder, quantileOfSorted, type ShareOfYears, shareOfYears } from "../../warmth/shareOfYears.ts";
import { ESTABLISHMENT_DAYS, FEWEST_YEARS, FROST_C, HORIZON_DAYS, type Line } from "./line.ts";
import {
  DAYS_NEEDED,
  EXTREME_DAYS,
  type Nights,
  nightsAt,
  type StationNights,
  stationNights,
  windowDose,
} from "./nights.ts";

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

/** Room for one date's figures of each year, used again for the next date. */
type Scratch = Record<"nights" | "degreeHours" | "coldestC", Float64Array>;

/**
 * How much of each date is wanted. The spreads are only drawn for the bed as it stands: summing and sorting thirty years
 * for each date and cover is most of the work. Where only a decision is wanted, the chances of frost and of one night are left out.
 */
export type Parts = "decision" | "risk" | "risk-and-spread";

/** Turns a shift of the nights (site, cover) into the curve of the next 90 days. */
type DoseReader = (nightShiftC: (lead: number) => number, parts: Parts) => readonly Readonly<DateDose>[];

/**
 * The distribution of the cold dose over the establishment window, for each of the next 90 days.
 *
 * What does not hang on the shift (calendar days, the shape of each day's course) is reckoned once for all covers.
 * The shift given to the reader is what the site and its cover add to the station's minimum on the day of that lead [C].
 */
export function doseReader(members: Members, today: string, latitudeDeg: number, line: Line): DoseReader {
  const site = sites.get(members) ?? { station: stationNights(members), nights: [], curves: [] };
  sites.set(members, site);
  const asked = askedOf(latitudeDeg, line);
  let dates: Dates | undefined;
  return (nightShiftC, parts) => {
    for (let day = 0; day < EXTREME_DAYS; day++) asked[day] = nightShiftC(day - 1);
    const known = site.curves.find((one) => one.parts === parts && areSame(one.asked, asked));
    if (known) return known.curve;
    const place = asked.subarray(0, EXTREME_DAYS + 2);
    const before = site.nights.find((one) => areSame(one.asked, place));
    const nights = before?.nights ?? nightsAt(site.station, line.floorC, nightShiftC);
    if (!before) keep(site.nights, { asked: place.slice(), nights }, MOST_NIGHTS);
    dates ??= datesFrom(today, latitudeDeg, site.station.years);
    const { days, shapes, scratch } = dates;
    const curve = days.map((day, lead) => dateDose(nights, shapes, day, lead, line, scratch, parts));
    keep(site.curves, { asked: asked.slice(), parts, curve }, MOST_CURVES);
    return curve;
  };
}

interface Dates {
  days: string[];
  shapes: DoseShape[];
  scratch: Scratch;
}

function datesFrom(today: string, latitudeDeg: number, years: number): Dates {
  const first = epochDay(today);
  const firstDayOfYear = dayOfYear(today);
  const room = () => new Float64Array(years);
  return {
    days: Array.from({ length: HORIZON_DAYS + 1 }, (_, lead) => dayOf(first + lead)),
    // The day's length repeats yearly, so counting past the year's end does no harm.
    shapes: Array.from({ length: DAYS_NEEDED }, (_, lead) =>
      doseShape(latitudeDeg, ((firstDayOfYear + lead - 1) % 365) + 1),
    ),
    scratch: { nights: room(), degreeHours: room(), coldestC: room() },
  };
}

/** What one site's plantings share that wait to go out: the nights under a cover, and mostly the line and so the curve too. */
interface Site {
  station: StationNights;
  /** By the shifts, the place and the floor. */
  nights: { asked: Float64Array; nights: Nights }[];
  /** By the same, the line and how much of it was wanted. */
  curves: { asked: Float64Array; parts: Parts; curve: readonly Readonly<DateDose>[] }[];
}

const sites = new WeakMap<Members, Site>();
const MOST_NIGHTS = 8;
const MOST_CURVES = 32;

function keep<T>(kept: T[], one: T, most: number): void {
  if (kept.length >= most) kept.shift();
  kept.push(one);
}

/** Room for the shifts, then the place and the floor, then the rest of the line. */
function askedOf(latitudeDeg: number, line: Line): Float64Array {
  const dates = HORIZON_DAYS + 1;
  const asked = new Float64Array(EXTREME_DAYS + 3 + 2 * dates);
  asked.set([latitudeDeg, line.floorC, line.frostRisk], EXTREME_DAYS);
  for (let lead = 0; lead < dates; lead++) {
    const { nights, degreeHours } = line.allowedOn(lead);
    asked.set([nights, degreeHours], EXTREME_DAYS + 3 + 2 * lead);
  }
  return asked;
}

function areSame(one: Float64Array, other: Float64Array): boolean {
  for (let i = 0; i < one.length; i++) if (one[i] !== other[i]) return false;
  return true;
}

function dateDose(
  all: Nights,
  shapes: readonly DoseShape[],
  day: string,
  lead: number,
  line: Line,
  scratch: Scratch,
  parts: Parts,
): DateDose {
  const spreads = parts === "risk-and-spread";
  const allowed = line.allowedOn(lead);
  const { nights, degreeHours, coldestC } = scratch;
  const first = lead * all.years;
  const last = first + ESTABLISHMENT_DAYS * all.years;
  let n = 0;
  let beyond = 0;
  let oneNight = 0;
  for (let year = 0; year < all.years; year++) {
    const from = first + year;
    const to = last + year;
    if (all.missingBefore[to] !== all.missingBefore[from]) continue;
    const before = all.nightsBefore[from] as number;
    const nightsBelow = (all.nightsBefore[to] as number) - before;
    // Without a night below the floor, the one after the window's last evening counted too, no hour is.
    const cold = (all.nightsBefore[to + all.years] as number) !== before;
    const tooMany = nightsBelow > allowed.nights;
    // Too many nights are beyond whatever their hours, which are then only reckoned to be shown.
    const sum = cold && (spreads || !tooMany) ? windowDose(all, shapes, lead, year, line.floorC) : 0;
    nights[n] = nightsBelow;
    degreeHours[n] = sum;
    coldestC[n] = all.coldestC[from] as number;
    n += 1;
    if (tooMany || sum > allowed.degreeHours) beyond += 1;
    if (nightsBelow > 0) oneNight += 1;
  }
  if (n < FEWEST_YEARS) {
    const unknown = { beyond: null, frost: null, oneNight: null, degreeHours: null, nights: null };
    return { day, lead, n, ...unknown, frosts: 0, frostWithin: false };
  }
  // A part of a row costs more to make than to read, and mostly all years are whole.
  const known = (figures: Float64Array) => (n === figures.length ? figures : figures.subarray(0, n));
  const minimaC = known(coldestC);
  if (parts !== "decision") all.frost[lead] ??= frostRisk(minimaC, FROST_C);
  const frost = parts === "decision" ? null : (all.frost[lead] as ShareOfYears);
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
    degreeHours: spreads ? spread(known(degreeHours)) : null,
    nights: spreads ? spread(known(nights)) : null,
  };
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

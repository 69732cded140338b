import { dayShape, fallTo } from "../quantities/climate/hourlyTemperatures.ts";

/** Shares of a piece of the day's course in rising order, and the sums of those before each. */
interface Piece {
  sorted: Float64Array;
  before: Float64Array;
  /** How many shares lie below each sixty-fourth of 1, from which the search for a line begins. */
  below: Uint8Array;
}

const STEPS = 64;

/** A day's three pieces, put in the order in which a floor takes its hours: one place and calendar day, every year. */
export interface DoseShape {
  atSunset: number;
  morning: Piece;
  day: Piece;
  night: Piece;
}

/** Shapes of the latitudes asked for lately: a county's sites share a few, and each asks for a hundred days. */
const known = new Map<number, DoseShape[]>();
const MOST_LATITUDES = 64;

/** What the dose of a calendar day at a latitude needs of its shape. */
export function doseShape(latitudeDeg: number, dayOfYear: number): DoseShape {
  let year = known.get(latitudeDeg);
  if (!year) {
    if (known.size >= MOST_LATITUDES) known.clear();
    year = [];
    known.set(latitudeDeg, year);
  }
  year[dayOfYear] ??= makeShape(latitudeDeg, dayOfYear);
  return year[dayOfYear];
}

function makeShape(latitudeDeg: number, dayOfYear: number): DoseShape {
  const { share, riseHour, nightHour, atSunset } = dayShape(latitudeDeg, dayOfYear);
  return {
    atSunset,
    morning: pieceOf(share.slice(0, riseHour)),
    day: pieceOf(share.slice(riseHour, nightHour)),
    night: pieceOf(share.slice(nightHour)),
  };
}

function pieceOf(shares: Float64Array): Piece {
  const sorted = shares.sort();
  const before = new Float64Array(sorted.length + 1);
  for (let i = 0; i < sorted.length; i++) before[i + 1] = (before[i] as number) + (sorted[i] as number);
  const below = Uint8Array.from(
    { length: STEPS + 1 },
    (_, i) => sorted.filter((at) => at < i / STEPS).length,
  );
  return { sorted, before, below };
}

/**
 * Degree-hours below a floor in one day, on the reconstructed course of the day.
 *
 *   D = Σ max(0, floor - T(h)), h = 0 … 23
 *
 * Each piece of the day is T = base + k share(h), so the hours below the floor are those on one side of one share, and
 * their sum is read from running sums: ninety dates of thirty years under five covers ask for sixteen thousand days.
 * NaN where an extreme of the day is missing; where a neighbour's is, the day's own stands in for it.
 *
 * @param previousTMaxC maximum of the day before, for the cooling after midnight
 * @param nextTMinC minimum of the day after, for the cooling after sunset
 */
export function degreeHoursBelow(
  floorC: number,
  shape: DoseShape,
  tMinC: number,
  tMaxC: number,
  previousTMaxC: number,
  nextTMinC: number,
): number {
  if (Number.isNaN(tMinC) || Number.isNaN(tMaxC)) return Number.NaN;
  const after = Number.isNaN(nextTMinC) ? tMinC : nextTMinC;
  if (tMinC >= floorC && after >= floorC) return 0;
  const highest = Math.max(tMaxC, tMinC);
  const before = Number.isNaN(previousTMaxC) ? highest : previousTMaxC;
  const { atSunset } = shape;
  return (
    roomBelow(shape.morning, floorC - tMinC, fallTo(tMinC, tMinC, before, atSunset)) +
    roomBelow(shape.day, floorC - tMinC, highest - tMinC) +
    roomBelow(shape.night, floorC - after, fallTo(after, tMinC, highest, atSunset))
  );
}

/** Σ max(0, room - k share) over a piece, where `room` is the floor less the piece's base. */
function roomBelow({ sorted, before, below }: Piece, room: number, k: number): number {
  const hours = sorted.length;
  if (k === 0) return room > 0 ? hours * room : 0;
  const line = room / k;
  let under = line > 0 ? (below[line < 1 ? Math.floor(line * STEPS) : STEPS] as number) : 0;
  while (under < hours && (sorted[under] as number) < line) under += 1;
  if (k > 0) return under * room - k * (before[under] as number);
  return (hours - under) * room - k * ((before[hours] as number) - (before[under] as number));
}

/** Daily minima and maxima of a station's whole years; null where a day is missing. */
interface StationYears {
  stationId: string;
  years: { year: number; tMinC: (number | null)[]; tMaxC: (number | null)[] }[];
}

/** A station's years, and their numbers laid down apart so that no later change to what came in reaches them. */
interface Kept {
  climatology: StationYears;
  tMinC: Float64Array[];
  tMaxC: Float64Array[];
}

/** The stations met last: a county has few, and each is half a megabyte. */
const kept = new Map<string, Kept>();
const MOST_STATIONS = 8;

/** The years kept of a station where they are the same as these, number by number; undefined for all else. */
export function knownStation(raw: unknown): StationYears | undefined {
  if (!isRecord(raw) || typeof raw.stationId !== "string") return undefined;
  const known = kept.get(raw.stationId);
  if (!known || !isSame(raw, known)) return undefined;
  kept.delete(raw.stationId);
  kept.set(raw.stationId, known);
  return known.climatology;
}

/** Keeps the years of a station that has been looked over, in the place of those met longest ago. */
export function keepStation(looked: StationYears): StationYears {
  const years = looked.years.map(({ year, tMinC, tMaxC }) => ({
    year,
    tMinC: tMinC.slice(),
    tMaxC: tMaxC.slice(),
  }));
  const climatology = { ...looked, years };
  kept.delete(looked.stationId);
  const [oldest] = kept.keys();
  if (kept.size >= MOST_STATIONS && oldest !== undefined) kept.delete(oldest);
  kept.set(looked.stationId, {
    climatology,
    tMinC: years.map((y) => numbersOf(y.tMinC)),
    tMaxC: years.map((y) => numbersOf(y.tMaxC)),
  });
  return climatology;
}

function numbersOf(values: (number | null)[]): Float64Array {
  const numbers = new Float64Array(values.length);
  for (let i = 0; i < values.length; i++) numbers[i] = values[i] ?? Number.NaN;
  return numbers;
}

const isRecord = (raw: unknown): raw is Record<string, unknown> => typeof raw === "object" && raw !== null;

const hasFields = (raw: Record<string, unknown>, count: number): boolean => Object.keys(raw).length === count;

function isSame(raw: Record<string, unknown>, { climatology, tMinC, tMaxC }: Kept): boolean {
  const { years } = raw;
  if (!hasFields(raw, 2) || !Array.isArray(years) || years.length !== climatology.years.length) return false;
  return climatology.years.every(({ year }, i) => {
    const given: unknown = years[i];
    return (
      isRecord(given) &&
      hasFields(given, 3) &&
      given.year === year &&
      areSame(given.tMinC, tMinC[i] as Float64Array) &&
      areSame(given.tMaxC, tMaxC[i] as Float64Array)
    );
  });
}

/** Missing days stand as NaN, which equals nothing: a NaN that came in is never taken for one. */
function areSame(raw: unknown, numbers: Float64Array): boolean {
  if (!Array.isArray(raw) || raw.length !== numbers.length) return false;
  for (let i = 0; i < numbers.length; i++) {
    const t: unknown = raw[i];
    const number = numbers[i] as number;
    if (t === null ? !Number.isNaN(number) : t !== number) return false;
  }
  return true;
}

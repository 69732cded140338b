import { dayOfYear, epochDay } from "../../core/days.ts";
import { et0HargreavesMmPerDay } from "../../quantities/climate/et0Hargreaves.ts";
import { climatologyYears, sameDayIn } from "../../warmth/climatologyYears.ts";
import { newBook, runSeason, type Season, type SoilStart } from "../../water/season.ts";
import type { ZoneReading } from "./reading.ts";
import { stagesEndOn, type ValveSetting } from "./setting.ts";
import { triggerMm } from "./zoneReading.ts";

/** Fewer years say nothing of a range (common practice). */
const LEAST_YEARS = 8;

/** A quantity over the years: mean, and the lowest and highest year. */
export interface OverYears {
  mean: number;
  low: number;
  high: number;
}

/** A zone's water from the opening of its book to the end of the stages [mm]. */
interface SeasonTotal {
  usedMm: number;
  givenMm: number;
  rainMm: number;
  drainedMm: number;
  endOn: string;
  /** From the open day on; undefined without enough years or past the end. */
  ahead: { years: number; useMm: OverYears; irrigationMm: OverYears } | undefined;
  pastEnd: boolean;
}

const sum = (values: Float64Array, to: number) => values.subarray(0, to).reduce((a, b) => a + b, 0);

function over(values: number[]): OverYears {
  return {
    mean: values.reduce((a, b) => a + b, 0) / values.length,
    low: Math.min(...values),
    high: Math.max(...values),
  };
}

/**
 * What the governing zone has used and was given, and what it will still use and want if no rain falls: for each year of
 * the station's climatology its ET0 by Hargreaves (FAO-56 eq. 52) of the remaining days, run through the same balance with
 * a refill whenever one is due. Years with a day missing in that time are left out.
 */
export function seasonTotal(setting: ValveSetting, r: ZoneReading): SeasonTotal {
  const endOn = stagesEndOn(r.zone);
  const { season, book, closed } = r;
  const length = Math.max(0, Math.round(epochDay(endOn) - epochDay(setting.openDay)));
  return {
    usedMm: sum(book.etcAdjMm, closed),
    givenMm: sum(season.irrigationMm, closed),
    rainMm: sum(season.rainMm, closed),
    drainedMm: sum(book.percolationMm, closed),
    endOn,
    ahead: aheadOf(setting, r, length),
    pastEnd: length === 0,
  };
}

function aheadOf(setting: ValveSetting, r: ZoneReading, length: number): SeasonTotal["ahead"] {
  const { climatology, site } = setting.state;
  if (!climatology || length === 0) return undefined;
  const { years, at } = climatologyYears(climatology);
  const rainMm = r.season.rainMm.slice().fill(0, r.closed);
  const uses: number[] = [];
  const waters: number[] = [];
  const open = r.days[r.closed]?.day ?? setting.openDay;
  const firstDay = dayOfYear(open);
  for (const year of years) {
    const from = sameDayIn(year, open);
    const et0Mm = r.season.et0Mm.slice();
    let whole = true;
    for (let k = 0; k < length && whole; k++) {
      const { tMinC, tMaxC } = at(from + k);
      whole = tMaxC >= tMinC;
      const day = ((firstDay + k - 1) % 365) + 1;
      et0Mm[r.closed + k] = whole
        ? et0HargreavesMmPerDay({ latitudeDeg: site.latitudeDeg, dayOfYear: day, tMaxC, tMinC })
        : 0;
    }
    if (!whole) continue;
    const run = runWatered(
      setting,
      r,
      { ...r.season, et0Mm, rainMm, irrigationMm: r.season.irrigationMm.slice() },
      length,
    );
    uses.push(run.useMm);
    waters.push(run.irrigationMm);
  }
  if (uses.length < LEAST_YEARS) return undefined;
  return { years: uses.length, useMm: over(uses), irrigationMm: over(waters) };
}

/** The days to come with a refill on each day that would otherwise end short. */
function runWatered(setting: ValveSetting, r: ZoneReading, season: Season, length: number) {
  const book = newBook(r.closed + length);
  let start: SoilStart = r.start;
  let irrigationMm = 0;
  for (let i = r.closed; i < r.closed + length; i++) {
    runSeason(season, book, i, i + 1, start);
    if ((book.depletionMm[i] as number) > triggerMm(setting, r, book, i) && start.depletionMm > 0) {
      season.irrigationMm[i] = start.depletionMm;
      irrigationMm += start.depletionMm;
      runSeason(season, book, i, i + 1, start);
    }
    start = {
      depletionMm: book.depletionMm[i] as number,
      wateredTopMm: book.wateredTopMm[i] as number,
      rainedTopMm: book.rainedTopMm[i] as number,
    };
  }
  return { useMm: sum(book.etcAdjMm.subarray(r.closed), length), irrigationMm };
}

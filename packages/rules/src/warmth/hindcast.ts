import { addDays, dayOf, daysBetween } from "../core/days.ts";
import { refuse } from "../core/errors.ts";
import { type DateDose, doseReader } from "../rules/set-out/doseCurve.ts";
import { FEWEST_YEARS, type Line, lineOf, READY_LEAVES } from "../rules/set-out/line.ts";
import { DAYS_NEEDED } from "../rules/set-out/nights.ts";
import type { Climatology } from "../states/parts.ts";
import { membersAhead } from "./blend.ts";
import { type ClimatologyYears, climatologyYears, NORMAL_YEARS, sameDayIn } from "./climatologyYears.ts";
import { type ProbabilityCase, type ProbabilityScore, scoreProbabilities } from "./hindcastScore.ts";

/** Setting-out dates asked about: each week from late April to the end of June, `MM-DD`. */
export const HINDCAST_DATES = [
  "04-25",
  "05-02",
  "05-09",
  "05-16",
  "05-23",
  "05-30",
  "06-06",
  "06-13",
  "06-20",
  "06-27",
] as const;

/** Fewer say little about a skill: 80 springs, as asked of a hindcast. */
export const FEWEST_HINDCAST_YEARS = 80;

/**
 * From which years a year's probabilities come. `every-other-year`: all but the year itself. `years-before`: the
 * {@link NORMAL_YEARS} before it, as set-out would have had them in that spring.
 */
export type HindcastRecord = "every-other-year" | "years-before";

/** The events that set-out gives a probability of: a dose above the allowed one, and frost, in the window after a date. */
export type HindcastEvent = "dose" | "frost";

/** One date's probabilities in the mean over the years, against what came. */
export interface HindcastDate {
  /** `MM-DD` */
  date: string;
  n: number;
  meanForecast: number;
  observedShare: number;
}

export interface Hindcast {
  record: HindcastRecord;
  event: HindcastEvent;
  /** First and last year asked about. */
  firstYear: number;
  lastYear: number;
  score: ProbabilityScore;
  dates: HindcastDate[];
}

interface DatedCase extends ProbabilityCase {
  date: string;
}

/** The plant asked about: hardened, with its leaves, by the default line of the rule. */
export const hindcastLine = (today: string): Line =>
  lineOf(
    {},
    [
      { on: addDays(today, -1), kind: "hardened" },
      { on: addDays(today, -1), kind: "true-leaves", value: READY_LEAVES },
    ],
    today,
  );

/**
 * Asks set-out's own climatology for its probabilities in the springs of the past, with the year itself left out, and
 * scores them against that year's weather. The dose, the probabilities and what counts as having happened all come from
 * the rule's own {@link doseReader}; no forecast is blended in and no skill of any is claimed.
 *
 * @param latitudeDeg of the station: it sets the length of its days
 * @throws DomainError where fewer than 80 years have whole windows
 */
export function hindcastSetOut(
  climatology: Climatology,
  latitudeDeg: number,
  record: HindcastRecord,
): Hindcast[] {
  const all = climatologyYears(climatology, Number.POSITIVE_INFINITY);
  const came = new Map(all.years.map((year) => [year, whatCame(all, year, latitudeDeg)]));
  const whole = all.years.filter((year) => came.get(year)?.some((d) => d.beyond));
  if (whole.length < FEWEST_HINDCAST_YEARS) {
    const message = `the fortnights from late April to early July are whole in ${whole.length} of its years, a hindcast needs ${FEWEST_HINDCAST_YEARS}`;
    refuse("years", message, `at least ${FEWEST_HINDCAST_YEARS}`, whole.length);
  }
  const dose: DatedCase[] = [];
  const frost: DatedCase[] = [];
  for (const year of whole) {
    const known = yearsKnown(all.years, year, record);
    if (!known) continue;
    const given = datesOf({ ...all, years: known }, year, latitudeDeg);
    came.get(year)?.forEach((then, i) => {
      const before = given[i];
      const date = HINDCAST_DATES[i];
      if (!date || !then.beyond || !then.frost || !before?.beyond || !before.frost) return;
      dose.push({ year, date, forecast: before.beyond.estimate, happened: then.beyond.hits > 0 });
      frost.push({ year, date, forecast: before.frost.estimate, happened: then.frost.hits > 0 });
    });
  }
  return [hindcastOf(record, "dose", dose), hindcastOf(record, "frost", frost)];
}

function yearsKnown(years: readonly number[], year: number, record: HindcastRecord): number[] | null {
  if (record === "every-other-year") return years.filter((y) => y !== year);
  const before = years.filter((y) => y < year).slice(-NORMAL_YEARS);
  return before.length === NORMAL_YEARS ? before : null;
}

/** What a year brought: the rule's answer from a record in which every year is this one, so each share is 0 or all. */
const whatCame = (all: ClimatologyYears, year: number, latitudeDeg: number): DateDose[] =>
  datesOf({ ...all, years: new Array<number>(FEWEST_YEARS).fill(year) }, year, latitudeDeg);

/** The rule's probabilities for the dates of one spring, from the years of a record. */
function datesOf(known: ClimatologyYears, year: number, latitudeDeg: number): DateDose[] {
  const today = dayOf(sameDayIn(year, `0000-${HINDCAST_DATES[0]}`));
  const members = membersAhead(known, today, DAYS_NEEDED);
  const curve = doseReader(members, today, latitudeDeg, hindcastLine(today))(() => 0, "risk");
  return HINDCAST_DATES.map((date) => {
    const lead = daysBetween(today, dayOf(sameDayIn(year, `0000-${date}`)));
    return curve[lead] as DateDose;
  });
}

function hindcastOf(record: HindcastRecord, event: HindcastEvent, cases: DatedCase[]): Hindcast {
  const dates = HINDCAST_DATES.flatMap((date) => {
    const own = cases.filter((c) => c.date === date);
    if (own.length === 0) return [];
    const mean = (of: (c: DatedCase) => number) => own.reduce((sum, c) => sum + of(c), 0) / own.length;
    return [
      { date, n: own.length, meanForecast: mean((c) => c.forecast), observedShare: mean((c) => +c.happened) },
    ];
  });
  const years = cases.map((c) => c.year);
  return {
    record,
    event,
    firstYear: Math.min(...years),
    lastYear: Math.max(...years),
    score: scoreProbabilities(cases),
    dates,
  };
}

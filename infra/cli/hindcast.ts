import { readFile } from "node:fs/promises";
import { basename } from "node:path";
import { parseArgs } from "node:util";
import {
  type Climatology,
  DomainError,
  FEWEST_HINDCAST_YEARS,
  type Hindcast,
  hindcastLine,
  hindcastSetOut,
  readDailySeries,
  sources,
} from "@pith/rules";
import { PlainFailure, textOf } from "../process/failure.mjs";

/**
 * `npm run -s hindcast -- <csv> [--latitude <degrees>]`: how good the probabilities of `set-out` would have been on a long
 * daily series (`date,tMaxC,tMinC,...`), the year itself left out. The latitude may be left out for a station that is known by
 * its name. Exit 0: printed. 2: one sentence on what is wrong.
 */
const USAGE = "npm run -s hindcast -- <csv> [--latitude <degrees north>]";

/** Stations whose identifier in the file's name says where they stand; from memory of the network's station list. */
const STATION_LATITUDES_DEG: Readonly<Record<string, number>> = { USW00014839: 42.955 };

/** Within this the course of a day is reconstructed, and the dates asked about are spring. */
const LATITUDE_DEG = { min: 20, max: 65 } as const;
const LATITUDE_BOUND = `${LATITUDE_DEG.min} to ${LATITUDE_DEG.max} degrees north`;

const EVENT = { dose: "Cold dose above the allowed one", frost: "Frost (0 C or colder)" } as const;
const RECORD = {
  "every-other-year": "each year from every other year of the series (leave one year out)",
  "years-before": "each year from the 30 years before it, as set-out would have had them",
} as const;

interface Place {
  latitudeDeg: number;
  how: string;
}

try {
  const { path, latitude } = readArguments(process.argv.slice(2));
  const climatology = readDailySeries(await readText(path), basename(path));
  const place = placeOf(path, latitude);
  const every = hindcastSetOut(climatology, place.latitudeDeg, "every-other-year");
  const before = hindcastSetOut(climatology, place.latitudeDeg, "years-before");
  process.stdout.write(`${report(path, climatology, place, [...every, ...before]).join("\n")}\n`);
} catch (error) {
  if (!(error instanceof PlainFailure) && !(error instanceof DomainError)) throw error;
  const [problem] = error instanceof DomainError ? error.problems : [];
  const sentence = problem
    ? `The series cannot be used: ${problem.field}: ${problem.message}.`
    : error.message;
  process.stderr.write(`${sentence}\n`);
  process.exitCode = 2;
}

function readArguments(args: string[]): { path: string; latitude: string | undefined } {
  const { values, positionals } = understand(args);
  const [path, ...more] = positionals;
  if (path === undefined || more.length > 0) throw new PlainFailure(`Usage: ${USAGE}`);
  return { path, latitude: values.latitude };
}

function understand(args: string[]) {
  try {
    return parseArgs({ args, allowPositionals: true, options: { latitude: { type: "string" } } });
  } catch (error) {
    throw new PlainFailure(`${firstLine(error)}. Usage: ${USAGE}`);
  }
}

async function readText(path: string): Promise<string> {
  try {
    return await readFile(path, "utf8");
  } catch (error) {
    throw new PlainFailure(`The file ${path} cannot be read: ${firstLine(error)}.`);
  }
}

function firstLine(error: unknown): string {
  return (error instanceof Error ? error.message : textOf(error)).split("\n")[0] ?? "";
}

function placeOf(path: string, given: string | undefined): Place {
  if (given !== undefined) {
    const latitudeDeg = given.trim() === "" ? Number.NaN : Number(given);
    if (!(latitudeDeg >= LATITUDE_DEG.min && latitudeDeg <= LATITUDE_DEG.max)) {
      throw new PlainFailure(`--latitude must be ${LATITUDE_BOUND}, not "${given}".`);
    }
    return { latitudeDeg, how: "as given" };
  }
  const station = Object.keys(STATION_LATITUDES_DEG).find((id) => basename(path).includes(id));
  if (station) return { latitudeDeg: STATION_LATITUDES_DEG[station] as number, how: `station ${station}` };
  throw new PlainFailure(
    `--latitude is missing: nothing says where ${basename(path)} was recorded, and its nights are as long as the latitude makes them; give ${LATITUDE_BOUND}.`,
  );
}

function report(path: string, climatology: Climatology, place: Place, hindcasts: Hindcast[]): string[] {
  const line = hindcastLine("2000-04-25");
  const { nights, degreeHours } = line.allowedOn(0);
  const years = climatology.years;
  const source = (id: string) => `  ${sources.get(id)?.cite ?? id}`;
  return [
    "Hindcast of set-out: its probabilities from climatology alone against what each spring brought",
    `Series    ${basename(path)}, ${years.at(0)?.year} to ${years.at(-1)?.year}, ${years.length} years`,
    `Latitude  ${place.latitudeDeg} degrees north (${place.how})`,
    `Plant     hardened, six true leaves; allowed ${nights} nights or ${degreeHours} C h below ${line.floorC} C in the 14 nights after setting out`,
    `Needs     ${FEWEST_HINDCAST_YEARS} years at least with those fortnights whole; no forecast is blended in, none is scored`,
    ...hindcasts.flatMap(section),
    "",
    "Brier score: mean of (forecast - outcome)², outcome 1 or 0. Brier skill score: 1 - Brier score / Brier score of the flat",
    "base rate, the share of all dates and years in which it happened. Reliability, resolution and uncertainty by tenths of",
    "the scale; what gathering unequal forecasts into one bin leaves over is named, and all four add up to the Brier score.",
    ...["brier-1950", "murphy-1973", "stephenson-2008"].map(source),
  ];
}

function section({ event, record, score: s, firstYear, lastYear, dates }: Hindcast): string[] {
  const f = (value: number, decimals = 3) => value.toFixed(decimals);
  const skill = s.skill === null ? "none: it always or never happened" : f(s.skill);
  const error =
    s.skillStandardError === null ? "" : `, standard error ${f(s.skillStandardError)} (years left out)`;
  return [
    "",
    `${EVENT[event]}, ${RECORD[record]}`,
    `${s.years} springs, ${firstYear} to ${lastYear}; ${s.n} forecasts`,
    "",
    row("forecast", "mean forecast", "observed share", "n"),
    ...s.bins.map((b) =>
      row(`${f(b.from, 1)} to ${f(b.to, 1)}`, f(b.meanForecast), f(b.observedShare), `${b.n}`),
    ),
    "",
    row("date", "mean forecast", "observed share", "n"),
    ...dates.map((d) => row(d.date, f(d.meanForecast), f(d.observedShare), `${d.n}`)),
    "",
    `Brier score ${f(s.brier, 4)} = reliability ${f(s.reliability, 4)} - resolution ${f(s.resolution, 4)} + uncertainty ${f(s.uncertainty, 4)} + within bins ${f(s.withinBins, 4)}`,
    `Brier skill score ${skill} against a flat base rate of ${f(s.baseRate)}${error}`,
  ];
}

function row(first: string, ...rest: string[]): string {
  return `  ${first.padEnd(12)}${rest.map((cell) => cell.padStart(16)).join("")}`;
}

import { readFileSync } from "node:fs";
import type { PlantingState } from "@pith/rules";
import { bench, describe } from "vitest";
import { inventWeather, type Station } from "../../../infra/seed/weather.ts";
import { bundledRules } from "../support/bundledRules.ts";

const { addDays, advise, adviseEachPlanting, dayOf, dayOfYear, epochDay } = await bundledRules();

/**
 * Advice of every rule on one planting with 30 years of climatology and 200 days of weather, its share of the shed worked
 * out before, beside only reading its state as JSON. Stated limit: 2 ms median. The machine is shared, so the ratio is
 * what is read; the medians are printed because the table has none, and the processor's time beside them.
 *
 * What is worked out from a station's years and forecast is kept for the next planting of its sites. So there are three
 * cases, each with a state freshly read from JSON: a planting like one before it; the first with its own line, whose
 * chances of cold are all reckoned anew; and the first of a station, whose years have to be looked over and laid out.
 */
const YEARS = 30;
const DAYS = 200;
const LIMIT_MS = 2;

const example = (name: string): PlantingState =>
  JSON.parse(readFileSync(new URL(`../../../docs/examples/${name}.json`, import.meta.url), "utf8"));

function climatologyOf(station: Station, before: number): NonNullable<PlantingState["climatology"]> {
  const years = Array.from({ length: YEARS }, (_, i) => {
    const year = before - YEARS + i;
    const days = inventWeather({ ...station, seed: station.seed + i }, `${year}-01-01`, `${year}-12-31`);
    const column = (key: "tMinC" | "tMaxC") => {
      const values = new Array<number | null>(366).fill(null);
      for (const day of days) values[dayOfYear(day.date) - 1] = day[key];
      return values;
    };
    return { year, tMinC: column("tMinC"), tMaxC: column("tMaxC") };
  });
  return { stationId: "invented", years };
}

function stateOf(name: string): PlantingState {
  const given = example(name);
  const today = given.asOf.slice(0, 10);
  const station = { seed: 7, latitudeDeg: given.site.latitudeDeg, years: YEARS, offsetC: 0 };
  const weather = inventWeather(station, dayOf(epochDay(today) - DAYS), addDays(today, -1));
  if (weather.length !== DAYS) throw new Error(`the state has ${weather.length} days of weather`);
  const planting = {
    ...given,
    // Without a goal feeding has nothing to reckon.
    planting: { ...given.planting, yieldGoalTPerHa: 25 },
    weather,
    climatology: climatologyOf(station, Number(today.slice(0, 4))),
    shed: [],
  };
  const { asOf, settings, shed } = given;
  const season = {
    kind: "farm-season" as const,
    version: 1 as const,
    asOf,
    settings,
    id: "farm",
    season: 2026,
  };
  const [shared] = adviseEachPlanting({ ...season, shed, plantings: [planting] });
  if (!shared) throw new Error("the season has no planting");
  return shared.state;
}

/** Times of a bench's own runs, for their median and mean [ms]; those of the warm-up are thrown away. */
function timed<T>(
  name: string,
  make: (run: number) => T,
  run: (made: T) => unknown,
  then: (medianMs: number, processorMs: number) => void,
): void {
  let times: number[] = [];
  let processorUs = 0;
  let runs = 0;
  bench(
    name,
    () => {
      const made = make(runs++);
      const before = process.cpuUsage();
      const start = performance.now();
      run(made);
      times.push(performance.now() - start);
      const { user, system } = process.cpuUsage(before);
      processorUs += user + system;
    },
    {
      time: 2000,
      warmupTime: 1000,
      setup: () => {
        times = [];
        processorUs = 0;
      },
      teardown: (_, mode) => {
        if (mode !== "run") return;
        const medianMs = times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] as number;
        then(medianMs, processorUs / 1000 / times.length);
      },
    },
  );
}

const CASES: [string, (state: PlantingState, run: number) => PlantingState][] = [
  ["like a planting before it", (state) => state],
  [
    "the first with its line",
    (state, run) => ({
      ...state,
      settings: { ...state.settings, setOutAllowedDegreeHours: 60 + (run % 100_000) / 1000 },
    }),
  ],
  [
    "the first of a station",
    (state, run) =>
      state.climatology
        ? { ...state, climatology: { ...state.climatology, stationId: `invented-${run}` } }
        : state,
  ],
];

describe.each([
  ["waiting to be set out", "planting-waiting-in-may"],
  ["standing in the bed", "planting-cold-week"],
])("one planting %s, 30 years and 200 days (limit 2 ms median)", (where, name) => {
  const text = JSON.stringify(stateOf(name));
  const read = (): PlantingState => JSON.parse(text);
  let readMs = Number.NaN;
  timed(
    "read the state as JSON",
    () => text,
    (json) => JSON.parse(json),
    (medianMs) => {
      readMs = medianMs;
    },
  );
  for (const [which, make] of CASES) {
    timed(
      `read it and advise on it, all rules: ${which}`,
      (run) => make(read(), run),
      (state) => advise(state),
      (medianMs, processorMs) => {
        const ratio = (medianMs / readMs).toFixed(1);
        console.info(
          `${where}, ${which}: ${medianMs.toFixed(2)} ms median of at most ${LIMIT_MS}, processor ${processorMs.toFixed(2)} ms mean; ${ratio} times reading`,
        );
      },
    );
  }
});

import { readFileSync } from "node:fs";
import { addDays, advise, dayOf, dayOfYear, epochDay, type PlantingState } from "@pith/rules";
import { bench, describe } from "vitest";
import { inventWeather, type Station } from "../../../infra/seed/weather.ts";

/**
 * Advice of every rule on one planting with 30 years of climatology and 200 days of weather, beside only reading its
 * state as JSON. Stated limit: 2 ms median. The machine is shared, so the ratio is what is read; the medians are printed
 * because the table has none.
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
  return { ...given, weather, climatology: climatologyOf(station, Number(today.slice(0, 4))) };
}

/** Times of a bench's own runs [ms], for its median; those of the warm-up are thrown away. */
function timed(name: string, run: () => unknown, then: (medianMs: number) => void): void {
  let times: number[] = [];
  bench(
    name,
    () => {
      const start = performance.now();
      run();
      times.push(performance.now() - start);
    },
    {
      setup: () => {
        times = [];
      },
      teardown: (_, mode) => {
        if (mode === "run") then(times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] as number);
      },
    },
  );
}

describe.each([
  ["waiting to be set out", "planting-waiting-in-may"],
  ["standing in the bed", "planting-cold-week"],
])("one planting %s, 30 years and 200 days (limit 2 ms median)", (where, name) => {
  const state = stateOf(name);
  const text = JSON.stringify(state);
  let readMs = Number.NaN;
  timed(
    "read the state as JSON",
    () => JSON.parse(text),
    (medianMs) => {
      readMs = medianMs;
    },
  );
  timed(
    "advise on it, all rules",
    () => advise(state),
    (medianMs) => {
      const ratio = (medianMs / readMs).toFixed(1);
      console.info(
        `${where}: ${medianMs.toFixed(2)} ms median of at most ${LIMIT_MS}; ${ratio} times reading`,
      );
    },
  );
});

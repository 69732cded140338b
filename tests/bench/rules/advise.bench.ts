import { readFileSync } from "node:fs";
import { advise } from "@pith/rules";
import { bench, describe } from "vitest";
import { inventWeather } from "../../../infra/seed/weather.ts";

/** Advising one planting with 200 days of weather, against only reading its state as JSON. */

const example = JSON.parse(
  readFileSync(new URL("../../../docs/examples/planting-feeding.json", import.meta.url), "utf8"),
);
const today: string = example.asOf.slice(0, 10);
const from = new Date(Date.parse(`${today}T00:00:00Z`) - 200 * 86_400_000).toISOString().slice(0, 10);
const yesterday = new Date(Date.parse(`${today}T00:00:00Z`) - 86_400_000).toISOString().slice(0, 10);
const state = {
  ...example,
  weather: inventWeather(
    { seed: 7, latitudeDeg: example.site.latitudeDeg, years: 1, offsetC: 0 },
    from,
    yesterday,
  ),
};
if (state.weather.length !== 200) throw new Error(`the state has ${state.weather.length} days of weather`);
const text = JSON.stringify(state);

describe("one planting, 200 days of weather", () => {
  bench("read the state as JSON", () => {
    JSON.parse(text);
  });
  bench("advise on it", () => {
    advise(state);
  });
  bench("read and advise", () => {
    advise(JSON.parse(text));
  });
});

import { readFileSync } from "node:fs";
import { dayOfYear, quantities } from "@pith/rules";
import { describe, expect, test } from "vitest";

/**
 * Four years of real days at Seattle (NOAA, in vega-datasets), of which only the extremes are used here: the
 * temperature-only path of FAO-56. No evapotranspiration is published with the series, so the bounds are physical, or
 * FAO-56's own: Table 2 (recalled) gives, for humid and sub-humid temperate regions, 1-2 mm a day where cool (about
 * 10 C), 2-4 where moderate (about 20 C), 4-7 where warm (above 30 C).
 */
const file = new URL("../../node_modules/vega-datasets/data/seattle-weather.csv", import.meta.url);
const days = readFileSync(file, "utf8")
  .trim()
  .split("\n")
  .slice(1)
  .map((line) => {
    const [date = "", , tMax, tMin] = line.split(",");
    const inputs = { latitudeDeg: 47.44, date, tMaxC: Number(tMax), tMinC: Number(tMin) };
    const hargreaves = Number(quantities["et0-hargreaves"]?.compute(inputs).value.et0MmPerDay);
    const penman = quantities["et0-daily"]?.compute({ ...inputs, elevationM: 137 });
    const sun = quantities["extraterrestrial-radiation"]?.compute({
      latitudeDeg: 47.44,
      dayOfYear: dayOfYear(date),
    });
    return {
      date,
      hargreaves,
      penman: Number(penman?.value.et0MmPerDay),
      estimated: penman?.estimated.map((e) => e.input).sort(),
      raMm: Number(sun?.value.raMjPerM2Day) / 2.45,
    };
  });

const mean = (values: number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;
const methods = ["hargreaves", "penman"] as const;

describe("Seattle, 2012 to 2015, temperatures only", () => {
  test("the series is whole: 1461 days, and each answer lists all that was estimated", () => {
    expect(days.length).toBe(1461);
    for (const day of days) {
      expect(day.estimated).toEqual([
        "coastal",
        "eaKpa",
        "rsMjPerM2Day",
        "soilHeatMjPerM2Day",
        "windAt2mMPerS",
      ]);
    }
  });

  test.each(methods)(
    "%s: no day evaporates below 0 or more than all the sun at the top of the air could",
    (method) => {
      for (const day of days) {
        expect(day[method], day.date).toBeGreaterThanOrEqual(0);
        expect(day[method], day.date).toBeLessThan(day.raMm);
      }
    },
  );

  test.each(methods)(
    "%s: the mean of the years lies in 1 to 4 mm a day (FAO-56 Table 2, cool to moderate)",
    (method) => {
      const all = mean(days.map((d) => d[method]));
      expect(all).toBeGreaterThan(1);
      expect(all).toBeLessThan(4);
    },
  );

  test.each(methods)(
    "%s: July lies in 2 to 7 mm a day (moderate to warm), December below 1 (colder than cool)",
    (method) => {
      const month = (mm: string) => mean(days.filter((d) => d.date.slice(5, 7) === mm).map((d) => d[method]));
      expect(month("07")).toBeGreaterThan(2);
      expect(month("07")).toBeLessThan(7);
      expect(month("12")).toBeLessThan(1);
    },
  );

  test("the two methods, which share only Ra and the extremes, agree over the years within a fifth (common practice)", () => {
    const ratio = mean(days.map((d) => d.penman)) / mean(days.map((d) => d.hargreaves));
    expect(Math.abs(ratio - 1)).toBeLessThan(0.2);
  });
});

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Advice, adviseState, type ValveState } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { planting, valve } from "../rules/waterAndFood.ts";

/**
 * NOAA's daily Seattle series 2012-2015 as carried by vega-datasets, through irrigate. Temperature, rain and wind only:
 * humidity and sun are replaced as FAO-56 chapter 3 says, so the bounds are wide and each names where it comes from.
 */
const csv = readFileSync(
  join(import.meta.dirname, "../../node_modules/vega-datasets/data/seattle-weather.csv"),
  "utf8",
);
const series: ValveState["weather"] = csv
  .trim()
  .split("\n")
  .slice(1)
  .map((row) => {
    const [date = "", rain, tMax, tMin, wind] = row.split(",");
    return {
      date,
      rainMm: Number(rain),
      tMaxC: Number(tMax),
      tMinC: Number(tMin),
      windMPerS: Number(wind),
      windHeightM: 10,
    };
  });

const SEATTLE: ValveState["site"] = {
  latitudeDeg: 47.45,
  longitudeDeg: -122.31,
  elevationM: 130,
  timeZone: "America/Los_Angeles",
  coastal: true,
};

const seasonOf = (year: number, waterings: ValveState["waterings"] = []): Advice => {
  const state = valve({
    asOf: `${year}-09-18T19:00:00Z`,
    site: SEATTLE,
    weather: series.filter((w) => w.date >= `${year}-05-16` && w.date < `${year}-09-18`),
    waterings,
  });
  const [zone] = state.zones;
  if (!zone) throw new Error("no zone");
  const standing = { ...zone, planting: planting({ sownOn: `${year}-03-01`, setOutOn: `${year}-05-16` }) };
  const found = adviseState({ ...state, zones: [standing] }).find((a) => a.rule.id === "irrigate");
  if (found?.kind !== "advice") throw new Error(JSON.stringify(found));
  return found;
};
const line = (a: Advice, symbol: string) => a.working.find((l) => l.symbol === symbol)?.value as number;

/** Enough every fifth day that the plants never go short. */
const ample = (year: number) =>
  series
    .filter((w) => w.date >= `${year}-05-17` && w.date < `${year}-09-18`)
    .filter((_, i) => i % 5 === 0)
    .map((w) => ({ on: w.date, litres: 2500 }));

describe.each([2012, 2013, 2014, 2015])("Seattle %s, 125 days from 16 May", (year) => {
  const dry = seasonOf(year);
  const watered = seasonOf(year, ample(year));

  test("mean ET0 of the season lies in FAO-56 Table 2's temperate band, cool to warm: 2 to 7 mm a day", () => {
    const mean = line(dry, "ΣET0") / 125;
    expect(mean).toBeGreaterThan(2);
    expect(mean).toBeLessThan(7);
  });
  test("well watered, the crop uses less than the FAO pepper card's upper 1250 mm and more than half its lower 600", () => {
    const used = line(watered, "ΣETc adj");
    expect(used).toBeLessThan(1250);
    expect(used).toBeGreaterThan(300);
  });
  test("Seattle's dry summer does not carry peppers: unwatered they use less, and water is due by mid September", () => {
    expect(line(dry, "ΣETc adj")).toBeLessThan(line(watered, "ΣETc adj"));
    expect(line(dry, "Dr")).toBeGreaterThan(0);
  });
  test("the book closes: ΣETc adj + ΣDP - ΣP - ΣI is what is missing", () => {
    const closes =
      line(watered, "ΣETc adj") + line(watered, "ΣDP") - line(watered, "ΣP") - line(watered, "ΣI");
    expect(Math.abs(closes - line(watered, "Dr"))).toBeLessThan(1e-9);
  });
  test("what was not measured is listed: humidity and sun", () => {
    const inputs = dry.estimated.map((e) => e.input).join(" ");
    expect(inputs).toMatch(/rs/i);
    expect(inputs).toMatch(/ea|rh|dew/i);
  });
});

import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { PlantingState } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { advice, answer, line, planting } from "../rules/warmthStates.ts";

type Row = { date: string; tMaxC: number | null; tMinC: number | null };
const root = join(import.meta.dirname, "../..");

/** Seattle, 2012-2015, from NOAA's daily summaries as the package vega-datasets carries them. */
const seattle = readRows(join(root, "node_modules/vega-datasets/data/seattle-weather.csv"), 0, 2, 3);

/** Milwaukee since 1938 (GHCN-Daily USW00014839, Menne et al. 2012), where the shared data stands beside the project. */
const longPath = join(root, "../shared/data/daily-USW00014839.csv");
const long = existsSync(longPath) ? readRows(longPath, 0, 1, 2) : null;

function readRows(path: string, date: number, max: number, min: number): Row[] {
  const value = (cell: string | undefined) => (cell === undefined || cell === "" ? null : Number(cell));
  const lines = readFileSync(path, "utf8").trim().split("\n").slice(1);
  return lines.map((text) => {
    const cells = text.split(",");
    return { date: cells[date] as string, tMaxC: value(cells[max]), tMinC: value(cells[min]) };
  });
}

function climatologyOf(rows: Row[], before: number): NonNullable<PlantingState["climatology"]> {
  const years = new Map<number, { tMinC: (number | null)[]; tMaxC: (number | null)[] }>();
  for (const row of rows) {
    const year = Number(row.date.slice(0, 4));
    if (year >= before) continue;
    const first = Date.parse(`${year}-01-01T00:00:00Z`);
    const i = (Date.parse(`${row.date}T00:00:00Z`) - first) / 86_400_000;
    const entry = years.get(year) ?? { tMinC: Array(366).fill(null), tMaxC: Array(366).fill(null) };
    entry.tMinC[i] = row.tMinC;
    entry.tMaxC[i] = row.tMaxC;
    years.set(year, entry);
  }
  return { stationId: "station", years: [...years].map(([year, entry]) => ({ year, ...entry })) };
}

describe("Seattle, four years", () => {
  const site = {
    latitudeDeg: 47.45,
    longitudeDeg: -122.31,
    elevationM: 130,
    timeZone: "America/Los_Angeles",
  };

  test("set-out: four years are too few, and it says so", () => {
    const a = answer(
      "set-out",
      planting({
        site,
        asOf: "2016-05-01T12:00:00Z",
        planting: { ...planting().planting, sownOn: "2016-03-01" },
        climatology: climatologyOf(seattle, 2016),
      }),
    );
    expect(a.kind === "needs-more" && a.missing[0]?.measure.params).toEqual({ n: 4, fewest: 8 });
  });

  test.each([2012, 2013, 2014, 2015])(
    "cold-record from 10 May to 9 June %i lies between what the extremes allow",
    (year) => {
      const window = seattle.filter((r) => r.date >= `${year}-05-09` && r.date <= `${year}-06-10`);
      const weather = window.map((r) => ({
        date: r.date,
        tMinC: r.tMinC as number,
        tMaxC: r.tMaxC as number,
      }));
      const a = advice(
        "cold-record",
        planting({
          site,
          asOf: `${year}-06-10T07:00:00Z`,
          weather,
          planting: { ...planting().planting, sownOn: `${year}-03-01`, setOutOn: `${year}-05-10` },
        }),
      );
      const counted = weather.slice(1, -1);
      const extremes = counted.map((d, i) => ({
        // An evening cools towards the next day's minimum, so either may be the coldest of the day's hours.
        coldestC: Math.min(d.tMinC, weather[i + 2]?.tMinC ?? d.tMinC),
        // Night hours fall from the evening before, whose top is that day's maximum.
        warmestC: Math.max(d.tMaxC, weather[i]?.tMaxC ?? d.tMaxC),
        tMinC: d.tMinC,
      }));
      const most = extremes.reduce((sum, d) => sum + 24 * Math.max(0, 12 - d.coldestC), 0);
      const least = extremes.reduce((sum, d) => sum + 24 * Math.max(0, 12 - d.warmestC), 0);
      expect(line(a, "D")).toBeLessThan(most);
      expect(line(a, "D")).toBeGreaterThanOrEqual(least);
      expect(line(a, "h_known")).toBe(31 * 24);
      expect(line(a, "Tmin")).toBe(Math.min(...counted.map((d) => d.tMinC)));
      // Seattle's mean May minimum is about 9 C (NOAA normals, from memory), so most May nights pass below 12 C and none freezes.
      expect(line(a, "h")).toBeGreaterThan(24);
      expect(line(a, "F")).toBe(0);
    },
  );
});

if (long === null) {
  test("not run: no long series", () => {
    expect(existsSync(longPath)).toBe(false);
    console.info("not run: no long series");
  });
} else {
  describe("Milwaukee, more than eighty years", () => {
    const rows = long;
    const site: PlantingState["site"] = {
      latitudeDeg: 42.955,
      longitudeDeg: -87.904,
      elevationM: 204,
      timeZone: "America/Chicago",
      stationOffset: { minC: 0, sdC: 1, nights: 60 },
    };
    const state = (plannedSetOutOn: string): PlantingState =>
      planting({
        site,
        asOf: "2026-04-01T12:00:00Z",
        planting: { ...planting().planting, sownOn: "2026-02-20", plannedSetOutOn },
        notes: [{ on: "2026-03-30", kind: "hardened" }],
        climatology: climatologyOf(rows, 2026),
      });
    const at = (day: string) => advice("set-out", state(day));

    test("15 April: frost in at least a third of the latest thirty springs' fortnights as the file itself counts, so wait", () => {
      const springs = Array.from({ length: 30 }, (_, i) => 1996 + i);
      const frosty = springs.filter((year) =>
        rows.some(
          (r) => r.date >= `${year}-04-15` && r.date <= `${year}-04-28` && r.tMinC !== null && r.tMinC <= 0,
        ),
      ).length;
      expect(frosty).toBeGreaterThanOrEqual(10);
      const a = at("2026-04-15");
      expect(line(a, "n")).toBe(30);
      expect(line(a, "p_frost")).toBeGreaterThanOrEqual(frosty / 30 - 1e-9);
      expect(line(a, "p")).toBeGreaterThan(0.95);
      expect(a.decision.code).toBe("wait");
    });
    test("20 June: no fortnight since 1996 froze in the file, and the date is within the accepted risk", () => {
      const june = rows.filter(
        (r) => r.date >= "1996" && r.date.slice(5) >= "06-20" && r.date.slice(5) <= "07-03",
      );
      expect(june.every((r) => r.tMinC === null || r.tMinC > 0)).toBe(true);
      const a = at("2026-06-20");
      expect(a.decision.code).toBe("go");
      expect(line(a, "p_frost")).toBeLessThan(0.01);
    });
    test("from April to June the risk falls, and the earliest date lies between the last usual frost and midsummer", () => {
      const p = ["2026-04-15", "2026-05-15", "2026-06-01", "2026-06-20"].map(
        (day) => line(at(day), "p") as number,
      );
      expect([...p].sort((a, b) => b - a)).toEqual(p);
      const earliest = line(at("2026-04-15"), "earliest") as string;
      // The middle year's last freeze here is in late April (from memory); the solstice bounds it the other way.
      expect(earliest > "2026-05-10" && earliest < "2026-06-21").toBe(true);
    });
  });
}

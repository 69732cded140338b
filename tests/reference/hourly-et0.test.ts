import { readFileSync } from "node:fs";
import { addDays, dayOfYear, quantities } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { et0Daily } from "../../packages/rules/src/quantities/climate/et0Daily.ts";
import { solarDay } from "../../packages/rules/src/quantities/climate/extraterrestrialRadiation.ts";
import { hourlyTemperaturesC } from "../../packages/rules/src/quantities/climate/hourlyTemperatures.ts";
import { saturationVapourPressureKpa } from "../../packages/rules/src/quantities/climate/saturationVapourPressure.ts";
import { solarHour } from "../../packages/rules/src/quantities/climate/solarHour.ts";

/**
 * The hours of a day, summed, against the day at once, on NOAA's daily Seattle series 2012-2015 (vega-datasets), May to
 * September. The series has no hours, so they are made of the day's own figures: temperature by the reconstruction that
 * the rules use, sun in proportion to the sun's height, vapour pressure and wind the same all day. So what is compared is
 * eq. 53 with eq. 6, and not the guess of a missing input.
 */
const place = { latitudeDeg: 47.45, longitudeDeg: -122.31, elevationM: 130, utcOffsetH: -8 };
const series = readFileSync(
  new URL("../../node_modules/vega-datasets/data/seattle-weather.csv", import.meta.url),
  "utf8",
)
  .trim()
  .split("\n")
  .slice(1)
  .map((line) => {
    const [date = "", , tMax, tMin, wind] = line.split(",");
    return { date, tMaxC: Number(tMax), tMinC: Number(tMin), windAt2mMPerS: 0.748 * Number(wind) };
  });
const byDate = new Map(series.map((d) => [d.date, d]));
const season = series.filter(({ date }) => date.slice(5) >= "05-01" && date.slice(5) <= "09-30");

const days = season.map((d) => {
  const { date, tMaxC, tMinC } = d;
  const day = dayOfYear(date);
  const windAt2mMPerS = Math.max(0.5, d.windAt2mMPerS);
  const { et0MmPerDay, steps } = et0Daily({
    ...place,
    dayOfYear: day,
    tMaxC,
    tMinC,
    windAt2mMPerS,
    coastal: true,
  });
  const sun = solarDay(place.latitudeDeg, day);
  const raOf = Array.from(
    { length: 24 },
    (_, hourStart) => solarHour(sun, { ...place, dayOfYear: day, hourStart }).raMjPerM2Hour,
  );
  const raSum = raOf.reduce((sum, ra) => sum + ra, 0);
  const temperatures = hourlyTemperaturesC({
    latitudeDeg: place.latitudeDeg,
    dayOfYear: day,
    tMinC,
    tMaxC,
    previousTMaxC: byDate.get(addDays(date, -1))?.tMaxC as number,
    nextTMinC: byDate.get(addDays(date, 1))?.tMinC as number,
  });
  let hoursMm = 0;
  temperatures.forEach((temperatureC, hourStart) => {
    const answer = quantities["et0-hourly"]?.compute({
      ...place,
      date,
      hourStart,
      temperatureC,
      // In an hour colder than the dew point the air is full.
      rhPct: Math.min(100, (100 * steps.ea.eaKpa) / saturationVapourPressureKpa(temperatureC)),
      windAt2mMPerS,
      rsMjPerM2Hour: (steps.rs.value * (raOf[hourStart] as number)) / raSum,
      cloudRatio: Math.min(1, steps.rs.value / steps.rso),
    });
    hoursMm += Number(answer?.value.et0MmPerHour);
  });
  return { date, dayMm: et0MmPerDay, hoursMm };
});

/**
 * Itenfisu, Elliott, Allen and Walter 2003 (J. Irrig. Drain. Eng. 129:440-448; recalled) compared the two at 49 sites of
 * the United States: for this form (0.34 by day and night) the sums of hours stood within about 10 % of the days' sums.
 */
const SEASON_SHARE = 0.1;
/** A single day may lie as far off again; and its soil heat, nothing by the day, may store 0.1 of 5 mm of sun. */
const dayBoundMm = (dayMm: number) => 2 * SEASON_SHARE * dayMm + 0.5;

describe("ET0 of 24 hours against ET0 of the day, Seattle, May to September 2012 to 2015", () => {
  test.each(["2012", "2013", "2014", "2015"])("season %s: sums within 10 %", (year) => {
    const own = days.filter((d) => d.date.startsWith(year));
    expect(own.length).toBe(153);
    const sum = (of: (d: (typeof days)[number]) => number) => own.reduce((total, d) => total + of(d), 0);
    const ratio = sum((d) => d.hoursMm) / sum((d) => d.dayMm);
    expect(Math.abs(ratio - 1)).toBeLessThan(SEASON_SHARE);
  });
  test("each of the 612 days: within 20 % and 0.5 mm", () => {
    expect(days.length).toBe(612);
    for (const { date, dayMm, hoursMm } of days) {
      expect(Math.abs(hoursMm - dayMm), date).toBeLessThan(dayBoundMm(dayMm));
    }
  });
});

import { readFileSync } from "node:fs";
import { dayOfYear } from "@pith/rules";
import { Body, Equator, HourAngle, Observer, SearchAltitude } from "astronomy-engine";
import { describe, expect, test } from "vitest";
import { et0Daily } from "../../packages/rules/src/quantities/climate/et0Daily.ts";
import {
  daylightH,
  raMjPerM2Day,
  SOLAR_CONSTANT,
  solarDay,
} from "../../packages/rules/src/quantities/climate/extraterrestrialRadiation.ts";
import {
  saturationVapourPressureKpa,
  slopeKpaPerC,
} from "../../packages/rules/src/quantities/climate/saturationVapourPressure.ts";
import { solarHour } from "../../packages/rules/src/quantities/climate/solarHour.ts";

/** The same quantity by somebody else's way: an astronomy library, another standard, other fits of the same curve. */
const RAD = Math.PI / 180;

/** The middle of a day of 2015 (halfway between two leap years) at longitude 0. */
const noonOf = (day: number) => new Date(Date.UTC(2015, 0, day, 12));
const DAYS = Array.from({ length: 25 }, (_, i) => 1 + 15 * i).filter((day) => day <= 365);
const LATITUDES = [-45, -20, 0, 20, 35, 45, 55];

/** Sun's declination [rad] and distance [astronomical units] as the library has them at noon of a day. */
function sunAt(day: number): { declinationRad: number; distanceAu: number } {
  const { dec, dist } = Equator(Body.Sun, noonOf(day), new Observer(0, 0, 0), true, true);
  return { declinationRad: dec * RAD, distanceAu: dist };
}

/** From the sun's middle on the true horizon, up to down, as FAO-56 takes it: no refraction, no disc [h]. */
function libraryDaylightH(latitudeDeg: number, day: number): number {
  const place = new Observer(latitudeDeg, 0, 0);
  const midnight = new Date(Date.UTC(2015, 0, day));
  const up = SearchAltitude(Body.Sun, place, 1, midnight, 1, 0);
  const down = up && SearchAltitude(Body.Sun, place, -1, up, 1, 0);
  if (!(up && down)) throw new Error(`no sunrise at ${latitudeDeg} on day ${day}`);
  return 24 * (down.ut - up.ut);
}

/**
 * What FAO-56's circular year may be off: it has the spring equinox right and so the autumn one on day 263.3, where the
 * calendar has it on day 266. 2.8 days at 0.4 degrees a day are 1.1 degrees; the quarter days between leap years add 0.1.
 */
const DECLINATION_BOUND_RAD = 1.2 * RAD;
/** Perihelion is on 3 or 4 January and not on day 0: 0.06 rad of 0.033; and squares of the eccentricity, 0.0005. */
const DISTANCE_BOUND = 0.003;

describe("the sun against a general astronomy library", () => {
  test("declination within 1.2 degrees, (1/distance)² within 0.003, all year", () => {
    for (const day of DAYS) {
      const ours = solarDay(0, day);
      const library = sunAt(day);
      expect(Math.abs(ours.declinationRad - library.declinationRad), `day ${day}`).toBeLessThan(
        DECLINATION_BOUND_RAD,
      );
      expect(Math.abs(ours.inverseDistance - library.distanceAu ** -2), `day ${day}`).toBeLessThan(
        DISTANCE_BOUND,
      );
    }
  });

  // The day's length moves by (24/π) dωs/dδ for the declination's difference. 0.05 h: the curve's bend, and the
  // library's sun that moves on between rise and set.
  test.each(LATITUDES)(
    "daylight at %d degrees differs by what the declination explains, and 0.05 h",
    (latitude) => {
      for (const day of DAYS) {
        const { declinationRad: delta } = sunAt(day);
        const ours = solarDay(latitude, day);
        const tangent = Math.tan(latitude * RAD);
        const steepness =
          Math.abs(tangent) / (Math.cos(delta) ** 2 * Math.sqrt(1 - (tangent * Math.tan(delta)) ** 2));
        const explainedH = (24 / Math.PI) * steepness * Math.abs(ours.declinationRad - delta);
        const off = Math.abs(daylightH(ours) - libraryDaylightH(latitude, day));
        expect(off, `day ${day}`).toBeLessThan(explainedH + 0.05);
      }
    },
  );

  // The library's sun, held still for the day, summed over 1440 minutes of its hour angle.
  test.each(LATITUDES)(
    "radiation above the air at %d degrees within its declination's share, 0.3 % and 0.02 MJ",
    (latitude) => {
      const phi = latitude * RAD;
      for (const day of DAYS) {
        const { declinationRad: delta, distanceAu } = sunAt(day);
        let library = 0;
        for (let minute = 0; minute < 1440; minute++) {
          const hourAngle = (2 * Math.PI * (minute + 0.5)) / 1440 - Math.PI;
          const sine =
            Math.sin(phi) * Math.sin(delta) + Math.cos(phi) * Math.cos(delta) * Math.cos(hourAngle);
          library += Math.max(0, sine) * (SOLAR_CONSTANT / distanceAu ** 2);
        }
        const ours = solarDay(latitude, day);
        const ws = ours.sunsetAngleRad;
        const perRadian =
          ((24 * 60) / Math.PI) *
          SOLAR_CONSTANT *
          Math.abs(ws * Math.sin(phi) * Math.cos(delta) - Math.cos(phi) * Math.sin(delta) * Math.sin(ws));
        // 1.04: the distance factor's largest value. The square of 1.2 degrees bends the curve by 0.02 MJ at most.
        const explained = 1.04 * perRadian * Math.abs(ours.declinationRad - delta);
        const bound = explained + DISTANCE_BOUND * library + 0.02;
        expect(Math.abs(raMjPerM2Day(ours) - library), `day ${day}`).toBeLessThan(bound);
      }
    },
  );

  // Three terms of a series for the equation of time; it changes by up to half a minute a day, so a calendar that drifts
  // by a quarter day a year and 364 in its period add as much again. 1.5 minutes are 0.0065 rad.
  test("solar time of the hour, east and west of the zone's meridian, within 1.5 minutes", () => {
    for (const day of DAYS) {
      for (const [longitudeDeg, utcOffsetH] of [
        [0, 0],
        [-87.9, -6],
        [16.25, 1],
        [151, 10],
      ] as const) {
        const at = { longitudeDeg, dayOfYear: day, utcOffsetH, hourStart: 14 };
        const middle = new Date(Date.UTC(2015, 0, day, 14, 30) - utcOffsetH * 3_600_000);
        const hours = HourAngle(Body.Sun, middle, new Observer(40, longitudeDeg, 0));
        const library = (Math.PI / 12) * (hours > 12 ? hours - 24 : hours);
        const off = Math.abs(solarHour(solarDay(40, day), at).midAngleRad - library);
        expect(off, `day ${day}, ${longitudeDeg} degrees`).toBeLessThan(0.0065);
      }
    }
  });
});

/** NOAA's daily Seattle series 2012-2015 as carried by vega-datasets: 1461 real days of extremes and wind. */
const seattle = readFileSync(
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
const PLACE = { latitudeDeg: 47.45, elevationM: 130 };

/**
 * ASCE-EWRI (2005), The ASCE Standardized Reference Evapotranspiration Equation, short reference, daily (recalled): the
 * numerator and denominator constants Cn 900 and Cd 0.34, slope with 2503, the hour's solar constant 4.92 MJ/m2, σ of
 * 4.901e-9 and the cloudiness function fcd held between 0.05 and 1. Written as energy term plus air term.
 */
function asceShort(d: {
  latitudeDeg: number;
  elevationM: number;
  day: number;
  tMaxC: number;
  tMinC: number;
  ea: number;
  rs: number;
  u2: number;
}): { et: number; rn: number; fcd: number } {
  const phi = (Math.PI / 180) * d.latitudeDeg;
  const dr = 1 + 0.033 * Math.cos((2 * Math.PI * d.day) / 365);
  const delta = 0.409 * Math.sin((2 * Math.PI * d.day) / 365 - 1.39);
  // The sunset angle by the arctangent that the standard gives for machines without an arccosine.
  const tangents = -Math.tan(phi) * Math.tan(delta);
  const ws = Math.PI / 2 - Math.atan(tangents / Math.sqrt(1 - tangents ** 2));
  const ra =
    (24 / Math.PI) *
    4.92 *
    dr *
    (ws * Math.sin(phi) * Math.sin(delta) + Math.cos(phi) * Math.cos(delta) * Math.sin(ws));
  const rso = (0.75 + 2e-5 * d.elevationM) * ra;
  const fcd = Math.min(1, Math.max(0.05, 1.35 * (d.rs / rso) - 0.35));
  const kelvin4 = ((d.tMaxC + 273.16) ** 4 + (d.tMinC + 273.16) ** 4) / 2;
  const rn = 0.77 * d.rs - 4.901e-9 * fcd * (0.34 - 0.14 * Math.sqrt(d.ea)) * kelvin4;
  const t = (d.tMaxC + d.tMinC) / 2;
  const es = (tetens(d.tMaxC) + tetens(d.tMinC)) / 2;
  const slope = (2503 * Math.exp((17.27 * t) / (t + 237.3))) / (t + 237.3) ** 2;
  const gamma = 0.000665 * 101.3 * ((293 - 0.0065 * d.elevationM) / 293) ** 5.26;
  const lower = slope + gamma * (1 + 0.34 * d.u2);
  const energy = (slope / lower) * 0.408 * rn;
  const air = (gamma / lower) * (900 / (t + 273)) * d.u2 * (es - d.ea);
  return { et: energy + air, rn, fcd };
}
const tetens = (t: number) => 0.6108 * Math.exp((17.27 * t) / (t + 237.3));

describe("net radiation and ET0 against the standardised form of ASCE-EWRI 2005, on 1461 days of Seattle", () => {
  // Sky from clear to overcast by turns: the series carries no radiation. 0.35 of clear sky is about FAO-56's darkest day
  // (0.25 / 0.75), 1 its brightest; dew point at the minimum.
  const skies = [0.35, 0.5, 0.65, 0.8, 0.95];
  const days = seattle.map((d, i) => {
    const day = dayOfYear(d.date);
    const rso = (0.75 + 2e-5 * PLACE.elevationM) * raMjPerM2Day(solarDay(PLACE.latitudeDeg, day));
    const rs = (skies[i % skies.length] as number) * rso;
    const u2 = Math.max(0.5, d.windAt2mMPerS);
    const ea = tetens(d.tMinC);
    const { tMaxC, tMinC } = d;
    return {
      date: d.date,
      asce: asceShort({ ...PLACE, day, tMaxC, tMinC, ea, rs, u2 }),
      ours: et0Daily({
        ...PLACE,
        dayOfYear: day,
        tMaxC,
        tMinC,
        eaKpa: ea,
        windAt2mMPerS: u2,
        rsMjPerM2Day: rs,
      }),
    };
  });

  // σ differs by 0.04 %: of at most 10 MJ of longwave loss 0.004 MJ. 0.408 of that, the slope's 2503 for 2503.06 and
  // γ's 0.000665 for cp/(ελ) = 0.00066474 leave less than 0.004 mm.
  test("net radiation within 0.005 MJ/m2, ET0 within 0.005 mm, every day", () => {
    expect(days.length).toBe(1461);
    for (const { date, asce, ours } of days) {
      expect(Math.abs(ours.rnMjPerM2Day - asce.rn), date).toBeLessThan(0.005);
      expect(Math.abs(ours.et0MmPerDay - asce.et), date).toBeLessThan(0.005);
    }
  });
});

/** Goff and Gratch 1946 as the World Meteorological Organization restated it (recalled) [kPa]. */
function goffGratchKpa(temperatureC: number): number {
  const steam = 373.16;
  const t = temperatureC + 273.16;
  const log =
    -7.90298 * (steam / t - 1) +
    5.02808 * Math.log10(steam / t) -
    1.3816e-7 * (10 ** (11.344 * (1 - t / steam)) - 1) +
    8.1328e-3 * (10 ** (-3.49149 * (steam / t - 1)) - 1) +
    Math.log10(1013.246);
  return 10 ** log / 10;
}
/** Buck 1981, with the constants of 1996 (recalled) [kPa]. */
const buckKpa = (t: number) => 0.61121 * Math.exp((18.678 - t / 234.5) * (t / (257.14 + t)));

describe("saturation vapour pressure over water against other fits of the curve", () => {
  // Tetens' two constants stay within about 0.1 % of Goff and Gratch from 0 to 50 C (Murray 1967 and Buck 1981, recalled);
  // Buck's own fit within 0.05 %, so 0.15 % covers both.
  test.each([
    ["Goff and Gratch", goffGratchKpa],
    ["Buck", buckKpa],
  ])("%s, 0 to 50 C: within 0.15 %%", (_, other) => {
    for (let t = 0; t <= 50; t += 0.5) {
      expect(Math.abs(saturationVapourPressureKpa(t) / other(t) - 1), `${t} C`).toBeLessThan(0.0015);
    }
  });
  test("its slope is the difference quotient: 4098 stands for 17.27 × 237.3 = 4098.17, 0.005 %", () => {
    for (let t = -20; t <= 50; t += 0.5) {
      const quotient =
        (saturationVapourPressureKpa(t + 0.001) - saturationVapourPressureKpa(t - 0.001)) / 0.002;
      expect(Math.abs(slopeKpaPerC(t) / quotient - 1), `${t} C`).toBeLessThan(0.00005);
    }
  });
});

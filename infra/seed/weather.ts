import { addDays, dayOfYear, daysBetween } from "@pith/rules";
import { seeded } from "./random.ts";

/** One invented day, as a station's file would hold it. */
export interface InventedDay {
  date: string;
  tMaxC: number;
  tMinC: number;
  rainMm: number;
  rhMeanPct: number;
  windMPerS: number;
}

/** An invented station: where it stands decides its seasons. */
export interface Station {
  seed: number;
  latitudeDeg: number;
  /** Years of record that its file goes back. */
  years: number;
  /** Warmer or colder than the county. */
  offsetC: number;
}

/**
 * An invented climate with short summers and cool nights: a yearly wave, weather that carries over from day to day, wet
 * and dry spells, a wide daily range under clear skies. For the demo only: nothing is tested against it.
 */
export function inventWeather(station: Station, from: string, to: string): InventedDay[] {
  const { uniform, normal } = seeded(station.seed);
  const days: InventedDay[] = [];
  let departure = 0;
  let wet = false;
  for (let i = 0; i <= daysBetween(from, to); i++) {
    const date = addDays(from, i);
    const season = dayOfYear(date) + (station.latitudeDeg < 0 ? 182 : 0);
    const mean = 8.4 + 13.4 * Math.cos((2 * Math.PI * (season - 201)) / 365.25) + station.offsetC;
    departure = 0.68 * departure + 2.4 * normal();
    wet = uniform() < (wet ? 0.48 : 0.24);
    const range = (wet ? 7.5 : 12) + 1.6 * normal();
    const middle = mean + departure - (wet ? 0.8 : 0);
    const half = Math.max(1.5, range / 2);
    days.push({
      date,
      tMaxC: round(middle + half),
      tMinC: round(middle - half),
      rainMm: wet ? round(-7 * Math.log(1 - uniform())) : 0,
      rhMeanPct: Math.round(Math.min(98, Math.max(35, (wet ? 84 : 66) + 6 * normal()))),
      windMPerS: round(Math.max(0.5, 2.6 + 0.9 * normal())),
    });
  }
  return days;
}

const round = (v: number): number => Math.round(v * 10) / 10;

/** The days as a CSV file with units in the header. */
export const weatherCsv = (days: InventedDay[]): string =>
  [
    "Date,Max temp (°C),Min temp (°C),Rain (mm),Mean RH (%),Wind (m/s)",
    ...days.map((d) => [d.date, d.tMaxC, d.tMinC, d.rainMm, d.rhMeanPct, d.windMPerS].join(",")),
  ].join("\n");

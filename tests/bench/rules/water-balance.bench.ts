import { bench, describe } from "vitest";
import { newBook, runSeason, type Season, startOf } from "../../../packages/rules/src/water/season.ts";
import { topSoilOf } from "../../../packages/rules/src/water/topSoil.ts";
import { wettingOf } from "../../../packages/rules/src/water/wetting.ts";
import { seasonOf } from "../../../packages/rules/src/water/zoneSeason.ts";
import { bed, planting, weather } from "../../rules/waterAndFood.ts";

/**
 * One planting's dual-coefficient water balance over 200 days: in the rule's own loop, and with its columns made from the
 * days first, beside a bare loop that does only the arithmetic of the same balance on the same arrays. Stated limit: at
 * least 5,000 seasons a second on one core, and within 4 times the bare loop. The ratios are what is read: the machine is
 * shared.
 */

const DAYS = 200;
const days = weather("2025-04-15", DAYS).map((w, i) => ({
  day: w.date,
  et0Mm: 3 + 2 * Math.sin((Math.PI * i) / DAYS) + (i % 5) * 0.3,
  rainMm: i % 7 === 0 ? 8 : 0,
  measured: true,
}));
const valve = { method: "drip", flowLPerH: 400, efficiency: 0.9 } as const;
const ground = {
  zone: { bed: bed(), planting: planting(), notes: [], setOutOn: "2025-04-15" },
  today: "2025-10-31",
  availableM3PerM3: 0.13,
  top: topSoilOf(bed()),
  wetting: wettingOf(valve),
  saltKs: 0.95,
  rhMinPct: 45,
  windAt2mMPerS: 2.5,
};
const watered = new Set(days.filter((_, i) => i % 4 === 0).map((d) => d.day));
const irrigation = (day: string): number => (watered.has(day) ? 14 : 0);
const season = seasonOf(ground, days, irrigation);
const book = newBook(DAYS);

/** The same sums and choices and nothing else: no book but the depletion, nothing kept for a reader. */
function bare(s: Season, out: Float64Array): void {
  const { et0Mm, rainMm, irrigationMm, kcb, kcMax, wateredFraction, rainedFraction, evaporationKept, tawMm } =
    s;
  let dr = 0;
  let wet = 0;
  let rained = 0;
  for (let i = 0; i < DAYS; i++) {
    const et0 = et0Mm[i] as number;
    const rain = rainMm[i] as number;
    const given = irrigationMm[i] as number;
    const kc = kcb[i] as number;
    const few = wateredFraction[i] as number;
    const fewRain = rainedFraction[i] as number;
    const taw = tawMm[i] as number;
    wet = Math.max(0, wet - rain - given / s.wettedFraction);
    rained = Math.max(0, rained - rain);
    const a = few * (s.tewMm - wet);
    const b = fewRain * (s.tewMm - rained);
    const room = (kcMax[i] as number) - kc;
    const kept = et0 * (evaporationKept[i] as number);
    const share = a / (a + b);
    const kr = wet <= s.rewMm ? 1 : (s.tewMm - wet) / (s.tewMm - s.rewMm);
    const krRain = rained <= s.rewMm ? 1 : (s.tewMm - rained) / (s.tewMm - s.rewMm);
    const ea = Math.min(kept * Math.min(kr * share * room, few * (kcMax[i] as number)), a);
    const eb = Math.min(kept * Math.min(krRain * (1 - share) * room, fewRain * (kcMax[i] as number)), b);
    wet += ea / few;
    rained += eb / fewRain;
    const etc = kc * et0 + ea + eb;
    const raw = Math.min(0.8, Math.max(0.1, s.depletionFractionTable + 0.04 * (5 - etc))) * taw;
    const ks = dr <= raw ? 1 : (taw - dr) / (taw - raw);
    dr = Math.min(taw, Math.max(0, dr - rain - given + ea + eb + ks * s.saltKs * kc * et0));
    out[i] = dr;
  }
}

const out = new Float64Array(DAYS);
bare(season, out);
runSeason(season, book, 0, DAYS, startOf(book, 0));
const furthest = Math.max(...out.map((dr, i) => Math.abs(dr - (book.depletionMm[i] as number))));
if (!(furthest < 1e-9)) throw new Error(`the bare loop and the balance differ by ${furthest} mm`);

describe("200 days of one planting, dual coefficient (at least 5,000 a second, within 4 times the bare loop)", () => {
  bench("bare arithmetic on typed arrays", () => {
    bare(season, out);
  });
  bench("the balance, columns ready", () => {
    runSeason(season, book, 0, DAYS, startOf(book, 0));
  });
  bench("columns and balance", () => {
    const made = seasonOf(ground, days, irrigation);
    runSeason(made, book, 0, DAYS, startOf(book, 0));
  });
});

import { addDays, daysBetween } from "../../core/days.ts";
import type { Working } from "../../core/working.ts";
import { relativeYield } from "../../quantities/water/relativeYield.ts";
import { PEPPER_WATER } from "../../tables/cropCoefficients.ts";
import { SEASON_DAYS } from "../../water/stages.ts";
import type { Asked } from "./ask.ts";
import type { ZoneLine } from "./line.ts";

/** What the stress costs. */
export interface YieldLoss {
  /** Share of the season's unstressed water use that falls in the days of stress, 0 to 1. */
  seasonShare: number;
  lossPct: number;
  days: number;
  /** Where a yield goal is set for every zone. */
  kg: number | undefined;
  /** Where a price is expected too. */
  money: number | undefined;
}

/** Ky that a trial of processing pepper measured over the whole season (KY-4). */
const KAPIJA = { ky: 1.14, source: { key: "dagdelen-2004", locator: "KY-4" } } as const;

/**
 * Yield lost by the seasonal Ky 1.1 alone: 1 - Ya/Ym = Ky (1 - ETa/ETm). Where the stress covers a part of the season its
 * shortfall is spread over the season's whole use, which FAO-33 does not do for pepper: extrapolated, and marked so.
 */
export function yieldLossOf(asked: Asked, z: ZoneLine, zones: ZoneLine[], w: Working): YieldLoss {
  const { etShare, from, to } = asked;
  const seasonEnd = addDays(z.zone.setOutOn, SEASON_DAYS);
  const lastDay = to ?? seasonEnd;
  const end = daysBetween(seasonEnd, lastDay) > 0 ? lastDay : seasonEnd;
  let wholeMm = 0;
  let stressedMm = 0;
  let days = 0;
  for (let i = 0; i <= daysBetween(z.zone.setOutOn, end); i++) {
    const day = addDays(z.zone.setOutOn, i);
    const etcMm = z.kcOn(day) * z.et0Mm;
    wholeMm += etcMm;
    if (day < from || day > lastDay) continue;
    stressedMm += etcMm;
    days += 1;
  }
  const seasonShare = w.line(
    "s",
    "share of the season's water use that falls in the days of stress",
    `Σ Kc over ${days} days / Σ Kc over the season, at one ET0`,
    stressedMm / wholeMm,
    "fraction",
  );
  const { value, working } = relativeYield.compute({
    ky: PEPPER_WATER.ky.value,
    etActualMm: wholeMm - stressedMm * (1 - etShare),
    etMaxMm: wholeMm,
  });
  w.lines.push(...working);
  w.line(
    "loss'",
    "the same by the Ky that a trial of processing pepper measured",
    `100 × ${KAPIJA.ky} s (1 - share)`,
    100 * KAPIJA.ky * seasonShare * (1 - etShare),
    "%",
    KAPIJA.source,
  );
  w.estimate("ETm of the season", "the last week's ET0 stands for the whole season; only its share is used");
  if (seasonShare < 1) {
    w.estimate(
      "Ky for a part of the season",
      "extrapolated: 1.1 is of a whole season, and flowering suffers more than it says",
      PEPPER_WATER.ky.source,
    );
  }
  return { seasonShare, lossPct: value.yieldLossPct, days, ...worthOf(zones, value.yieldLossPct, w) };
}

/** Fruit and money lost over all zones; undefined where one of them has no goal, or no price. */
function worthOf(zones: ZoneLine[], lossPct: number, w: Working): Pick<YieldLoss, "kg" | "money"> {
  const each = zones.map(({ zone: { bed, planting } }) => {
    const lengthM = Math.min(bed.lengthM, (planting.plants / planting.rowsPerBed) * planting.plantSpacingM);
    const goalKg =
      planting.yieldGoalTPerHa === undefined
        ? undefined
        : (planting.yieldGoalTPerHa / 10) * lengthM * bed.spacingM;
    return { goalKg, price: planting.expectedPricePerKg };
  });
  const goals = each.flatMap(({ goalKg }) => (goalKg === undefined ? [] : [goalKg]));
  if (goals.length < each.length) return { kg: undefined, money: undefined };
  const total = goals.reduce((a, b) => a + b, 0);
  const kg = w.line(
    "kg",
    "fruit lost if the whole block is stressed",
    `goal × ground × loss, goal × ground = ${total} kg`,
    (total * lossPct) / 100,
    "kg",
  );
  const prices = each.flatMap(({ goalKg, price }) =>
    goalKg === undefined || price === undefined ? [] : [goalKg * price],
  );
  if (prices.length < each.length) return { kg, money: undefined };
  const worth = prices.reduce((a, b) => a + b, 0);
  const money = w.line(
    "cost",
    "what that fruit would have brought",
    `price × kg, block worth ${worth}`,
    (worth * lossPct) / 100,
    "money",
  );
  return { kg, money };
}

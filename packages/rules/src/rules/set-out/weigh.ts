import { addDays, dayOf, epochDay } from "../../core/days.ts";
import { sineAbove } from "../../quantities/climate/degreeDays.ts";
import type { PlantingState } from "../../states/states.ts";
import { PROTECTIONS, type Protection } from "../../tables/covers.ts";
import { PROTECTION_COSTS } from "../../tables/protectionCosts.ts";
import { firstAutumnFrosts } from "../../warmth/autumnFrost.ts";
import { type ClimatologyYears, sameDayIn } from "../../warmth/climatologyYears.ts";
import { coverOver } from "../../warmth/coverOver.ts";
import type { Assessment } from "./assess.ts";
import { ESTABLISHMENT_DAYS, FROST_C } from "./line.ts";
import { type OwnHours, ownHours } from "./ownHours.ts";

/**
 * Growth of pepper is counted from here where nobody gave the cultivar's own (cp; published 9.3 to 17.8 C). Not the choice
 * `stage.base-temperature`: this heat only sets the ways of one cold spell side by side and decides nothing, and above the
 * field's 12.8 C most such days would count as none, whatever the cover.
 */
const USUAL_BASE_C = 10;
/** Where no date opens, waiting is weighed over this long (cp). */
const WEIGHED_DAYS = 30;
/** A longer wait is another season's plan; the chart ends here. */
const LONGEST_DAYS = 60;

/** Going out on the wanted day in one way, against waiting. */
export interface WayWeighed {
  id: "go" | Protection["id"];
  /** Heat units from the wanted day on by each day of waiting, mean of the years; index 0 is none yet [C d]. */
  heatC: number[];
  /** Whether the wanted day is within the accepted risk this way: what holds a lighter cover holds a heavier one. */
  within: boolean;
  /** Null for going bare. */
  cost: ProtectionCost | null;
}

export interface ProtectionCost {
  materials: number;
  hours: number;
  /** Null where the office has no wage set. */
  money: number | null;
}

/** What waiting takes from the harvest before the first autumn frost. */
export interface HarvestLost {
  /** Days of harvest if set out on the wanted day, and fewer of them by waiting: means of the years. */
  days: number;
  lostDays: number;
  share: number;
  years: number;
}

/** Waiting and protecting side by side. */
export interface Weighed {
  /** Days from the wanted one to the earliest within the risk; to {@link WEIGHED_DAYS} where none opens. */
  waitDays: number;
  opens: boolean;
  baseC: number;
  ways: WayWeighed[];
  /** Null where the days to maturity are not known, or the years lack their autumns. */
  harvest: HarvestLost | null;
  /** Worth of the whole harvest, null where goal or price is missing. */
  worth: number | null;
  /** Money of waiting. */
  waiting: number | null;
  /** What the farm itself measured of a cover's hours. */
  own: OwnHours;
  missing: ("days-to-maturity" | "yield-goal" | "price" | "labour" | "own-hours" | "autumns")[];
}

/** Weighs the wanted day, each way, against the earliest date; null where that is the wanted day. */
export function weigh(state: PlantingState, a: Assessment, years: ClimatologyYears): Weighed | null {
  const earliest = a.asItStands.earliest;
  if (a.decision === "go" || earliest === a.wanted) return null;
  const opens = earliest !== null;
  const waitDays = Math.min(LONGEST_DAYS, opens ? earliest - a.wanted : WEIGHED_DAYS);
  const baseC = state.planting.baseTemperatureC ?? USUAL_BASE_C;
  const wantedDay = addDays(a.today, a.wanted);
  const standing = nightLift(state, a.site.shiftC);
  const harvest = harvestLost(state, years, wantedDay, waitDays, standing);
  const worth = worthOf(state);
  const { labourPerHour } = state.settings;
  const own = ownHours(state.ownWork);
  const heatWith = (liftC: number) =>
    heatFrom(years, wantedDay, waitDays, baseC, (day) => Math.max(standing(day), a.site.shiftC + liftC));
  return {
    waitDays,
    opens,
    baseC,
    ways: [
      { id: "go", heatC: heatFrom(years, wantedDay, waitDays, baseC, standing), within: false, cost: null },
      ...PROTECTIONS.map(({ id, offsetC }) => ({
        id,
        within: a.protection !== null && offsetC >= a.protection.kind.offsetC,
        heatC: heatWith(offsetC),
        cost: costOf(id, state, waitDays, own),
      })),
    ],
    own,
    harvest,
    worth,
    waiting: harvest && harvest.days > 0 && worth !== null ? worth * harvest.share : null,
    missing: [
      ...(state.planting.daysToMaturity
        ? harvest
          ? []
          : (["autumns"] as const)
        : (["days-to-maturity"] as const)),
      ...(state.planting.yieldGoalTPerHa === undefined ? (["yield-goal"] as const) : []),
      ...(state.planting.expectedPricePerKg === undefined ? (["price"] as const) : []),
      ...(labourPerHour === undefined ? (["labour"] as const) : []),
      ...(own.hoursPer100M2 === null || own.hoursPerBedAndDay === null ? (["own-hours"] as const) : []),
    ],
  };
}

/** What site and standing cover add to the station's night on a day. */
function nightLift(state: PlantingState, siteShiftC: number): (epoch: number) => number {
  if (state.bed.covers.length === 0) return () => siteShiftC;
  return (epoch) => siteShiftC + (coverOver(state.bed, dayOf(epoch)).offsetC ?? 0);
}

/**
 * Degree days from a day on, summed day by day, mean of the years that have them: single sine (Baskerville and Emin 1969)
 * over the station's maximum and the night at the plants.
 */
export function heatFrom(
  years: ClimatologyYears,
  day: string,
  days: number,
  baseC: number,
  nightLiftC: (epoch: number) => number,
): number[] {
  const first = epochDay(day);
  const starts = years.years.map((year) => sameDayIn(year, day));
  const minima = starts.map((start) => years.tMinRow(start, days));
  const maxima = starts.map((start) => years.tMaxRow(start, days));
  const sums = [0];
  for (let i = 0; i < days; i++) {
    const lift = nightLiftC(first + i);
    let sum = 0;
    let n = 0;
    for (let year = 0; year < starts.length; year++) {
      const tMinC = (minima[year]?.[i] as number) + lift;
      const tMaxC = Math.max(maxima[year]?.[i] as number, tMinC);
      if (Number.isNaN(tMaxC)) continue;
      sum += sineAbove(tMinC, tMaxC, baseC).degreeDays;
      n += 1;
    }
    sums.push((sums[i] as number) + (n === 0 ? 0 : sum / n));
  }
  return sums;
}

/**
 * Days from the first pick to the first autumn frost, set out on the wanted day or after the wait; a day waited is a day
 * lost until none are left.
 */
export function harvestLost(
  state: PlantingState,
  years: ClimatologyYears,
  wantedDay: string,
  waitDays: number,
  standing: (epoch: number) => number,
): HarvestLost | null {
  const maturity = state.planting.daysToMaturity;
  if (!maturity) return null;
  const grown = maturity.from === "sowing" ? epochDay(wantedDay) - epochDay(state.planting.sownOn) : 0;
  const toPick = Math.max(0, maturity.days - grown);
  const frosts = firstAutumnFrosts(years, state.site.latitudeDeg, wantedDay, FROST_C, standing).filter(
    (frost) => frost !== null,
  );
  if (frosts.length === 0) return null;
  const harvest = (wait: number) =>
    frosts.reduce((sum, frost) => sum + Math.max(0, frost - wait - toPick), 0) / frosts.length;
  const days = harvest(0);
  const lostDays = days - harvest(waitDays);
  return { days, lostDays, share: days > 0 ? lostDays / days : 0, years: frosts.length };
}

/** Yield goal × ground × price. */
function worthOf({ planting, bed }: PlantingState): number | null {
  const { yieldGoalTPerHa, expectedPricePerKg } = planting;
  if (yieldGoalTPerHa === undefined || expectedPricePerKg === undefined) return null;
  // t/ha is a tenth of a kilogram a square metre.
  return (yieldGoalTPerHa / 10) * bed.lengthM * bed.spacingM * expectedPricePerKg;
}

/** Hours are the farm's own where it wrote them down, else common practice. */
function costOf(
  id: Protection["id"],
  { bed, settings }: PlantingState,
  waitDays: number,
  own: OwnHours,
): ProtectionCost {
  const row = PROTECTION_COSTS[id];
  const bedM2 = bed.lengthM * bed.widthM;
  const materials = row.perM2 * bedM2;
  const covered = Math.max(ESTABLISHMENT_DAYS, waitDays);
  const hours =
    ((own.hoursPer100M2 ?? row.hoursPer100M2) * bedM2) / 100 +
    (own.hoursPerBedAndDay ?? row.hoursPerBedAndDay) * covered;
  const { labourPerHour } = settings;
  return { materials, hours, money: labourPerHour === undefined ? null : materials + hours * labourPerHour };
}

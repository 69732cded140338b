import { daysBetween } from "../core/days.ts";
import { basalFromCover } from "../quantities/water/coverCropCoefficient.ts";
import { climateAdjustedKc, type KcLevels, kcOnDay } from "../quantities/water/cropCoefficient.ts";
import { coverFractionOf, KC_MIN, largestKc } from "../quantities/water/dualExposedSoil.ts";
import type { Mulch } from "../states/parts.ts";
import { ORGANIC_MULCH, PEPPER_WATER, PLASTIC_MULCH } from "../tables/cropCoefficients.ts";
import { isPlastic } from "./rainReaches.ts";
import { STAGES } from "./stages.ts";

/** The air and the plants that a coefficient is moved to. */
export interface Stand {
  staked: boolean;
  heightM: number;
  rhMinPct: number;
  windAt2mMPerS: number;
}

/**
 * Of the printed fall of Kcb under plastic, 5 to 15 %, the smaller, as a fraction: pepper itself is not in the table, and
 * the smaller fall waters more.
 */
const PLASTIC_KCB_FALL = PLASTIC_MULCH.kcbReductionPct.low / 100;
/** Of the printed fall of evaporation under plastic, 50 to 80 %, the smaller, for the same reason. */
const PLASTIC_EVAPORATION_FALL = PLASTIC_MULCH.evaporationReductionPct.low / 100;
/** All of the bed under organic mulch. */
const ORGANIC_EVAPORATION_FALL = (10 * ORGANIC_MULCH.evaporationReductionPctPer10PctCover.value) / 100;

/**
 * Kcb of pepper at the three levels (FAO-56 Table 17), mid and end moved to the climate (eq. 70), and 5 % lower under
 * plastic (chapter 10). Organic mulch leaves them.
 */
export function basalLevels(stand: Stand, mulch: Mulch): KcLevels {
  const { kcb, kcbStaked } = PEPPER_WATER;
  const kept = isPlastic(mulch) ? 1 - PLASTIC_KCB_FALL : 1;
  const adjusted = (kcTable: number) => kept * climateAdjustedKc({ ...stand, kcTable });
  return {
    ini: kept * kcb.ini,
    mid: adjusted(stand.staked ? kcbStaked.mid : kcb.mid),
    end: adjusted(kcb.end),
  };
}

/** What a mulch over the whole bed leaves of the soil's evaporation (FAO-56 chapter 10). */
export const evaporationKeptUnder = (mulch: Mulch): number =>
  mulch === "none" ? 1 : 1 - (isPlastic(mulch) ? PLASTIC_EVAPORATION_FALL : ORGANIC_EVAPORATION_FALL);

/** A share of the ground that somebody saw covered. */
export interface SeenCover {
  on: string;
  coverFraction: number;
}

/** Cover and basal coefficient of a day. */
interface BasalDay {
  kcb: number;
  kcMax: number;
  coverFraction: number;
}

/**
 * Kcb and cover day by day under one mulch: along the stages (eq. 66) with the cover that Kcb stands for (eq. 76), until
 * somebody looks. What was seen gives Kcb from the cover (Allen and Pereira 2009); its ratio to the stages' value grows in
 * a line from 1 at setting out to the first look, in a line from look to look, and stays after the last. Kcb is never above
 * that of full cover.
 *
 * @returns a function of days since setting out
 */
export function basalCurve(
  stand: Stand,
  setOutOn: string,
  seen: SeenCover[],
  levels: KcLevels,
): (age: number) => BasalDay {
  const { heightM } = stand;
  const kcMaxPlain = largestKc({ ...stand, kcb: 0 });
  const staged = (age: number): BasalDay => {
    const kcb = kcOnDay(STAGES, levels, age);
    const kcMax = Math.max(kcMaxPlain, kcb + 0.05);
    return { kcb, kcMax, coverFraction: coverFractionOf({ kcb, kcMin: KC_MIN, kcMax, heightM }) };
  };
  if (seen.length === 0) return staged;
  const kcMin = Math.min(KC_MIN, levels.ini);
  const looks = seen.map(({ on, coverFraction }) => {
    const age = daysBetween(setOutOn, on);
    const then = staged(age);
    const kcb = basalFromCover({ coverFraction, heightM, kcbFull: levels.mid, kcMin });
    return { age, kcb: kcb / then.kcb, cover: coverFraction / then.coverFraction };
  });
  return (age) => {
    const then = staged(age);
    const kcb = Math.min(levels.mid, then.kcb * along(looks, age, "kcb"));
    return {
      kcb,
      kcMax: Math.max(kcMaxPlain, kcb + 0.05),
      coverFraction: Math.min(0.99, then.coverFraction * along(looks, age, "cover")),
    };
  };
}

/** A ratio between looks, from 1 at setting out; after the last look it stays. */
function along<K extends "kcb" | "cover">(
  looks: ({ age: number } & Record<K, number>)[],
  age: number,
  which: K,
): number {
  let before = { age: 0, value: 1 };
  for (const look of looks) {
    if (age < look.age) {
      const share = Math.max(0, age - before.age) / (look.age - before.age);
      return before.value + share * (look[which] - before.value);
    }
    before = { age: look.age, value: look[which] };
  }
  return before.value;
}

import { climateAdjustedKc, type KcLevels } from "../quantities/water/cropCoefficient.ts";
import type { Mulch } from "../states/parts.ts";
import { ORGANIC_MULCH, PEPPER_WATER, PLASTIC_MULCH } from "../tables/cropCoefficients.ts";
import { isPlastic } from "./rainReaches.ts";

/** Of a published range the end that waters more, as a fraction: pepper itself is not in the table. */
const PLASTIC_KC_FALL = PLASTIC_MULCH.kcReductionPct.low / 100;
const PLASTIC_EVAPORATION_FALL = PLASTIC_MULCH.evaporationReductionPct.low / 100;
/** All of the bed under organic mulch. */
const ORGANIC_EVAPORATION_FALL = (10 * ORGANIC_MULCH.evaporationReductionPctPer10PctCover.value) / 100;

/**
 * Kc of pepper at the three levels in this climate, under a mulch (FAO-56 Table 12, eq. 62 and 65, chapter 10).
 *
 * Plastic: mid and end fall by the low end of 10 to 30 %; in the initial stage the evaporation part, Kc - Kcb, falls by
 * the low end of 50 to 80 % (the chapter also prints "often about 0.10" for Kc ini, the thirstier reading is taken).
 * Organic: the evaporation part falls by 5 % for each 10 % of ground covered, here all of it.
 */
export function mulchedKc(input: {
  mulch: Mulch;
  staked: boolean;
  heightM: number;
  rhMinPct: number;
  windAt2mMPerS: number;
}): KcLevels {
  const { kc, kcStaked, kcb, kcbStaked } = PEPPER_WATER;
  const kcMidTable = input.staked ? kcStaked.mid : kc.mid;
  const kcbMidTable = input.staked ? kcbStaked.mid : kcb.mid;
  const adjust = (kcTable: number) => climateAdjustedKc({ ...input, kcTable });
  const bare: KcLevels = { ini: kc.ini, mid: adjust(kcMidTable), end: adjust(kc.end) };
  if (input.mulch === "none") return bare;
  if (isPlastic(input.mulch)) {
    return {
      ini: bare.ini - PLASTIC_EVAPORATION_FALL * (kc.ini - kcb.ini),
      mid: bare.mid * (1 - PLASTIC_KC_FALL),
      end: bare.end * (1 - PLASTIC_KC_FALL),
    };
  }
  return {
    ini: bare.ini - ORGANIC_EVAPORATION_FALL * (kc.ini - kcb.ini),
    mid: bare.mid - ORGANIC_EVAPORATION_FALL * (kcMidTable - kcbMidTable),
    end: bare.end - ORGANIC_EVAPORATION_FALL * (kc.end - kcb.end),
  };
}

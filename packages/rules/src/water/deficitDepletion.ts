import { refuse } from "../core/errors.ts";
import { adjustedDepletionFraction } from "../quantities/water/rootZone.ts";

/** What a root zone that is refilled at a depletion gives its crop from one filling to the next. */
interface DryingCycle {
  /** Mean Ks over the cycle: water had as a share of water wanted. */
  meanKs: number;
  /** Days from a full root zone to the depletion. */
  days: number;
}

/**
 * One drying cycle: from a full root zone, without rain, down to a depletion [mm] at which it is filled again.
 *
 *   Dr <= RAW   Ks = 1, so dDr/dt = ETc                              t1 = RAW / ETc
 *   Dr >  RAW   Ks of eq. 84, so dDr/dt = ETc (TAW - Dr) / (TAW - RAW)
 *               t2 = (TAW - RAW) / ETc × ln[(TAW - RAW) / (TAW - D)]
 *   mean Ks = D / [ETc (t1 + t2)] = D / {RAW + (TAW - RAW) ln[(TAW - RAW) / (TAW - D)]}
 *
 * Worked out from FAO-56 eq. 84 for a steady ETc and transpiration alone; a book kept by whole days comes within a day's
 * use of it.
 *
 * @param depletionMm 0 up to, not at, TAW, where the drying would never end
 */
export function dryingCycle(input: {
  tawMm: number;
  rawMm: number;
  etcMmPerDay: number;
  depletionMm: number;
}): DryingCycle {
  const { tawMm, rawMm, etcMmPerDay, depletionMm } = input;
  if (depletionMm <= rawMm) return { meanKs: 1, days: depletionMm / etcMmPerDay };
  const heldBackMm = (tawMm - rawMm) * Math.log((tawMm - rawMm) / (tawMm - depletionMm));
  const wantedMm = rawMm + heldBackMm;
  return { meanKs: depletionMm / wantedMm, days: wantedMm / etcMmPerDay };
}

/** Halvings of the interval: 2^-60 of TAW is far below a double's own step. */
const HALVINGS = 60;

/**
 * The depletion [mm] at which to water so that over each drying cycle the crop gets a wanted share of what it could use.
 *
 * The root of `meanKs(D) = etShare` in {@link dryingCycle} between RAW (share 1) and TAW (share 0); meanKs falls all the
 * way, so there is one root. RAW is p TAW with p moved to the day's ETc. A share of 1 is RAW itself.
 *
 * Source: FAO-56, eq. 83, 84 and the note of Table 22.
 *
 * @param input.depletionFractionTable p as tabulated, at 5 mm a day
 * @param input.etcMmPerDay crop evapotranspiration without stress, above 0
 * @param input.etShare water allowed as a share of full demand, above 0, at most 1
 * @throws DomainError naming tawMm, etcMmPerDay or etShare where they are outside that
 */
export function deficitDepletionMm(input: {
  tawMm: number;
  depletionFractionTable: number;
  etcMmPerDay: number;
  etShare: number;
}): number {
  const { tawMm, etcMmPerDay, etShare } = input;
  if (!(tawMm > 0)) refuse("tawMm", "must be above 0", "above 0", tawMm);
  if (!(etcMmPerDay > 0)) refuse("etcMmPerDay", "must be above 0", "above 0", etcMmPerDay);
  if (!(etShare > 0 && etShare <= 1)) {
    refuse("etShare", "must be above 0 and at most 1", "above 0, at most 1", etShare);
  }
  const rawMm = adjustedDepletionFraction(input.depletionFractionTable, etcMmPerDay) * tawMm;
  let low = rawMm;
  let high = tawMm;
  for (let i = 0; i < HALVINGS; i++) {
    const depletionMm = (low + high) / 2;
    const { meanKs } = dryingCycle({ tawMm, rawMm, etcMmPerDay, depletionMm });
    if (meanKs > etShare) low = depletionMm;
    else high = depletionMm;
  }
  return etShare === 1 ? rawMm : low;
}

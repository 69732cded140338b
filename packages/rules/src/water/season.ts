/**
 * A zone's season in columns, one number a day: what its water balance reads. Plain arrays of doubles and no object a
 * day, so that a season costs microseconds and many may be tried.
 */
export interface Season {
  et0Mm: Float64Array;
  /** Rain that reaches the soil and counts. */
  rainMm: Float64Array;
  /** Net, over the whole ground. */
  irrigationMm: Float64Array;
  /** Basal coefficient; where the top is not followed, the single one. */
  kcb: Float64Array;
  kcMax: Float64Array;
  /** few of the ground that the irrigation wets too: both wetted and open to the sun. */
  wateredFraction: Float64Array;
  /** few of the ground that rain alone wets. */
  rainedFraction: Float64Array;
  /** What a mulch leaves of the evaporation, 0 to 1. */
  evaporationKept: Float64Array;
  tawMm: Float64Array;
  /** fw of the irrigation. */
  wettedFraction: number;
  /** Evaporable water of the top; both 0 where the top is not followed. */
  tewMm: number;
  rewMm: number;
  /** p at 5 mm a day. */
  depletionFractionTable: number;
  /** Ks of salt alone (eq. 91). */
  saltKs: number;
  capillaryRiseMm: number;
}

/** What the balance writes, one number a day [mm, but for `ks`]. */
export interface SeasonBook {
  evaporationMm: Float64Array;
  /** ETc without stress. */
  etcMm: Float64Array;
  rawMm: Float64Array;
  /** Water stress alone. */
  ks: Float64Array;
  /** What really left through plants and soil. */
  etcAdjMm: Float64Array;
  percolationMm: Float64Array;
  /** At the end of the day. */
  depletionMm: Float64Array;
  /** Missing from the exposed top where irrigation wets it, and where rain alone does, at the end of the day. */
  wateredTopMm: Float64Array;
  rainedTopMm: Float64Array;
}

/** What is missing at the start of a day. */
export interface SoilStart {
  depletionMm: number;
  wateredTopMm: number;
  rainedTopMm: number;
}

/** Field capacity from the surface down. */
export const FULL: SoilStart = { depletionMm: 0, wateredTopMm: 0, rainedTopMm: 0 };

/** Makes columns of so many days in one piece of memory: asking for it is what a short season costs most. */
export function columnsOf(days: number, count: number): () => Float64Array {
  const memory = new Float64Array(days * count);
  let next = 0;
  return () => memory.subarray(days * next, days * ++next);
}

/** An empty book of so many days. */
export function newBook(days: number): SeasonBook {
  const column = columnsOf(days, 9);
  return {
    evaporationMm: column(),
    etcMm: column(),
    rawMm: column(),
    ks: column(),
    etcAdjMm: column(),
    percolationMm: column(),
    depletionMm: column(),
    wateredTopMm: column(),
    rainedTopMm: column(),
  };
}

/** What is missing at the start of day `i` of a book. */
export const startOf = (book: SeasonBook, i: number): SoilStart =>
  i === 0
    ? FULL
    : {
        depletionMm: book.depletionMm[i - 1] ?? 0,
        wateredTopMm: book.wateredTopMm[i - 1] ?? 0,
        rainedTopMm: book.rainedTopMm[i - 1] ?? 0,
      };

/**
 * The dual crop coefficient water balance of days `from` to `to` (not included), written into `book`.
 *
 *   top      De,start = De,i-1 - P - I / fw (where irrigation wets), De,i-1 - P (where rain alone does), not below 0
 *            W  = share of the exposed top's water that lies where irrigation wets
 *            Ke = min[Kr W (Kcmax - Kcb), few Kcmax] + min[Kr (1 - W) (Kcmax - Kcb), few Kcmax], less the mulch's share
 *   root zone  ETc = (Kcb + Ke) ET0, RAW = p TAW with p moved to ETc, Ks from Dr,i-1
 *            Dr,i = Dr,i-1 - P - I - CR + (Ks Ks,salt Kcb + Ke) ET0 + DP, between 0 and TAW
 *
 * Order of a day, as the quantities `soil-evaporation-day` and `soil-water-day` have it: in the top the day's water comes
 * first (FAO-56 example 35), in the root zone Ks is read from the evening before and the surplus drains after the day's
 * evapotranspiration (eq. 85 and 88 as written; example 38 drains first). Evaporation leaves the top and the root zone
 * alike, as the top is the root zone's upper part.
 *
 * FAO-56 gives the exposed, wetted ground one depletion, although rain wets all of it and drippers a part. Here the part
 * that rain alone wets has its own, so that no water appears when a rain follows a watering; where only one kind of water
 * falls, both forms are the same. As in the paper, a root zone counts as full once its mean is, though the ground between
 * drippers may be dry: more rain on a full root zone can therefore raise the next days' evaporation a little.
 *
 * Total: every array has at least `to` entries; fractions and waters are not negative, and REW < TEW or both are 0.
 *
 * Source: FAO-56, eq. 71, 74, 77-79, 80-88, 91, 92; two parts of the exposed ground: Allen et al. 2005 (from memory).
 */
export function runSeason(
  season: Season,
  book: SeasonBook,
  from: number,
  to: number,
  start: SoilStart,
): void {
  const { et0Mm, rainMm, irrigationMm, kcb, kcMax, wateredFraction, rainedFraction } = season;
  const { evaporationKept, tawMm, wettedFraction, tewMm: tew, rewMm: rew, saltKs } = season;
  const { depletionFractionTable: pTable, capillaryRiseMm: rise } = season;
  let dr = start.depletionMm;
  let watered = start.wateredTopMm;
  let rained = start.rainedTopMm;
  for (let i = from; i < to; i++) {
    const et0 = et0Mm[i] as number;
    const rain = rainMm[i] as number;
    const irrigation = irrigationMm[i] as number;
    const kc = kcb[i] as number;
    const most = kcMax[i] as number;
    const few = wateredFraction[i] as number;
    const fewRain = rainedFraction[i] as number;
    const taw = tawMm[i] as number;

    watered = Math.max(0, watered - rain - irrigation / wettedFraction);
    rained = Math.max(0, rained - rain);
    const thereWatered = few * (tew - watered);
    const thereRained = fewRain * (tew - rained);
    const there = thereWatered + thereRained;
    let evaporated = 0;
    if (there > 0) {
      const kept = (evaporationKept[i] as number) * et0;
      const room = most - kc;
      const kr = watered <= rew ? 1 : (tew - watered) / (tew - rew);
      const krRain = rained <= rew ? 1 : (tew - rained) / (tew - rew);
      const share = thereWatered / there;
      let fromWatered = Math.min(kept * Math.min(kr * share * room, few * most), thereWatered);
      let fromRained = Math.min(kept * Math.min(krRain * (1 - share) * room, fewRain * most), thereRained);
      evaporated = fromWatered + fromRained;
      const inRoots = taw - dr + rain + irrigation + rise;
      if (evaporated > inRoots) {
        fromWatered *= inRoots / evaporated;
        fromRained *= inRoots / evaporated;
        evaporated = inRoots;
      }
      if (few > 0) watered = Math.min(tew, watered + fromWatered / few);
      if (fewRain > 0) rained = Math.min(tew, rained + fromRained / fewRain);
    }

    const etc = kc * et0 + evaporated;
    const raw = Math.min(0.8, Math.max(0.1, pTable + 0.04 * (5 - etc))) * taw;
    const ks = dr <= raw ? 1 : dr >= taw ? 0 : (taw - dr) / (taw - raw);
    const water = rain + irrigation + rise;
    const used = evaporated + Math.min(ks * saltKs * kc * et0, taw - dr + water - evaporated);
    const missing = dr - water + used;
    dr = Math.min(taw, Math.max(0, missing));

    book.evaporationMm[i] = evaporated;
    book.etcMm[i] = etc;
    book.rawMm[i] = raw;
    book.ks[i] = ks;
    book.etcAdjMm[i] = used;
    book.percolationMm[i] = Math.max(0, -missing);
    book.depletionMm[i] = dr;
    book.wateredTopMm[i] = watered;
    book.rainedTopMm[i] = rained;
  }
}

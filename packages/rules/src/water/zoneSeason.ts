import { daysBetween } from "../core/days.ts";
import { type KcLevels, kcOnDay } from "../quantities/water/cropCoefficient.ts";
import { exposedWettedFraction } from "../quantities/water/dualExposedSoil.ts";
import type { Mulch } from "../states/parts.ts";
import { mulchOn } from "../states/standing.ts";
import { PEPPER_WATER } from "../tables/cropCoefficients.ts";
import { basalCurve, basalLevels, evaporationKeptUnder, type Stand } from "./basal.ts";
import type { DemandDay } from "./demand.ts";
import { mulchedKc } from "./mulchedKc.ts";
import { rainReaches } from "./rainReaches.ts";
import { columnsOf, type Season } from "./season.ts";
import { STAGES } from "./stages.ts";
import type { TopSoil } from "./topSoil.ts";
import type { Wetting } from "./wetting.ts";
import { heightM, rootZoneDepths, type StandingZone, seenCovers } from "./zone.ts";

/** Everything a zone's season is built from, besides its days. */
export interface ZoneGround {
  zone: StandingZone;
  today: string;
  /** Field capacity less wilting point. */
  availableM3PerM3: number;
  /** Undefined where the soil's top cannot be followed: then one coefficient covers plant and soil. */
  top: TopSoil | undefined;
  wetting: Wetting;
  saltKs: number;
  rhMinPct: number;
  windAt2mMPerS: number;
}

/** The plants and the air that coefficients are moved to. */
export const standOf = ({ zone, today, rhMinPct, windAt2mMPerS }: ZoneGround): Stand => ({
  staked: zone.planting.staked ?? false,
  heightM: heightM(zone, today),
  rhMinPct,
  windAt2mMPerS,
});

/** FAO-56 p. 170: rain below a fifth of the day's ET0 is gone the same day and is not counted. */
const SMALLEST_RAIN_SHARE = 0.2;

/** One value a mulch, worked out once. */
function perMulch<T>(make: (mulch: Mulch) => T): (mulch: Mulch) => T {
  const known = new Map<Mulch, T>();
  return (mulch) => {
    const found = known.get(mulch);
    if (found !== undefined) return found;
    const made = make(mulch);
    known.set(mulch, made);
    return made;
  };
}

/**
 * Mulch, and whether rain reaches the soil, on days asked for in their order: worked out anew only where a cover or mulch
 * begins or has ended the day before.
 */
function surfaces({
  bed,
  rainReaches: stated,
}: StandingZone): (day: string) => { mulch: Mulch; rain: boolean } {
  const periods = [...bed.covers, ...bed.mulches];
  const begins = new Set(periods.map((p) => p.from));
  const ends = new Set(periods.flatMap((p) => (p.to === undefined ? [] : [p.to])));
  let known: { mulch: Mulch; rain: boolean } | undefined;
  let before = "";
  return (day) => {
    if (!known || begins.has(day) || ends.has(before)) {
      known = { mulch: mulchOn(bed, day), rain: rainReaches(bed, day, stated) };
    }
    before = day;
    return known;
  };
}

/**
 * The columns of a zone's season for unbroken days: what its balance reads, without having run it.
 *
 * Where the top is followed, Kcb and the exposed ground of each day (FAO-56 eq. 66, 70, 72, 75, 76); else the single
 * coefficient (Table 12, eq. 62, 65) and no top.
 */
export function seasonOf(
  ground: ZoneGround,
  days: DemandDay[],
  irrigationMmOn: (day: string) => number,
): Season {
  const { zone, today, top, wetting } = ground;
  const column = columnsOf(days.length, 9);
  const season: Season = {
    et0Mm: column(),
    rainMm: column(),
    irrigationMm: column(),
    kcb: column(),
    kcMax: column(),
    wateredFraction: column(),
    rainedFraction: column(),
    evaporationKept: column(),
    tawMm: column(),
    wettedFraction: wetting.wettedFraction,
    tewMm: top?.tewMm ?? 0,
    rewMm: top?.rewMm ?? 0,
    depletionFractionTable: PEPPER_WATER.depletionFraction.value,
    // Salt is stated for the dual form only (FAO-56 p. 178).
    saltKs: top ? ground.saltKs : 1,
    capillaryRiseMm: zone.capillaryRiseMmPerDay ?? 0,
  };
  const stand = standOf(ground);
  const looks = seenCovers(zone, today);
  const basalUnder = perMulch((mulch) => basalCurve(stand, zone.setOutOn, looks, basalLevels(stand, mulch)));
  const singleUnder = perMulch<KcLevels>((mulch) => mulchedKc({ ...stand, mulch }));
  const depthAt = rootZoneDepths(zone, today);
  const surfaceOn = surfaces(zone);
  const firstAge = days[0] ? daysBetween(zone.setOutOn, days[0].day) : 0;
  for (let i = 0; i < days.length; i++) {
    const d = days[i] as DemandDay;
    const age = firstAge + i;
    const { mulch, rain } = surfaceOn(d.day);
    season.et0Mm[i] = d.et0Mm;
    season.rainMm[i] = rain && d.rainMm >= SMALLEST_RAIN_SHARE * d.et0Mm ? d.rainMm : 0;
    season.irrigationMm[i] = irrigationMmOn(d.day);
    season.tawMm[i] = 1000 * ground.availableM3PerM3 * depthAt(age);
    if (!top) {
      season.kcb[i] = kcOnDay(STAGES, singleUnder(mulch), age);
      continue;
    }
    const { kcb, kcMax, coverFraction } = basalUnder(mulch)(age);
    const { wettedFraction, trickle } = wetting;
    const watered = exposedWettedFraction({ coverFraction, wettedFraction, trickle });
    season.kcb[i] = kcb;
    season.kcMax[i] = kcMax;
    season.wateredFraction[i] = watered;
    season.rainedFraction[i] = Math.max(0, 1 - coverFraction - watered);
    season.evaporationKept[i] = evaporationKeptUnder(mulch);
  }
  return season;
}

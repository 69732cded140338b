import { daysBetween } from "../core/days.ts";
import { type KcLevels, kcOnDay } from "../quantities/water/cropCoefficient.ts";
import { totalAvailableWaterMm } from "../quantities/water/rootZone.ts";
import type { Mulch } from "../states/parts.ts";
import { mulchOn } from "../states/standing.ts";
import type { ValveState } from "../states/states.ts";
import { PEPPER_WATER } from "../tables/cropCoefficients.ts";
import type { ZonePlan } from "./balance.ts";
import type { SeenCover } from "./basal.ts";
import type { Demand } from "./demand.ts";
import { bedAreaM2 } from "./ground.ts";
import { mulchedKc } from "./mulchedKc.ts";
import { rainReaches } from "./rainReaches.ts";
import { rootDepthOn } from "./rootDepth.ts";
import { STAGES } from "./stages.ts";

/** A zone whose plants stand in the bed. */
export type StandingZone = ValveState["zones"][number] & { setOutOn: string };

const notesOf = (zone: StandingZone, kind: StandingZone["notes"][number]["kind"], today: string) =>
  zone.notes
    .flatMap((n) =>
      n.kind === kind && n.value !== undefined && n.on <= today ? [{ on: n.on, value: n.value }] : [],
    )
    .toSorted((a, b) => (a.on < b.on ? -1 : 1));

/** The cover somebody saw since setting out, one a day, oldest first. */
export const seenCovers = (zone: StandingZone, today: string): SeenCover[] => [
  ...new Map(
    notesOf(zone, "ground-cover-pct", today)
      .filter((n) => n.on > zone.setOutOn && n.value > 0 && n.value <= 100)
      .map((n) => [n.on, { on: n.on, coverFraction: n.value / 100 }]),
  ).values(),
];

/** Plants' height for the climate adjustment: measured, else FAO-56 Table 12 (staked: the lower end of 1.5 to 2 m). */
export function heightM(zone: StandingZone, today: string): number {
  const noted = zone.notes
    .filter((n) => n.kind === "height-cm" && n.value !== undefined && n.on <= today)
    .toSorted((a, b) => (a.on < b.on ? -1 : 1))
    .at(-1)?.value;
  if (noted !== undefined) return noted / 100;
  return zone.planting.staked ? PEPPER_WATER.kcStaked.heightM.low : PEPPER_WATER.heightM.value;
}

/** Depth of the root zone on a day; of a container, its volume spread over the bed's ground [m]. */
export function rootZoneDepthM(zone: StandingZone, day: string, today: string): number {
  const { containers } = zone.bed;
  if (zone.bed.kind === "containers" && containers) {
    return (containers.count * containers.volumeL) / 1000 / bedAreaM2(zone.bed);
  }
  const dug = zone.rootDepthM === undefined ? undefined : { on: today, depthM: zone.rootDepthM };
  return rootDepthOn({ day, setOutOn: zone.setOutOn, dug });
}

/** Everything about a zone that its water balance reads, day by day. */
export function planOf(
  zone: StandingZone,
  availableM3PerM3: number,
  demand: Demand,
  today: string,
): ZonePlan {
  const levels = new Map<Mulch, KcLevels>();
  const levelsUnder = (mulch: Mulch): KcLevels => {
    const known = levels.get(mulch);
    if (known) return known;
    const made = mulchedKc({
      mulch,
      staked: zone.planting.staked ?? false,
      heightM: heightM(zone, today),
      rhMinPct: demand.rhMinPct,
      windAt2mMPerS: demand.windAt2mMPerS,
    });
    levels.set(mulch, made);
    return made;
  };
  return {
    kcOn: (day) => kcOnDay(STAGES, levelsUnder(mulchOn(zone.bed, day)), daysBetween(zone.setOutOn, day)),
    tawMmOn: (day) =>
      totalAvailableWaterMm({
        fieldCapacity: availableM3PerM3,
        wiltingPoint: 0,
        rootDepthM: rootZoneDepthM(zone, day, today),
      }),
    rainCountsOn: (day) => rainReaches(zone.bed, day, zone.rainReaches),
    depletionFractionTable: PEPPER_WATER.depletionFraction.value,
  };
}

import { daysBetween } from "../core/days.ts";
import type { ValveState } from "../states/states.ts";
import { PEPPER_WATER } from "../tables/cropCoefficients.ts";
import type { SeenCover } from "./basal.ts";
import { bedAreaM2 } from "./ground.ts";
import { rootDepthAtAge } from "./rootDepth.ts";

/** A zone whose plants stand in the bed. */
export type StandingZone = ValveState["zones"][number] & { setOutOn: string };

const notesOf = (zone: StandingZone, kind: StandingZone["notes"][number]["kind"], today: string) =>
  zone.notes
    .flatMap((n) =>
      n.kind === kind && n.value !== undefined && n.on <= today ? [{ on: n.on, value: n.value }] : [],
    )
    .toSorted((a, b) => (a.on < b.on ? -1 : 1));

/** Plants' height for the climate adjustment: measured, else FAO-56 Table 12 (staked: the lower end of 1.5 to 2 m). */
export function heightM(zone: StandingZone, today: string): number {
  const noted = notesOf(zone, "height-cm", today).at(-1)?.value;
  if (noted !== undefined) return noted / 100;
  return zone.planting.staked ? PEPPER_WATER.kcStaked.heightM.low : PEPPER_WATER.heightM.value;
}

/** The cover somebody saw since setting out, one a day, oldest first. */
export const seenCovers = (zone: StandingZone, today: string): SeenCover[] => [
  ...new Map(
    notesOf(zone, "ground-cover-pct", today)
      .filter((n) => n.on > zone.setOutOn && n.value > 0 && n.value <= 100)
      .map((n) => [n.on, { on: n.on, coverFraction: n.value / 100 }]),
  ).values(),
];

/** Depth of a zone's roots by days since setting out; of containers, their volume spread over the bed's ground [m]. */
export function rootZoneDepths(zone: StandingZone, today: string): (age: number) => number {
  const { containers } = zone.bed;
  if (zone.bed.kind === "containers" && containers) {
    const spreadM = (containers.count * containers.volumeL) / 1000 / bedAreaM2(zone.bed);
    return () => spreadM;
  }
  const depthM = zone.rootDepthM;
  const dug = depthM === undefined ? undefined : { age: daysBetween(zone.setOutOn, today), depthM };
  return (age) => rootDepthAtAge(age, dug);
}

/** The same on a calendar day. */
export const rootZoneDepthM = (zone: StandingZone, day: string, today: string): number =>
  rootZoneDepths(zone, today)(daysBetween(zone.setOutOn, day));

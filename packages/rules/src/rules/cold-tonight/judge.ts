import type { SourceRef } from "../../core/working.ts";
import { COVER_OFFSETS, PROTECTIONS } from "../../tables/covers.ts";
import { HOUR_MS, type Night } from "../../warmth/nightOf.ts";
import type { AtPlants } from "./atPlants.ts";
import type { Course } from "./course.ts";
import type { Outside } from "./outside.ts";
import { FROST_C, KILLED_C, type NightFloor } from "./thresholds.ts";

/** What tonight asks for; `none` where it does not hurt. */
export type Decision = "none" | "heat-tonight" | "bring-in" | "cover-tonight" | "frost-tonight";

/** Everything an answer is made of. */
export interface Judged {
  now: number;
  night: Night;
  floor: NightFloor;
  outside: Outside;
  plants: AtPlants;
  course: Course;
  decision: Decision;
  /** The minimum less what the site leaves open. */
  lowC: number;
  /** The first instant from now on at which the plants are below their floor; null where the course does not tell. */
  crosses: number | null;
  hoursBelow: number;
  degreeHours: number;
  protections: Protected[];
  stand: Stand;
}

export type Stand = "inside" | "bed" | "trays";

/** A protection, and what it would leave at the plants. */
interface Protected {
  id: "light-fleece" | "heavy-fleece" | "fleece-and-plastic";
  insideC: number;
  offsetC: number;
  source: SourceRef;
  holds: "floor" | "frost" | "nothing";
}

/**
 * Frost where the minimum reaches freezing; a warning where it falls below the stage's floor, or where what the site
 * leaves open reaches freezing.
 */
export function decide(plants: AtPlants, floor: NightFloor, lowC: number, stand: Stand): Decision {
  const hurts = plants.minimumC < floor.floorC || lowC <= FROST_C;
  if (!hurts) return "none";
  if (stand === "trays") return "bring-in";
  if (stand === "inside") return "heat-tonight";
  return plants.minimumC <= FROST_C ? "frost-tonight" : "cover-tonight";
}

/** Hours and degree-hours below the floor, one an hour of the course, and when it is crossed. */
export function below(
  course: Course,
  floorC: number,
  now: number,
): Pick<Judged, "hoursBelow" | "degreeHours" | "crosses"> {
  let hoursBelow = 0;
  let degreeHours = 0;
  let crosses: number | null = null;
  let lastHour = Number.NEGATIVE_INFINITY;
  for (const { ms, airC } of course.points) {
    if (airC >= floorC) {
      if (ms < now) crosses = null;
      continue;
    }
    // Below it before now and still: the moment is now.
    if (crosses === null) crosses = Math.max(ms, now);
    if (ms - lastHour < HOUR_MS) continue;
    lastHour = ms;
    hoursBelow += 1;
    degreeHours += floorC - airC;
  }
  return { hoursBelow, degreeHours, crosses };
}

/**
 * What each cover of the table would leave at the plants. Under a cover that stands already the greater of the two
 * offsets is taken and not their sum: no published figure adds them.
 */
export function protectionsFor(plants: AtPlants, floorC: number): Protected[] {
  const standing = plants.cover.offsetC;
  if (standing === null) return [];
  const light = COVER_OFFSETS.find((row) => row.covers.join() === "fleece");
  const known = [
    ...(light ? [{ id: "light-fleece" as const, offsetC: light.lowC, source: light.source }] : []),
    ...PROTECTIONS,
  ];
  return known
    .filter((p) => p.offsetC > standing)
    .map((p) => {
      const insideC = plants.minimumC - standing + p.offsetC;
      const holds = insideC >= floorC ? "floor" : insideC > FROST_C ? "frost" : "nothing";
      return { ...p, insideC, holds };
    });
}

/** The latest good moment: before sunset, or when the floor is crossed if that is sooner or the sun is down already. */
export function actBy({ now, night, crosses }: Pick<Judged, "now" | "night" | "crosses">): number {
  const moments = [night.sunset, crosses ?? night.sunset].filter((ms) => ms > now);
  return crosses !== null && crosses <= now ? now : Math.min(...moments, night.sunrise);
}

/** Shares of the planting's worth (cp): docs/agronomy/stakes.md. */
export function harmOf({ plants, lowC, floor, stand }: Judged): number {
  const ripe = floor.phase === "fruit" ? 0.6 : 1;
  if (plants.minimumC <= FROST_C) {
    const killed = Math.min(1, (FROST_C - plants.minimumC) / (FROST_C - KILLED_C));
    return ripe * (0.5 + 0.4 * killed);
  }
  if (lowC <= FROST_C) return ripe * 0.3;
  if (stand === "trays" || floor.phase === "young") return 0.1;
  return 0.05;
}

import type { BedPlanState, Block, PlanBed } from "@pith/rules";
import { addDays } from "@pith/rules";
import { seeded } from "./shedStates.ts";

/** Bed plans for tests: one bed, one block and one plan to change, and seeded random ones. */

export const planBed = (id: string, over: Partial<PlanBed> = {}): PlanBed => ({
  id,
  kind: "ground",
  lengthM: 10,
  widthM: 1,
  rows: 2,
  place: { eastM: 0, northM: 0, bearingDeg: 0 },
  history: rested(),
  ...over,
});

/** Six seasons of a crop that keeps none of the pathogens alive. */
export const rested = (season = 2026): PlanBed["history"] =>
  Array.from({ length: 6 }, (_, i) => ({ season: season - 6 + i, crop: "small-grain" as const }));

export const block = (id: string, over: Partial<Block> = {}): Block => ({
  id,
  variety: `variety-${id}`,
  species: "annuum",
  marketType: "bell",
  plants: 20,
  rows: 2,
  plantSpacingM: 0.4,
  heightCm: 60,
  water: "full",
  firstPickOn: "2026-08-01",
  ...over,
});

export const plan = (beds: PlanBed[], blocks: Block[], over: Partial<BedPlanState> = {}): BedPlanState => ({
  kind: "bed-plan",
  version: 1,
  asOf: "2026-03-01T15:00:00Z",
  settings: {},
  id: "plan-1",
  season: 2026,
  timeZone: "America/Chicago",
  latitudeDeg: 46,
  beds,
  blocks,
  ...over,
});

export const at = (bedId: string, row = 1, fromM = 0) => ({ bedId, row, fromM });

/** A plan drawn from a seed: beds side by side, blocks of a few varieties, some stressed, some sweet, in a few rounds. */
export function randomState(
  seed: number,
  size: {
    beds: number;
    blocks: number;
    varieties: number;
    bedLengthM: number;
    longestM: number;
    stepM?: number;
  },
): BedPlanState {
  const draw = seeded(seed);
  const pick = <T>(things: readonly T[]): T => things[Math.floor(draw() * things.length)] as T;
  const stepM = size.stepM ?? 1;
  const beds = Array.from({ length: size.beds }, (_, i) =>
    planBed(`bed-${i}`, {
      lengthM: size.bedLengthM,
      place: { eastM: i * 1.8, northM: 0, bearingDeg: 0 },
      valveId: `valve-${i % Math.max(1, Math.ceil(size.beds / 2))}`,
      ...(draw() < 0.2 && { shadedFrom: "south" as const }),
    }),
  );
  const varieties = Array.from({ length: size.varieties }, (_, v) => ({
    variety: `variety-${v}`,
    marketType: pick(["bell", "sweet-long", "jalapeno-type", "cayenne-type"] as const),
    heightCm: pick([50, 70, 90, 120]),
    water: draw() < 0.2 ? ("deficit" as const) : ("full" as const),
    firstPickOn: addDays("2026-07-20", 7 * Math.floor(draw() * 4)),
  }));
  const blocks = Array.from({ length: size.blocks }, (_, i) => {
    const rows = draw() < 0.5 ? 1 : 2;
    const lengthM = stepM * (1 + Math.floor(draw() * Math.round(size.longestM / stepM)));
    return block(`block-${i}`, {
      ...(varieties[i % size.varieties] as (typeof varieties)[number]),
      rows,
      plantSpacingM: 0.5,
      plants: rows * Math.round(lengthM / 0.5),
    });
  });
  return plan(beds, blocks);
}

/** A small farm's season: 100 plantings on 20 beds of 30 m. */
export const FARM = { beds: 20, blocks: 100, varieties: 14, bedLengthM: 30, longestM: 9, stepM: 0.5 };

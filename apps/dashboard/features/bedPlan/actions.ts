"use server";

import {
  type BedPlan,
  bedPlanRoutes,
  type Client,
  farmRoutes,
  type PlanBlock,
  type Problem,
} from "@pith/contract";
import { attempt } from "../../server/api.ts";
import { agentSeat } from "../../server/seat.ts";

export interface Where {
  farmId: string;
  siteId: string;
  season: number;
}

export type Kept<T> =
  | { how: "done"; value: T }
  | { how: "conflict"; newest: BedPlan }
  | { how: "refused"; why: string };

/** Keeps the plan whole. Where somebody was faster, theirs comes back, and nothing is written. */
export async function keepPlan(where: Where, version: number, blocks: PlanBlock[]): Promise<Kept<BedPlan>> {
  return tried(where, version, (client, params) =>
    client.call(bedPlanRoutes.keepBedPlan, { params, json: { version, blocks } }),
  );
}

/** Makes plantings of a plan that is kept. */
export async function adoptPlan(
  where: Where,
  version: number,
  days: { sownOn: string; plannedSetOutOn: string | null },
): Promise<Kept<{ added: number; moved: number; plan: BedPlan }>> {
  return tried(where, version, (client, params) =>
    client.call(bedPlanRoutes.adoptBedPlan, { params, json: { version, ...days } }),
  );
}

export interface BedPlacement {
  bedId: string;
  place: { eastM: number; northM: number; bearingDeg: number };
  /** Where the map's measures are taken too. */
  lengthM?: number;
  widthM?: number;
}

/** Writes where the beds lie, bed by bed, and reads the plan again. */
export async function setBedPlaces(where: Where, places: BedPlacement[]): Promise<Kept<BedPlan>> {
  return tried(where, null, async (client, params) => {
    const { officeId, farmId } = params;
    for (const { bedId, ...json } of places)
      await client.call(farmRoutes.beds.change, { params: { officeId, farmId, id: bedId }, json });
    return client.call(bedPlanRoutes.getBedPlan, { params });
  });
}

async function tried<T>(
  where: Where,
  version: number | null,
  work: (client: Client, params: Where & { officeId: string }) => Promise<T>,
): Promise<Kept<T>> {
  const { officeId } = await agentSeat();
  const params = { officeId, ...where };
  const done = await attempt((client) => work(client, params));
  if (done.done) return { how: "done", value: done.value };
  const newest =
    done.problem.status === 409 && version !== null
      ? await attempt((client) => client.call(bedPlanRoutes.getBedPlan, { params }))
      : null;
  // A plan may also be refused for what it breaks; then nobody was faster.
  return newest?.done && newest.value.version !== version
    ? { how: "conflict", newest: newest.value }
    : { how: "refused", why: whyOf(done.problem) };
}

/** The server's own sentence, with the first field it names. */
function whyOf(problem: Problem): string {
  const { detail, title } = problem as Problem & { detail?: string };
  return detail ?? title;
}

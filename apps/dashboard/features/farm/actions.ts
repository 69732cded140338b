"use server";

import { farmRoutes } from "@pith/contract";
import type { UnitSystem } from "@pith/rules";
import { redirect } from "next/navigation";
import { attempt, call, unlessChanged } from "../../server/api.ts";
import { agentSeat } from "../../server/seat.ts";
import type { FormState } from "../forms/plan.ts";
import { problemState, readForm } from "../forms/read.ts";
import { problemWords } from "../forms/words.ts";
import { farmPlan, planOf, schemas, type Thing } from "./plans.ts";

interface Target {
  farmId: string;
  thing: Thing;
  /** Null for a new one. */
  id: string | null;
  /** What the form was made of; null for a new one. */
  tag: string | null;
  /** The units the form was shown in. */
  units: UnitSystem;
}

/** Adds or changes what belongs to a farm; what the API refuses comes back beside its field. */
export async function saveThing(target: Target, before: FormState, data: FormData): Promise<FormState> {
  const { farmId, thing, id, tag, units } = target;
  const { officeId } = await agentSeat();
  const [farm, words] = await Promise.all([
    call(farmRoutes.getFarm, { params: { officeId, farmId } }),
    problemWords(),
  ]);
  const plan = planOf(thing, farm);
  const stored = farm[thing].find((one) => one.id === id);
  const read = readForm(plan, schemas[thing], data, units, words, stored);
  if (Object.keys(read.problems).length > 0) {
    return problemState(before, read, null, plan, schemas[thing], units, words);
  }
  // The API judges the body; the form's shape follows the same schema.
  const json = read.json as never;
  const routes = farmRoutes[thing];
  const saved = await attempt((client) =>
    id === null
      ? client.call(routes.add, { params: { officeId, farmId }, json })
      : client.call(routes.change, { params: { officeId, farmId, id }, json, ...unlessChanged(tag) }),
  );
  if (!saved.done) return problemState(before, read, saved.problem, plan, schemas[thing], units, words);
  redirect(`/farms/${farmId}?saved=${thing}#${thing}`);
}

/** Adds or changes a client farm itself. */
export async function saveFarm(
  farmId: string | null,
  tag: string | null,
  before: FormState,
  data: FormData,
): Promise<FormState> {
  const { officeId } = await agentSeat();
  const words = await problemWords();
  const read = readForm(farmPlan, schemas.farms, data, "metric", words);
  const json = read.json as never;
  const saved = await attempt((client) =>
    farmId === null
      ? client.call(farmRoutes.addFarm, { params: { officeId }, json })
      : client.call(farmRoutes.changeFarm, { params: { officeId, farmId }, json, ...unlessChanged(tag) }),
  );
  if (!saved.done) return problemState(before, read, saved.problem, farmPlan, schemas.farms, "metric", words);
  redirect(`/farms/${saved.value.id}?saved=farms`);
}

"use server";

import { farmRoutes, recordRoutes } from "@pith/contract";
import type { UnitSystem } from "@pith/rules";
import { redirect } from "next/navigation";
import { attempt, call } from "../../server/api.ts";
import { seat } from "../../server/seat.ts";
import type { FormState } from "../forms/plan.ts";
import { problemState, readForm } from "../forms/read.ts";
import { problemWords } from "../forms/words.ts";
import { type RecordKind, recordPlan, recordSchemas, signsOf } from "./plans.ts";

interface Target {
  farmId: string;
  kind: RecordKind;
  units: UnitSystem;
  /** Where to go once it is recorded. */
  back: string;
}

export async function addRecord(target: Target, before: FormState, data: FormData): Promise<FormState> {
  const { farmId, kind, units, back } = target;
  const mine = await seat();
  if (!mine) redirect("/");
  const params = { officeId: mine.officeId, farmId };
  const [farm, words] = await Promise.all([call(farmRoutes.getFarm, { params }), problemWords()]);
  const plan = recordPlan(kind, farm);
  const read = readForm(plan, recordSchemas[kind], data, units, words);
  if (Object.keys(read.problems).length > 0) {
    return problemState(before, read, null, plan, recordSchemas[kind], units, words);
  }
  const saved = await attempt((client) =>
    // The API judges the body; the form's shape follows the same schema.
    client.call(recordRoutes[kind].add, { params, json: read.json as never }),
  );
  if (!saved.done) return problemState(before, read, saved.problem, plan, recordSchemas[kind], units, words);
  // A sign is better with photographs, and they need something to hang on.
  const next = kind === "signs" ? `${signsOf(mine.role, farmId)}/${saved.value.id}` : back;
  redirect(`${next}?saved=${kind}`);
}

/** Takes back what was recorded by mistake. */
export async function removeRecord(target: { farmId: string; kind: RecordKind; id: string; back: string }) {
  const mine = await seat();
  if (!mine) redirect("/");
  const { farmId, kind, id, back } = target;
  const params = { officeId: mine.officeId, farmId, id };
  const removed = await attempt((client) => client.call(recordRoutes[kind].remove, { params }));
  redirect(`${back}?${removed.done ? "taken-back" : "not-taken-back"}=${kind}`);
}

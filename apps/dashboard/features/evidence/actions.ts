"use server";

import { evidenceRoutes } from "@pith/contract";
import { redirect } from "next/navigation";
import { attempt } from "../../server/api.ts";
import { agentSeat } from "../../server/seat.ts";
import type { FormState } from "../forms/plan.ts";
import { problemState, readForm } from "../forms/read.ts";
import { problemWords } from "../forms/words.ts";
import { ownSourcePlan, ownSourceSchema } from "./plan.ts";

/** Keeps evidence of the office's own; what the API refuses comes back beside its field. */
export async function addOwnSource(before: FormState, data: FormData): Promise<FormState> {
  const { officeId } = await agentSeat();
  const [plan, words] = await Promise.all([ownSourcePlan(), problemWords()]);
  const read = readForm(plan, ownSourceSchema, data, "metric", words);
  if (Object.keys(read.problems).length > 0) {
    return problemState(before, read, null, plan, ownSourceSchema, "metric", words);
  }
  const saved = await attempt((client) =>
    // The API judges the body; the form's shape follows the same schema.
    client.call(evidenceRoutes.addOwnEvidence, {
      params: { officeId },
      json: { source: read.json as never },
    }),
  );
  if (saved.done) redirect("/evidence?saved=evidence#own");
  const { errors, ...problem } = saved.problem;
  const atFields = errors?.map((e) => ({ ...e, field: e.field.replace(/^source\./, "") }));
  return problemState(
    before,
    read,
    { ...problem, ...(atFields && { errors: atFields }) },
    plan,
    ownSourceSchema,
    "metric",
    words,
  );
}

/** Puts evidence of the office's own away; what was advised beside it stays as it was. */
export async function putSourceAway(id: string): Promise<string> {
  const { officeId } = await agentSeat();
  const gone = await attempt((client) =>
    client.call(evidenceRoutes.retireOwnEvidence, { params: { officeId, id } }),
  );
  if (!gone.done) return gone.problem.detail ?? gone.problem.title;
  redirect("/evidence?taken-back=evidence#own");
}

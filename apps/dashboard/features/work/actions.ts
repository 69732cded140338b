"use server";

import { jobRoutes } from "@pith/contract";
import { redirect } from "next/navigation";
import { attempt } from "../../server/api.ts";
import { agentSeat } from "../../server/seat.ts";
import { problemWords } from "../forms/words.ts";

/** Has every farm of the office advised again. Says why not, where not. */
export async function adviseOffice(): Promise<string> {
  const { officeId } = await agentSeat();
  const done = await attempt((client) =>
    client.call(jobRoutes.wantRun, { params: { officeId }, json: { task: "advise-office" } }),
  );
  if (!done.done) return done.problem.detail ?? (await problemWords()).unreachable;
  redirect("/office/work?saved=work");
}

/** Has what was given up done again. */
export async function retry(id: string): Promise<string> {
  const { officeId } = await agentSeat();
  const done = await attempt((client) => client.call(jobRoutes.retryRun, { params: { officeId, id } }));
  if (!done.done) return done.problem.detail ?? (await problemWords()).unreachable;
  redirect("/office/work?saved=workAgain");
}

import { farmRoutes, recordRoutes } from "@pith/contract";
import type { UnitSystem } from "@pith/rules";
import { redirect } from "next/navigation";
import { attempt, call } from "../../server/api.ts";
import { type Seat, seat } from "../../server/seat.ts";
import type { FormState } from "../forms/plan.ts";
import { problemState, readForm } from "../forms/read.ts";
import { problemWords } from "../forms/words.ts";
import { sendKeyOf } from "../offline/sentLater.ts";
import { type RecordKind, recordPlan, recordSchemas } from "./plans.ts";

export interface RecordTarget {
  farmId: string;
  kind: RecordKind;
  units: UnitSystem;
}

/** Writes down one thing seen or done; what is refused comes back beside its field. */
export async function sendRecord(
  { farmId, kind, units }: RecordTarget,
  before: FormState,
  data: FormData,
): Promise<{ id: string; role: Seat["role"] } | { refused: FormState }> {
  const mine = await seat();
  if (!mine) redirect("/");
  const params = { officeId: mine.officeId, farmId };
  const [farm, words] = await Promise.all([call(farmRoutes.getFarm, { params }), problemWords()]);
  const plan = recordPlan(kind, farm);
  const read = readForm(plan, recordSchemas[kind], data, units, words);
  const refused = (problem: Parameters<typeof problemState>[2]) => ({
    refused: problemState(before, read, problem, plan, recordSchemas[kind], units, words),
  });
  if (Object.keys(read.problems).length > 0) return refused(null);
  const saved = await attempt((client) =>
    // The API judges the body; the form's shape follows the same schema.
    client.call(recordRoutes[kind].add, { params, json: read.json as never, ...sendKeyOf(data) }),
  );
  return saved.done ? { id: saved.value.id, role: mine.role } : refused(saved.problem);
}

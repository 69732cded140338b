import { redirect } from "next/navigation";
import { seasonAnswer } from "../../../../../../features/pdf/seasonAnswer.ts";
import { seat } from "../../../../../../server/seat.ts";

/** A farm's season record, the same for its people and the office's. */
export async function GET(_: Request, { params }: { params: Promise<{ farmId: string; season: string }> }) {
  const [mine, { farmId, season }] = await Promise.all([seat(), params]);
  if (!mine) redirect("/");
  return seasonAnswer(mine, farmId, season);
}

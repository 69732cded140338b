import { weekAnswer } from "../../../../../features/pdf/weekAnswer.ts";
import { agentSeat } from "../../../../../server/seat.ts";

/** A farm's week, for the agent to print or to send. */
export async function GET(_: Request, { params }: { params: Promise<{ farmId: string }> }) {
  const [seat, { farmId }] = await Promise.all([agentSeat(), params]);
  return weekAnswer(seat, [farmId]);
}

import { pdfAnswer } from "../../../../../features/pdf/answer.ts";
import { agentSeat } from "../../../../../server/seat.ts";

export async function GET(_: Request, { params }: { params: Promise<{ advisoryId: string }> }) {
  const [{ officeId }, { advisoryId }] = await Promise.all([agentSeat(), params]);
  return pdfAnswer(officeId, advisoryId);
}

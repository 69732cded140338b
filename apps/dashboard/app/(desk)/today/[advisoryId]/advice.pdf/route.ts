import { pdfAnswer } from "../../../../../features/pdf/answer.ts";
import { farmerSeat } from "../../../../../server/seat.ts";

export async function GET(_: Request, { params }: { params: Promise<{ advisoryId: string }> }) {
  const [{ officeId }, { advisoryId }] = await Promise.all([farmerSeat(), params]);
  return pdfAnswer(officeId, advisoryId);
}

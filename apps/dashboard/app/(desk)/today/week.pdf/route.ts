import { weekOfMine } from "../../../../features/pdf/weekAnswer.ts";
import { farmerSeat } from "../../../../server/seat.ts";

/** The week of all farms of a farmer, to print. */
export async function GET() {
  return weekOfMine(await farmerSeat());
}

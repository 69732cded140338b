import { sendAnswer } from "../../../../../features/answer/send.ts";
import { untouched } from "../../../../../features/forms/plan.ts";
import { sentLater } from "../../../../../features/offline/sentLater.ts";

/** An answer that was given without signal. */
export async function POST(request: Request, { params }: { params: Promise<{ advisoryId: string }> }) {
  const { advisoryId } = await params;
  const units = new URL(request.url).searchParams.get("units") === "us" ? "us" : "metric";
  return sentLater(request, (data) => sendAnswer({ advisoryId, units }, untouched, data), "actual");
}

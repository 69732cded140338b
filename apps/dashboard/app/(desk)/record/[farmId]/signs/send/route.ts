import { recordSentLater } from "../../../../../../features/records/recordSentLater.ts";

/** A sign that was written without signal: beside the signs' own pages, which would take the word for one of them. */
export async function POST(request: Request, { params }: { params: Promise<{ farmId: string }> }) {
  return recordSentLater(request, (await params).farmId, "signs");
}

import { recordSentLater } from "../../../../../../features/records/recordSentLater.ts";

/** A record that was written without signal. */
export async function POST(
  request: Request,
  { params }: { params: Promise<{ farmId: string; kind: string }> },
) {
  const { farmId, kind } = await params;
  return recordSentLater(request, farmId, kind);
}

import { untouched } from "../forms/plan.ts";
import { sentLater } from "../offline/sentLater.ts";
import { photosAddress } from "../signs/addresses.ts";
import { isRecordKind, signsOf } from "./plans.ts";
import { sendRecord } from "./send.ts";

/** Takes a record that a phone kept and sends. */
export async function recordSentLater(request: Request, farmId: string, kind: string): Promise<Response> {
  if (!isRecordKind(kind)) return new Response(null, { status: 404 });
  const units = new URL(request.url).searchParams.get("units") === "us" ? "us" : "metric";
  return sentLater(
    request,
    async (data) => {
      const sent = await sendRecord({ farmId, kind, units }, untouched, data);
      if ("refused" in sent || kind !== "signs") return "refused" in sent ? sent : {};
      const { role, id } = sent;
      // Where photographs went along there is nothing more to ask for.
      return { photosTo: photosAddress(farmId, id), next: `${signsOf(role, farmId)}/${id}?saved=signs` };
    },
    kind,
  );
}

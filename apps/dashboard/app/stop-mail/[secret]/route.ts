import { callerHeader } from "../../../server/caller.ts";
import { config } from "../../../server/config.ts";

/** What a mail program calls when its reader presses its own button for no more of this (RFC 8058). */
export async function POST(_request: Request, { params }: { params: Promise<{ secret: string }> }) {
  const { secret } = await params;
  const answer = await fetch(`${config().apiOrigin}/v1/stop-mail/${encodeURIComponent(secret)}`, {
    method: "POST",
    headers: await callerHeader(),
    cache: "no-store",
  }).catch(() => null);
  return new Response(null, { status: answer?.status ?? 502 });
}

/** Opening the address changes nothing, because filters open what they find: it leads to the settings. */
export function GET(request: Request) {
  return Response.redirect(new URL("/account/delivery", request.url), 303);
}

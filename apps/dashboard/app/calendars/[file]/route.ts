import { callerHeader } from "../../../server/caller.ts";
import { config } from "../../../server/config.ts";

/** A calendar program asks here, because only the dashboard need be reachable from outside; the API answers. */
export async function GET(request: Request, { params }: { params: Promise<{ file: string }> }) {
  const { file } = await params;
  const known = request.headers.get("if-none-match");
  const answer = await fetch(`${config().apiOrigin}/v1/calendars/${encodeURIComponent(file)}`, {
    headers: { ...(await callerHeader()), ...(known && { "if-none-match": known }) },
    cache: "no-store",
  }).catch(() => null);
  if (!answer) return new Response(null, { status: 502 });
  const headers = new Headers({ "cache-control": "private, no-cache", "referrer-policy": "no-referrer" });
  for (const name of ["content-type", "etag"]) {
    const value = answer.headers.get(name);
    if (value !== null) headers.set(name, value);
  }
  return new Response(answer.status === 304 ? null : answer.body, { status: answer.status, headers });
}

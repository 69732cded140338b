import { headers } from "next/headers";
import { config } from "../../server/config.ts";
import { isFromElsewhere } from "../../server/elsewhere.ts";
import { seat } from "../../server/seat.ts";
import { sessionCookieOf } from "../../server/session.ts";

const PASSED = ["content-type", "content-disposition"];

/** Hands a file of the office on as it comes: out of the API, or into it. The API says who may. */
export async function handOn(request: Request, path: (officeId: string) => string): Promise<Response> {
  if (isFromElsewhere(request)) return new Response(null, { status: 403 });
  const mine = await seat();
  if (!mine) return new Response(null, { status: 404 });
  const { apiOrigin } = config();
  const sends = request.method === "POST";
  const answer = await fetch(`${apiOrigin}${path(mine.officeId)}`, {
    method: request.method,
    headers: {
      cookie: sessionCookieOf((await headers()).get("cookie")),
      origin: apiOrigin,
      ...(sends && { "content-type": "application/x-ndjson" }),
    },
    ...(sends && { body: request.body, duplex: "half" }),
    cache: "no-store",
    signal: request.signal,
  } as RequestInit).catch(() => null);
  if (!answer) return new Response(null, { status: 502 });
  const passed = new Headers({ "cache-control": "no-store, no-transform" });
  for (const name of PASSED) {
    const value = answer.headers.get(name);
    if (value !== null) passed.set(name, value);
  }
  return new Response(answer.body, { status: answer.status, headers: passed });
}

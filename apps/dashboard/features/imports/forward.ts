import { headers } from "next/headers";
import { config } from "../../server/config.ts";
import { isFromElsewhere } from "../../server/elsewhere.ts";
import { agentSeat } from "../../server/seat.ts";
import { sessionCookieOf } from "../../server/session.ts";

/**
 * Hands a request of the import desk to the API as whoever sits here, an agent where nothing else is said, and the API's
 * answer back as it comes: a server action could only answer once, at the end. Hanging up here hangs up there.
 */
export async function forward(
  request: Request,
  path: (officeId: string) => string,
  answerHeaders: readonly string[] = [],
  seated: () => Promise<{ officeId: string }> = agentSeat,
): Promise<Response> {
  if (isFromElsewhere(request)) return new Response(null, { status: 403 });
  const { officeId } = await seated();
  const { apiOrigin } = config();
  const accept = request.headers.get("accept");
  const type = request.headers.get("content-type");
  const answer = await fetch(`${apiOrigin}${path(officeId)}`, {
    method: request.method,
    headers: {
      cookie: sessionCookieOf((await headers()).get("cookie")),
      origin: apiOrigin,
      ...(accept && { accept }),
      ...(type && { "content-type": type }),
    },
    // An empty text would be sent as plain text, which the API does not read.
    body: request.method === "POST" ? (await request.text()) || undefined : undefined,
    cache: "no-store",
    signal: request.signal,
  }).catch(() => null);
  if (!answer) return new Response(null, { status: 502 });
  const passed = new Headers({ "cache-control": "no-store, no-transform", "x-accel-buffering": "no" });
  for (const name of ["content-type", ...answerHeaders]) {
    const value = answer.headers.get(name);
    if (value !== null) passed.set(name, value);
  }
  return new Response(answer.body, { status: answer.status, headers: passed });
}

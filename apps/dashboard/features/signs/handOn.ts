import { headers } from "next/headers";
import { config } from "../../server/config.ts";
import { isFromElsewhere } from "../../server/elsewhere.ts";
import { seat } from "../../server/seat.ts";
import { sessionCookieOf } from "../../server/session.ts";

/** Most bytes of a photograph that are handed on; the API holds the same bound. */
const MOST_BYTES = 4_000_000;
const KEY = /^[0-9a-f]{32}$/;

/** Hands a request for a photograph to the API as this person, agent or farmer, and its answer back as it comes. */
export async function handOn(request: Request, path: string): Promise<Response> {
  if (isFromElsewhere(request)) return new Response(null, { status: 403 });
  const mine = await seat();
  if (!mine) return new Response(null, { status: 403 });
  const { apiOrigin } = config();
  const key = request.headers.get("idempotency-key") ?? "";
  const photo = request.method === "POST" ? await request.arrayBuffer() : null;
  if (photo && photo.byteLength > MOST_BYTES) return new Response(null, { status: 413 });
  const answer = await fetch(`${apiOrigin}/v1/offices/${mine.officeId}${path}`, {
    method: request.method,
    headers: {
      cookie: sessionCookieOf((await headers()).get("cookie")),
      origin: apiOrigin,
      ...(photo && { "content-type": "application/json" }),
      // A photograph that arrived unheard and is sent again is kept once.
      ...(photo && KEY.test(key) && { "idempotency-key": key }),
    },
    body: photo
      ? JSON.stringify({
          mediaType: request.headers.get("content-type"),
          dataBase64: Buffer.from(photo).toString("base64"),
        })
      : undefined,
    cache: "no-store",
    signal: request.signal,
  }).catch(() => null);
  if (!answer) return new Response(null, { status: 502 });
  const passed = new Headers();
  for (const name of ["content-type", "cache-control"]) {
    const value = answer.headers.get(name);
    if (value !== null) passed.set(name, value);
  }
  return new Response(answer.body, { status: answer.status, headers: passed });
}

/** A page of another site may not ask in a person's name; a server action is guarded like this by itself. */
export function isFromElsewhere(request: Request): boolean {
  if (request.method === "GET") return false;
  const origin = request.headers.get("origin");
  const host = request.headers.get("x-forwarded-host") ?? request.headers.get("host");
  return origin === null || new URL(origin).host !== host;
}

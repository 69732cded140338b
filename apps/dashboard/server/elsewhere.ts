/**
 * A page of another site may not ask in a person's name. A browser says itself where a request comes from, and no page can
 * say it in its place; an older one names the page's origin at least. Who says neither is no page of ours.
 */
export function isFromElsewhere(request: Request): boolean {
  if (["GET", "HEAD", "OPTIONS"].includes(request.method)) return false;
  const site = request.headers.get("sec-fetch-site");
  // "none" is what a person does themselves, with no page behind it: its origin tells whether it is ours.
  if (site !== null && site !== "none") return site !== "same-origin";
  const origin = request.headers.get("origin");
  const host = request.headers.get("x-forwarded-host") ?? request.headers.get("host");
  return origin === null || !URL.canParse(origin) || new URL(origin).host !== host;
}

/** The session cookie is the API's; the dashboard only carries it. Its name starts with `pith.`, behind https with a prefix. */
const SESSION_NAME = /^(__Secure-|__Host-)?pith\./;

/** The session's part of a request's cookie header, as it came. */
export function sessionCookieOf(cookieHeader: string | null): string {
  return (cookieHeader ?? "")
    .split(";")
    .map((pair) => pair.trim())
    .filter((pair) => SESSION_NAME.test(pair))
    .join("; ");
}

export interface SetCookie {
  name: string;
  value: string;
  maxAgeS: number | undefined;
}

/** The session cookies that an answer of the API sets, decoded. */
export function sessionCookiesIn(answer: Response): SetCookie[] {
  return answer.headers.getSetCookie().flatMap((line) => {
    const [pair = "", ...attributes] = line.split(";").map((part) => part.trim());
    const cut = pair.indexOf("=");
    const name = pair.slice(0, cut);
    if (cut < 1 || !SESSION_NAME.test(name)) return [];
    const maxAge = attributes.find((a) => a.toLowerCase().startsWith("max-age="))?.slice(8);
    return [
      {
        name,
        value: decodeURIComponent(pair.slice(cut + 1)),
        maxAgeS: maxAge === undefined ? undefined : Number(maxAge),
      },
    ];
  });
}

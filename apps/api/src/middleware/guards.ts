import { createMiddleware } from "hono/factory";
import type { AppDeps, AppEnv } from "../env.ts";
import { problem } from "../problems.ts";

/** A browser page from elsewhere may not call: no cross-origin headers are sent, and a foreign Origin is refused. */
export const knownOrigins = (origins: string[]) =>
  createMiddleware<AppEnv>(async (c, next) => {
    const origin = c.req.header("origin");
    if (origin && origin !== new URL(c.req.url).origin && !origins.includes(origin)) {
      return problem(c, 403, `Calls from ${origin} are not accepted.`);
    }
    await next();
  });

/** As JSON writes U+0000: an even number of backslashes before it, or it would be an escaped backslash. */
const NUL = /(?<!\\)(?:\\\\)*\\u0000/;
/** Half of a pair that stands alone: no character, though JSON can write it. */
const HALF_PAIR =
  /(?<!\\)(?:\\\\)*\\u(?:d[89ab][0-9a-f]{2}(?!\\ud[c-f][0-9a-f]{2})|(?<!\\ud[89ab][0-9a-f]{2}\\u)d[c-f][0-9a-f]{2})/i;

/** PostgreSQL stores every character but one, and nothing that is none. */
export const storableText = createMiddleware<AppEnv>(async (c, next) => {
  if (c.req.header("content-type")?.includes("json")) {
    const text = await c.req.text();
    if (NUL.test(text)) return problem(c, 422, "The character U+0000 is not accepted in any text.");
    if (HALF_PAIR.test(text)) {
      return problem(c, 422, "Half of a surrogate pair is no character and is not accepted in any text.");
    }
  }
  await next();
});

/** An answer that was not made by the context, a problem or the sign-in's, does not carry what was set before it. */
export const requestIdOnEveryAnswer = createMiddleware<AppEnv>(async (c, next) => {
  await next();
  c.header("x-request-id", c.get("requestId"));
});

/** An address that lets in whoever has it is a secret itself. */
const withoutSecret = (path: string): string =>
  path.replace(/^(\/v1\/(?:calendars|stop-mail)\/).*$/, "$1***");

/** One line a request, without query, body, cookie or anybody's name. */
export const logged = (log: AppDeps["log"], now: AppDeps["now"]) =>
  createMiddleware<AppEnv>(async (c, next) => {
    const from = now().getTime();
    await next();
    log({
      level: "info",
      requestId: c.get("requestId"),
      method: c.req.method,
      path: withoutSecret(c.req.path),
      status: c.res.status,
      ms: now().getTime() - from,
    });
  });

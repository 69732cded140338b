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

/** One line a request, without query, body, cookie or anybody's name. */
export const logged = (log: AppDeps["log"], now: AppDeps["now"]) =>
  createMiddleware<AppEnv>(async (c, next) => {
    const from = now().getTime();
    await next();
    log({
      level: "info",
      requestId: c.get("requestId"),
      method: c.req.method,
      path: c.req.path,
      status: c.res.status,
      ms: now().getTime() - from,
    });
  });

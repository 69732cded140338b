import { createMiddleware } from "hono/factory";
import type { AppDeps, AppEnv } from "../env.ts";

/** Opens the request's connections when the first handler asks, and closes them when the answer is out. */
export const connections = (connect: AppDeps["connect"]) =>
  createMiddleware<AppEnv>(async (c, next) => {
    const opened = connect();
    c.set("connections", opened);
    try {
      await next();
    } finally {
      const { close, until } = opened;
      if (close) {
        // An answer that is still being written cannot be waited for here: it is only read once this returns.
        const closing = until ? until.then(close) : close();
        const later = waiterOf(c);
        if (later) later(closing);
        else if (!until) await closing;
      }
    }
  });

/** An edge runtime lets the closing outlive the answer; Node has no such thing and `executionCtx` throws there. */
function waiterOf(c: { executionCtx: { waitUntil(p: Promise<unknown>): void } }) {
  try {
    const ctx = c.executionCtx;
    return (work: Promise<unknown>) => ctx.waitUntil(work);
  } catch {
    return undefined;
  }
}

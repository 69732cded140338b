import type { Context } from "hono";
import type { AppEnv } from "../env.ts";

/** Where a request comes from, as far as it can be believed. */

const HERE = ["127.0.0.1", "::1", "::ffff:127.0.0.1"];

/**
 * The caller's network address. What a header says is believed only from this machine and from the proxies that are
 * named, and of that the last: each proxy adds whom it saw, and what stands before it anybody can have written.
 */
export function callerAddress(c: Context<AppEnv>, proxies: readonly string[] = []): string {
  // An edge runtime has no socket; what it puts in front of its workers sets this header itself.
  const env = c.env as { incoming?: { socket?: { remoteAddress?: string } } } | undefined;
  const peer = env?.incoming?.socket?.remoteAddress;
  if (peer === undefined) return c.req.header("cf-connecting-ip") ?? "unknown";
  if (!HERE.includes(peer) && !proxies.includes(peer)) return peer;
  return c.req.header("x-forwarded-for")?.split(",").at(-1)?.trim() || peer;
}

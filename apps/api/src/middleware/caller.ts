import { whoCalls } from "@pith/contract";
import type { Context } from "hono";
import type { AppEnv } from "../env.ts";

/** Where a request comes from, as far as it can be believed. */

export function callerAddress(c: Context<AppEnv>, proxies: readonly string[] = []): string {
  // An edge runtime has no socket; what it puts in front of its workers sets this header itself.
  const env = c.env as { incoming?: { socket?: { remoteAddress?: string } } } | undefined;
  const peer = env?.incoming?.socket?.remoteAddress;
  if (peer === undefined) return c.req.header("cf-connecting-ip") ?? "unknown";
  return whoCalls(peer, c.req.header("x-forwarded-for"), proxies);
}

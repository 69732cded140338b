import type { Context } from "hono";
import { createMiddleware } from "hono/factory";
import RateLimiterMemory from "rate-limiter-flexible/lib/RateLimiterMemory.js";
import type { AppDeps, AppEnv } from "../env.ts";
import { problem } from "../problems.ts";
import { callerAddress } from "./caller.ts";

/**
 * How much anybody may ask: each person wherever they ask from, because an office and its dashboard share an address;
 * and each address for what is open to everybody. Counted in this process alone (common practice: what is guarded is the
 * process), so several processes allow as many times more.
 */
const WINDOW_S = 60;

export interface Limits {
  /** Requests of one person in a minute. */
  person: number;
  /** Requests from one address in a minute, to what needs no sign-in. */
  address: number;
}
const USUAL: Limits = { person: 1200, address: 600 };

export function limitsOf({ limits = USUAL, proxies }: Pick<AppDeps, "limits" | "proxies">) {
  const [people, addresses] = [counter(limits.person), counter(limits.address)];
  return {
    /** After the sign-in. */
    perPerson: createMiddleware<AppEnv>(
      async (c, next) => (await over(c, "person", people, c.get("person").id)) ?? next(),
    ),
    perAddress: createMiddleware<AppEnv>(
      async (c, next) => (await over(c, "address", addresses, callerAddress(c, proxies))) ?? next(),
    ),
  };
}

const counter = (points: number) => new RateLimiterMemory({ points, duration: WINDOW_S });

/** Counts the request and says so in the fields of draft-ietf-httpapi-ratelimit-headers; the refusal where it is one too many. */
async function over(c: Context<AppEnv>, name: string, counted: RateLimiterMemory, of: string) {
  const standing = await counted.consume(of).catch((refused: unknown) => {
    if (refused instanceof Error) throw refused;
    return refused as Awaited<ReturnType<RateLimiterMemory["consume"]>>;
  });
  const endsInS = Math.ceil(standing.msBeforeNext / 1000);
  const headers = {
    "ratelimit-policy": `"${name}";q=${counted.points};w=${WINDOW_S}`,
    ratelimit: `"${name}";r=${standing.remainingPoints};t=${endsInS}`,
  };
  for (const [field, value] of Object.entries(headers)) c.header(field, value);
  if (standing.consumedPoints <= counted.points) return undefined;
  const refusal = problem(c, 429, `At most ${counted.points} requests a minute are answered.`);
  for (const [field, value] of Object.entries(headers)) refusal.headers.set(field, value);
  refusal.headers.set("retry-after", String(endsInS));
  return refusal;
}

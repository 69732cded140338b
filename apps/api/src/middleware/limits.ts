import type { Context } from "hono";
import { createMiddleware } from "hono/factory";
import RateLimiterMemory from "rate-limiter-flexible/lib/RateLimiterMemory.js";
import type { AppDeps, AppEnv, Limits } from "../env.ts";
import { problem } from "../problems.ts";
import { callerAddress } from "./caller.ts";

/**
 * How much anybody may ask: each person wherever they ask from, because an office and its dashboard share an address;
 * and each address for what is open to everybody. Counted in this process alone (common practice: what is guarded is the
 * process), so several processes allow as many times more.
 */
const WINDOW_S = 60;

const USUAL: Limits = { person: 1200, address: 600 };

export function limitsOf({ limits = USUAL, proxies }: Pick<AppDeps, "limits" | "proxies">) {
  const [people, addresses] = [counter(limits.person), counter(limits.address)];
  const badKeys = counter(limits.address);
  return {
    /** After the sign-in. */
    perPerson: createMiddleware<AppEnv>(
      async (c, next) => (await over(c, "person", people, c.get("person").id)) ?? next(),
    ),
    perAddress: createMiddleware<AppEnv>(
      async (c, next) => (await over(c, "address", addresses, callerAddress(c, proxies))) ?? next(),
    ),
    /** Where a key is shown instead of a sign-in: only what is refused counts, because many devices share an address. */
    perBadKey: createMiddleware<AppEnv>(async (c, next) => {
      const from = callerAddress(c, proxies);
      const standing = await badKeys.get(from);
      if (standing && standing.consumedPoints >= badKeys.points) return tooMany(c, badKeys, standing);
      await next();
      if (c.res.status === 401) await badKeys.penalty(from);
    }),
  };
}

const counter = (points: number) => new RateLimiterMemory({ points, duration: WINDOW_S });

/** Counts the request and says so in the fields of draft-ietf-httpapi-ratelimit-headers; the refusal where it is one too many. */
async function over(c: Context<AppEnv>, name: string, counted: RateLimiterMemory, of: string) {
  const standing = await counted.consume(of).catch((refused: unknown) => {
    if (refused instanceof Error) throw refused;
    return refused as Standing;
  });
  const headers = {
    "ratelimit-policy": `"${name}";q=${counted.points};w=${WINDOW_S}`,
    ratelimit: `"${name}";r=${standing.remainingPoints};t=${endsInS(standing)}`,
  };
  for (const [field, value] of Object.entries(headers)) c.header(field, value);
  if (standing.consumedPoints <= counted.points) return undefined;
  const refusal = tooMany(c, counted, standing);
  for (const [field, value] of Object.entries(headers)) refusal.headers.set(field, value);
  return refusal;
}

type Standing = Awaited<ReturnType<RateLimiterMemory["consume"]>>;
const endsInS = ({ msBeforeNext }: Standing): number => Math.ceil(msBeforeNext / 1000);

function tooMany(c: Context<AppEnv>, { points }: RateLimiterMemory, standing: Standing): Response {
  const refusal = problem(c, 429, `At most ${points} requests a minute are answered.`);
  refusal.headers.set("retry-after", String(endsInS(standing)));
  return refusal;
}

import { countAttempt, forgetAttempts, type Limit, type Standing } from "@pith/services";
import type { Context } from "hono";
import { HTTPException } from "hono/http-exception";
import type { AppDeps, AppEnv } from "../env.ts";
import { problem } from "../problems.ts";
import { callerAddress } from "./caller.ts";

/**
 * How often somebody may try. By network address generously, because an office shares one; by e-mail address tightly,
 * and for an unknown one just the same.
 */

const MINUTE_S = 60;
const QUARTER_S = 15 * MINUTE_S;

export type Tries = ReturnType<typeof triesOf>;

export function triesOf({ secret, now, proxies }: Pick<AppDeps, "secret" | "now" | "proxies">) {
  const network = (c: Context<AppEnv>, name: string, most: number): Limit => ({
    name: `${name}-network`,
    most,
    withinS: MINUTE_S,
    of: callerAddress(c, proxies),
  });
  const person = (name: string, most: number, of: string): Limit => ({
    name: `${name}-person`,
    most,
    withinS: QUARTER_S,
    of: of.toLowerCase(),
  });

  /** Counts the attempt; throws the refusal where it is one too many. */
  async function count(c: Context<AppEnv>, limits: Limit[]): Promise<void> {
    const standings = await countAttempt(c.get("connections").authDb, secret, now(), limits);
    const headers = headersOf(standings);
    for (const [name, value] of Object.entries(headers)) c.header(name, value);
    const over = standings.filter((s) => s.over);
    if (over.length === 0) return;
    const res = problem(c, 429, "Too many attempts. Wait a while and try again.");
    for (const [name, value] of Object.entries(headers)) res.headers.set(name, value);
    res.headers.set("retry-after", String(Math.max(...over.map((s) => s.endsInS))));
    throw new HTTPException(429, { res });
  }

  return {
    signingIn: (c: Context<AppEnv>, email: string) =>
      count(c, [network(c, "sign-in", 60), person("sign-in", 10, email)]),
    code: (c: Context<AppEnv>) => count(c, [network(c, "code", 30)]),
    letter: (c: Context<AppEnv>, email: string) =>
      count(c, [network(c, "letter", 20), person("letter", 5, email)]),
    token: (c: Context<AppEnv>) => count(c, [network(c, "token", 60)]),
    password: (c: Context<AppEnv>, userId: string) => count(c, [person("password", 10, userId)]),
    /** Whoever got in has not been guessing. */
    gotIn: (c: Context<AppEnv>, email: string) =>
      forgetAttempts(c.get("connections").authDb, secret, person("sign-in", 10, email)),
  };
}

/** The fields of the IETF's draft of rate limit headers (draft-ietf-httpapi-ratelimit-headers). */
const headersOf = (standings: Standing[]): Record<string, string> => ({
  "ratelimit-policy": standings.map((s) => `"${s.name}";q=${s.most};w=${s.withinS}`).join(", "),
  ratelimit: standings.map((s) => `"${s.name}";r=${s.left};t=${s.endsInS}`).join(", "),
});

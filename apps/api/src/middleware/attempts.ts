import { countAttempt, forgetAttempts, type Limit, type Standing } from "@pith/services";
import type { Context } from "hono";
import { HTTPException } from "hono/http-exception";
import type { AppDeps, AppEnv } from "../env.ts";
import { problem } from "../problems.ts";
import { callerAddress } from "./caller.ts";

/**
 * How often somebody may try. By network address generously, because an office shares one; by e-mail address from one
 * network tightly, and from anywhere ten times as often, so that a stranger who types somebody's address does not lock
 * them out. An unknown address is counted just the same.
 */

const MINUTE_S = 60;
const QUARTER_S = 15 * MINUTE_S;
const DAY_S = 24 * 60 * MINUTE_S;
const SIGN_INS = 10;
const LETTERS = 5;
/** An office writes to whatever address it types in, so its letters are few (common practice). */
const INVITATIONS = { ofOffice: 100, toOne: 3 };

/** The refusal of one attempt too many. */
export class TooMany extends HTTPException {
  /** Whether it is the first at an address: worth writing down once, where the rest could fill what only grows. */
  readonly firstOfAddress: boolean;
  constructor(res: Response, firstOfAddress: boolean) {
    super(429, { res });
    this.firstOfAddress = firstOfAddress;
  }
}

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
  const here = (c: Context<AppEnv>, name: string, most: number, email: string): Limit => ({
    ...person(name, most, `${callerAddress(c, proxies)} ${email}`),
    name: `${name}-here`,
  });

  /** Counts the attempt; throws the refusal where it is one too many. */
  async function count(
    c: Context<AppEnv>,
    limits: Limit[],
    said = "Too many attempts. Wait a while and try again.",
  ): Promise<void> {
    const standings = await countAttempt(c.get("connections").authDb, secret, now(), limits);
    const headers = headersOf(standings);
    for (const [name, value] of Object.entries(headers)) c.header(name, value);
    const over = standings.filter((s) => s.over);
    if (over.length === 0) return;
    const res = problem(c, 429, said);
    for (const [name, value] of Object.entries(headers)) res.headers.set(name, value);
    res.headers.set("retry-after", String(Math.max(...over.map((s) => s.endsInS))));
    throw new TooMany(
      res,
      over.some((s) => s.justOver && !s.name.endsWith("-network")),
    );
  }

  return {
    signingIn: (c: Context<AppEnv>, email: string) =>
      count(c, [
        network(c, "sign-in", 60),
        here(c, "sign-in", SIGN_INS, email),
        person("sign-in", 10 * SIGN_INS, email),
      ]),
    code: (c: Context<AppEnv>) => count(c, [network(c, "code", 30)]),
    letter: (c: Context<AppEnv>, email: string) =>
      count(c, [
        network(c, "letter", 20),
        here(c, "letter", LETTERS, email),
        person("letter", 10 * LETTERS, email),
      ]),
    invitation: (c: Context<AppEnv>, officeId: string, email: string) =>
      count(
        c,
        [
          { name: "invitation-office", most: INVITATIONS.ofOffice, withinS: DAY_S, of: officeId },
          { name: "invitation-person", most: INVITATIONS.toOne, withinS: DAY_S, of: email.toLowerCase() },
        ],
        `In a day at most ${INVITATIONS.ofOffice} invitations leave an office, and ${INVITATIONS.toOne} go to one address. Write again tomorrow.`,
      ),
    token: (c: Context<AppEnv>) => count(c, [network(c, "token", 60)]),
    password: (c: Context<AppEnv>, userId: string) => count(c, [person("password", 10, userId)]),
    /** Whoever got in has not been guessing. */
    async gotIn(c: Context<AppEnv>, email: string): Promise<void> {
      const { authDb } = c.get("connections");
      await forgetAttempts(authDb, secret, here(c, "sign-in", SIGN_INS, email));
      await forgetAttempts(authDb, secret, person("sign-in", 10 * SIGN_INS, email));
    },
  };
}

/** The fields of the IETF's draft of rate limit headers (draft-ietf-httpapi-ratelimit-headers). */
const headersOf = (standings: Standing[]): Record<string, string> => ({
  "ratelimit-policy": standings.map((s) => `"${s.name}";q=${s.most};w=${s.withinS}`).join(", "),
  ratelimit: standings.map((s) => `"${s.name}";r=${s.left};t=${s.endsInS}`).join(", "),
});

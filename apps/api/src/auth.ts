import { type BetterAuthOptions, betterAuth } from "better-auth";

/** What the sign-in library needs to know; the entry file fills it. */
export interface AuthDeps {
  database: BetterAuthOptions["database"];
  secret: string;
  /** Where this API answers, as its callers see it. */
  baseUrl: string;
  /** Origins a browser may sign in from. */
  trustedOrigins: string[];
}

/** E-mail and password, sessions in the database. Nobody signs themselves up: people are added by an office. */
export function createAuth(deps: AuthDeps) {
  return betterAuth({
    appName: "Pith",
    basePath: "/v1/auth",
    baseURL: deps.baseUrl,
    secret: deps.secret,
    trustedOrigins: deps.trustedOrigins,
    database: deps.database,
    emailAndPassword: { enabled: true, disableSignUp: true, minPasswordLength: 10, maxPasswordLength: 200 },
    session: { expiresIn: 60 * 60 * 24 * 30, updateAge: 60 * 60 * 24 },
    advanced: {
      cookiePrefix: "pith",
      database: { generateId: "uuid" },
      defaultCookieAttributes: { sameSite: "lax", httpOnly: true },
    },
    // The dashboard signs people in from one address, so the limit is per address and generous; a person who guesses
    // is slowed by the cost of each hash as well.
    rateLimit: {
      enabled: true,
      window: 60,
      max: 300,
      customRules: { "/sign-in/email": { window: 60, max: 60 } },
    },
    // Its warnings say that somebody mistyped a password, which the line of the request says already.
    logger: { level: "error" },
    telemetry: { enabled: false },
  });
}

export type Auth = ReturnType<typeof createAuth>;

import {
  type AuthDb,
  accountOf,
  CONFIRM_LASTS_HOURS,
  confirmLetter,
  LINK_LASTS_MINUTES,
  linkTo,
  type Post,
  RESET_LASTS_MINUTES,
  resetLetter,
  signInLetter,
} from "@pith/services";
import { betterAuth } from "better-auth";
import { drizzleAdapter } from "better-auth/adapters/drizzle";
import { magicLink } from "better-auth/plugins/magic-link";
import { twoFactor } from "better-auth/plugins/two-factor";

/** What the sign-in library needs to know; the entry file fills it. */
export interface AuthDeps {
  authDb: AuthDb;
  post: Post;
  secret: string;
  /** Where this API answers, as its callers see it. */
  baseUrl: string;
  /** Origins a browser may sign in from. */
  trustedOrigins: string[];
}

const MINUTE_S = 60;
const DAY_S = 24 * 3600;

/**
 * E-mail and password, links by mail, a second step by codes that depend on the time (RFC 6238), sessions in the
 * database. Nobody signs themselves up: people come by an office's invitation. None of this is reachable by itself: the
 * routes of signIn.ts and account.ts hand on what they let through.
 */
export function createAuth({ authDb, post, secret, baseUrl, trustedOrigins }: AuthDeps) {
  return betterAuth({
    appName: "Pith",
    basePath: "/v1/auth",
    baseURL: baseUrl,
    secret,
    trustedOrigins,
    database: drizzleAdapter(authDb.drizzle, { provider: "pg", schema: authDb.tables }),
    emailAndPassword: {
      enabled: true,
      disableSignUp: true,
      requireEmailVerification: true,
      minPasswordLength: 10,
      maxPasswordLength: 200,
      resetPasswordTokenExpiresIn: RESET_LASTS_MINUTES * MINUTE_S,
      revokeSessionsOnPasswordReset: true,
      sendResetPassword: ({ user, token }) =>
        post.queue(resetLetter(user.email, linkTo(post, "/sign-in/new-password", token))),
    },
    emailVerification: {
      sendOnSignIn: true,
      expiresIn: CONFIRM_LASTS_HOURS * 3600,
      sendVerificationEmail: ({ user, token }) =>
        post.queue(confirmLetter(user.email, linkTo(post, "/sign-in/confirm", token))),
    },
    verification: { storeIdentifier: "hashed" },
    session: { expiresIn: 30 * DAY_S, updateAge: DAY_S },
    advanced: {
      cookiePrefix: "pith",
      database: { generateId: "uuid" },
      defaultCookieAttributes: { sameSite: "lax", httpOnly: true },
    },
    // Attempts are counted by the routes: by network address and by e-mail address, with the standard headers.
    rateLimit: { enabled: false },
    plugins: [
      magicLink({
        disableSignUp: true,
        expiresIn: LINK_LASTS_MINUTES * MINUTE_S,
        sendMagicLink: async ({ email, token }) => {
          const account = await accountOf(authDb, email);
          if (account) await post.queue(signInLetter(account.email, linkTo(post, "/sign-in/link", token)));
        },
      }),
      secondStepForLinksToo(
        twoFactor({
          issuer: "Pith",
          allowPasswordless: true,
          backupCodeOptions: { storeBackupCodes: "encrypted" },
        }),
      ),
    ],
    // Its warnings say that somebody mistyped a password, which the line of the request says already.
    logger: { level: "error" },
    telemetry: { enabled: false },
  });
}

/** The library asks for the second step after a password alone; whoever reads a stolen mailbox shall meet it as well. */
function secondStepForLinksToo<P extends ReturnType<typeof twoFactor>>(plugin: P): P {
  const [asks] = plugin.hooks.after;
  if (!asks || plugin.hooks.after.length !== 1)
    throw new Error("the sign-in library asks for a second step elsewhere");
  const { matcher } = asks;
  asks.matcher = (context) => matcher(context) || context.path === "/magic-link/verify";
  return plugin;
}

export type Auth = ReturnType<typeof createAuth>;

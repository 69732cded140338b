import { signInRoutes } from "@pith/contract";
import { acceptInvitation, accountOf, readInvitation, recordPersonEvent } from "@pith/services";
import type { Context } from "hono";
import type { App, AppDeps, AppEnv } from "../env.ts";
import { TooMany, triesOf } from "../middleware/attempts.ts";
import { afterwards, askLibrary, refuse, type Said, visitor } from "./library.ts";

/**
 * The ways in. A refusal is the same for a wrong password, an address nobody has and one that is not confirmed yet; who
 * asks for a letter is answered before anybody looks whether the address is known.
 */
export function signInRoutesOf(app: App, deps: AppDeps) {
  const { now, log, proxies } = deps;
  const tries = triesOf(deps);
  type C = Context<AppEnv>;
  const ask = (c: C, method: "GET" | "POST", path: string, body?: object) =>
    askLibrary(c, proxies, method, path, body);

  /** The audit of the offices of whoever has that address, if anybody has. */
  const refusedLater = (c: C, email: string, reason: string) =>
    afterwards(c, log, async () => {
      const account = await accountOf(c.get("connections").authDb, email);
      if (account) {
        await recordPersonEvent(visitor(c, now, account.id), {
          action: "sign-in.refused",
          detail: { reason },
        });
      }
    });
  const signedIn = async (c: C, said: Said, by: string) => {
    if (said.body.twoFactorRedirect === true) return c.json({ signedIn: false }, 200);
    const { id } = said.body.user as { id: string };
    await recordPersonEvent(visitor(c, now, id), { action: "sign-in", detail: { by } });
    return c.json({ signedIn: true }, 200);
  };

  app.openapi(signInRoutes.signInWithPassword, async (c) => {
    const { email, password } = c.req.valid("json");
    try {
      await tries.signingIn(c, email);
    } catch (error) {
      if (error instanceof TooMany && error.firstOfAddress) refusedLater(c, email, "too-many");
      throw error;
    }
    const said = await ask(c, "POST", "/sign-in/email", { email, password });
    if (!said.ok) {
      refusedLater(c, email, said.code === "EMAIL_NOT_VERIFIED" ? "not-confirmed" : "wrong-password");
      refuse(c, 401, "E-mail address or password is wrong, or the address is not confirmed yet.");
    }
    await tries.gotIn(c, email);
    return signedIn(c, said, "password");
  });

  app.openapi(signInRoutes.signInWithCode, async (c) => {
    await tries.code(c);
    const { code, kind, rememberBrowser } = c.req.valid("json");
    const path = kind === "app" ? "/two-factor/verify-totp" : "/two-factor/verify-backup-code";
    const who = await challenged(c);
    const said = await ask(c, "POST", path, { code, trustDevice: rememberBrowser === true });
    if (said.ok) return signedIn(c, said, kind === "app" ? "code" : "kept-code");
    if (who) {
      afterwards(c, log, () =>
        recordPersonEvent(visitor(c, now, who), {
          action: "sign-in.refused",
          detail: { reason: said.status === 429 ? "locked" : "wrong-code" },
        }),
      );
    }
    if (said.status === 429)
      refuse(c, 429, "Too many wrong codes. Wait a quarter of an hour and sign in again.");
    if (said.code === "INVALID_CODE" || said.code === "INVALID_BACKUP_CODE")
      refuse(c, 401, "The code is wrong.");
    return refuse(c, 401, "Begin again with your address: the first step has run out.");
  });

  app.openapi(signInRoutes.askForLink, async (c) => {
    const { email } = c.req.valid("json");
    await tries.letter(c, email);
    afterwards(c, log, () => ask(c, "POST", "/sign-in/magic-link", { email: email.toLowerCase() }));
    return c.json({ done: true as const }, 200);
  });

  app.openapi(signInRoutes.signInWithLink, async (c) => {
    await tries.token(c);
    const { token } = c.req.valid("json");
    const said = await ask(c, "GET", `/magic-link/verify?token=${encodeURIComponent(token)}`);
    if (!said.ok) refuse(c, 401, "The link was used already or has run out. Ask for a new one.");
    return signedIn(c, said, "link");
  });

  app.openapi(signInRoutes.signOut, async (c) => {
    const { auth } = c.get("connections");
    const session = await auth.api.getSession({ headers: c.req.raw.headers });
    await ask(c, "POST", "/sign-out", {});
    if (session) await recordPersonEvent(visitor(c, now, session.user.id), { action: "sign-out" });
    return c.json({ done: true as const }, 200);
  });

  app.openapi(signInRoutes.forgotPassword, async (c) => {
    const { email } = c.req.valid("json");
    await tries.letter(c, email);
    afterwards(c, log, () => ask(c, "POST", "/request-password-reset", { email: email.toLowerCase() }));
    return c.json({ done: true as const }, 200);
  });

  app.openapi(signInRoutes.resetPassword, async (c) => {
    await tries.token(c);
    const { token, newPassword } = c.req.valid("json");
    const { auth } = c.get("connections");
    const { internalAdapter } = await auth.$context;
    const asked = await internalAdapter.findVerificationValue(`reset-password:${token}`);
    const said = await ask(c, "POST", "/reset-password", { token, newPassword });
    if (!said.ok || !asked)
      return refuse(c, 401, "The link was used already or has run out. Ask for a new one.");
    // Whoever had the link reads the mail of that address.
    await internalAdapter.updateUser(asked.value, { emailVerified: true });
    await recordPersonEvent(visitor(c, now, asked.value), { action: "password.reset" });
    return c.json({ done: true as const }, 200);
  });

  app.openapi(signInRoutes.confirmEmail, async (c) => {
    await tries.token(c);
    const { token } = c.req.valid("json");
    const said = await ask(c, "GET", `/verify-email?token=${encodeURIComponent(token)}`);
    if (!said.ok) refuse(c, 401, "The link has run out. Sign in once more to be sent a new one.");
    return c.json({ done: true as const }, 200);
  });

  const door = (c: C) => ({ db: c.get("connections").db, requestId: c.get("requestId"), now });
  app.openapi(signInRoutes.readInvitation, async (c) => {
    await tries.token(c);
    return c.json(await readInvitation(door(c), c.req.valid("json").token), 200);
  });
  app.openapi(signInRoutes.acceptInvitation, async (c) => {
    await tries.token(c);
    const { auth, authDb } = c.get("connections");
    const { password } = await auth.$context;
    await acceptInvitation(door(c), { authDb, hash: password.hash }, c.req.valid("json"));
    return c.json({ done: true as const }, 200);
  });
}

/** What a cookie says, or nothing where it says it in a way that is none. */
function decoded(cookie: string): string | undefined {
  try {
    return decodeURIComponent(cookie);
  } catch {
    return undefined;
  }
}

/** Who is between the two steps, by the cookie of the first. Only for the audit: the library judges the cookie itself. */
async function challenged(c: Context<AppEnv>): Promise<string | null> {
  const signed = /(?:^|;\s*)(?:__Secure-)?pith\.two_factor=([^;]+)/.exec(c.req.header("cookie") ?? "")?.[1];
  if (!signed) return null;
  const identifier = decoded(signed)?.replace(/\.[^.]*$/, "");
  if (!identifier) return null;
  const { internalAdapter } = await c.get("connections").auth.$context;
  return (await internalAdapter.findVerificationValue(identifier))?.value ?? null;
}

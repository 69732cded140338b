import { peopleRoutes } from "@pith/contract";
import {
  endOtherSessionsOf,
  endSessionOf,
  leaveOffice,
  notFound,
  type PersonEvent,
  recordPersonEvent,
  renameAccount,
  renameInOffices,
  sessionsOf,
} from "@pith/services";
import type { Context } from "hono";
import type { App, AppDeps, AppEnv } from "../env.ts";
import { triesOf } from "../middleware/attempts.ts";
import { askLibrary, refuse, refuseField, type Said, visitor } from "./library.ts";

/** A person's own account: what they are called, their password, the second step, where they are signed in. */
export function accountRoutesOf(app: App, deps: AppDeps) {
  const { now, proxies } = deps;
  const tries = triesOf(deps);
  type C = Context<AppEnv>;
  const me = (c: C) => visitor(c, now, c.get("person").id);
  const record = (c: C, action: PersonEvent["action"], detail?: Record<string, unknown>) =>
    recordPersonEvent(me(c), { action, detail });
  const done = { done: true as const };

  /** Asks for something that takes the password, and says so where it is wrong. */
  const withPassword = async (c: C, path: string, body: object): Promise<Said> => {
    await tries.password(c, c.get("person").id);
    const said = await askLibrary(c, proxies, "POST", path, body);
    if (said.ok) return said;
    if (said.code === "INVALID_PASSWORD") return refuseField(c, "password", "is not your password");
    if (said.code === "TOTP_ALREADY_ENABLED") return refuse(c, 409, "The second step is on already.");
    return refuse(c, 409, "There is no second step to change.");
  };

  app.openapi(peopleRoutes.changeMe, async (c) => {
    const { name } = c.req.valid("json");
    await renameAccount(c.get("connections").authDb, c.get("person").id, name);
    await renameInOffices(me(c), name);
    return c.json(done, 200);
  });

  app.openapi(peopleRoutes.changePassword, async (c) => {
    const { password, newPassword } = c.req.valid("json");
    const body = { currentPassword: password, newPassword, revokeOtherSessions: true };
    await withPassword(c, "/change-password", body);
    await record(c, "password.change");
    return c.json(done, 200);
  });

  app.openapi(peopleRoutes.beginSecondStep, async (c) => {
    const { password } = c.req.valid("json");
    const { body } = await withPassword(c, "/two-factor/enable", { password, method: "totp" });
    const uri = String(body.totpURI);
    const secret = new URL(uri).searchParams.get("secret") ?? "";
    return c.json({ uri, secret, backupCodes: body.backupCodes as string[] }, 200);
  });

  app.openapi(peopleRoutes.confirmSecondStep, async (c) => {
    await tries.code(c);
    const { code } = c.req.valid("json");
    const said = await askLibrary(c, proxies, "POST", "/two-factor/verify-totp", { code });
    if (said.code === "TOTP_NOT_ENABLED") refuse(c, 409, "Make a secret first.");
    if (!said.ok) refuseField(c, "code", "is not what the app shows now");
    if (!c.get("person").secondStep) await record(c, "second-step.on");
    return c.json(done, 200);
  });

  app.openapi(peopleRoutes.newBackupCodes, async (c) => {
    const { password } = c.req.valid("json");
    const { body } = await withPassword(c, "/two-factor/generate-backup-codes", { password });
    await record(c, "second-step.codes");
    return c.json({ backupCodes: body.backupCodes as string[] }, 200);
  });

  app.openapi(peopleRoutes.endSecondStep, async (c) => {
    const { password } = c.req.valid("json");
    await withPassword(c, "/two-factor/disable", { password });
    await record(c, "second-step.off");
    return c.json(done, 200);
  });

  app.openapi(peopleRoutes.listSessions, async (c) => {
    const { id, sessionId } = c.get("person");
    const sessions = await sessionsOf(c.get("connections").authDb, id, new Date());
    return c.json(
      {
        sessions: sessions.map((s) => ({
          ...s,
          startedAt: s.startedAt.toISOString(),
          seenAt: s.seenAt.toISOString(),
          endsAt: s.endsAt.toISOString(),
          current: s.id === sessionId,
        })),
      },
      200,
    );
  });

  app.openapi(peopleRoutes.endSession, async (c) => {
    const { id } = c.req.valid("param");
    const ended = await endSessionOf(c.get("connections").authDb, c.get("person").id, id);
    if (!ended) throw notFound("session");
    await record(c, "session.end", { sessions: 1 });
    return c.json(done, 200);
  });

  app.openapi(peopleRoutes.endOtherSessions, async (c) => {
    const { id, sessionId } = c.get("person");
    const ended = await endOtherSessionsOf(c.get("connections").authDb, id, sessionId);
    if (ended > 0) await record(c, "session.end", { sessions: ended });
    return c.json({ ended }, 200);
  });

  app.openapi(peopleRoutes.leaveOffice, async (c) => {
    await leaveOffice(me(c), c.req.valid("param").officeId);
    return c.json(done, 200);
  });
}

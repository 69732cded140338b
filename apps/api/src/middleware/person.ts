import { isStaff, type Language, resolveMemberships, ServiceError } from "@pith/services";
import { createMiddleware } from "hono/factory";
import type { AppDeps, AppEnv } from "../env.ts";
import { problem } from "../problems.ts";

/** Somebody is signed in, or 401. */
export const signedIn = createMiddleware<AppEnv>(async (c, next) => {
  const { auth, db } = c.get("connections");
  const session = await auth.api.getSession({ headers: c.req.raw.headers });
  if (!session) return problem(c, 401, "Sign in first.");
  const { id, name, email, twoFactorEnabled } = session.user;
  const secondStep = twoFactorEnabled === true;
  c.set("person", { id, name, email, secondStep, sessionId: session.session.id });
  c.set("memberships", await resolveMemberships(db, id));
  await next();
  // What a person may see is theirs: nothing between may keep it for the next one.
  c.header("cache-control", "no-store");
});

/** The person's place in the office of the path. An office one is not in and one that is not there look the same. */
export const inOffice = (
  {
    now,
    forecastSources,
    ledger,
    delivery,
  }: Pick<AppDeps, "now" | "forecastSources" | "ledger" | "delivery">,
  { own = false } = {},
) =>
  createMiddleware<AppEnv>(async (c, next) => {
    const officeId = c.req.param("officeId") ?? "";
    const membership = c.get("memberships").find((m) => m.officeId === officeId);
    if (!membership) throw new ServiceError("not-found", "Nothing here under that address.");
    if (!own && membership.role === "reader" && c.req.method !== "GET") {
      throw new ServiceError("forbidden", "You may read here and change nothing.");
    }
    const person = c.get("person");
    if (membership.asksSecondStep && !person.secondStep) {
      throw new ServiceError(
        "forbidden",
        "This office asks for a second step at sign-in. Set yours up first.",
      );
    }
    c.set("ctx", {
      db: c.get("connections").db,
      officeId,
      actor: {
        userId: person.id,
        name: person.name,
        role: membership.role,
        farmIds: isStaff(membership.role) ? "*" : membership.farmIds,
      },
      requestId: c.get("requestId"),
      now,
      language: c.get("language") as Language,
      forecastSources,
      ledger,
      delivery,
    });
    await next();
  });

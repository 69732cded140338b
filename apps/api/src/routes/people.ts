import { peopleRoutes } from "@pith/contract";
import {
  askForSecondStep,
  changePerson,
  invite,
  listAudit,
  listInvitations,
  listPeople,
  type Post,
  removePerson,
  resendInvitation,
  revokeInvitation,
} from "@pith/services";
import type { Context } from "hono";
import type { App, AppDeps, AppEnv } from "../env.ts";
import { triesOf } from "../middleware/attempts.ts";

/** The people of an office, whom it has asked in, and what its audit says. */
export function peopleRoutesOf(app: App, deps: AppDeps) {
  const tries = triesOf(deps);
  const invitationsBy = (c: Context<AppEnv>): Post => ({
    ...c.get("connections").post,
    mayWrite: (to) => tries.invitation(c, c.get("ctx").officeId, to),
  });
  const done = { done: true as const };
  app.openapi(peopleRoutes.listPeople, async (c) => c.json(await listPeople(c.get("ctx")), 200));
  app.openapi(peopleRoutes.changePerson, async (c) =>
    c.json(await changePerson(c.get("ctx"), c.req.valid("param").id, c.req.valid("json")), 200),
  );
  app.openapi(peopleRoutes.removePerson, async (c) => {
    await removePerson(c.get("ctx"), c.req.valid("param").id);
    return c.json(done, 200);
  });
  app.openapi(peopleRoutes.askForSecondStep, async (c) => {
    await askForSecondStep(c.get("ctx"), c.req.valid("json"));
    return c.json(done, 200);
  });
  app.openapi(peopleRoutes.listInvitations, async (c) => c.json(await listInvitations(c.get("ctx")), 200));
  app.openapi(peopleRoutes.invite, async (c) =>
    c.json(await invite(c.get("ctx"), invitationsBy(c), c.req.valid("json")), 201),
  );
  app.openapi(peopleRoutes.resendInvitation, async (c) =>
    c.json(await resendInvitation(c.get("ctx"), invitationsBy(c), c.req.valid("param").id), 200),
  );
  app.openapi(peopleRoutes.revokeInvitation, async (c) => {
    await revokeInvitation(c.get("ctx"), c.req.valid("param").id);
    return c.json(done, 200);
  });
  app.openapi(peopleRoutes.listAudit, async (c) =>
    c.json(await listAudit(c.get("ctx"), c.req.valid("query")), 200),
  );
}

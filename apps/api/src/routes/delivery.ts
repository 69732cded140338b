import { deliveryRoutes } from "@pith/contract";
import {
  addBrowser,
  changeDelivery,
  getDelivery,
  listCalls,
  markCalled,
  removeBrowser,
  stopMail,
} from "@pith/services";
import type { App, AppDeps } from "../env.ts";
import { inOffice } from "../middleware/person.ts";

/** How people are told, whom to call, and the way out of mail that needs no signing in. */
export function deliveryRoutesOf(app: App, deps: AppDeps) {
  const { now } = deps;
  // A person's own things in an office: a reader, who changes nothing there, changes these.
  for (const own of ["delivery", "browsers/*", "farms/*"]) {
    app.use(`/v1/me/offices/:officeId/${own}`, inOffice(deps, { own: true }));
  }
  app.openapi(deliveryRoutes.getDelivery, async (c) =>
    c.json(await getDelivery(c.get("ctx"), c.get("person").email), 200),
  );
  app.openapi(deliveryRoutes.changeDelivery, async (c) =>
    c.json(await changeDelivery(c.get("ctx"), c.get("person").email, c.req.valid("json")), 200),
  );
  app.openapi(deliveryRoutes.addBrowser, async (c) =>
    c.json(await addBrowser(c.get("ctx"), c.get("person").email, c.req.valid("json")), 201),
  );
  app.openapi(deliveryRoutes.removeBrowser, async (c) =>
    c.json(await removeBrowser(c.get("ctx"), c.req.valid("param").browserId), 200),
  );
  app.openapi(deliveryRoutes.stopMail, async (c) =>
    c.json(await stopMail(c.get("connections").db, now, c.req.valid("param").secret), 200),
  );
  app.openapi(deliveryRoutes.listCalls, async (c) => c.json(await listCalls(c.get("ctx")), 200));
  app.openapi(deliveryRoutes.markCalled, async (c) =>
    c.json(await markCalled(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 200),
  );
}

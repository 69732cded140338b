import { bedPlanRoutes } from "@pith/contract";
import { adoptBedPlan, getBedPlan, keepBedPlan } from "@pith/services";
import type { App } from "../env.ts";

/** A season's plantings placed on the beds of a site. */
export function bedPlanRoutesOf(app: App) {
  app.openapi(bedPlanRoutes.getBedPlan, async (c) => {
    const { farmId, siteId, season } = c.req.valid("param");
    return c.json(await getBedPlan(c.get("ctx"), farmId, siteId, season), 200);
  });
  app.openapi(bedPlanRoutes.keepBedPlan, async (c) => {
    const { farmId, siteId, season } = c.req.valid("param");
    return c.json(await keepBedPlan(c.get("ctx"), farmId, siteId, season, c.req.valid("json")), 200);
  });
  app.openapi(bedPlanRoutes.adoptBedPlan, async (c) => {
    const { farmId, siteId, season } = c.req.valid("param");
    return c.json(await adoptBedPlan(c.get("ctx"), farmId, siteId, season, c.req.valid("json")), 200);
  });
}

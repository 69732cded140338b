import { guideRoutes } from "@pith/contract";
import { addGuide, getGuide, listGuides, retireGuide } from "@pith/services";
import type { App } from "../env.ts";

/** The tables that soil tests are read by. */
export function guideRoutesOf(app: App) {
  app.openapi(guideRoutes.getGuide, async (c) => c.json(getGuide(c.req.valid("param").guideId), 200));
  app.openapi(guideRoutes.listGuides, async (c) => c.json(await listGuides(c.get("ctx")), 200));
  app.openapi(guideRoutes.addGuide, async (c) =>
    c.json(await addGuide(c.get("ctx"), c.req.valid("json")), 201),
  );
  app.openapi(guideRoutes.retireGuide, async (c) =>
    c.json(await retireGuide(c.get("ctx"), c.req.valid("param").id), 200),
  );
}

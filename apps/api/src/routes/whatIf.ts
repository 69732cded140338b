import { whatIfRoutes } from "@pith/contract";
import { draftWhatIf, getWhatIf, letGoWhatIf } from "@pith/services";
import type { App } from "../env.ts";

/** What an agent tries on a planting. */
export function whatIfRoutesOf(app: App) {
  app.openapi(whatIfRoutes.getWhatIf, async (c) =>
    c.json(await getWhatIf(c.get("ctx"), c.req.valid("param")), 200),
  );
  app.openapi(whatIfRoutes.draftWhatIf, async (c) =>
    c.json(await draftWhatIf(c.get("ctx"), c.req.valid("param"), c.req.valid("json")), 200),
  );
  app.openapi(whatIfRoutes.letGoWhatIf, async (c) =>
    c.json(await letGoWhatIf(c.get("ctx"), c.req.valid("param")), 200),
  );
}

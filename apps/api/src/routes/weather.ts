import { weatherRoutes } from "@pith/contract";
import { pullForecasts } from "@pith/services";
import type { App } from "../env.ts";

/** Weather that comes in by itself. */
export function weatherRoutesOf(app: App) {
  app.openapi(weatherRoutes.pullForecasts, async (c) =>
    c.json(await pullForecasts(c.get("ctx"), c.req.valid("json")), 200),
  );
}

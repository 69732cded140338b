import { jobRoutes } from "@pith/contract";
import { getRun, listRuns, retryRun, wantRun } from "@pith/services";
import type { App } from "../env.ts";

/** Work in the background. Wanting it is SQL alone, so that the edge can; doing it is a worker's. */
export function jobRoutesOf(app: App) {
  app.openapi(jobRoutes.listRuns, async (c) =>
    c.json(await listRuns(c.get("ctx"), c.req.valid("query")), 200),
  );
  app.openapi(jobRoutes.getRun, async (c) =>
    c.json(await getRun(c.get("ctx"), c.req.valid("param").id), 200),
  );
  app.openapi(jobRoutes.wantRun, async (c) => c.json(await wantRun(c.get("ctx"), c.req.valid("json")), 202));
  app.openapi(jobRoutes.retryRun, async (c) =>
    c.json(await retryRun(c.get("ctx"), c.req.valid("param").id), 202),
  );
}

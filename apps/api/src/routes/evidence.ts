import { evidenceRoutes } from "@pith/contract";
import { addOwnEvidence, getWorthMeasuring, listOwnEvidence, retireOwnEvidence } from "@pith/services";
import type { App } from "../env.ts";

/** An office's own evidence, and what would be worth measuring. */
export function evidenceRoutesOf(app: App) {
  app.openapi(evidenceRoutes.listOwnEvidence, async (c) => c.json(await listOwnEvidence(c.get("ctx")), 200));
  app.openapi(evidenceRoutes.addOwnEvidence, async (c) =>
    c.json(await addOwnEvidence(c.get("ctx"), c.req.valid("json")), 201),
  );
  app.openapi(evidenceRoutes.retireOwnEvidence, async (c) =>
    c.json(await retireOwnEvidence(c.get("ctx"), c.req.valid("param").id), 200),
  );
  app.openapi(evidenceRoutes.getWorthMeasuring, async (c) =>
    c.json(await getWorthMeasuring(c.get("ctx"), c.req.valid("param").farmId), 200),
  );
}

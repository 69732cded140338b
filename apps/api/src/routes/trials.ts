import { trialRoutes } from "@pith/contract";
import {
  addTrial,
  changeTrial,
  getTrial,
  keepPlotValues,
  listTrials,
  removeTrial,
  trialAsEvidence,
} from "@pith/services";
import type { App } from "../env.ts";

/** Comparisons on a farm. */
export function trialRoutesOf(app: App) {
  app.openapi(trialRoutes.listTrials, async (c) =>
    c.json(await listTrials(c.get("ctx"), c.req.valid("param").farmId), 200),
  );
  app.openapi(trialRoutes.addTrial, async (c) =>
    c.json(await addTrial(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(trialRoutes.getTrial, async (c) => {
    const { farmId, trialId } = c.req.valid("param");
    return c.json(await getTrial(c.get("ctx"), farmId, trialId), 200);
  });
  app.openapi(trialRoutes.changeTrial, async (c) => {
    const { farmId, trialId } = c.req.valid("param");
    return c.json(await changeTrial(c.get("ctx"), farmId, trialId, c.req.valid("json")), 200);
  });
  app.openapi(trialRoutes.removeTrial, async (c) => {
    const { farmId, trialId } = c.req.valid("param");
    return c.json(await removeTrial(c.get("ctx"), farmId, trialId), 200);
  });
  app.openapi(trialRoutes.keepPlotValues, async (c) => {
    const { farmId, trialId } = c.req.valid("param");
    return c.json(await keepPlotValues(c.get("ctx"), farmId, trialId, c.req.valid("json")), 200);
  });
  app.openapi(trialRoutes.trialAsEvidence, async (c) => {
    const { farmId, trialId } = c.req.valid("param");
    return c.json(await trialAsEvidence(c.get("ctx"), farmId, trialId, c.req.valid("json")), 201);
  });
}

import { importRoutes } from "@pith/contract";
import {
  discardImport,
  forgetLabMapping,
  getImport,
  listImports,
  listLabMappings,
  previewImport,
  refusedCsv,
  saveImport,
} from "@pith/services";
import type { App, AppDeps } from "../env.ts";
import { asLines, wantsLines } from "../lines.ts";

/** Files in: read, shown, and only then saved. */
export function importRoutesOf(app: App, log: AppDeps["log"]) {
  app.openapi(importRoutes.previewImport, async (c) => {
    const [ctx, { farmId }, file] = [c.get("ctx"), c.req.valid("param"), c.req.valid("json")];
    if (wantsLines(c)) return asLines(c, 201, log, (watch) => previewImport(ctx, farmId, file, watch));
    return c.json(await previewImport(ctx, farmId, file), 201);
  });
  app.openapi(importRoutes.listImports, async (c) =>
    c.json(await listImports(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("query")), 200),
  );
  app.openapi(importRoutes.getImport, async (c) => {
    const { farmId, importId } = c.req.valid("param");
    return c.json(await getImport(c.get("ctx"), farmId, importId), 200);
  });
  app.openapi(importRoutes.saveImport, async (c) => {
    const [ctx, { farmId, importId }] = [c.get("ctx"), c.req.valid("param")];
    if (wantsLines(c)) return asLines(c, 200, log, (watch) => saveImport(ctx, farmId, importId, watch));
    return c.json(await saveImport(ctx, farmId, importId), 200);
  });
  app.openapi(importRoutes.discardImport, async (c) => {
    const { farmId, importId } = c.req.valid("param");
    return c.json(await discardImport(c.get("ctx"), farmId, importId), 200);
  });
  app.openapi(importRoutes.getRefused, async (c) => {
    const { farmId, importId } = c.req.valid("param");
    c.header("content-type", "text/csv; charset=utf-8");
    c.header("content-disposition", 'attachment; filename="refused.csv"');
    return c.body(await refusedCsv(c.get("ctx"), farmId, importId), 200);
  });
  app.openapi(importRoutes.listLabMappings, async (c) => c.json(await listLabMappings(c.get("ctx")), 200));
  app.openapi(importRoutes.forgetLabMapping, async (c) =>
    c.json(await forgetLabMapping(c.get("ctx"), c.req.valid("param").lab), 200),
  );
}

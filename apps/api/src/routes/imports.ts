import { importRoutes } from "@pith/contract";
import { discardImport, getImport, listImports, previewImport, saveImport } from "@pith/services";
import type { App } from "../env.ts";

/** Files in: read, shown, and only then saved. */
export function importRoutesOf(app: App) {
  app.openapi(importRoutes.previewImport, async (c) =>
    c.json(await previewImport(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(importRoutes.listImports, async (c) =>
    c.json(await listImports(c.get("ctx"), c.req.valid("param").farmId), 200),
  );
  app.openapi(importRoutes.getImport, async (c) => {
    const { farmId, importId } = c.req.valid("param");
    return c.json(await getImport(c.get("ctx"), farmId, importId), 200);
  });
  app.openapi(importRoutes.saveImport, async (c) => {
    const { farmId, importId } = c.req.valid("param");
    return c.json(await saveImport(c.get("ctx"), farmId, importId), 200);
  });
  app.openapi(importRoutes.discardImport, async (c) => {
    const { farmId, importId } = c.req.valid("param");
    return c.json(await discardImport(c.get("ctx"), farmId, importId), 200);
  });
}

import { seasonRecordRoutes } from "@pith/contract";
import { getSeasonRecord, getSeasonTable } from "@pith/services";
import type { App } from "../env.ts";

/** What beds and lots saw in a season. */
export function seasonRecordRoutesOf(app: App) {
  app.openapi(seasonRecordRoutes.getSeasonRecord, async (c) =>
    c.json(await getSeasonRecord(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("query")), 200),
  );
  app.openapi(seasonRecordRoutes.getSeasonTable, async (c) => {
    const { fileName, csv } = await getSeasonTable(
      c.get("ctx"),
      c.req.valid("param").farmId,
      c.req.valid("query"),
    );
    c.header("content-type", "text/csv; charset=utf-8; header=present");
    c.header("content-disposition", `attachment; filename="${fileName}"`);
    return c.body(csv, 200);
  });
}

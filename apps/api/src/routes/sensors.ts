import { sensorRoutes } from "@pith/contract";
import {
  addSensorKey,
  addSeries,
  changeSensorKey,
  changeSeries,
  csvOf,
  getReadingDays,
  getReadingHours,
  getReadings,
  listSensorKeys,
  listSeries,
  revokeSensorKey,
  rotateSensorKey,
} from "@pith/services";
import type { Context } from "hono";
import type { App } from "../env.ts";

/** Series and keys, for people. */
export function sensorRoutesOf(app: App) {
  app.openapi(sensorRoutes.listSeries, async (c) =>
    c.json(await listSeries(c.get("ctx"), c.req.valid("param").farmId), 200),
  );
  app.openapi(sensorRoutes.addSeries, async (c) =>
    c.json(await addSeries(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(sensorRoutes.changeSeries, async (c) => {
    const { farmId, seriesId } = c.req.valid("param");
    return c.json(await changeSeries(c.get("ctx"), farmId, seriesId, c.req.valid("json")), 200);
  });
  app.openapi(sensorRoutes.listSensorKeys, async (c) =>
    c.json(await listSensorKeys(c.get("ctx"), c.req.valid("param").farmId), 200),
  );
  app.openapi(sensorRoutes.addSensorKey, async (c) =>
    c.json(await addSensorKey(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(sensorRoutes.changeSensorKey, async (c) => {
    const { farmId, keyId } = c.req.valid("param");
    return c.json(await changeSensorKey(c.get("ctx"), farmId, keyId, c.req.valid("json")), 200);
  });
  app.openapi(sensorRoutes.rotateSensorKey, async (c) => {
    const { farmId, keyId } = c.req.valid("param");
    return c.json(await rotateSensorKey(c.get("ctx"), farmId, keyId, c.req.valid("json")), 201);
  });
  app.openapi(sensorRoutes.revokeSensorKey, async (c) => {
    const { farmId, keyId } = c.req.valid("param");
    return c.json(await revokeSensorKey(c.get("ctx"), farmId, keyId), 200);
  });
  app.openapi(sensorRoutes.getReadings, async (c) => {
    const { farmId, seriesId } = c.req.valid("param");
    const query = c.req.valid("query");
    const page = await getReadings(c.get("ctx"), farmId, seriesId, query);
    if (query.format === "json") return c.json(page, 200);
    const rows = page.readings.map((r) => ({ ...r, flags: r.flags.join(" ") }));
    return asCsv(c, ["at", "value", "flags", "receivedAt"], rows, page.next);
  });
  app.openapi(sensorRoutes.getReadingHours, async (c) => {
    const { farmId, seriesId } = c.req.valid("param");
    const query = c.req.valid("query");
    const said = await getReadingHours(c.get("ctx"), farmId, seriesId, query);
    return query.format === "json" ? c.json(said, 200) : asCsv(c, ["hour", ...SUMMED], said.hours);
  });
  app.openapi(sensorRoutes.getReadingDays, async (c) => {
    const { farmId, seriesId } = c.req.valid("param");
    const query = c.req.valid("query");
    const said = await getReadingDays(c.get("ctx"), farmId, seriesId, query);
    return query.format === "json" ? c.json(said, 200) : asCsv(c, ["day", "hours", ...SUMMED], said.days);
  });
}

const SUMMED = ["readings", "flagged", "lowest", "highest", "mean", "total"];

/** As a file; where there is more, the next page is named as links are (RFC 8288). */
function asCsv(c: Context, columns: readonly string[], rows: readonly object[], next?: string | null) {
  if (next) {
    const page = new URL(c.req.url);
    page.searchParams.set("after", next);
    c.header("link", `<${page.pathname}${page.search}>; rel="next"`);
  }
  c.header("content-type", "text/csv; charset=utf-8; header=present");
  c.header("content-disposition", 'attachment; filename="readings.csv"');
  return c.body(csvOf(columns, rows), 200) as never;
}

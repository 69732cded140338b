import { createServer } from "node:http";
import { getRequestListener } from "@hono/node-server";
import { OpenAPIHono } from "@hono/zod-openapi";
import { openDatabase } from "@pith/db";
import type { AppEnv, Connections } from "../../apps/api/src/env.ts";
import { problemOf } from "../../apps/api/src/problems.ts";
import { readingRoutesOf } from "../../apps/api/src/routes/readings.ts";

/** The API's way in for readings in a process of its own, so that it can be killed. Says its port when it is up. */
const [url, port] = process.argv.slice(2);
if (!url) throw new Error("usage: readingsApi <url> [port]");
const db = openDatabase(url, { max: 5 });
const app = new OpenAPIHono<AppEnv>();
app.onError((error, c) => problemOf(error, c, () => {}));
readingRoutesOf(app, { connect: () => ({ db }) as Connections, now: () => new Date() });
const server = createServer(getRequestListener(app.fetch));
server.listen(Number(port ?? 0), "127.0.0.1", () => {
  const address = server.address();
  process.send?.(typeof address === "object" ? address?.port : 0);
});

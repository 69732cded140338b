import { etagOfText, hasTag } from "@pith/services";
import { createMiddleware } from "hono/factory";
import type { AppEnv } from "../env.ts";
import { problem } from "../problems.ts";

/** Where `If-Match` is looked at: the verb compares it inside the transaction that changes the thing. */
const EDITS = [
  /^\/v1\/offices\/[^/]+\/settings$/,
  /^\/v1\/offices\/[^/]+\/farms\/[^/]+$/,
  /^\/v1\/offices\/[^/]+\/farms\/[^/]+\/(sites|valves|beds|structures|plantings|materials)\/[^/]+$/,
];
const isJson = (type: string | null) => /^application\/(?:[\w.]+\+)?json\b/.test(type ?? "");

/** Every JSON that can be read carries a strong tag of its bytes, and is not sent again to who has it. */
export const tagged = createMiddleware<AppEnv>(async (c, next) => {
  const { method, path } = c.req;
  const ifMatch = c.req.header("if-match");
  if (method !== "GET" && ifMatch !== undefined) {
    if (method === "POST" || !EDITS.some((edit) => edit.test(path))) {
      const message = "is not looked at here, so nothing was done";
      return problem(c, 422, `If-Match ${message}.`, [{ field: "If-Match", message, received: ifMatch }]);
    }
    c.set("ctx", { ...c.get("ctx"), ifMatch });
  }
  await next();
  if (method !== "GET" || c.res.status !== 200 || !isJson(c.res.headers.get("content-type"))) return;
  const tag = await etagOfText(await c.res.clone().text());
  c.header("etag", tag);
  const known = c.req.header("if-none-match");
  if (known !== undefined && hasTag(known, tag)) {
    c.res = new Response(null, { status: 304, headers: { etag: tag } });
  }
});

import {
  beginRequest,
  heldBy,
  keepAnswer,
  keyHash,
  letGo,
  openAnswer,
  requestHash,
  sealAnswer,
} from "@pith/services";
import type { Context } from "hono";
import { createMiddleware } from "hono/factory";
import type { AppDeps, AppEnv } from "../env.ts";
import { wantsLines } from "../lines.ts";
import { problem } from "../problems.ts";
import { errorForLog } from "../withoutValues.ts";

/** Visible characters, in quotes or not: the draft writes a quoted string, many clients do not. */
const KEY = /^"?([\x21\x23-\x7e]{8,255})"?$/;
const KEPT_HEADERS = ["content-type", "location", "etag"];

/**
 * `Idempotency-Key` on a POST inside an office: the same request with the same key is done once, and answered again.
 * What a crash leaves behind: nothing changed, and the next try does it; or all of it changed and the answer is lost,
 * which the next try is told.
 */
export const onceOnly = (log: AppDeps["log"]) =>
  createMiddleware<AppEnv>(async (c, next) => {
    const header = c.req.header("idempotency-key");
    // Long work that comes or is answered line by line is not held in memory; its answer is not kept.
    const lines = wantsLines(c) || c.req.header("content-type")?.includes("ndjson");
    if (c.req.method !== "POST" || header === undefined || lines) return next();
    const key = KEY.exec(header)?.[1];
    if (key === undefined) {
      const message = "must be 8 to 255 visible characters";
      return problem(c, 422, `Idempotency-Key: ${message}`, [
        { field: "Idempotency-Key", message, received: header },
      ]);
    }
    const ctx = c.get("ctx");
    const name = await keyHash(key);
    const { pathname, search } = new URL(c.req.url);
    const begun = await beginRequest(
      ctx,
      name,
      await requestHash("POST", pathname + search, await c.req.text()),
    );
    if (begun.kind === "answered") {
      const { status, headers, body } = await openAnswer(key, begun.sealed);
      return new Response(body, { status, headers: { ...headers, "idempotency-replayed": "true" } });
    }
    if (begun.kind !== "go") return refusalOf(c, begun.kind);

    c.set("ctx", heldBy(ctx, name, begun.claim));
    await next();
    try {
      if (c.res.status >= 400) return await letGo(ctx, name, begun.claim);
      const headers: Record<string, string> = {};
      for (const name of KEPT_HEADERS) {
        const value = c.res.headers.get(name);
        if (value !== null) headers[name] = value;
      }
      const answer = {
        status: c.res.status,
        headers,
        body: await c.res.clone().text(),
      };
      await keepAnswer(ctx, name, begun.claim, await sealAnswer(key, answer));
    } catch (error) {
      // It was done all the same, and this try can say so. The next one will hear that the answer is lost.
      const { message } = errorForLog(error);
      log({ level: "error", requestId: ctx.requestId, message: `An answer was not kept: ${message}` });
    }
  });

function refusalOf(c: Context<AppEnv>, kind: "under-way" | "other-request" | "answer-lost"): Response {
  if (kind === "other-request") {
    const message = "came before with another request";
    return problem(
      c,
      422,
      "This key came before with another request. Take a new one for each request.",
      [{ field: "Idempotency-Key", message }],
      "key-reused",
    );
  }
  if (kind === "answer-lost") {
    const detail = "This was done before, but its answer was lost. Read what is there now.";
    return problem(c, 409, detail, undefined, "answer-lost");
  }
  const refusal = problem(c, 409, "The same request is being done just now.", undefined, "under-way");
  refusal.headers.set("retry-after", "2");
  return refusal;
}

import { sensorRoutes } from "@pith/contract";
import { appendReadings, readPlain, resolveSenml, verifySensorKey, wantSettling } from "@pith/services";
import type { Context } from "hono";
import type { App, AppDeps, AppEnv } from "../env.ts";
import { connections } from "../middleware/connections.ts";
import { problem } from "../problems.ts";

/** Five thousand readings with long names are a megabyte; a body that unfolds into more is refused. */
const MOST_BYTES = 4_000_000;
const SENML = /^application\/senml\+json\b/i;
const PLAIN = /^application\/json\b/i;
const BEARER = /^Bearer +(\S+)$/i;

/**
 * Readings from devices. Outside an office's path: the key says whose they are. Bodies are read by hand, because each
 * reading has a verdict of its own and a batch is large.
 */
export function readingRoutesOf(app: App, { connect, now }: Pick<AppDeps, "connect" | "now">) {
  app.openAPIRegistry.registerComponent("securitySchemes", "sensorKey", { type: "http", scheme: "bearer" });
  app.openAPIRegistry.registerPath(sensorRoutes.postReadings);
  app.post("/v1/readings", connections(connect), async (c) => {
    const { db } = c.get("connections");
    const secret = BEARER.exec(c.req.header("authorization") ?? "")?.[1];
    const key = secret === undefined ? undefined : await verifySensorKey(db, secret, now());
    if (!key) {
      const refusal = problem(
        c,
        401,
        "A sensor's key is needed: Authorization: Bearer, and a key that is good.",
      );
      refusal.headers.set("www-authenticate", 'Bearer realm="readings"');
      return refusal;
    }
    const type = c.req.header("content-type") ?? "";
    const read = SENML.test(type) ? resolveSenml : PLAIN.test(type) ? readPlain : undefined;
    if (!read) return problem(c, 415, "Send application/senml+json, or application/json in the plain form.");
    const body = await bodyOf(c);
    if (body instanceof Response) return body;
    const at = now();
    const receipt = await appendReadings(db, key, read(body, at), at);
    if (receipt.stored > 0) await wantSettling(db, key, now);
    return c.json(receipt, 200);
  });
}

/** The JSON that was sent, unfolded where it was folded. */
async function bodyOf(c: Context<AppEnv>): Promise<unknown> {
  const folded = (c.req.header("content-encoding") ?? "identity").toLowerCase();
  if (folded !== "gzip" && folded !== "identity") {
    return problem(c, 415, "A body may be folded with gzip, or not at all.");
  }
  let text: string | undefined;
  try {
    text = folded === "gzip" ? await unfolded(c.req.raw.body) : await c.req.text();
  } catch {
    return problem(c, 400, "The body is not gzip, though it says so.");
  }
  if (text === undefined || text.length > MOST_BYTES) {
    return problem(c, 413, `At most ${MOST_BYTES / 1_000_000} MB are accepted, unfolded.`);
  }
  try {
    return JSON.parse(text);
  } catch {
    return problem(c, 400, "The body is not JSON.");
  }
}

/** Undefined as soon as it grows too large: what is small when folded may fill a machine. */
async function unfolded(body: ReadableStream<Uint8Array> | null): Promise<string | undefined> {
  if (!body) return "";
  const reader = body
    .pipeThrough(new DecompressionStream("gzip") as ReadableWritablePair<Uint8Array, Uint8Array>)
    .getReader();
  const decoder = new TextDecoder();
  let text = "";
  let bytes = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return text + decoder.decode();
    bytes += value.byteLength;
    if (bytes > MOST_BYTES) {
      await reader.cancel();
      return undefined;
    }
    text += decoder.decode(value, { stream: true });
  }
}

import { createMiddleware } from "hono/factory";
import type { AppEnv } from "../env.ts";
import { problem } from "../problems.ts";

const READS_BODY = new Set(["POST", "PATCH", "PUT"]);
/** JSON, or an export, which is a line of it after another. */
const JSON_TYPE = /^application\/(?:(?:[\w.-]+\+)?json|x-ndjson)\s*(?:;|$)/i;
/** What a change is answered in. */
const SAYS = ["application/json", "application/x-ndjson"];

/**
 * What comes must be JSON, or 415; what goes must be among what is accepted, or 406. A change is refused before it is
 * made; of a reading it is only known afterwards what it is answered in.
 */
export const negotiated = createMiddleware<AppEnv>(async (c, next) => {
  const accept = c.req.header("accept");
  const type = c.req.header("content-type");
  const [reads, refused] = [c.req.method === "GET", "Here is nothing of what `Accept` lists."];
  if (READS_BODY.has(c.req.method) && type !== undefined && !JSON_TYPE.test(type)) {
    const refusal = problem(c, 415, `Send application/json; ${type.split(";")[0]} came.`);
    refusal.headers.set("accept", "application/json");
    return refusal;
  }
  if (!reads && !SAYS.some((one) => isAccepted(accept, one))) return problem(c, 406, refused);
  await next();
  const said = c.res.headers.get("content-type")?.split(";")[0]?.trim();
  if (reads && c.res.status === 200 && said && !isAccepted(accept, said)) c.res = problem(c, 406, refused);
});

/** Whether a list such as `text/csv, application/*;q=0.5` has this type. */
function isAccepted(accept: string | undefined, type: string): boolean {
  if (accept === undefined || accept.trim() === "") return true;
  return accept.split(",").some((one) => {
    const [range = "", ...parameters] = one.split(";").map((part) => part.trim().toLowerCase());
    if (parameters.some((p) => /^q=0(?:\.0*)?$/.test(p))) return false;
    return range === "*/*" || range === type || (range.endsWith("/*") && type.startsWith(range.slice(0, -1)));
  });
}

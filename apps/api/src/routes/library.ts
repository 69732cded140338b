import type { Visitor } from "@pith/services";
import type { Context } from "hono";
import { HTTPException } from "hono/http-exception";
import type { AppDeps, AppEnv } from "../env.ts";
import { callerAddress } from "../middleware/caller.ts";
import { problem } from "../problems.ts";

/** Between our routes and the sign-in library: what it is asked, what of its answer is passed on, what is done after. */

type C = Context<AppEnv>;

export interface Said {
  ok: boolean;
  status: number;
  code: string | undefined;
  body: Record<string, unknown>;
}

const COOKIES_GO = "set-cookie";

/**
 * Asks the library as this caller. A foreign origin has been refused before; that one is missing is no matter, because a
 * browser that carries a cookie elsewhere always sends it. Cookies of a good answer are passed on.
 */
export async function askLibrary(
  c: C,
  proxies: readonly string[] | undefined,
  method: "GET" | "POST",
  path: string,
  body?: object,
): Promise<Said> {
  const { auth } = c.get("connections");
  const base = new URL(String(auth.options.baseURL)).origin;
  const headers = new Headers({ origin: base, "x-forwarded-for": callerAddress(c, proxies) });
  for (const name of ["cookie", "user-agent"]) {
    const said = c.req.header(name);
    if (said !== undefined) headers.set(name, said);
  }
  if (body !== undefined) headers.set("content-type", "application/json");
  const answer = await auth.handler(
    new Request(`${base}/v1/auth${path}`, { method, headers, body: body && JSON.stringify(body) }),
  );
  // A failed attempt may still end a cookie, e.g. of a second step that was tried too often.
  for (const cookie of answer.headers.getSetCookie()) c.header(COOKIES_GO, cookie, { append: true });
  const read = (await answer.json().catch(() => null)) as Record<string, unknown> | null;
  const code = typeof read?.code === "string" ? read.code : undefined;
  // Where a link is refused the library leads to a page of its own, which we do not have.
  return { ok: answer.status === 200, status: answer.status, code, body: read ?? {} };
}

/** A refusal with a problem document; never the library's own words. */
export function refuse(c: C, status: 400 | 401 | 403 | 409 | 422 | 429 | 500, detail: string): never {
  throw new HTTPException(status, { res: problem(c, status, detail) });
}

/** One field that was refused. */
export function refuseField(c: C, field: string, message: string): never {
  throw new HTTPException(422, { res: problem(c, 422, `${field}: ${message}`, [{ field, message }]) });
}

export const visitor = (c: C, now: () => Date, userId: string): Visitor => ({
  db: c.get("connections").db,
  userId,
  requestId: c.get("requestId"),
  now,
});

/**
 * Work that begins when the answer is settled, so that how long it takes tells nobody anything. Its connections stay open
 * for it. What goes wrong is logged by its kind alone: a failed statement quotes addresses.
 */
export function afterwards(c: C, log: AppDeps["log"], work: () => Promise<unknown>): void {
  const connections = c.get("connections");
  const requestId = c.get("requestId");
  const done = work().then(
    () => {},
    (error: unknown) => log({ level: "error", requestId, message: `after the answer: ${kindOf(error)}` }),
  );
  connections.until = Promise.all([connections.until, done]).then(() => {});
}

function kindOf(error: unknown): string {
  const cause = error instanceof Error ? (error.cause as { code?: unknown } | undefined) : undefined;
  const name = error instanceof Error ? error.name : "an unknown error";
  return typeof cause?.code === "string" ? `${name} ${cause.code}` : name;
}

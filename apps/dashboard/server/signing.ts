import type { Problem } from "@pith/contract";
import { cookies, headers } from "next/headers";
import { callerHeader } from "./caller.ts";
import { config } from "./config.ts";
import { sessionCookieOf, sessionCookiesIn } from "./session.ts";

/** Calls that may begin or end a session: their cookies are carried over to the dashboard's domain. */

export type Said<T = Record<string, unknown>> =
  | { ok: true; body: T }
  | { ok: false; status: number; problem: Partial<Problem> };

export async function ask<T>(method: string, path: string, body?: object): Promise<Said<T>> {
  const answer = await send(method, path, body);
  if (!answer) return { ok: false, status: 503, problem: {} };
  await carry(answer);
  const read = (await answer.json().catch(() => ({}))) as Record<string, unknown>;
  if (answer.ok) return { ok: true, body: read as T };
  return { ok: false, status: answer.status, problem: read };
}

/** Forgets the session's cookies on this side as well. */
export async function forgetSession(): Promise<void> {
  const jar = await cookies();
  for (const { name } of jar.getAll()) if (sessionCookieOf(`${name}=`) !== "") jar.delete(name);
}

async function carry(answer: Response): Promise<void> {
  const secure = (await headers()).get("x-forwarded-proto") === "https";
  const jar = await cookies();
  for (const { name, value, maxAgeS } of sessionCookiesIn(answer)) {
    jar.set(name, value, { httpOnly: true, sameSite: "lax", secure, path: "/", maxAge: maxAgeS });
  }
}

async function send(method: string, path: string, body?: object): Promise<Response | null> {
  const { apiOrigin } = config();
  const incoming = await headers();
  const said: Record<string, string> = {
    origin: apiOrigin,
    cookie: sessionCookieOf(incoming.get("cookie")),
    // Shown beside a session, so that its owner knows it again.
    "user-agent": incoming.get("user-agent") ?? "",
    ...(await callerHeader()),
  };
  if (body) said["content-type"] = "application/json";
  try {
    return await fetch(`${apiOrigin}${path}`, {
      method,
      cache: "no-store",
      headers: said,
      body: body && JSON.stringify(body),
    });
  } catch {
    return null;
  }
}

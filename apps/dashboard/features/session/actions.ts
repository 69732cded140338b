"use server";

import { cookies, headers } from "next/headers";
import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { config } from "../../server/config.ts";
import { sessionCookieOf, sessionCookiesIn } from "../../server/session.ts";

export interface SignInState {
  attempt: number;
  message: string | null;
  email: string;
}

/** Signs in at the API and carries its session cookie over to the dashboard's domain. */
export async function signIn(next: string, before: SignInState, data: FormData): Promise<SignInState> {
  const email = String(data.get("email") ?? "").trim();
  const password = String(data.get("password") ?? "");
  const t = await getTranslations("signIn");
  const refused = (message: string) => ({ attempt: before.attempt + 1, message, email });
  if (email === "" || password === "") return refused(t("bothNeeded"));
  const answer = await callAuth("sign-in/email", { email, password });
  if (!answer) return refused(t("unreachable"));
  if (answer.status === 429) return refused(t("tooMany"));
  if (!answer.ok) return refused(answer.status >= 500 ? t("unreachable") : t("wrong"));
  const secure = (await headers()).get("x-forwarded-proto") === "https";
  const jar = await cookies();
  for (const { name, value, maxAgeS } of sessionCookiesIn(answer)) {
    jar.set(name, value, { httpOnly: true, sameSite: "lax", secure, path: "/", maxAge: maxAgeS });
  }
  redirect(insideOnly(next));
}

export async function signOut(): Promise<void> {
  const jar = await cookies();
  await callAuth("sign-out", {});
  for (const { name } of jar.getAll()) if (sessionCookieOf(`${name}=`) !== "") jar.delete(name);
  redirect("/sign-in");
}

async function callAuth(path: string, body: object): Promise<Response | null> {
  const { apiOrigin } = config();
  const incoming = await headers();
  try {
    return await fetch(`${apiOrigin}/v1/auth/${path}`, {
      method: "POST",
      cache: "no-store",
      headers: {
        "content-type": "application/json",
        origin: apiOrigin,
        cookie: sessionCookieOf(incoming.get("cookie")),
        // The API limits attempts by where they come from, and that is not the dashboard.
        "x-forwarded-for": incoming.get("x-forwarded-for") ?? "",
      },
      body: JSON.stringify(body),
    });
  } catch {
    return null;
  }
}

/** Only an address of this dashboard: a link from outside must not send anybody elsewhere after signing in. */
const insideOnly = (next: string) => (/^\/(?![/\\])/.test(next) ? next : "/");

"use server";

import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { insideOnly } from "../../server/insideOnly.ts";
import { ask, forgetSession, type Said } from "../../server/signing.ts";
import type { LineState } from "./lines.ts";

/** The ways in. What the API refuses alike is said alike here. */

const text = (data: FormData, name: string) => String(data.get(name) ?? "").trim();
const EMAIL = /^\S+@\S+\.\S+$/;

type Words = Awaited<ReturnType<typeof getTranslations<"signIn">>>;
const refusedBy = (before: LineState, data: FormData) => (message: string) => ({
  attempt: before.attempt + 1,
  message,
  done: null,
  kept: { email: text(data, "email"), name: text(data, "name") },
});
const because = (t: Words, said: Extract<Said, { ok: false }>, refused: string) =>
  said.status === 429 ? t("tooMany") : said.status >= 500 ? t("unreachable") : refused;

const onward = (said: { signedIn: boolean }, next: string): never =>
  redirect(said.signedIn ? insideOnly(next) : `/sign-in/code?next=${encodeURIComponent(insideOnly(next))}`);

export async function signIn(next: string, before: LineState, data: FormData): Promise<LineState> {
  const t = await getTranslations("signIn");
  const refused = refusedBy(before, data);
  const [email, password] = [text(data, "email"), String(data.get("password") ?? "")];
  if (!EMAIL.test(email) || password === "") return refused(t("bothNeeded"));
  const said = await ask<{ signedIn: boolean }>("POST", "/v1/auth/sign-in/email", { email, password });
  if (!said.ok) return refused(because(t, said, t("wrong")));
  return onward(said.body, next);
}

export async function takeCode(next: string, before: LineState, data: FormData): Promise<LineState> {
  const t = await getTranslations("signIn");
  const code = text(data, "code");
  // The app's codes are six digits; those kept on paper are longer and hold a dash.
  const kind = /^\d{6}$/.test(code.replace(/\s/g, "")) ? "app" : "kept";
  const said = await ask<{ signedIn: boolean }>("POST", "/v1/auth/sign-in/code", {
    code: kind === "app" ? code.replace(/\s/g, "") : code,
    kind,
    rememberBrowser: data.get("remember") === "on",
  });
  if (!said.ok) return refusedBy(before, data)(because(t, said, t("codeWrong")));
  return onward(said.body, next);
}

/** Asks for a letter. The answer is the same whoever has the address. */
export async function askForLetter(
  which: "link" | "forgotten",
  before: LineState,
  data: FormData,
): Promise<LineState> {
  const t = await getTranslations("signIn");
  const refused = refusedBy(before, data);
  const email = text(data, "email");
  if (!EMAIL.test(email)) return refused(t("emailNeeded"));
  const path = which === "link" ? "/v1/auth/sign-in/link" : "/v1/auth/password/forgotten";
  const said = await ask("POST", path, { email });
  if (!said.ok) return refused(because(t, said, t("unreachable")));
  return { attempt: before.attempt + 1, message: null, done: t("letterSent", { email }), kept: {} };
}

export async function openLink(before: LineState, data: FormData): Promise<LineState> {
  const t = await getTranslations("signIn");
  const said = await ask<{ signedIn: boolean }>("POST", "/v1/auth/sign-in/link/use", {
    token: text(data, "token"),
  });
  if (!said.ok) return refusedBy(before, data)(because(t, said, t("linkSpent")));
  return onward(said.body, "/");
}

export async function confirmEmail(before: LineState, data: FormData): Promise<LineState> {
  const t = await getTranslations("signIn");
  const said = await ask("POST", "/v1/auth/email/confirm", { token: text(data, "token") });
  if (!said.ok) return refusedBy(before, data)(because(t, said, t("confirmSpent")));
  return { attempt: before.attempt + 1, message: null, done: t("confirmed"), kept: {} };
}

export async function setPassword(before: LineState, data: FormData): Promise<LineState> {
  const t = await getTranslations("signIn");
  const newPassword = String(data.get("newPassword") ?? "");
  const refused = refusedBy(before, data);
  if (newPassword.length < 10) return refused(t("passwordShort"));
  const said = await ask("POST", "/v1/auth/password/reset", { token: text(data, "token"), newPassword });
  if (!said.ok) return refused(because(t, said, t("linkSpent")));
  return { attempt: before.attempt + 1, message: null, done: t("passwordSet"), kept: {} };
}

export interface Invited {
  officeName: string;
  invitedBy: string;
  email: string;
  name: string;
  role: "lead" | "agent" | "farmer" | "reader";
  farmNames: string[];
}

/** What an invitation is for; the browser alone knows its token. */
export async function readInvitation(token: string): Promise<Invited | null> {
  const said = await ask<Invited>("POST", "/v1/invitations/read", { token: String(token) });
  return said.ok ? said.body : null;
}

export async function join(before: LineState, data: FormData): Promise<LineState> {
  const t = await getTranslations("signIn");
  const refused = refusedBy(before, data);
  const [name, password] = [text(data, "name"), String(data.get("newPassword") ?? "")];
  if (name === "") return refused(t("nameNeeded"));
  if (password.length < 10) return refused(t("passwordShort"));
  const said = await ask("POST", "/v1/invitations/accept", { token: text(data, "token"), name, password });
  if (!said.ok) return refused(because(t, said, t("invitationSpent")));
  return { attempt: before.attempt + 1, message: null, done: t("joined"), kept: {} };
}

export async function signOut(): Promise<void> {
  await ask("POST", "/v1/auth/sign-out", {});
  await forgetSession();
  // Said to the browser too, which then is told of nothing any more (public/worker.js).
  redirect("/sign-in?signed-out=yes");
}

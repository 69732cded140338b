"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { ask, type Said } from "../../server/signing.ts";
import type { LineState } from "../session/lines.ts";

/** What a person does with their own account. */

const text = (data: FormData, name: string) => String(data.get(name) ?? "").trim();
const settled = (before: LineState, over: Partial<LineState>): LineState => ({
  attempt: before.attempt + 1,
  message: null,
  done: null,
  kept: {},
  ...over,
});

async function why(said: Extract<Said, { ok: false }>): Promise<string> {
  const t = await getTranslations("account");
  if (said.status === 429) return t("tooMany");
  const field = said.problem.errors?.[0]?.field;
  if (field === "password") return t("passwordWrong");
  if (field === "code") return t("codeWrong");
  return said.problem.detail ?? t("unreachable");
}

export async function rename(before: LineState, data: FormData): Promise<LineState> {
  const t = await getTranslations("account");
  const name = text(data, "name");
  if (name === "") return settled(before, { message: t("nameNeeded") });
  const said = await ask("PATCH", "/v1/me", { name });
  if (!said.ok) return settled(before, { message: await why(said), kept: { name } });
  revalidatePath("/account");
  return settled(before, { done: t("nameKept", { name }) });
}

export async function changePassword(before: LineState, data: FormData): Promise<LineState> {
  const t = await getTranslations("account");
  const [password, newPassword] = [String(data.get("password") ?? ""), String(data.get("newPassword") ?? "")];
  if (newPassword.length < 10) return settled(before, { message: t("passwordShort") });
  const said = await ask("POST", "/v1/me/password", { password, newPassword });
  if (!said.ok) return settled(before, { message: await why(said) });
  revalidatePath("/account");
  return settled(before, { done: t("passwordKept") });
}

export interface SetUp extends LineState {
  uri?: string;
  secret?: string;
  codes?: string[];
}

export async function beginSecondStep(before: SetUp, data: FormData): Promise<SetUp> {
  const said = await ask<{ uri: string; secret: string; backupCodes: string[] }>(
    "POST",
    "/v1/me/second-step",
    {
      password: String(data.get("password") ?? ""),
    },
  );
  if (!said.ok) return settled(before, { message: await why(said) });
  const { uri, secret, backupCodes } = said.body;
  return { ...settled(before, {}), uri, secret, codes: backupCodes };
}

export async function confirmSecondStep(before: LineState, data: FormData): Promise<LineState> {
  const code = text(data, "code").replace(/\s/g, "");
  const said = await ask("POST", "/v1/me/second-step/confirm", { code });
  if (!said.ok) {
    const t = await getTranslations("account");
    return settled(before, { message: said.status === 422 ? t("codeWrong") : await why(said) });
  }
  redirect("/account?saved=second-step");
}

export async function newCodes(before: SetUp, data: FormData): Promise<SetUp> {
  const said = await ask<{ backupCodes: string[] }>("POST", "/v1/me/second-step/codes", {
    password: String(data.get("password") ?? ""),
  });
  if (!said.ok) return settled(before, { message: await why(said) });
  return { ...settled(before, {}), codes: said.body.backupCodes };
}

export async function endSecondStep(before: LineState, data: FormData): Promise<LineState> {
  const said = await ask("POST", "/v1/me/second-step/end", { password: String(data.get("password") ?? "") });
  if (!said.ok) return settled(before, { message: await why(said) });
  redirect("/account?saved=second-step-off");
}

export async function endSession(id: string): Promise<void> {
  await ask("DELETE", `/v1/me/sessions/${encodeURIComponent(id)}`);
  revalidatePath("/account");
}

export async function endOtherSessions(): Promise<void> {
  await ask("DELETE", "/v1/me/sessions");
  revalidatePath("/account");
}

export async function leave(officeId: string, before: LineState): Promise<LineState> {
  const said = await ask("DELETE", `/v1/me/offices/${encodeURIComponent(officeId)}`);
  if (!said.ok) return settled(before, { message: await why(said) });
  redirect("/");
}

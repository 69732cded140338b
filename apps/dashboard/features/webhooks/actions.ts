"use server";

import { type WebhookEvent, webhookRoutes } from "@pith/contract";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { attempt } from "../../server/api.ts";
import { agentSeat } from "../../server/seat.ts";

const HERE = "/office/webhooks";

export interface Secret {
  secret: string | null;
  problem: string | null;
}

async function said(problem: { status: number; detail?: string }): Promise<string> {
  const t = await getTranslations("webhooks");
  return problem.status === 503 ? t("unreachable") : (problem.detail ?? t("unreachable"));
}

/** One more address. Its secret is answered here once and is nowhere to be read again. */
export async function addWebhook(_before: Secret, data: FormData): Promise<Secret> {
  const { officeId } = await agentSeat();
  const added = await attempt((client) =>
    client.call(webhookRoutes.addWebhook, {
      params: { officeId },
      json: {
        url: String(data.get("url") ?? "").trim(),
        events: data.getAll("events").map(String) as WebhookEvent[],
      },
    }),
  );
  if (!added.done) return { secret: null, problem: await said(added.problem) };
  revalidatePath(HERE);
  return { secret: added.value.secret, problem: null };
}

export async function rotateSecret(webhookId: string): Promise<Secret> {
  const { officeId } = await agentSeat();
  const made = await attempt((client) =>
    client.call(webhookRoutes.rotateWebhookSecret, { params: { officeId, webhookId } }),
  );
  if (!made.done) return { secret: null, problem: await said(made.problem) };
  revalidatePath(`${HERE}/${webhookId}`);
  return { secret: made.value.secret, problem: null };
}

export async function turn(webhookId: string, on: boolean): Promise<string> {
  const { officeId } = await agentSeat();
  const changed = await attempt((client) =>
    client.call(webhookRoutes.changeWebhook, { params: { officeId, webhookId }, json: { on } }),
  );
  if (!changed.done) return said(changed.problem);
  revalidatePath(`${HERE}/${webhookId}`);
  return "";
}

export async function sendTest(webhookId: string): Promise<string> {
  const { officeId } = await agentSeat();
  const sent = await attempt((client) =>
    client.call(webhookRoutes.testWebhook, { params: { officeId, webhookId } }),
  );
  if (!sent.done) return said(sent.problem);
  revalidatePath(`${HERE}/${webhookId}`);
  return "";
}

export async function removeWebhook(webhookId: string): Promise<string> {
  const { officeId } = await agentSeat();
  const gone = await attempt((client) =>
    client.call(webhookRoutes.removeWebhook, { params: { officeId, webhookId } }),
  );
  if (!gone.done && gone.problem.status !== 404) return said(gone.problem);
  redirect(HERE);
}

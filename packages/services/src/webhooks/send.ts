import {
  memberships,
  type Tx,
  webhookAttempts,
  webhookEndpoints,
  webhookMessages,
  webhookSends,
} from "@pith/db";
import { and, eq, isNotNull, isNull } from "drizzle-orm";
import { Webhook } from "standardwebhooks";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, nowOf } from "../context.ts";
import type { Called, DeliveryMeans } from "../delivery/means.ts";
import { unseal } from "../delivery/secrets.ts";
import { type About, wantJob } from "../jobs/wantJob.ts";

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
/** Pauses after each attempt that failed, as the convention proposes; with them a message is tried for some three days. */
export const PAUSES_MS = [
  5_000,
  5 * MINUTE,
  30 * MINUTE,
  2 * HOUR,
  5 * HOUR,
  10 * HOUR,
  14 * HOUR,
  20 * HOUR,
  24 * HOUR,
];
/** An address that took nothing for so long is turned off (common practice). */
const DISABLE_AFTER_MS = 5 * 24 * HOUR;
const CLAIM_MS = 2 * MINUTE;
const AHEAD_MS = MINUTE;

type Endpoint = typeof webhookEndpoints.$inferSelect;
type Send = typeof webhookSends.$inferSelect;

/**
 * One attempt to hand a message to one address. Each carries the same id and the same bytes, with the instant of the
 * attempt, signed together: whoever receives it can tell a retry from news and something kept from something fresh.
 */
export async function sendWebhook(ctx: Ctx, { id: sendId }: About): Promise<void> {
  const means = ctx.delivery;
  if (!sendId || !means?.postHook || !means.sealKey) return;
  const claimed = await claim(ctx, sendId);
  if (!claimed) return;
  const { send, endpoint, body } = claimed;
  if (endpoint.disabledAt !== null || endpoint.removedAt !== null) {
    await inOffice(ctx, (tx) => settle(tx, ctx, send, { state: "dropped" }));
    return;
  }
  const at = ctx.now();
  const posted = await means.postHook({
    url: endpoint.url,
    headers: {
      "content-type": "application/json; charset=utf-8",
      "webhook-id": send.messageId,
      "webhook-timestamp": String(Math.floor(at.getTime() / 1000)),
      "webhook-signature": await signatures(means.sealKey, endpoint, send.messageId, at, body),
    },
    body,
  });
  const off = await inOffice(ctx, (tx) => writeDown(tx, ctx, send, endpoint, posted));
  if (off) await tellLeads(ctx, means, endpoint);
}

async function claim(ctx: Ctx, sendId: string) {
  return inOffice(ctx, async (tx) => {
    const now = ctx.now().getTime();
    const thisSend = and(eq(webhookSends.officeId, ctx.officeId), eq(webhookSends.id, sendId));
    const [send] = await tx.select().from(webhookSends).where(thisSend).for("update");
    // The queue goes by the database's clock, which may be a little ahead of this one.
    if (send?.state !== "waiting" || Date.parse(send.nextAt) > now + AHEAD_MS) return undefined;
    // Whoever holds it may have been stopped before writing down: the queue asks again until it is settled.
    if (send.claimedUntil !== null && Date.parse(send.claimedUntil) > now)
      throw new Error("somebody else is sending it; it is looked at again");
    await tx
      .update(webhookSends)
      .set({ claimedUntil: new Date(now + CLAIM_MS).toISOString() })
      .where(thisSend);
    const [row] = await tx
      .select({ endpoint: webhookEndpoints, body: webhookMessages.body })
      .from(webhookEndpoints)
      .innerJoin(
        webhookMessages,
        and(eq(webhookMessages.officeId, ctx.officeId), eq(webhookMessages.id, send.messageId)),
      )
      .where(and(eq(webhookEndpoints.officeId, ctx.officeId), eq(webhookEndpoints.id, send.endpointId)));
    return row && { send, ...row };
  });
}

/** By the secret, and for a day after a new one by the one before as well. */
async function signatures(sealKey: string, endpoint: Endpoint, id: string, at: Date, body: string) {
  const { secretSealed, previousSealed, previousUntil } = endpoint;
  const overlaps = previousUntil !== null && Date.parse(previousUntil) > at.getTime();
  const sealed = [secretSealed, ...(overlaps && previousSealed !== null ? [previousSealed] : [])];
  const secrets = await Promise.all(sealed.map((each) => unseal(sealKey, endpoint.id, each)));
  return secrets.map((secret) => new Webhook(secret).sign(id, at, body)).join(" ");
}

/** What came of an attempt, and what follows. Answers whether the address was turned off by it. */
async function writeDown(tx: Tx, ctx: Ctx, send: Send, endpoint: Endpoint, posted: Called): Promise<boolean> {
  const { officeId } = ctx;
  const taken = posted.status !== null && posted.status >= 200 && posted.status < 300;
  await tx.insert(webhookAttempts).values({
    officeId,
    sendId: send.id,
    endpointId: endpoint.id,
    at: nowOf(ctx),
    status: posted.status,
    outcome: posted.status === null ? posted.outcome : taken ? "taken" : "not taken",
    tookMs: posted.tookMs,
  });
  const thisOne = and(eq(webhookEndpoints.officeId, officeId), eq(webhookEndpoints.id, endpoint.id));
  if (taken) {
    await settle(tx, ctx, send, { state: "sent" });
    await tx
      .update(webhookEndpoints)
      .set({ failingSince: null })
      .where(and(thisOne, isNotNull(webhookEndpoints.failingSince)));
    return false;
  }
  const since = endpoint.failingSince ?? nowOf(ctx);
  // 410 is how a receiver says for good that it is there no more.
  const isOver = ctx.now().getTime() - Date.parse(since) >= DISABLE_AFTER_MS || posted.status === 410;
  const [turnedOff] = await tx
    .update(webhookEndpoints)
    .set({ failingSince: since, ...(isOver && { disabledAt: nowOf(ctx) }) })
    .where(and(thisOne, isNull(webhookEndpoints.disabledAt)))
    .returning({ id: webhookEndpoints.id });
  if (isOver) {
    await settle(tx, ctx, send, { state: "failed" });
    if (!turnedOff) return false;
    await recordAudit(tx, ctx, {
      action: "webhook.turned-off",
      entity: "webhook_endpoints",
      entityId: endpoint.id,
      detail: { failingSince: since },
    });
    return true;
  }
  const pause = PAUSES_MS[send.attempts];
  if (pause === undefined) {
    await settle(tx, ctx, send, { state: "failed" });
    return false;
  }
  const nextAt = new Date(ctx.now().getTime() + pause).toISOString();
  await settle(tx, ctx, send, { state: "waiting", nextAt });
  await wantJob(
    tx,
    ctx,
    "send-webhook",
    { id: send.id },
    { key: `${send.id} ${send.attempts + 1}`, at: nextAt },
  );
  return false;
}

const settle = (tx: Tx, ctx: Ctx, send: Send, to: { state: Send["state"]; nextAt?: string }) =>
  tx
    .update(webhookSends)
    .set({ ...to, claimedUntil: null, attempts: send.attempts + (to.state === "dropped" ? 0 : 1) })
    .where(and(eq(webhookSends.officeId, ctx.officeId), eq(webhookSends.id, send.id)));

/** The page of webhooks says it as well; a letter reaches a lead who does not look there. */
async function tellLeads(ctx: Ctx, means: DeliveryMeans, endpoint: Endpoint): Promise<void> {
  const { mail } = ctx;
  if (!mail) return;
  const leads = await inOffice(ctx, (tx) =>
    tx
      .select({ email: memberships.email })
      .from(memberships)
      .where(
        and(
          eq(memberships.officeId, ctx.officeId),
          eq(memberships.role, "lead"),
          isNotNull(memberships.email),
        ),
      ),
  );
  const text = [
    `${endpoint.url} took nothing that was sent there, so nothing is sent there any more.`,
    `What was tried, and how to turn it on again:\n${means.dashboardUrl}/office/webhooks/${endpoint.id}`,
  ].join("\n\n");
  for (const { email } of leads) {
    // Best effort: the page says the same, and one mailbox that is full must not keep the others from knowing.
    if (email) await mail({ to: email, subject: "A webhook was turned off", text }).catch(() => {});
  }
}

import { type Webhook, type WebhookAttempt, type WebhookEvent, webhookRoutes } from "@pith/contract";
import { type Tx, webhookAttempts, webhookEndpoints, webhookMessages, webhookSends } from "@pith/db";
import { refuse } from "@pith/rules";
import { and, asc, desc, eq, isNull } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, nowOf, requireAgent, requireLead } from "../context.ts";
import { outwardProblem } from "../delivery/outward.ts";
import { newWebhookSecret, seal } from "../delivery/secrets.ts";
import { found, ServiceError } from "../errors.ts";
import { bodyOf } from "../wellFormed.ts";
import { post } from "./tell.ts";

/** Where an office's own systems are told. A lead's: an address that is told everything is as good as a member. */

type Row = typeof webhookEndpoints.$inferSelect;
const MOST = 10;
const ATTEMPTS_SHOWN = 100;
/** Tests of one address that wait at once: each may take its full time, and others wait behind it. */
const TESTS_WAITING = 3;
/** After a new secret the one before signs too for so long. */
const OVERLAP_MS = 24 * 3_600_000;

const thisEndpoint = (ctx: Ctx, id: string) =>
  and(
    eq(webhookEndpoints.officeId, ctx.officeId),
    eq(webhookEndpoints.id, id),
    isNull(webhookEndpoints.removedAt),
  );

export async function listWebhooks(ctx: Ctx): Promise<{ offered: boolean; webhooks: Webhook[] }> {
  requireLead(ctx);
  const rows = await inOffice(ctx, (tx) => standing(tx, ctx));
  return { offered: ctx.delivery?.sealKey !== undefined, webhooks: rows.map((row) => wire(ctx, row)) };
}

export async function addWebhook(ctx: Ctx, raw: unknown): Promise<{ webhook: Webhook; secret: string }> {
  requireLead(ctx);
  const { url, events } = bodyOf(webhookRoutes.addWebhook, raw);
  const problem = outwardProblem(url, ctx.delivery?.localHooks ?? false);
  if (problem) refuse("url", problem, "an https address that anybody could reach", url);
  const id = globalThis.crypto.randomUUID();
  const { secret, sealed } = await newSecret(ctx, id);
  const row = await inOffice(ctx, async (tx) => {
    if ((await standing(tx, ctx)).length >= MOST) {
      throw new ServiceError("conflict", `At most ${MOST} addresses are told; take one away first.`);
    }
    const [added] = await tx
      .insert(webhookEndpoints)
      .values({
        officeId: ctx.officeId,
        id,
        url,
        events: [...new Set(events)],
        secretSealed: sealed,
        addedBy: ctx.actor.userId,
        addedAt: nowOf(ctx),
      })
      .returning();
    await audit(tx, ctx, "webhook.add", id, { events });
    return found(added, "webhook");
  });
  return { webhook: wire(ctx, row), secret };
}

/** Other events; or on again, whatever it was turned off for. */
export async function changeWebhook(ctx: Ctx, id: string, raw: unknown): Promise<Webhook> {
  await requireLeadOf(ctx, id);
  const { events, on } = bodyOf(webhookRoutes.changeWebhook, raw);
  if (events === undefined && on === undefined) refuse("events", "or `on` must be given", "a change", null);
  return inOffice(ctx, async (tx) => {
    const [row] = await tx
      .update(webhookEndpoints)
      .set({
        ...(events && { events: [...new Set(events)] }),
        ...(on === true && { disabledAt: null, failingSince: null }),
        ...(on === false && { disabledAt: nowOf(ctx) }),
      })
      .where(thisEndpoint(ctx, id))
      .returning();
    const changed = found(row, "webhook");
    await audit(tx, ctx, "webhook.change", id, { events, on });
    return wire(ctx, changed);
  });
}

/** It stays as a row, for its attempts; nothing is sent there any more, and its secrets are gone. */
export async function removeWebhook(ctx: Ctx, id: string): Promise<{ done: true }> {
  await requireLeadOf(ctx, id);
  await inOffice(ctx, async (tx) => {
    const [row] = await tx
      .update(webhookEndpoints)
      .set({ removedAt: nowOf(ctx), secretSealed: "", previousSealed: null, previousUntil: null })
      .where(thisEndpoint(ctx, id))
      .returning({ id: webhookEndpoints.id });
    found(row, "webhook");
    await audit(tx, ctx, "webhook.remove", id);
  });
  return { done: true };
}

export async function rotateWebhookSecret(
  ctx: Ctx,
  id: string,
): Promise<{ webhook: Webhook; secret: string }> {
  await requireLeadOf(ctx, id);
  const { secret, sealed } = await newSecret(ctx, id);
  const until = new Date(ctx.now().getTime() + OVERLAP_MS).toISOString();
  const row = await inOffice(ctx, async (tx) => {
    const [before] = await tx
      .select({ sealed: webhookEndpoints.secretSealed })
      .from(webhookEndpoints)
      .where(thisEndpoint(ctx, id))
      .for("update");
    const [after] = await tx
      .update(webhookEndpoints)
      .set({ secretSealed: sealed, previousSealed: found(before, "webhook").sealed, previousUntil: until })
      .where(thisEndpoint(ctx, id))
      .returning();
    await audit(tx, ctx, "webhook.rotate", id);
    return found(after, "webhook");
  });
  return { webhook: wire(ctx, row), secret };
}

/** Sends a test to this one address, by the same way as everything else. */
export async function testWebhook(ctx: Ctx, id: string): Promise<{ messageId: string }> {
  await requireLeadOf(ctx, id);
  return inOffice(ctx, async (tx) => {
    const [row] = await tx.select().from(webhookEndpoints).where(thisEndpoint(ctx, id)).for("update");
    if (found(row, "webhook").disabledAt !== null) {
      throw new ServiceError("conflict", "This address is turned off; turn it on first.");
    }
    const tests = await tx
      .select({ id: webhookSends.id })
      .from(webhookSends)
      .innerJoin(
        webhookMessages,
        and(
          eq(webhookMessages.officeId, webhookSends.officeId),
          eq(webhookMessages.id, webhookSends.messageId),
        ),
      )
      .where(
        and(
          eq(webhookSends.officeId, ctx.officeId),
          eq(webhookSends.endpointId, id),
          eq(webhookSends.state, "waiting"),
          eq(webhookMessages.event, "webhook.test"),
        ),
      );
    if (tests.length >= TESTS_WAITING) {
      throw new ServiceError("conflict", `${TESTS_WAITING} tests of this address wait already.`);
    }
    await audit(tx, ctx, "webhook.test", id);
    return { messageId: await post(tx, ctx, "webhook.test", { farmId: null }, [{ id }]) };
  });
}

export async function listWebhookAttempts(ctx: Ctx, id: string): Promise<{ attempts: WebhookAttempt[] }> {
  await requireLeadOf(ctx, id);
  return inOffice(ctx, async (tx) => {
    const [row] = await tx.select().from(webhookEndpoints).where(thisEndpoint(ctx, id));
    found(row, "webhook");
    const attempts = await tx
      .select({
        at: webhookAttempts.at,
        messageId: webhookMessages.id,
        event: webhookMessages.event,
        status: webhookAttempts.status,
        outcome: webhookAttempts.outcome,
        tookMs: webhookAttempts.tookMs,
      })
      .from(webhookAttempts)
      .innerJoin(
        webhookSends,
        and(eq(webhookSends.officeId, webhookAttempts.officeId), eq(webhookSends.id, webhookAttempts.sendId)),
      )
      .innerJoin(
        webhookMessages,
        and(
          eq(webhookMessages.officeId, webhookSends.officeId),
          eq(webhookMessages.id, webhookSends.messageId),
        ),
      )
      .where(and(eq(webhookAttempts.officeId, ctx.officeId), eq(webhookAttempts.endpointId, id)))
      .orderBy(desc(webhookAttempts.at), desc(webhookAttempts.id))
      .limit(ATTEMPTS_SHOWN);
    return { attempts };
  });
}

/** One that is not there looks the same to any agent; one that is there is a lead's. */
async function requireLeadOf(ctx: Ctx, id: string): Promise<void> {
  requireAgent(ctx);
  const [row] = await inOffice(ctx, (tx) =>
    tx.select({ id: webhookEndpoints.id }).from(webhookEndpoints).where(thisEndpoint(ctx, id)),
  );
  found(row, "webhook");
  requireLead(ctx);
}

const standing = (tx: Tx, ctx: Ctx): Promise<Row[]> =>
  tx
    .select()
    .from(webhookEndpoints)
    .where(and(eq(webhookEndpoints.officeId, ctx.officeId), isNull(webhookEndpoints.removedAt)))
    .orderBy(asc(webhookEndpoints.addedAt), asc(webhookEndpoints.id));

async function newSecret(ctx: Ctx, endpointId: string) {
  const sealKey = ctx.delivery?.sealKey;
  if (!sealKey) throw new ServiceError("invalid", "This installation has no key to seal secrets with.");
  const secret = newWebhookSecret();
  return { secret, sealed: await seal(sealKey, endpointId, secret) };
}

const audit = (tx: Tx, ctx: Ctx, action: string, entityId: string, detail?: Record<string, unknown>) =>
  recordAudit(tx, ctx, { action, entity: "webhook_endpoints", entityId, ...(detail && { detail }) });

const wire = (ctx: Ctx, row: Row): Webhook => ({
  id: row.id,
  url: row.url,
  events: row.events as WebhookEvent[],
  addedAt: row.addedAt,
  previousUntil:
    row.previousUntil !== null && Date.parse(row.previousUntil) > ctx.now().getTime()
      ? row.previousUntil
      : null,
  failingSince: row.failingSince,
  disabledAt: row.disabledAt,
});

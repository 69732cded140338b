import type { WebhookEvent } from "@pith/contract";
import { type Tx, webhookEndpoints, webhookMessages, webhookSends } from "@pith/db";
import { and, arrayContains, eq, isNull } from "drizzle-orm";
import { type Ctx, nowOf } from "../context.ts";
import { wantJob } from "../jobs/wantJob.ts";

/** What is told of an event: ids, codes and instants, no names and no words. What it is about is read over the API. */
export type Told = { farmId: string; advisoryId: string } & Record<string, unknown>;

/** Tells every system of the office that wants to know of this, in the transaction in which it happens. */
export async function tellWebhooks(tx: Tx, ctx: Ctx, event: WebhookEvent, told: Told): Promise<void> {
  const wanting = await tx
    .select({ id: webhookEndpoints.id })
    .from(webhookEndpoints)
    .where(
      and(
        eq(webhookEndpoints.officeId, ctx.officeId),
        arrayContains(webhookEndpoints.events, [event]),
        isNull(webhookEndpoints.disabledAt),
        isNull(webhookEndpoints.removedAt),
      ),
    );
  if (wanting.length > 0) await post(tx, ctx, event, told, wanting);
}

/** Lays a message down for endpoints; its bytes are settled here, so that each attempt sends the same. */
export async function post(
  tx: Tx,
  ctx: Ctx,
  event: string,
  told: Record<string, unknown> & { farmId: string | null },
  endpoints: { id: string }[],
): Promise<string> {
  const { officeId } = ctx;
  const messageId = globalThis.crypto.randomUUID();
  const at = nowOf(ctx);
  const body = JSON.stringify({ type: event, timestamp: at, data: { officeId, ...told } });
  await tx
    .insert(webhookMessages)
    .values({ officeId, id: messageId, farmId: told.farmId, event, body, madeAt: at });
  for (const { id: endpointId } of endpoints) {
    const id = globalThis.crypto.randomUUID();
    await tx.insert(webhookSends).values({ officeId, id, endpointId, messageId, nextAt: at });
    await wantJob(tx, ctx, "send-webhook", { id });
  }
  return messageId;
}

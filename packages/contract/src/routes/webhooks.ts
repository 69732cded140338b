import { createRoute, z } from "@hono/zod-openapi";
import { body, DoneSchema, Id, Instant, json, officePath, problems } from "../shapes.ts";

/** Telling the office's own systems, signed as the open convention for webhooks says. For a lead. */

const tags = ["webhooks"];
const list = "/v1/offices/{officeId}/webhooks" as const;
const path = officePath.extend({ webhookId: Id });

export const WEBHOOK_EVENTS = [
  "advisory.issued",
  "advisory.answered",
  "advisory.withdrawn",
  "warning.unread",
] as const;
const Event = z.enum(WEBHOOK_EVENTS);
export type WebhookEvent = z.infer<typeof Event>;

export const WebhookSchema = z
  .object({
    id: Id,
    url: z.string(),
    events: z.array(Event),
    addedAt: Instant,
    /** The secret before still signs too, until then. */
    previousUntil: Instant.nullable(),
    failingSince: Instant.nullable(),
    /** Nothing is sent any more until a lead turns it on again. */
    disabledAt: Instant.nullable(),
  })
  .openapi("Webhook");
export type Webhook = z.infer<typeof WebhookSchema>;

const Secret = z.string().describe("shown this once");
const Wanted = z.object({ url: z.url().max(1000), events: z.array(Event).min(1).max(WEBHOOK_EVENTS.length) });

export const listWebhooks = createRoute({
  method: "get",
  path: list,
  tags,
  summary: "Where the office's own systems are told",
  request: { params: officePath },
  responses: {
    200: json(
      z.object({
        /** Whether this installation has the key that secrets are sealed with. */
        offered: z.boolean(),
        webhooks: z.array(WebhookSchema),
      }),
      "The list",
    ),
    ...problems,
  },
});

export const addWebhook = createRoute({
  method: "post",
  path: list,
  tags,
  summary: "Tell one more address; its secret is shown once",
  request: { params: officePath, body: body(Wanted) },
  responses: { 201: json(z.object({ webhook: WebhookSchema, secret: Secret }), "The webhook"), ...problems },
});

export const changeWebhook = createRoute({
  method: "patch",
  path: `${list}/{webhookId}`,
  tags,
  summary: "Other events, or on again after it was turned off",
  request: {
    params: path,
    body: body(z.object({ events: Wanted.shape.events.optional(), on: z.boolean().optional() })),
  },
  responses: { 200: json(WebhookSchema, "The webhook"), ...problems },
});

export const removeWebhook = createRoute({
  method: "delete",
  path: `${list}/{webhookId}`,
  tags,
  summary: "Tell this address no more",
  request: { params: path },
  responses: { 200: json(DoneSchema, "Done"), ...problems },
});

export const rotateWebhookSecret = createRoute({
  method: "post",
  path: `${list}/{webhookId}/rotate`,
  tags,
  summary: "A new secret; for a day both sign, so that nothing is lost while it is changed over there",
  request: { params: path },
  responses: { 201: json(z.object({ webhook: WebhookSchema, secret: Secret }), "The webhook"), ...problems },
});

export const testWebhook = createRoute({
  method: "post",
  path: `${list}/{webhookId}/test`,
  tags,
  summary: "Send a test to this address",
  request: { params: path },
  responses: { 201: json(z.object({ messageId: Id }), "It is on its way"), ...problems },
});

export const WebhookAttemptSchema = z
  .object({
    at: Instant,
    messageId: Id,
    event: z.string(),
    status: z.number().int().nullable(),
    outcome: z.string(),
    tookMs: z.number().int(),
  })
  .openapi("WebhookAttempt");
export type WebhookAttempt = z.infer<typeof WebhookAttemptSchema>;

export const listWebhookAttempts = createRoute({
  method: "get",
  path: `${list}/{webhookId}/attempts`,
  tags,
  summary: "The last hundred attempts, newest first",
  request: { params: path },
  responses: {
    200: json(z.object({ attempts: z.array(WebhookAttemptSchema) }), "The attempts"),
    ...problems,
  },
});

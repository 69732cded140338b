import { webhookRoutes } from "@pith/contract";
import {
  addWebhook,
  changeWebhook,
  listWebhookAttempts,
  listWebhooks,
  removeWebhook,
  rotateWebhookSecret,
  testWebhook,
} from "@pith/services";
import type { App } from "../env.ts";

/** Where the office's own systems are told. */
export function webhookRoutesOf(app: App) {
  app.openapi(webhookRoutes.listWebhooks, async (c) => c.json(await listWebhooks(c.get("ctx")), 200));
  app.openapi(webhookRoutes.addWebhook, async (c) =>
    c.json(await addWebhook(c.get("ctx"), c.req.valid("json")), 201),
  );
  app.openapi(webhookRoutes.changeWebhook, async (c) =>
    c.json(await changeWebhook(c.get("ctx"), c.req.valid("param").webhookId, c.req.valid("json")), 200),
  );
  app.openapi(webhookRoutes.removeWebhook, async (c) =>
    c.json(await removeWebhook(c.get("ctx"), c.req.valid("param").webhookId), 200),
  );
  app.openapi(webhookRoutes.rotateWebhookSecret, async (c) =>
    c.json(await rotateWebhookSecret(c.get("ctx"), c.req.valid("param").webhookId), 201),
  );
  app.openapi(webhookRoutes.testWebhook, async (c) =>
    c.json(await testWebhook(c.get("ctx"), c.req.valid("param").webhookId), 201),
  );
  app.openapi(webhookRoutes.listWebhookAttempts, async (c) =>
    c.json(await listWebhookAttempts(c.get("ctx"), c.req.valid("param").webhookId), 200),
  );
}

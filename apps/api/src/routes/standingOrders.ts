import { standingOrderRoutes } from "@pith/contract";
import {
  changeIssuingSettings,
  confirmStandingOrder,
  getIssuingSettings,
  listStandingOrders,
  pauseStandingOrder,
  revokeStandingOrder,
  signAnewStandingOrder,
  signStandingOrder,
} from "@pith/services";
import type { App } from "../env.ts";

/** Permissions to issue by themselves, and for what two people are wanted. */
export function standingOrderRoutesOf(app: App) {
  app.openapi(standingOrderRoutes.listStandingOrders, async (c) =>
    c.json(await listStandingOrders(c.get("ctx"), c.req.valid("query")), 200),
  );
  app.openapi(standingOrderRoutes.signStandingOrder, async (c) =>
    c.json(await signStandingOrder(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(standingOrderRoutes.signAnewStandingOrder, async (c) =>
    c.json(await signAnewStandingOrder(c.get("ctx"), c.req.valid("param").orderId, c.req.valid("json")), 201),
  );
  app.openapi(standingOrderRoutes.confirmStandingOrder, async (c) =>
    c.json(await confirmStandingOrder(c.get("ctx"), c.req.valid("param").orderId, c.req.valid("json")), 200),
  );
  app.openapi(standingOrderRoutes.pauseStandingOrder, async (c) =>
    c.json(await pauseStandingOrder(c.get("ctx"), c.req.valid("param").orderId, c.req.valid("json")), 200),
  );
  app.openapi(standingOrderRoutes.revokeStandingOrder, async (c) =>
    c.json(await revokeStandingOrder(c.get("ctx"), c.req.valid("param").orderId), 200),
  );
  app.openapi(standingOrderRoutes.getIssuingSettings, async (c) =>
    c.json(await getIssuingSettings(c.get("ctx")), 200),
  );
  app.openapi(standingOrderRoutes.changeIssuingSettings, async (c) =>
    c.json(await changeIssuingSettings(c.get("ctx"), c.req.valid("json")), 200),
  );
}

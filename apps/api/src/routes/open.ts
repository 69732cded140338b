import { openRoutes } from "@pith/contract";
import { adviseOnState, computeQuantity, type Language, listQuantities, listRules } from "@pith/services";
import type { App } from "../env.ts";

/** Numbers, rules and evidence for anybody; who am I for whoever is signed in. */
export function openRoutesOf(app: App) {
  app.openapi(openRoutes.listQuantities, (c) => c.json(listQuantities(), 200));
  app.openapi(openRoutes.computeQuantity, (c) =>
    c.json(computeQuantity(c.req.valid("param").id, c.req.valid("json")), 200),
  );
  app.openapi(openRoutes.listRules, (c) => c.json(listRules(c.get("language") as Language), 200));
  app.openapi(openRoutes.adviseOnState, (c) => c.json(adviseOnState(c.req.valid("json")), 200));
  app.openapi(openRoutes.me, (c) => {
    const { sessionId: _, ...user } = c.get("person");
    const memberships = c.get("memberships").map(({ asksSecondStep, ...membership }) => ({
      ...membership,
      needsSecondStep: asksSecondStep && !user.secondStep,
    }));
    return c.json({ user, memberships }, 200);
  });
}

import { adviceRoutes } from "@pith/contract";
import {
  adviseAgain,
  answerAdvisory,
  askSecond,
  confirmSecond,
  getAdvisory,
  getDraft,
  getRound,
  issueDraft,
  listAdvisories,
  listLedger,
  markRead,
  replayEntry,
  sendBackSecond,
  setDraftAside,
  verifyLedger,
  withdrawAdvisory,
} from "@pith/services";
import type { App } from "../env.ts";

/** Drafts, what was issued, what became of it, and the ledger. */
export function adviceRoutesOf(app: App) {
  app.openapi(adviceRoutes.getRound, async (c) =>
    c.json(await getRound(c.get("ctx"), c.req.valid("query")), 200),
  );
  app.openapi(adviceRoutes.adviseAgain, async (c) =>
    c.json(await adviseAgain(c.get("ctx"), c.req.valid("json")), 200),
  );
  app.openapi(adviceRoutes.getDraft, async (c) =>
    c.json(await getDraft(c.get("ctx"), c.req.valid("param").draftId), 200),
  );
  app.openapi(adviceRoutes.setDraftAside, async (c) =>
    c.json(await setDraftAside(c.get("ctx"), c.req.valid("param").draftId, c.req.valid("json")), 200),
  );
  app.openapi(adviceRoutes.issueDraft, async (c) =>
    c.json(await issueDraft(c.get("ctx"), c.req.valid("param").draftId, c.req.valid("json")), 201),
  );

  app.openapi(adviceRoutes.askSecond, async (c) =>
    c.json(await askSecond(c.get("ctx"), c.req.valid("param").draftId, c.req.valid("json")), 201),
  );
  app.openapi(adviceRoutes.confirmSecond, async (c) =>
    c.json(await confirmSecond(c.get("ctx"), c.req.valid("param").draftId, c.req.valid("json")), 201),
  );
  app.openapi(adviceRoutes.sendBackSecond, async (c) =>
    c.json(await sendBackSecond(c.get("ctx"), c.req.valid("param").draftId, c.req.valid("json")), 200),
  );

  app.openapi(adviceRoutes.listAdvisories, async (c) =>
    c.json(await listAdvisories(c.get("ctx"), c.req.valid("query")), 200),
  );
  app.openapi(adviceRoutes.getAdvisory, async (c) =>
    c.json(await getAdvisory(c.get("ctx"), c.req.valid("param").advisoryId), 200),
  );
  app.openapi(adviceRoutes.markRead, async (c) =>
    c.json(await markRead(c.get("ctx"), c.req.valid("param").advisoryId), 200),
  );
  app.openapi(adviceRoutes.answerAdvisory, async (c) =>
    c.json(await answerAdvisory(c.get("ctx"), c.req.valid("param").advisoryId, c.req.valid("json")), 201),
  );
  app.openapi(adviceRoutes.withdrawAdvisory, async (c) =>
    c.json(await withdrawAdvisory(c.get("ctx"), c.req.valid("param").advisoryId, c.req.valid("json")), 200),
  );

  app.openapi(adviceRoutes.listLedger, async (c) =>
    c.json(await listLedger(c.get("ctx"), c.req.valid("query")), 200),
  );
  app.openapi(adviceRoutes.verifyLedger, async (c) => c.json(await verifyLedger(c.get("ctx")), 200));
  app.openapi(adviceRoutes.replayEntry, async (c) =>
    c.json(await replayEntry(c.get("ctx"), c.req.valid("param").seq), 200),
  );
}

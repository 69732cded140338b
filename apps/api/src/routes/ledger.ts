import { exportRoutes, ledgerRoutes } from "@pith/contract";
import {
  checkCheckpoint,
  erasePerson,
  exportFarm,
  exportOffice,
  exportOfficeAsCsv,
  getCheckpoint,
  getHistory,
  importOffice,
  listCheckpoints,
  listErasable,
  listHistories,
  makeCheckpoint,
  ServiceError,
  signInsIn,
  takeInFarm,
  verifyKeptHistory,
} from "@pith/services";
import type { App, AppDeps } from "../env.ts";
import { exportGate } from "../exportGate.ts";
import { asFile } from "../file.ts";

/** What vouches for a ledger from outside, everything an office owns as a file, and people out of the record. */
export function ledgerRoutesOf(app: App, deps: Pick<AppDeps, "ledger" | "log">) {
  const { signer } = deps.ledger ?? {};
  const oneAtATime = exportGate();
  app.openapi(ledgerRoutes.getLedgerKey, (c) => {
    if (!signer) throw new ServiceError("not-found", "This server has no key to sign with.");
    return c.json({ keyId: signer.keyId, publicKey: signer.publicKey }, 200);
  });
  app.openapi(ledgerRoutes.listCheckpoints, async (c) =>
    c.json(await listCheckpoints(c.get("ctx"), c.req.valid("query")), 200),
  );
  app.openapi(ledgerRoutes.makeCheckpoint, async (c) => c.json(await makeCheckpoint(c.get("ctx")), 201));
  app.openapi(ledgerRoutes.checkCheckpoint, async (c) =>
    c.json(await checkCheckpoint(c.get("ctx"), c.req.valid("json")), 200),
  );
  app.openapi(ledgerRoutes.getCheckpoint, async (c) => {
    const { onDay, checkpoint } = await getCheckpoint(c.get("ctx"), c.req.valid("param").checkpointId);
    const name = `checkpoint-${onDay}-${checkpoint.seq}.json`;
    c.header("content-disposition", `attachment; filename="${name}"`);
    return c.json(checkpoint, 200);
  });
  app.openapi(ledgerRoutes.listHistories, async (c) => c.json(await listHistories(c.get("ctx")), 200));
  app.openapi(ledgerRoutes.getHistory, async (c) =>
    c.json(await getHistory(c.get("ctx"), c.req.valid("param").historyId), 200),
  );
  app.openapi(ledgerRoutes.verifyHistory, async (c) =>
    c.json(await verifyKeptHistory(c.get("ctx"), c.req.valid("param").historyId), 200),
  );

  const lines = "application/x-ndjson; charset=utf-8";
  app.openapi(exportRoutes.exportOffice, (c) => {
    const ctx = c.get("ctx");
    return asFile(c, deps.log, { type: lines, name: `office-${day(ctx.now())}.ndjson` }, (out) =>
      oneAtATime(ctx.officeId, () => exportOffice(ctx, out.text)),
    );
  });
  app.openapi(exportRoutes.exportOfficeAsCsv, (c) => {
    const ctx = c.get("ctx");
    return asFile(c, deps.log, { type: "application/zip", name: `office-${day(ctx.now())}.zip` }, (out) =>
      oneAtATime(ctx.officeId, () => exportOfficeAsCsv(ctx, out.bytes)),
    );
  });
  app.openapi(exportRoutes.exportFarm, (c) => {
    const [ctx, { farmId }] = [c.get("ctx"), c.req.valid("param")];
    return asFile(c, deps.log, { type: lines, name: `farm-${day(ctx.now())}.ndjson` }, (out) =>
      oneAtATime(ctx.officeId, () => exportFarm(ctx, farmId, out.text)),
    );
  });
  app.openapi(exportRoutes.importOffice, async (c) =>
    c.json(await importOffice(c.get("ctx"), await c.req.text()), 201),
  );
  app.openapi(exportRoutes.takeInFarm, async (c) =>
    c.json(await takeInFarm(c.get("ctx"), await c.req.text()), 201),
  );

  app.openapi(exportRoutes.listErasable, async (c) => c.json(await listErasable(c.get("ctx")), 200));
  app.openapi(exportRoutes.erasePerson, async (c) => {
    const signIns = signInsIn(c.get("connections").authDb);
    return c.json(await erasePerson(c.get("ctx"), c.req.valid("json"), signIns), 200);
  });
}

const day = (at: Date): string => at.toISOString().slice(0, 10);

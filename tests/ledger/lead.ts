import { randomUUID } from "node:crypto";
import type { Db } from "@pith/db";
import { type Ctx, type LedgerTools, openLedgerTools } from "@pith/services";
import { newSecrets } from "../../infra/home.mjs";
import { makeAgent, makeOffice } from "../support/factories.ts";

/** What a server signs with. */
export const someKey = (): Promise<LedgerTools> =>
  openLedgerTools({ LEDGER_SIGNING_KEY: newSecrets().ledgerKey });

/** The same place in the office, as its lead, with a key to sign with. */
export const asLead = (ctx: Ctx, ledger: LedgerTools): Ctx => ({
  ...ctx,
  ledger,
  actor: { ...ctx.actor, role: "lead", farmIds: "*" },
});

/** An office with nothing in it but its lead. */
export async function emptyOffice(db: Db, ledger: LedgerTools, now: () => Date): Promise<Ctx> {
  const office = await makeOffice(db, { name: "Office of Wrenmoor County", county: "Wrenmoor" });
  const lead = await makeAgent(db, office, { name: "Sigrid", role: "lead" });
  return {
    db,
    officeId: office.id,
    actor: { userId: lead.userId, name: "Sigrid", role: "lead", farmIds: "*" },
    requestId: randomUUID(),
    now,
    ledger,
  };
}

/** What a verb writes into a file. */
export async function fileOf(
  write: (put: (text: string) => Promise<void>) => Promise<void>,
): Promise<string> {
  const pieces: string[] = [];
  await write(async (text) => void pieces.push(text));
  return pieces.join("");
}

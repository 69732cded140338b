import { advisories, type Db, ledgerEntries, offices, type Tx, withOffice } from "@pith/db";
import { and, desc, eq } from "drizzle-orm";
import { found } from "../errors.ts";
import type { Verdict } from "./chain.ts";
import { type Replay, replay } from "./replay.ts";
import type { LedgerTools } from "./tools.ts";
import { verifyChain } from "./verify.ts";
import { wireEntry } from "./wireEntry.ts";

/** An office's ledger for whoever looks after the server: nobody of the office acts, and nothing is changed. */
export async function openLedger(db: Db, officeId: string, tools?: LedgerTools) {
  const inside = <T>(work: (tx: Tx) => Promise<T>) =>
    withOffice(db, { officeId, role: "agent", farmIds: "*", userId: null }, work);
  const [office] = await inside((tx) =>
    tx.select({ name: offices.name }).from(offices).where(eq(offices.id, officeId)),
  );
  const { name } = found(office, "office");
  return {
    officeName: name,
    verify: (): Promise<Verdict> => inside((tx) => verifyChain(tx, officeId)),
    /** @param which number of the entry, or id of the advice it issued */
    replay: (which: number | string): Promise<Replay & { seq: number }> =>
      inside(async (tx) => {
        const seq = typeof which === "number" ? which : await seqOf(tx, officeId, which);
        return { seq, ...(await replay(tx, officeId, seq, tools)) };
      }),
    newest: (limit: number) =>
      inside(async (tx) => {
        const rows = await tx
          .select()
          .from(ledgerEntries)
          .where(eq(ledgerEntries.officeId, officeId))
          .orderBy(desc(ledgerEntries.seq))
          .limit(limit);
        return rows.map((row) => wireEntry(row));
      }),
  };
}

async function seqOf(tx: Tx, officeId: string, advisoryId: string): Promise<number> {
  const [row] = await tx
    .select({ seq: advisories.ledgerSeq })
    .from(advisories)
    .where(and(eq(advisories.officeId, officeId), eq(advisories.id, advisoryId)));
  return found(row, "advice").seq;
}

import { ledgerRoutes } from "@pith/contract";
import { attempt } from "../../server/api.ts";

/** Up to which entry the ledger was signed, and the hash that stood there; null where nobody signed it yet. */
export interface SignedTo {
  seq: number;
  hash: string;
  at: string;
}

/** The newest signed checkpoint of the office, which everybody of it may read. */
export async function signedTo(officeId: string): Promise<SignedTo | null> {
  const read = await attempt((client) =>
    client.call(ledgerRoutes.listCheckpoints, { params: { officeId }, query: { limit: 1 } }),
  );
  const newest = read.done ? read.value.checkpoints[0]?.checkpoint : undefined;
  return newest ? { seq: newest.seq, hash: newest.head, at: newest.at } : null;
}

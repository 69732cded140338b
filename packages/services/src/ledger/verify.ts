import { ledgerEntries, ledgerHeads, ledgerStates, type Tx } from "@pith/db";
import { and, asc, eq, gt } from "drizzle-orm";
import { besideOf } from "./beside.ts";
import { type EntryBody, NO_HASH } from "./body.ts";
import { canonicalText, sha256Hex } from "./canonical.ts";

/** Whole, or the first broken entry and why. */
export interface Verdict {
  whole: boolean;
  entries: number;
  /** Hash of the last entry: what to note down outside as a checkpoint. */
  head: string | null;
  firstBroken: { seq: number; why: string } | null;
}

type Row = typeof ledgerEntries.$inferSelect;

const PAGE = 200;

/**
 * Walks an office's chain in order and recomputes everything in it: hashes, links, numbers, what the columns repeat,
 * the stored states, the advice and answers that stand beside it, and the head. Whoever can rewrite the database can
 * rewrite everything since the last checkpoint that is held outside it; that cannot be seen from here.
 */
export async function verifyChain(tx: Tx, officeId: string): Promise<Verdict> {
  let last = { seq: 0, hash: NO_HASH };
  let entries = 0;
  /** What a head that we have read says is there. */
  let promised = 0;
  const broken = (seq: number, why: string): Verdict => ({
    whole: false,
    entries,
    head: null,
    firstBroken: { seq, why },
  });

  for (;;) {
    const page = await tx
      .select()
      .from(ledgerEntries)
      .where(and(eq(ledgerEntries.officeId, officeId), gt(ledgerEntries.seq, last.seq)))
      .orderBy(asc(ledgerEntries.seq))
      .limit(PAGE);
    const states = await soundStates(tx, officeId, page);
    const beside = await besideOf(tx, officeId, page);
    for (const row of page) {
      if (row.seq !== last.seq + 1) {
        return broken(last.seq + 1, `entry ${last.seq + 1} is missing; the next one there is ${row.seq}`);
      }
      const why = (await faultIn(row, officeId, last.hash, states)) ?? (await beside(row));
      if (why) return broken(row.seq, why);
      last = { seq: row.seq, hash: row.hash };
      entries += 1;
    }
    if (page.length === PAGE) continue;
    const [head] = await tx.select().from(ledgerHeads).where(eq(ledgerHeads.officeId, officeId));
    if (!head) {
      if (entries === 0) return { whole: true, entries, head: null, firstBroken: null };
      return broken(last.seq, "the office's head is missing");
    }
    if (promised > last.seq) {
      return broken(last.seq + 1, `the head says ${head.seq} entries, but ${entries} are there`);
    }
    if (head.seq > last.seq) {
      // Appended while we walked: by now the entries up to that head can be read, or they are missing.
      promised = head.seq;
      continue;
    }
    if (head.seq < last.seq) return broken(head.seq + 1, `the head ends at entry ${head.seq}`);
    if (head.hash !== last.hash) return broken(last.seq, "the head names another hash");
    return { whole: true, entries, head: entries === 0 ? null : last.hash, firstBroken: null };
  }
}

async function faultIn(
  row: Row,
  officeId: string,
  prevHash: string,
  states: Map<string, boolean>,
): Promise<string | null> {
  if ((await sha256Hex(row.body)) !== row.hash) return "its content does not give its hash";
  if (row.prevHash !== prevHash) return "it does not link to the entry before it";
  // The hash holds, so the content is what was written: a column that says otherwise was changed.
  const body = JSON.parse(row.body) as EntryBody;
  const repeated: [string, unknown, unknown][] = [
    ["office", body.office, officeId],
    ["number", body.seq, row.seq],
    ["link", body.prev, row.prevHash],
    ["farm", body.farm, row.farmId],
    ["kind", body.kind, row.kind],
    ["time", body.at, row.at],
  ];
  for (const [what, inBody, inRow] of repeated) {
    if (inBody !== inRow) return `its ${what} is not what its content says`;
  }
  if (canonicalText(body) !== row.body) return "its content is not canonical JSON";
  if (body.state !== null) {
    const sound = states.get(body.state);
    if (sound === undefined) return "the state it was computed from is missing";
    if (!sound) return "the state it was computed from was changed";
  }
  return null;
}

/** The states that a page's entries name, and whether each still gives its hash. */
async function soundStates(tx: Tx, officeId: string, page: Row[]): Promise<Map<string, boolean>> {
  const named = new Set(page.flatMap((row) => stateIn(row.body)));
  const sound = new Map<string, boolean>();
  for (const sha256 of named) {
    // One at a time: a state may be large, and a page names hundreds.
    const [stored] = await tx
      .select({ state: ledgerStates.state })
      .from(ledgerStates)
      .where(and(eq(ledgerStates.officeId, officeId), eq(ledgerStates.sha256, sha256)));
    if (stored) sound.set(sha256, (await sha256Hex(stored.state)) === sha256);
  }
  return sound;
}

function stateIn(body: string): string[] {
  try {
    const { state } = JSON.parse(body) as Partial<EntryBody>;
    return typeof state === "string" ? [state] : [];
  } catch {
    return []; // broken content is named by its hash
  }
}

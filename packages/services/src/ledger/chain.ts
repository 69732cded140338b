import type { Checkpoint, CheckpointVerdict } from "@pith/contract";
import type { ledgerEntries, ledgerOrigins } from "@pith/db";
import { type BesideRows, faultBeside, unlessUnreadable } from "./beside.ts";
import { type EntryBody, NO_HASH } from "./body.ts";
import { canonicalText, sha256Hex } from "./canonical.ts";
import { faultInCheckpoint } from "./checkpoint.ts";
import { GrowingTree } from "./merkle.ts";

/** Whole, or the first broken entry and why. */
export interface Verdict {
  whole: boolean;
  entries: number;
  /** Hash of the last entry. */
  head: string | null;
  firstBroken: { seq: number; why: string } | null;
  /** What each checkpoint that was laid beside the chain vouches for. */
  checkpoints: CheckpointVerdict[];
}

export type EntryRow = typeof ledgerEntries.$inferSelect;

/** Where a chain is read from: a database, or an export. */
export interface ChainSource {
  officeId: string;
  origins: Pick<typeof ledgerOrigins.$inferSelect, "lastSeq" | "fromOffice" | "takenInAt">[];
  entriesAfter(seq: number, limit: number): Promise<EntryRow[]>;
  stateText(sha256: string): Promise<string | undefined>;
  beside(page: EntryRow[]): Promise<BesideRows>;
  head(): Promise<{ seq: number; hash: string } | undefined>;
}

/** What a walk shows beside its verdict. */
export interface Walked extends Verdict {
  /** Root of the tree over all entries. */
  root: string;
}

const PAGE = 200;

/**
 * Walks a chain in order and recomputes everything in it: hashes, links, numbers, what the columns repeat, the stored
 * states, the advice and answers beside it, the head, and the checkpoints. Whoever can rewrite the database can rewrite
 * everything since the last checkpoint that is held outside it; that cannot be seen from here.
 */
export async function walkChain(source: ChainSource, checkpoints: Checkpoint[] = []): Promise<Walked> {
  let last = { seq: 0, hash: NO_HASH };
  /** What a head that we have read says is there. */
  let promised = 0;
  const tree = new GrowingTree();
  const vouched = new Map<Checkpoint, string | null>();
  const ended = (head: string | null, firstBroken: Verdict["firstBroken"] = null): Walked => ({
    whole: firstBroken === null,
    entries: last.seq,
    head,
    firstBroken,
    root: tree.root(),
    checkpoints: checkpoints.map((checkpoint) => {
      const { seq, at, keyId } = checkpoint;
      const nowhere = firstBroken ? "the chain is broken before it" : "the chain ends before it";
      const why = vouched.has(checkpoint) ? (vouched.get(checkpoint) ?? null) : nowhere;
      return { seq, at, keyId, holds: why === null, why };
    }),
  });
  const broken = (seq: number, why: string) => ended(null, { seq, why });

  for (;;) {
    const page = await source.entriesAfter(last.seq, PAGE);
    const [states, beside] = [await soundStates(source, page), await source.beside(page)];
    for (const row of page) {
      if (row.seq !== last.seq + 1) {
        return broken(last.seq + 1, `entry ${last.seq + 1} is missing; the next one there is ${row.seq}`);
      }
      const why = await unlessUnreadable(
        async () =>
          (await faultIn(row, source, last.hash, states)) ??
          (await faultBeside({ seq: row.seq, body: JSON.parse(row.body) }, beside)),
      );
      if (why) return broken(row.seq, why);
      last = { seq: row.seq, hash: row.hash };
      tree.appendEntry(row.hash);
      for (const checkpoint of checkpoints) {
        if (checkpoint.seq === row.seq)
          vouched.set(checkpoint, await faultAt(checkpoint, row, tree.root(), source));
      }
    }
    if (page.length === PAGE) continue;
    const head = await source.head();
    if (!head) {
      return last.seq === 0 ? ended(null) : broken(last.seq, "the office's head is missing");
    }
    if (promised > last.seq) {
      return broken(last.seq + 1, `the head says ${head.seq} entries, but ${last.seq} are there`);
    }
    if (head.seq > last.seq) {
      // Appended while we walked: by now the entries up to that head can be read, or they are missing.
      promised = head.seq;
      continue;
    }
    if (head.seq < last.seq) return broken(head.seq + 1, `the head ends at entry ${head.seq}`);
    if (head.hash !== last.hash) return broken(last.seq, "the head names another hash");
    return ended(last.seq === 0 ? null : last.hash);
  }
}

async function faultAt(
  checkpoint: Checkpoint,
  row: EntryRow,
  root: string,
  source: ChainSource,
): Promise<string | null> {
  const unsigned = await faultInCheckpoint(checkpoint);
  if (unsigned) return unsigned;
  const offices = [source.officeId, ...source.origins.map((origin) => origin.fromOffice)];
  if (!offices.includes(checkpoint.office)) return "it was signed for another office";
  if (checkpoint.head !== row.hash) return `entry ${row.seq} is not the one it was signed over`;
  return checkpoint.root === root ? null : "the entries before it are not those it was signed over";
}

async function faultIn(
  row: EntryRow,
  source: ChainSource,
  prevHash: string,
  states: Map<string, boolean>,
): Promise<string | null> {
  if ((await sha256Hex(row.body)) !== row.hash) return "its content does not give its hash";
  if (row.prevHash !== prevHash) return "it does not link to the entry before it";
  // The hash holds, so the content is what was written: a column that says otherwise was changed.
  const body = JSON.parse(row.body) as EntryBody;
  const repeated: [string, unknown, unknown][] = [
    ["office", body.office, officeAt(row.seq, source)],
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

/** Which office's name an entry bears: of a chain that came from elsewhere, that office's. */
function officeAt(seq: number, { officeId, origins }: ChainSource): string {
  // Handed on by an office that added nothing, it is still the first one's.
  const [origin] = origins
    .filter((o) => seq <= o.lastSeq)
    .sort((a, b) => a.lastSeq - b.lastSeq || (a.takenInAt < b.takenInAt ? -1 : 1));
  return origin?.fromOffice ?? officeId;
}

/** The states that a page's entries name, and whether each still gives its hash. */
async function soundStates(source: ChainSource, page: EntryRow[]): Promise<Map<string, boolean>> {
  const sound = new Map<string, boolean>();
  for (const sha256 of new Set(page.flatMap((row) => namedIn(row.body, "state")))) {
    // One at a time: a state may be large, and a page names hundreds.
    const text = await source.stateText(sha256);
    if (text !== undefined) sound.set(sha256, (await sha256Hex(text)) === sha256);
  }
  return sound;
}

/** What an entry names there; nothing where its content is broken, which its hash shows. */
export function namedIn(body: string, place: "state" | "advisory"): string[] {
  try {
    const named = (JSON.parse(body) as Partial<EntryBody>)[place];
    return typeof named === "string" ? [named] : [];
  } catch {
    return [];
  }
}

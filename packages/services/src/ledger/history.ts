import type { ledgerHistories, ledgerHistoryEntries } from "@pith/db";
import { type BesideRows, faultInText, unlessUnreadable } from "./beside.ts";
import type { EntryBody } from "./body.ts";
import { canonicalText, sha256Hex } from "./canonical.ts";
import { namedIn } from "./chain.ts";
import { faultInCheckpoint, readCheckpoint } from "./checkpoint.ts";
import { entryIsIn } from "./merkle.ts";

/** What another office's ledger says of a farm that moved, as it is kept and as it travels. */
export interface HistoryRows {
  history: Pick<typeof ledgerHistories.$inferSelect, "farmId" | "fromOffice" | "checkpoint">;
  entries: Pick<typeof ledgerHistoryEntries.$inferSelect, "seq" | "body" | "hash" | "proof" | "textId">[];
  stateText(sha256: string): Promise<string | undefined>;
  texts: BesideRows["texts"];
}

export interface HistoryVerdict {
  whole: boolean;
  entries: number;
  /** Whose key signed the checkpoint that it is held against. */
  keyId: string;
  firstBroken: { seq: number; why: string } | null;
}

/**
 * Holds each entry against the checkpoint of the office that it came from: its content gives its hash, and its proof leads
 * from there to the root that was signed. That an entry was left out cannot be seen, because the others are not there.
 */
export async function verifyHistory({
  history,
  entries,
  stateText,
  texts,
}: HistoryRows): Promise<HistoryVerdict> {
  const checkpoint = readCheckpoint(history.checkpoint);
  const verdict = (firstBroken: HistoryVerdict["firstBroken"]) => ({
    whole: firstBroken === null,
    entries: entries.length,
    keyId: checkpoint?.keyId ?? "",
    firstBroken,
  });
  const unsigned = checkpoint ? await faultInCheckpoint(checkpoint) : "it cannot be read";
  if (!checkpoint || unsigned) return verdict({ seq: 0, why: `of its checkpoint, ${unsigned}` });
  if (checkpoint.office !== history.fromOffice) {
    return verdict({ seq: 0, why: "its checkpoint was signed for another office" });
  }
  for (const { seq, body: text, hash, proof, textId } of entries) {
    // The only thing that is asked for: what fails there is not the entry's fault.
    const [named] = namedIn(text, "state");
    const state = named === undefined ? undefined : await stateText(named);
    const why = await unlessUnreadable(async () => {
      if ((await sha256Hex(text)) !== hash) return "its content does not give its hash";
      const body = JSON.parse(text) as EntryBody;
      if (canonicalText(body) !== text) return "its content is not canonical JSON";
      if (body.seq !== seq) return "its number is not what its content says";
      if (body.farm !== history.farmId) return "it is of another farm";
      if (!checkpoint || !entryIsIn(seq, hash, checkpoint.seq, proof, checkpoint.root)) {
        return "its proof does not lead to what was signed";
      }
      if (body.state !== null) {
        if (state === undefined) return "the state it was computed from is missing";
        if ((await sha256Hex(state)) !== body.state) return "the state it was computed from was changed";
      }
      return faultInText({ texts }, textId, body.textSha256);
    });
    if (why) return verdict({ seq, why });
  }
  return verdict(null);
}

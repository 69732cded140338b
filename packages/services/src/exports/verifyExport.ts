import type { Checkpoint } from "@pith/contract";
import { type ChainSource, type Walked, walkChain } from "../ledger/chain.ts";
import { readCheckpoint } from "../ledger/checkpoint.ts";
import { type HistoryVerdict, verifyHistory } from "../ledger/history.ts";
import { type ExportText, type ReadExport, readExport } from "./readExport.ts";
import { typed } from "./typedRows.ts";

/** What an office's export shows without any database: its chain, with the checkpoints in it and those laid beside it. */
export function verifyExported(file: ReadExport, held: Checkpoint[] = []): Promise<Walked> {
  const kept = typed(file, "ledger_checkpoints").flatMap(({ document }) => readCheckpoint(document) ?? []);
  const { checkpoint } = file.header;
  // It stands among the kept ones too, unless the office keeps none.
  const own = checkpoint && !kept.some((one) => one.signature === checkpoint.signature) ? [checkpoint] : [];
  return walkChain(chainInExport(file), [...held, ...kept, ...own]);
}

/** A chain as it lies in an export. */
function chainInExport(file: ReadExport): ChainSource {
  const entries = typed(file, "ledger_entries");
  const states = new Map(typed(file, "ledger_states").map(({ sha256, state }) => [sha256, state]));
  const beside = {
    advisories: typed(file, "advisories"),
    answers: typed(file, "answers"),
    texts: new Map(typed(file, "texts").map((text) => [text.id, text])),
  };
  const [head] = typed(file, "ledger_heads");
  return {
    officeId: file.header.office,
    origins: typed(file, "ledger_origins"),
    entriesAfter: async (seq, limit) => {
      const from = entries.findIndex((entry) => entry.seq > seq);
      return from < 0 ? [] : entries.slice(from, from + limit);
    },
    stateText: async (sha256) => states.get(sha256),
    beside: async () => beside,
    head: async () => head,
  };
}

/** The histories in an export: of a farm that moves, or that an office holds of farms that moved to it. */
export async function verifyHistories(file: ReadExport): Promise<(HistoryVerdict & { farmId: string })[]> {
  const states = new Map(typed(file, "ledger_states").map(({ sha256, state }) => [sha256, state]));
  const texts = new Map(typed(file, "texts").map((text) => [text.id, text]));
  const entries = typed(file, "ledger_history_entries");
  return Promise.all(
    typed(file, "ledger_histories").map(async (history) => ({
      farmId: history.farmId,
      ...(await verifyHistory({
        history,
        entries: entries.filter((entry) => entry.historyId === history.id),
        stateText: async (sha256) => states.get(sha256),
        texts,
      })),
    })),
  );
}

export interface ExportVerdict {
  kind: "office" | "farm";
  office: string;
  officeName: string;
  at: string;
  keyId: string;
  chain: Walked | null;
  histories: (HistoryVerdict & { farmId: string })[];
}

/** All that an export shows by itself. @throws ServiceError invalid where it is not whole */
export async function verifyExport(text: ExportText, held: Checkpoint[] = []): Promise<ExportVerdict> {
  const file = await readExport(text);
  const { kind, office, officeName, at, keyId } = file.header;
  return {
    kind,
    office,
    officeName,
    at,
    keyId,
    chain: kind === "office" ? await verifyExported(file, held) : null,
    histories: await verifyHistories(file),
  };
}

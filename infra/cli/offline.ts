import { readFile } from "node:fs/promises";
import { CheckpointSchema } from "@pith/contract";
import { type ExportVerdict, verifyExport } from "@pith/services";
import { PlainFailure } from "../process/failure.mjs";
import { piecesOf } from "./pieces.ts";

/** What an export shows by itself, without any database: for whoever was handed one. Gives lines to print and the exit code. */
export async function verifyFile(
  path: string,
  checkpointPaths: string[],
): Promise<{ lines: string[]; code: 0 | 1 }> {
  const held = await Promise.all(checkpointPaths.map(readCheckpointFile));
  const verdict = await verifyExport(await piecesOf(path), held);
  const lines = [
    `The export of ${verdict.officeName} of ${verdict.at} is whole: every byte is the one that was signed.`,
    `  signed with the key ${verdict.keyId}: compare that with the one you noted down`,
  ];
  let code: 0 | 1 = 0;
  const broken = (line: string) => {
    lines.push(line);
    code = 1;
  };
  const { chain } = verdict;
  if (chain?.whole)
    lines.push(`Its ledger is whole: ${chain.entries} ${chain.entries === 1 ? "entry" : "entries"}.`);
  else if (chain)
    broken(`Its ledger is broken at entry ${chain.firstBroken?.seq}: ${chain.firstBroken?.why}.`);
  for (const { seq, at, keyId, holds, why } of chain?.checkpoints ?? []) {
    const which = `The checkpoint of ${at} over ${seq} ${seq === 1 ? "entry" : "entries"} (key ${keyId})`;
    if (holds) lines.push(`${which} holds.`);
    else broken(`${which} does not hold: ${why}.`);
  }
  for (const line of historyLines(verdict)) {
    if (line.whole) lines.push(line.text);
    else broken(line.text);
  }
  if (held.length > 0 && !chain)
    broken("A farm's export holds no chain that other checkpoints could be laid beside.");
  return { lines, code };
}

const historyLines = ({ histories }: ExportVerdict) =>
  histories.map(({ farmId, whole, entries, keyId, firstBroken }) => ({
    whole,
    text: whole
      ? `The history of the farm ${farmId} is whole: ${entries} entries, against a checkpoint of the key ${keyId}.`
      : `The history of the farm ${farmId} is broken at entry ${firstBroken?.seq}: ${firstBroken?.why}.`,
  }));

async function readCheckpointFile(path: string) {
  const text = await textOf(path);
  const read = CheckpointSchema.safeParse(jsonOf(text));
  if (!read.success) throw new PlainFailure(`${path} is not a checkpoint.`);
  return read.data;
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

const textOf = (path: string): Promise<string> =>
  readFile(path, "utf8").catch((error: NodeJS.ErrnoException) => {
    throw new PlainFailure(`${path} cannot be read (${error.code}).`);
  });

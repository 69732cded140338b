import { sha256 } from "@noble/hashes/sha2";
import { bytesToHex } from "@noble/hashes/utils";
import type { Checkpoint } from "@pith/contract";
import { type Ctx, nowOf } from "../context.ts";
import { canonicalText } from "../ledger/canonical.ts";
import { signerOf } from "../ledger/checkpoints.ts";
import { type End, type Header, rowLine, signedOf } from "./format.ts";

/** Takes a piece of a file; waits where the reader is slow. */
export type Write = (text: string) => Promise<unknown>;

const encoder = new TextEncoder();

/** Writes an export: header, rows as they come, and the signed end. */
export async function writeExport(
  ctx: Ctx,
  about: Pick<Header, "kind" | "officeName" | "farm" | "tables" | "leftOut"> & {
    checkpoint: Checkpoint | null;
  },
  rows: AsyncIterable<{ table: string; rows: string[] }>,
  write: Write,
): Promise<void> {
  const { keyId, publicKey, sign } = signerOf(ctx);
  const header: Header = {
    pithExport: 1,
    kind: about.kind,
    office: ctx.officeId,
    officeName: about.officeName,
    farm: about.farm,
    at: nowOf(ctx),
    keyId,
    publicKey,
    tables: about.tables,
    leftOut: about.leftOut,
    checkpoint: about.checkpoint,
  };
  const hash = sha256.create();
  const counts: Record<string, number> = {};
  const put = async (lines: string[]) => {
    const text = `${lines.join("\n")}\n`;
    hash.update(encoder.encode(text));
    await write(text);
  };
  await put([JSON.stringify(header)]);
  for await (const batch of rows) {
    counts[batch.table] = (counts[batch.table] ?? 0) + batch.rows.length;
    await put(batch.rows.map((row) => rowLine(batch.table, row)));
  }
  const hex = bytesToHex(hash.digest());
  const signature = await sign(canonicalText(signedOf(header, hex)));
  const end: End = { end: true, rows: counts, sha256: hex, signature };
  await write(`${JSON.stringify(end)}\n`);
}

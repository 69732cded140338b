import { CheckpointSchema } from "@pith/contract";
import { z } from "zod";

/**
 * An export is JSON, one document a line: first what it is, then every row, last the SHA-256 of all bytes before that
 * line, signed. So it can be written and read as it comes, and `head -n -1 | sha256sum` gives the hash.
 */
export const HeaderSchema = z.strictObject({
  pithExport: z.literal(1),
  kind: z.enum(["office", "farm"]),
  office: z.uuid(),
  officeName: z.string(),
  /** Of a farm's. */
  farm: z.uuid().nullable(),
  at: z.iso.datetime(),
  keyId: z.string(),
  publicKey: z.strictObject({ kty: z.literal("OKP"), crv: z.literal("Ed25519"), x: z.string() }),
  /** The columns of each table that is in it. */
  tables: z.record(z.string(), z.array(z.string())),
  leftOut: z.record(z.string(), z.string()),
  /** Over the ledger as it was exported; none where nothing was issued. */
  checkpoint: CheckpointSchema.nullable(),
});
export type Header = z.infer<typeof HeaderSchema>;

export const EndSchema = z.strictObject({
  end: z.literal(true),
  rows: z.record(z.string(), z.number().int()),
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  signature: z.string(),
});
export type End = z.infer<typeof EndSchema>;

/** What the last line's signature is over. */
export const signedOf = (header: Pick<Header, "kind" | "office" | "farm" | "at">, sha256: string) => ({
  v: 1,
  kind: `pith-export-${header.kind}`,
  office: header.office,
  farm: header.farm,
  at: header.at,
  sha256,
});

/** A row's line. The row is JSON already, as the database wrote it: every digit of its numbers stays as it is. */
export const rowLine = (table: string, row: string): string => `{"table":"${table}","row":${row}}`;

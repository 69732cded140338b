import { sha256 } from "@noble/hashes/sha2";
import { bytesToHex } from "@noble/hashes/utils";
import type { z } from "zod";
import { ServiceError } from "../errors.ts";
import { canonicalText } from "../ledger/canonical.ts";
import { faultInCheckpoint } from "../ledger/checkpoint.ts";
import { keyIdOf, signatureHolds } from "../ledger/signing.ts";
import { type End, EndSchema, type Header, HeaderSchema, rowLine, signedOf } from "./format.ts";

/** An export that is whole: every byte is the one that was signed, and every line is a row of a table it names. */
export interface ReadExport {
  header: Header;
  /** Rows by table, in order, each as the JSON it came as. */
  rows: Map<string, string[]>;
}

const encoder = new TextEncoder();
const ROW = /^\{"table":"([a-z_]+)","row":(\{.*\})\}$/;

/** Reads an export and checks all of it that can be checked by itself. @throws ServiceError invalid, in one sentence */
export async function readExport(text: string, kind: Header["kind"]): Promise<ReadExport> {
  const end = text.endsWith("\n") ? text.length - 1 : text.length;
  const lastAt = text.lastIndexOf("\n", end - 1) + 1;
  if (lastAt === 0) refuse("it has no more than one line; an export has a first and a last line at least");
  const closing: End = parsed(EndSchema, text.slice(lastAt, end), "its last line");
  const signedText = text.slice(0, lastAt);
  if (bytesToHex(sha256(encoder.encode(signedText))) !== closing.sha256) {
    refuse("its bytes do not give the SHA-256 in its last line: it was changed, or cut short");
  }
  const lines = signedText.split("\n");
  lines.pop(); // what follows the last line's end
  const header: Header = parsed(HeaderSchema, lines[0] ?? "", "its first line");
  if (header.kind !== kind) {
    refuse(
      `it is the export of ${header.kind === "office" ? "an office" : "a farm"}; here ${kind === "office" ? "an office" : "a farm"} is taken in`,
    );
  }
  await checkSignatures(header, closing);

  const rows = new Map<string, string[]>(Object.keys(header.tables).map((table) => [table, []]));
  for (const [at, line] of lines.entries()) {
    if (at === 0) continue;
    const [, table, row] = ROW.exec(line) ?? [];
    const of = table === undefined ? undefined : rows.get(table);
    if (table === undefined || row === undefined || !of || line !== rowLine(table, row) || !isObject(row)) {
      refuse(`line ${at + 1} is not a row of a table that its first line names`);
    }
    of.push(row);
  }
  for (const [table, { length }] of rows) {
    if (length !== (closing.rows[table] ?? 0)) {
      refuse(`it says ${closing.rows[table] ?? 0} rows of ${table}, but has ${length}`);
    }
  }
  return { header, rows };
}

async function checkSignatures(header: Header, { sha256: hex, signature }: End): Promise<void> {
  const { keyId, publicKey, checkpoint, office } = header;
  if ((await keyIdOf(publicKey)) !== keyId) refuse("its key's id is not that of its key");
  if (!(await signatureHolds(publicKey, canonicalText(signedOf(header, hex)), signature))) {
    refuse("its signature is not that of its key");
  }
  if (!checkpoint) return;
  const fault = await faultInCheckpoint(checkpoint);
  if (fault) refuse(`of its checkpoint, ${fault}`);
  if (checkpoint.office !== office || checkpoint.keyId !== keyId) {
    refuse("its checkpoint was signed for another office or with another key");
  }
}

function parsed<S extends z.ZodType>(schema: S, line: string, what: string): z.output<S> {
  let value: unknown;
  try {
    value = JSON.parse(line);
  } catch {
    refuse(`${what} is not JSON`);
  }
  const read = schema.safeParse(value);
  if (!read.success) {
    const [issue] = read.error.issues;
    refuse(`${what} is not that of an export: ${issue?.path.join(".") || "it"} ${issue?.message}`);
  }
  return read.data;
}

function isObject(text: string): boolean {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === "object" && value !== null && !Array.isArray(value);
  } catch {
    return false;
  }
}

export function refuse(why: string): never {
  throw new ServiceError("invalid", `The export cannot be taken in: ${why}.`);
}

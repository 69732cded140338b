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

/** Whole, or piece by piece: a farm with sensors is larger than any one string can be. */
export type ExportText = string | AsyncIterable<string>;

/**
 * Reads an export line by line and checks all of it that can be checked by itself. What is wrong with a line is said only
 * where the bytes are those that were signed: otherwise that is what is wrong.
 * @throws ServiceError invalid, in one sentence
 */
export async function readExport(text: ExportText, kind?: Header["kind"]): Promise<ReadExport> {
  const hash = sha256.create();
  const rows = new Map<string, string[]>();
  let header: Header | undefined;
  let fault: unknown;
  let before = 0;
  let last: string | undefined;
  for await (const line of linesOf(text)) {
    const one: string | undefined = last;
    last = line;
    if (one === undefined) continue;
    hash.update(encoder.encode(`${one}\n`));
    before += 1;
    try {
      if (before === 1) {
        header = readHeader(one, kind);
        for (const table of Object.keys(header.tables)) rows.set(table, []);
      } else if (!fault) readRow(one, before, rows);
    } catch (error) {
      fault = error;
    }
  }
  if (last === undefined || before === 0)
    refuse("it has no more than one line; an export has a first and a last line at least");
  const closing: End = parsed(EndSchema, last, "its last line");
  if (bytesToHex(hash.digest()) !== closing.sha256) {
    refuse("its bytes do not give the SHA-256 in its last line: it was changed, or cut short");
  }
  if (fault || !header) throw fault;
  await checkSignatures(header, closing);
  for (const [table, { length }] of rows) {
    if (length !== (closing.rows[table] ?? 0)) {
      refuse(`it says ${closing.rows[table] ?? 0} rows of ${table}, but has ${length}`);
    }
  }
  return { header, rows };
}

/** Lines without their ends. What follows the last end is a line only where something follows it. */
async function* linesOf(text: ExportText): AsyncGenerator<string> {
  let rest = "";
  for await (const piece of typeof text === "string" ? [text] : text) {
    let from = 0;
    for (let end = piece.indexOf("\n"); end >= 0; end = piece.indexOf("\n", from)) {
      yield rest + piece.slice(from, end);
      rest = "";
      from = end + 1;
    }
    rest += piece.slice(from);
  }
  if (rest !== "") yield rest;
}

function readHeader(line: string, kind: Header["kind"] | undefined): Header {
  const header: Header = parsed(HeaderSchema, line, "its first line");
  if (kind !== undefined && header.kind !== kind) {
    refuse(
      `it is the export of ${header.kind === "office" ? "an office" : "a farm"}; here ${kind === "office" ? "an office" : "a farm"} is taken in`,
    );
  }
  return header;
}

function readRow(line: string, number: number, rows: Map<string, string[]>): void {
  const [, table, row] = ROW.exec(line) ?? [];
  const of = table === undefined ? undefined : rows.get(table);
  if (table === undefined || row === undefined || !of || line !== rowLine(table, row) || !isObject(row)) {
    refuse(`line ${number} is not a row of a table that its first line names`);
  }
  if (table === "ledger_states" && !givesItsHash(row)) {
    refuse(`line ${number} is a state that does not give its hash`);
  }
  of.push(row);
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

/** An office keeps a state once under its hash: a false one would stand in the way of the true one for ever. */
function givesItsHash(row: string): boolean {
  const { sha256: hex, state } = JSON.parse(row) as { sha256?: unknown; state?: unknown };
  return typeof state === "string" && bytesToHex(sha256(encoder.encode(state))) === hex;
}

export function refuse(why: string): never {
  throw new ServiceError("invalid", `The export cannot be taken in: ${why}.`);
}

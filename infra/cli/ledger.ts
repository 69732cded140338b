import { join } from "node:path";
import { parseArgs } from "node:util";
import { openDatabase } from "@pith/db";
import { openLedger, openLedgerTools, ServiceError } from "@pith/services";
import { openHome } from "../home.mjs";
import { PlainFailure, textOf } from "../process/failure.mjs";
import { readBundleIn } from "../rulesBundle.mjs";
import { findDatabase, type OpenDatabase } from "./database.ts";
import { verifyFile } from "./offline.ts";

/**
 * `npm run -s ledger -- verify`, `replay <entry number or advice id>`, `list`; `--office <id>` where there are several.
 * `verify <export> [--checkpoint <file>]...` needs no database. `replay ... --rules <folder>`: where kept rules are.
 * Exit 0: whole, or identical. 1: broken, or it differs. 2: not understood, or the database cannot be reached.
 */
const USAGE =
  "npm run -s ledger -- verify [<export> [--checkpoint <file>]...] | replay <entry number or advice id> [--rules <folder>] | list   [--office <id>]";
const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;
const LISTED = 50;

type Ledger = Awaited<ReturnType<typeof openLedger>>;

/** What to do with a ledger; gives the exit code. */
type Command = (ledger: Ledger) => Promise<0 | 1>;

try {
  process.exitCode = await main();
} catch (error) {
  process.exitCode = 2;
  const known = error instanceof PlainFailure || error instanceof ServiceError;
  process.stderr.write(
    `${known ? error.message : `The ledger cannot be read: ${firstLine(textOf(error))}`}\n`,
  );
}

async function main(): Promise<0 | 1> {
  const given = readArguments(process.argv.slice(2));
  if ("file" in given) {
    const { lines, code } = await verifyFile(given.file, given.checkpoints);
    for (const line of lines) print(line);
    return code;
  }
  const { command, everyOffice, office, rules } = given;
  const tools = await openLedgerTools({}, readBundleIn(rules ?? join(openHome(), "rules")));
  const database = await findDatabase(process.env);
  const db = openDatabase(database.appUrl, { max: 2 });
  try {
    let code: 0 | 1 = 0;
    for (const id of await officesFor(database, office, everyOffice)) {
      if ((await command(await openLedger(db, id, tools))) === 1) code = 1;
    }
    return code;
  } finally {
    await db.close();
    await database.close();
  }
}

type Given =
  | { file: string; checkpoints: string[] }
  | { command: Command; everyOffice: boolean; office: string | undefined; rules: string | undefined };

function readArguments(args: string[]): Given {
  const { values, positionals } = understand(args);
  const [name, which, ...more] = positionals;
  const { office, rules, checkpoint = [] } = values;
  if (name === "verify" && which !== undefined && more.length === 0)
    return { file: which, checkpoints: checkpoint };
  if (checkpoint.length > 0) throw new PlainFailure(`--checkpoint goes with an export. Usage: ${USAGE}`);
  if (office !== undefined && !UUID.test(office))
    throw new PlainFailure(`--office must be an id, not "${office}".`);
  if (name === "verify" && which === undefined) return { command: verify, everyOffice: true, office, rules };
  if (name === "list" && which === undefined) return { command: list, everyOffice: true, office, rules };
  if (name === "replay" && which !== undefined && more.length === 0) {
    const entry = /^[1-9]\d{0,14}$/.test(which) ? Number(which) : which;
    if (typeof entry === "number" || UUID.test(entry)) {
      return { command: (ledger) => replay(ledger, entry), everyOffice: false, office, rules };
    }
    throw new PlainFailure(`"${which}" is neither the number of an entry nor the id of an advice.`);
  }
  throw new PlainFailure(`Usage: ${USAGE}`);
}

function understand(args: string[]) {
  try {
    return parseArgs({
      args,
      allowPositionals: true,
      options: {
        office: { type: "string" },
        rules: { type: "string" },
        checkpoint: { type: "string", multiple: true },
      },
    });
  } catch (error) {
    throw new PlainFailure(`${firstLine(textOf(error))}. Usage: ${USAGE}`);
  }
}

async function officesFor(
  database: OpenDatabase,
  given: string | undefined,
  every: boolean,
): Promise<string[]> {
  if (given !== undefined) return [given];
  const all = await database.offices();
  if (all === undefined)
    throw new PlainFailure("This login does not see all offices: say which with --office <id>.");
  if (all.length === 0) throw new PlainFailure("There is no office in this database yet.");
  if (all.length > 1 && !every) {
    const names = all.map(({ id, name }) => `${id} (${name})`).join(", ");
    throw new PlainFailure(`There are several offices, so say which with --office: ${names}.`);
  }
  return all.map(({ id }) => id);
}

async function verify({ officeName, verify: walk }: Ledger): Promise<0 | 1> {
  const { whole, entries, head, firstBroken, checkpoints } = await walk();
  const fallen = checkpoints.filter((checkpoint) => !checkpoint.holds);
  if (whole) {
    const upTo = head === null ? "" : ` Head ${head}: kept elsewhere, it shows what is rewritten later.`;
    print(`The ledger of ${officeName} is whole: ${entries} ${entries === 1 ? "entry" : "entries"}.${upTo}`);
    for (const { at, seq, why } of fallen)
      print(`  its checkpoint of ${at} over ${seq} entries does not hold: ${why}`);
    return fallen.length > 0 ? 1 : 0;
  }
  print(`The ledger of ${officeName} is broken at entry ${firstBroken?.seq}: ${firstBroken?.why}.`);
  return 1;
}

async function replay(ledger: Ledger, which: number | string): Promise<0 | 1> {
  const { seq, identical, cannot, differences, compared, bundle } = await ledger.replay(which);
  if (cannot !== null) {
    print(`Entry ${seq} cannot be computed again: ${cannot}`);
    return 1;
  }
  const how =
    compared === "bytes"
      ? "byte for byte"
      : "in every decision, and in every number to 1e-9 of it (another engine computed it)";
  if (identical) {
    const by = bundle === null ? "" : ` by the kept rules ${bundle}`;
    print(`Entry ${seq} is identical ${how} when computed again from its stored inputs${by}.`);
    return 0;
  }
  print(`Entry ${seq} differs in ${differences.length} ${differences.length === 1 ? "place" : "places"}:`);
  for (const { path, stored, now } of differences)
    print(`  ${path}: stored ${shown(stored)}, now ${shown(now)}`);
  return 1;
}

async function list({ officeName, newest }: Ledger): Promise<0> {
  const entries = await newest(LISTED);
  print(`${officeName}: ${entries.length === 0 ? "no entries yet" : `the newest ${entries.length}`}`);
  for (const { seq, at, kind, ruleId, summary } of entries) {
    print([String(seq).padStart(6), at, kind.padEnd(9), (ruleId ?? "").padEnd(13), summary].join("  "));
  }
  return 0;
}

function shown(value: unknown): string {
  if (value === undefined) return "nothing";
  const text = JSON.stringify(value);
  return text.length > 120 ? `${text.slice(0, 117)}...` : text;
}

function firstLine(text: string): string {
  return text.split("\n")[0] ?? text;
}

function print(line: string): void {
  process.stdout.write(`${line}\n`);
}

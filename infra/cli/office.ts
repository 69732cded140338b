import { randomUUID } from "node:crypto";
import { once } from "node:events";
import { createWriteStream } from "node:fs";
import { parseArgs } from "node:util";
import { openDatabase } from "@pith/db";
import {
  type Ctx,
  exportFarm,
  exportOffice,
  importOffice,
  openLedgerTools,
  ServiceError,
  serverItself,
  takeInFarm,
} from "@pith/services";
import { openHome, openSecrets } from "../home.mjs";
import { PlainFailure, textOf } from "../process/failure.mjs";
import { findDatabase } from "./database.ts";
import { piecesOf } from "./pieces.ts";

/**
 * `npm run -s office -- export <file> --office <id>`, `export-farm <farm id> <file>`, `import <file>`, `take-in <file>`: what
 * the API does for a lead, for files of any size, by whoever looks after the server. Exit 0 done, 1 refused, 2 not understood.
 */
const USAGE =
  "npm run -s office -- export <file> | import <file> | export-farm <farm id> <file> | take-in <file>   --office <id>";

try {
  await main();
} catch (error) {
  const refused = error instanceof ServiceError;
  process.exitCode = refused ? 1 : 2;
  process.stderr.write(`${refused || error instanceof PlainFailure ? error.message : textOf(error)}\n`);
}

async function main(): Promise<void> {
  const work = readArguments(process.argv.slice(2));
  const signingKey = process.env.LEDGER_SIGNING_KEY ?? openSecrets(openHome()).ledgerKey;
  const database = await findDatabase(process.env);
  const db = openDatabase(database.appUrl, { max: 2 });
  try {
    const said = await work.run({
      db,
      officeId: work.office,
      actor: { ...serverItself, role: "lead" },
      requestId: randomUUID(),
      now: () => new Date(),
      ledger: await openLedgerTools({ LEDGER_SIGNING_KEY: signingKey }),
    });
    process.stdout.write(`${said}\n`);
  } finally {
    await db.close();
    await database.close();
  }
}

function readArguments(args: string[]): { office: string; run: (ctx: Ctx) => Promise<string> } {
  const { values, positionals } = understand(args);
  const [name, first, second, ...more] = positionals;
  const { office } = values;
  if (office === undefined || first === undefined || more.length > 0)
    throw new PlainFailure(`Usage: ${USAGE}`);
  if (second === undefined) {
    if (name === "export") return { office, run: (ctx) => intoFile(first, (put) => exportOffice(ctx, put)) };
    if (name === "import")
      return { office, run: async (ctx) => sayRows(await importOffice(ctx, await piecesOf(first))) };
    if (name === "take-in")
      return { office, run: async (ctx) => sayRows(await takeInFarm(ctx, await piecesOf(first))) };
  } else if (name === "export-farm") {
    return { office, run: (ctx) => intoFile(second, (put) => exportFarm(ctx, first, put)) };
  }
  throw new PlainFailure(`Usage: ${USAGE}`);
}

function understand(args: string[]) {
  try {
    return parseArgs({ args, allowPositionals: true, options: { office: { type: "string" } } });
  } catch (error) {
    throw new PlainFailure(`${textOf(error).split("\n")[0]}. Usage: ${USAGE}`);
  }
}

/** A file that is there already is not written over. */
async function intoFile(
  path: string,
  write: (put: (text: string) => Promise<unknown>) => Promise<void>,
): Promise<string> {
  const file = createWriteStream(path, { flags: "wx", mode: 0o600 });
  await once(file, "open");
  await write(async (text) => {
    if (!file.write(text)) await once(file, "drain");
  });
  file.end();
  await once(file, "close");
  return `Written to ${path}. Check it anywhere with: npm run -s ledger -- verify ${path}`;
}

function sayRows(taken: {
  rows: Record<string, number>;
  readingsLeftOut: number;
  entries: number;
  keyId: string;
}): string {
  const { rows, readingsLeftOut, entries, keyId } = taken;
  const total = Object.values(rows).reduce((sum, n) => sum + n, 0);
  const lines = [`Taken in: ${total} rows, ${entries} entries of the ledger, signed with the key ${keyId}.`];
  if (readingsLeftOut > 0)
    lines.push(`Left out: ${readingsLeftOut} readings of times that no series keeps any more, or not yet.`);
  if (rows.former_people)
    lines.push(`${rows.former_people} people are named as having left: the lead invites them anew.`);
  return lines.join("\n");
}

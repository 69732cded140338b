import { parseArgs } from "node:util";
import { openDatabase } from "@pith/db";
import {
  forecastSettings,
  forecastSourcesOf,
  pullForecasts,
  ServiceError,
  serverItself,
} from "@pith/services";
import { z } from "zod";
import { PlainFailure, textOf } from "../process/failure.mjs";
import { findDatabase } from "./database.ts";

/**
 * `npm run -s weather -- pull [--office <id>]`: asks for the newest forecast of every site that is switched on, in every
 * office or in one. Reads PITH_FORECAST_CONTACT, as the API does.
 * Exit 0: every service answered, or none was due. 1: one failed. 2: not understood, or the database cannot be reached.
 */
const USAGE = "npm run -s weather -- pull [--office <id>]";

try {
  process.exitCode = await main();
} catch (error) {
  process.exitCode = 2;
  const known = error instanceof PlainFailure || error instanceof ServiceError;
  const [first] = (known ? error.message : `Forecasts cannot be pulled: ${textOf(error)}`).split("\n");
  process.stderr.write(`${first}\n`);
}

async function main(): Promise<0 | 1> {
  const office = readArguments(process.argv.slice(2));
  const settings = z
    .object({ PITH_FORECAST_CONTACT: forecastSettings.contact, PITH_FORECAST_URL: forecastSettings.url })
    .safeParse(process.env);
  if (!settings.success) {
    const [issue] = settings.error.issues;
    throw new PlainFailure(`${issue?.path.join(".")} ${issue?.message}.`);
  }
  const forecastSources = forecastSourcesOf(settings.data);
  const database = await findDatabase(process.env);
  const db = openDatabase(database.appUrl, { max: 2 });
  try {
    const offices = office === undefined ? await database.offices() : [{ id: office }];
    if (offices === undefined)
      throw new PlainFailure("This login does not see all offices: say which with --office <id>.");
    let code: 0 | 1 = 0;
    for (const { id: officeId } of offices) {
      const requestId = globalThis.crypto.randomUUID();
      const ctx = { db, officeId, requestId, actor: serverItself, now: () => new Date(), forecastSources };
      const { sites } = await pullForecasts(ctx, {});
      for (const { siteId, outcome, issuedAt, message } of sites) {
        process.stdout.write(`${[siteId, outcome.padEnd(9), issuedAt ?? message ?? ""].join("  ")}\n`);
        if (outcome === "failed") code = 1;
      }
    }
    return code;
  } finally {
    await db.close();
    await database.close();
  }
}

function readArguments(args: string[]): string | undefined {
  const { values, positionals } = understand(args);
  const [command, ...more] = positionals;
  if (command !== "pull" || more.length > 0) throw new PlainFailure(`Usage: ${USAGE}`);
  if (values.office !== undefined && !z.uuid().safeParse(values.office).success) {
    throw new PlainFailure(`--office must be an id, not "${values.office}".`);
  }
  return values.office;
}

function understand(args: string[]) {
  try {
    return parseArgs({ args, allowPositionals: true, options: { office: { type: "string" } } });
  } catch (error) {
    throw new PlainFailure(`${textOf(error).split("\n")[0]}. Usage: ${USAGE}`);
  }
}

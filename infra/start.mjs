// @ts-check
import { join } from "node:path";
import { buildDashboard, dashboardIsBuilt } from "./build.mjs";
import { openHome, openSecrets } from "./home.mjs";
import { installPackages, packagesAreInstalled } from "./install.mjs";
import { requireSupportedMachine } from "./machine.mjs";
import { ensureDatabase, requireAnswer, requireUsable } from "./postgres/connect.mjs";
import { startServer } from "./postgres/server.mjs";
import { diskIsFull, fullDisk, PlainFailure, plain } from "./process/failure.mjs";
import { openFamily } from "./process/family.mjs";
import { takeLock } from "./process/lock.mjs";
import { portFrom, requireFreePort } from "./process/ports.mjs";
import { openProgress } from "./process/progress.mjs";
import { startStack } from "./stack.mjs";

/**
 * `npm start`: from a fresh clone to a running Pith, and back to nothing running on Ctrl-C.
 * Runs before anything is installed, so it and all it imports use Node alone.
 */

const progress = openProgress();
process.stderr.on("error", () => {}); // the terminal may be gone

/** Aborts with the signal's name; everything below gives up on it and ends what it started. */
const stopping = new AbortController();
const { signal } = stopping;
for (const name of /** @type {const} */ (["SIGINT", "SIGTERM", "SIGHUP"]))
  process.on(name, () => stopping.abort(name)); // npm passes on what the terminal already sent: twice is once
const stopped = new Promise((resolve) => signal.addEventListener("abort", () => resolve(undefined)));

/** Somebody else looks after the server of DATABASE_URL. @type {Promise<undefined>} */
const never = new Promise(() => {});

/** What to undo at the end, last thing first. @type {Array<() => unknown>} */
const undo = [];

/** @param {string} home */
async function run(home) {
  requireSupportedMachine();
  const ports = {
    dashboard: portFrom("PITH_PORT", 3000),
    api: portFrom("PITH_API_PORT", 8787),
  };
  if (ports.dashboard === ports.api)
    throw new PlainFailure(`PITH_PORT and PITH_API_PORT must differ, but both are ${ports.api}.`);
  const given = process.env.DATABASE_URL;

  const lock = takeLock(`${home}/start.lock`, `http://127.0.0.1:${ports.dashboard}`);
  if ("heldBy" in lock)
    throw new PlainFailure(
      `Pith already runs from this folder (${lock.heldBy.note}): stop that one first, by Ctrl-C there or kill ${lock.heldBy.pid}.`,
    );
  undo.push(lock.release);

  const family = openFamily({ folder: home, signal });
  const left = await family.endLeftovers();
  if (left.length > 0) progress.line(`  Ended what an earlier run left running: ${left.join(", ")}.`);
  await requireFreePort(ports.dashboard, { variable: "PITH_PORT", purpose: "the dashboard" });
  await requireFreePort(ports.api, { variable: "PITH_API_PORT", purpose: "the API" });
  if (given) await requireAnswer(given);
  undo.push(family.endAll);

  if (!packagesAreInstalled())
    await progress.step("packages", "installing, about a minute", async (tell) => {
      await installPackages(family);
      tell("installed");
    });
  if (given) await requireUsable(given);
  if (!dashboardIsBuilt())
    await progress.step("dashboard", "building, about half a minute", async (tell) => {
      await buildDashboard(family, signal);
      tell("built");
    });

  const database = given ? { adminUrl: given, broken: never } : await startOwn(home);
  const stack = await startStack({
    family,
    progress,
    signal,
    adminUrl: database.adminUrl,
    secrets: openSecrets(home),
    mailFolder: join(home, "mail"),
    apiPort: ports.api,
    dashboardPort: ports.dashboard,
  });

  progress.line("");
  progress.line(`Pith is running: ${stack.dashboardUrl}`);
  for (const [who, signIn] of Object.entries({ "agent ": stack.agent, farmer: stack.farmer }))
    if (signIn) progress.line(`  sign in as ${who}   ${signIn.email}   ${signIn.password}`);
  progress.line("Ctrl-C stops it.");

  const broken = await Promise.race([stopped, stack.broken, database.broken]);
  if (broken && !signal.aborted) throw broken;
}

/** @param {string} home */
const startOwn = (home) =>
  progress.step("database", "starting", async (tell) => {
    const dataDir = `${home}/postgres`;
    const server = await startServer({ dataDir, log: (sentence) => progress.line(`  ${sentence}`), signal });
    // Before the processes that use it, so that it is stopped after them.
    undo.splice(1, 0, server.stop);
    tell(`${server.adopted ? "still running" : "started"} on port ${server.port}`);
    const broken = server.ended.then(async () =>
      (await diskIsFull(server.dataDir))
        ? fullDisk(server.dataDir, "keep the database running")
        : new PlainFailure(`The database stopped by itself (see ${server.logPath}).`),
    );
    return { adminUrl: await ensureDatabase(server.adminUrl, "pith"), broken };
  });

let exitCode = 0;
let home = "";
try {
  home = openHome();
  await run(home);
} catch (error) {
  if (signal.aborted) exitCode = 130;
  else {
    const { message } = await plain(error, { path: home || process.cwd(), doing: "start" });
    process.stderr.write(`${message}\n`);
    exitCode = 1;
  }
}
if (signal.aborted) progress.line("\nStopping ...");
for (const each of undo.reverse()) await each();
if (signal.aborted) progress.line("Stopped.");
process.exit(exitCode);

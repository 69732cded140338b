// @ts-check
import { spawn } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildDashboard, dashboardIsBuilt } from "./build.mjs";
import { ensureChromium } from "./chromium.mjs";
import { openHome, ROOT } from "./home.mjs";
import { installPackages, packagesAreInstalled } from "./install.mjs";
import { requireSupportedMachine } from "./machine.mjs";
import { PlainFailure, plain } from "./process/failure.mjs";
import { openFamily } from "./process/family.mjs";
import { openProgress } from "./process/progress.mjs";
import { endProcess } from "./process/wait.mjs";

/**
 * `npm test`: everything, from a clean clone on a machine with Node and npm alone. What fails is counted and the
 * rest goes on, so that one run tells all there is to mend. The last line says `N passed, N failed`.
 *
 * `npm test -- <words>` hands the words to vitest and runs the tests alone.
 */

const progress = openProgress();
const words = process.argv.slice(2);

const stopping = new AbortController();
const { signal } = stopping;
for (const name of /** @type {const} */ (["SIGINT", "SIGTERM", "SIGHUP"]))
  process.on(name, () => stopping.abort(name));

let passed = 0;
let failed = 0;

/** Runs a step; when it fails, says so, counts it and goes on.
 * @param {string} doing @param {() => Promise<unknown>} work @returns {Promise<boolean>} */
async function attempt(doing, work) {
  try {
    await work();
    return true;
  } catch (error) {
    if (signal.aborted) throw error;
    failed += 1;
    process.stderr.write(`${(await plain(error, { path: ROOT, doing })).message}\n`);
    return false;
  }
}

/**
 * Runs a program with its output shown as it comes, in a group of its own so that all of it can be ended.
 * @param {string[]} args of node
 * @returns {Promise<number>} its exit code
 */
async function show(args) {
  signal.throwIfAborted();
  const child = spawn(process.execPath, args, {
    cwd: ROOT,
    detached: true,
    stdio: ["ignore", "inherit", "inherit"],
    env: { ...process.env, NEXT_TELEMETRY_DISABLED: "1" },
  });
  /** @type {Promise<void> | undefined} */
  let ending;
  const end = () => {
    // vitest takes the interrupt as a wish to stop and lets its teardown stop the servers
    if (child.pid)
      ending = endProcess(
        child.pid,
        [
          ["SIGINT", 20_000],
          ["SIGKILL", 2_000],
        ],
        { wholeGroup: true },
      );
  };
  signal.addEventListener("abort", end, { once: true });
  const code = await new Promise((resolve) => child.once("exit", (exit) => resolve(exit ?? 1)));
  signal.removeEventListener("abort", end);
  await ending;
  signal.throwIfAborted();
  return code;
}

/** @param {string[]} args what to run of all tests */
async function runTests(args) {
  const folder = mkdtempSync(join(tmpdir(), "pith-test-"));
  const report = join(folder, "report.json");
  try {
    const code = await show([
      join(ROOT, "node_modules", "vitest", "vitest.mjs"),
      "run",
      "--config",
      "tests/vitest.config.ts",
      "--reporter=default",
      "--reporter=json",
      `--outputFile.json=${report}`,
      ...args,
    ]);
    const numbers = existsSync(report) ? JSON.parse(readFileSync(report, "utf8")) : { testResults: [] };
    /** @type {Array<{ status: string, assertionResults: Array<{ status: string }> }>} */
    const files = numbers.testResults;
    const results = files.flatMap((file) => file.assertionResults.map(({ status }) => status));
    const count = (/** @type {string} */ status) => results.filter((each) => each === status).length;
    // A file that could not even be read holds no failed test, yet it failed.
    const broken = files.filter(
      (file) => file.status === "failed" && !file.assertionResults.some(({ status }) => status === "failed"),
    ).length;
    const unrun = results.length - count("passed") - count("failed");
    if (unrun > 0) progress.line(`${unrun} tests were not run.`);
    passed += count("passed");
    const failures = count("failed") + broken;
    failed += failures;
    if (results.length === 0) {
      progress.line("No test was run.");
      failed += failures === 0 ? 1 : 0;
    } else if (code !== 0 && failures === 0) {
      progress.line(`The test run itself failed with exit code ${code}, as told above.`);
      failed += 1;
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function run() {
  requireSupportedMachine();
  const home = openHome();
  const folder = join(home, "test");
  mkdirSync(folder, { recursive: true });
  const family = openFamily({ folder, signal });

  if (!packagesAreInstalled())
    await progress.step("packages", "installing, about a minute", () => installPackages(family));
  const build = async () => {
    if (dashboardIsBuilt()) return;
    await progress.step("dashboard", "building, about half a minute", () => buildDashboard(family, signal));
  };
  // The soak tests what starts, which is not the time to build it.
  if (process.env.PITH_SOAK) await build();
  if (words.length > 0) return runTests(words);

  await attempt("verify", () =>
    progress.step("verify", "format, lint, types, import directions, unused code", async () => {
      const npm = process.env.npm_execpath;
      const { code, said } = await family.run({
        name: "verify",
        command: npm?.endsWith(".js") ? process.execPath : "npm",
        args: [...(npm?.endsWith(".js") ? [npm] : []), "run", "-s", "verify"],
        cwd: ROOT,
        env: process.env,
      });
      if (code !== 0) progress.line(said);
      if (code !== 0) throw new PlainFailure("npm run verify found what is printed above.");
    }),
  );
  const browser = await attempt("prepare the browser tests", async () => {
    await build();
    await progress.step("Chromium", "looking for it", async (tell) => tell(await ensureChromium(family)));
  });
  await runTests(
    ["rules", "service", ...(browser ? ["browser"] : [])].flatMap((name) => ["--project", name]),
  );
}

await attempt("run the tests", run).catch(() => {
  failed += 1;
  process.stderr.write("Stopped before the end.\n");
});
process.stdout.write(`${passed} passed, ${failed} failed\n`);
process.exit(failed === 0 && passed > 0 ? 0 : 1);

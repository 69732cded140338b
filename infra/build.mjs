// @ts-check
import { createHash } from "node:crypto";
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "./home.mjs";
import { diskIsFull, fullDisk, PlainFailure } from "./process/failure.mjs";
import { takeLock } from "./process/lock.mjs";
import { until } from "./process/wait.mjs";

const DASHBOARD = join(ROOT, "apps", "dashboard");
const STANDALONE = join(DASHBOARD, ".next", "standalone");

/** Written into the finished build: a digest of everything it was made from. */
const STAMP = join(STANDALONE, "built-from");

/** The program that serves the built dashboard. */
export const DASHBOARD_SERVER = join(STANDALONE, "apps", "dashboard", "server.js");

const SOURCES = [
  "apps/dashboard",
  "packages/contract",
  "packages/rules",
  "package-lock.json",
  "tsconfig.json",
];
const NOT_SOURCES = new Set(["node_modules", ".next", "next-env.d.ts"]);

/** @param {string} path @returns {string[]} every file at or below it, in a fixed order */
function filesAt(path) {
  const entries = readdirSync(path, { withFileTypes: true }).filter(({ name }) => !NOT_SOURCES.has(name));
  return entries
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => (entry.isDirectory() ? filesAt(join(path, entry.name)) : [join(path, entry.name)]));
}

function digestOfSources() {
  const digest = createHash("sha256").update(process.version);
  for (const source of SOURCES.map((each) => join(ROOT, each)))
    for (const file of source.includes(".json") ? [source] : filesAt(source))
      digest.update(file.slice(ROOT.length)).update("\0").update(readFileSync(file)).update("\0");
  return digest.digest("hex");
}

/** @returns {boolean} whether the dashboard stands built from the sources as they are now */
export const dashboardIsBuilt = () => existsSync(STAMP) && readFileSync(STAMP, "utf8") === digestOfSources();

/**
 * Builds the dashboard. Two at once take turns, and the second finds the work done.
 *
 * @param {import("./process/family.mjs").Family} family
 * @param {AbortSignal} signal
 */
export async function buildDashboard(family, signal) {
  const caches = join(ROOT, "node_modules", ".cache");
  mkdirSync(caches, { recursive: true });
  const lock = await until(
    () => {
      const answer = takeLock(join(caches, "dashboard-build.lock"));
      return "release" in answer ? answer : undefined;
    },
    { withinMs: 600_000, everyMs: 500, signal },
  );
  if (!lock) throw new PlainFailure("Another build of the dashboard has been running for ten minutes.");
  try {
    if (!dashboardIsBuilt()) await build(family);
  } finally {
    lock.release();
  }
}

/** @param {import("./process/family.mjs").Family} family */
async function build(family) {
  const madeFrom = digestOfSources();
  rmSync(STANDALONE, { recursive: true, force: true });
  const { code, said } = await family.run({
    name: "dashboard-build",
    command: process.execPath,
    args: [join(ROOT, "node_modules", "next", "dist", "bin", "next"), "build"],
    cwd: DASHBOARD,
    env: { ...process.env, NODE_ENV: "production", NEXT_TELEMETRY_DISABLED: "1" },
  });
  if (code !== 0) {
    if (await diskIsFull(DASHBOARD, said)) throw fullDisk(DASHBOARD, "build the dashboard");
    throw new PlainFailure(`The dashboard could not be built (see ${family.logPath("dashboard-build")}).`);
  }
  // The standalone server leaves these two to whoever deploys it.
  const beside = join(STANDALONE, "apps", "dashboard");
  cpSync(join(DASHBOARD, ".next", "static"), join(beside, ".next", "static"), { recursive: true });
  if (existsSync(join(DASHBOARD, "public")))
    cpSync(join(DASHBOARD, "public"), join(beside, "public"), { recursive: true });
  writeFileSync(STAMP, madeFrom);
}

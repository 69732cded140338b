// @ts-check
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { PlainFailure } from "./process/failure.mjs";

const NAMES = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

/** Whether it is there and really is a browser: a name may also lead to a note that says how to install one.
 * @param {string} path */
const runs = (path) => spawnSync(path, ["--version"], { stdio: "ignore", timeout: 30_000 }).status === 0;

/** @returns {string | undefined} */
function onPath() {
  for (const folder of (process.env.PATH ?? "").split(":").filter(Boolean))
    for (const name of NAMES) {
      const path = `${folder}/${name}`;
      if (existsSync(path) && runs(path)) return path;
    }
  return undefined;
}

/**
 * @returns {string | undefined} the browser for the tests: CHROMIUM_PATH, or the first on the PATH
 * @throws {PlainFailure} when CHROMIUM_PATH leads nowhere
 */
function findChromium() {
  const given = process.env.CHROMIUM_PATH;
  if (!given) return onPath();
  if (runs(given)) return given;
  throw new PlainFailure(`CHROMIUM_PATH is ${given}, but no browser runs from there.`);
}

/**
 * Finds the browser for the tests, or installs Debian's where this is possible.
 *
 * @param {import("./process/family.mjs").Family} family
 * @returns {Promise<string>} its path
 */
export async function ensureChromium(family) {
  const found = findChromium();
  if (found) return found;
  const mayInstall = process.getuid?.() === 0 && existsSync("/usr/bin/apt-get");
  if (!mayInstall)
    throw new PlainFailure(
      "The browser tests need Chromium, and none is on the PATH: install it (on Debian: apt-get install chromium), or set CHROMIUM_PATH.",
    );
  const { code } = await family.run({
    name: "chromium",
    command: "/bin/sh",
    args: ["-c", "apt-get update && apt-get install -y --no-install-recommends chromium"],
    env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
  });
  const installed = code === 0 ? onPath() : undefined;
  if (installed) return installed;
  throw new PlainFailure(
    `Chromium, which the browser tests need, could not be installed (see ${family.logPath("chromium")}): install it, or set CHROMIUM_PATH.`,
  );
}

// @ts-check
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "./home.mjs";
import { diskIsFull, fullDisk, PlainFailure } from "./process/failure.mjs";

/** @typedef {{ version?: string, resolved?: string, optional?: boolean }} Entry */

/** @param {string} path @returns {Record<string, Entry>} */
const packagesIn = (path) => JSON.parse(readFileSync(path, "utf8")).packages;

/**
 * Whether what is installed is what the lock file asks for. npm notes what it installed when it has finished, so
 * an installation that was interrupted has no note; optional packages of other platforms are rightly absent.
 *
 * @returns {boolean}
 */
export function packagesAreInstalled() {
  const note = join(ROOT, "node_modules", ".package-lock.json");
  if (!existsSync(note)) return false;
  const installed = packagesIn(note);
  return Object.entries(packagesIn(join(ROOT, "package-lock.json"))).every(
    ([path, { version, optional }]) => {
      const found = installed[path];
      return path === "" || (found ? found.version === version : optional);
    },
  );
}

/** Words in which npm says why it failed, and ours for them. */
const WHY = /** @type {const} */ ([
  [
    /ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ETIMEDOUT|network/,
    "the package registry could not be reached",
  ],
  [/EACCES|EPERM/, "this user may not write to node_modules"],
  [/npm ci` can only install|EUSAGE/, "package.json and package-lock.json do not fit together"],
]);

/**
 * Installs exactly what the lock file names.
 *
 * @param {import("./process/family.mjs").Family} family
 */
export async function installPackages(family) {
  const npm = process.env.npm_execpath; // the npm that runs us, where there is one
  const [command, first] = npm?.endsWith(".js") ? [process.execPath, [npm]] : ["npm", []];
  const { code, said } = await family.run({
    name: "packages",
    command,
    args: [...first, "ci", "--include=dev", "--no-audit", "--no-fund"],
    cwd: ROOT,
    env: process.env,
  });
  if (code === 0) return;
  if (await diskIsFull(ROOT, said)) throw fullDisk(ROOT, "install its packages");
  const why = WHY.find(([words]) => words.test(said))?.[1] ?? "npm ci failed";
  throw new PlainFailure(`The packages could not be installed: ${why} (see ${family.logPath("packages")}).`);
}

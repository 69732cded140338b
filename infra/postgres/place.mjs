// @ts-check
import { execFileSync, spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import {
  chmodSync,
  existsSync,
  mkdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import { accountFor } from "./account.mjs";
import { installedBinaries } from "./binaries.mjs";

/** System folder for what must stand outside a project that other users may not enter. */
const SYSTEM_STATE = "/var/lib/pith";

/**
 * @typedef {{ binaries: string, dataDir: string, account: import("./account.mjs").Account }} Place
 */

/**
 * Runs a small shell script as an account: access is tried, not guessed from permissions.
 *
 * @param {import("./account.mjs").Account} account
 * @param {string} script
 * @param {string} path handed to the script as $1
 * @returns {boolean} whether it succeeded
 */
const can = (account, script, path) =>
  spawnSync("/bin/sh", ["-c", script, "sh", path], { ...account, cwd: "/", stdio: "ignore" }).status === 0;

const RUN_ALL =
  '"$1/bin/postgres" --version && "$1/bin/initdb" --version && cat "$1/share/postgresql/postgres.bki"';
const ENTER = 'cd "$1"';

/** Makes a folder of our own that everybody may pass through, whatever the umask says.
 * @param {string} folder */
function makeOpenFolder(folder) {
  mkdirSync(folder, { recursive: true });
  chmodSync(folder, 0o755);
}

/**
 * A copy of the binaries in the system folder, one a version, for all projects; whole or not there at all.
 *
 * @param {{ root: string, version: string }} installed
 */
function copyOf({ root, version }) {
  const copy = join(SYSTEM_STATE, `postgres-${version}`);
  if (existsSync(copy)) return copy;
  makeOpenFolder(SYSTEM_STATE);
  const unfinished = `${copy}.unfinished-${process.pid}`;
  try {
    execFileSync("cp", ["-a", root, unfinished], { stdio: ["ignore", "ignore", "pipe"] });
    execFileSync("chmod", ["-R", "u+rwX,go+rX", unfinished], { stdio: ["ignore", "ignore", "pipe"] });
    if (!existsSync(copy)) renameSync(unfinished, copy);
  } finally {
    rmSync(unfinished, { recursive: true, force: true });
  }
  return copy;
}

/** Whether a state folder is there for this data folder, or free because its project is gone.
 * @param {string} folder @param {string} dataDir */
function isOurs(folder, dataDir) {
  const note = join(folder, "belongs-to");
  if (!existsSync(note)) return true;
  const owner = readFileSync(note, "utf8").trim();
  return owner === dataDir || !existsSync(dirname(owner));
}

/**
 * The state folder of one data folder. The pointer left beside the data folder wins, so that a project that was
 * moved finds its data again; unless the folder belongs to another project that still stands, as after copying.
 *
 * @param {string} dataDir
 * @param {string} pointer
 */
function stateFolder(dataDir, pointer) {
  const pointed = existsSync(pointer) ? readFileSync(pointer, "utf8").trim() : "";
  if (pointed && existsSync(pointed) && isOurs(pointed, dataDir)) return pointed;
  for (let turn = 0; ; turn++) {
    const name = createHash("sha256").update(`${dataDir}\0${turn}`).digest("hex").slice(0, 16);
    const folder = join(SYSTEM_STATE, name);
    if (isOurs(folder, dataDir)) return folder;
  }
}

/**
 * Finds where the server can run from and where its data can stand.
 *
 * An ordinary user runs it in place. Root must run it as another user; where that user cannot reach the project
 * (in a folder others may not enter), a copy of the binaries and the data stand in a system folder, and a file
 * beside the wanted data folder says where. No permission of an existing folder is changed.
 *
 * @param {string} wanted the data folder that was asked for; the folder it stands in exists
 * @param {(sentence: string) => void} tell
 * @returns {Place}
 */
export function findPlace(wanted, tell) {
  const dataDir = join(realpathSync(dirname(wanted)), basename(wanted));
  const installed = installedBinaries();
  const account = accountFor(dataDir);
  if (!("uid" in account)) return { binaries: installed.root, dataDir, account };

  const binaries = can(account, RUN_ALL, installed.root) ? installed.root : copyOf(installed);
  const pointer = `${dataDir}.elsewhere`;
  if (!existsSync(pointer) && can(account, ENTER, dirname(dataDir))) return { binaries, dataDir, account };

  const folder = stateFolder(dataDir, pointer);
  makeOpenFolder(SYSTEM_STATE);
  makeOpenFolder(folder);
  const elsewhere = join(folder, basename(dataDir));
  // Data that stood here before the folder was closed to others comes along; `mv` also crosses disks.
  if (existsSync(dataDir) && !existsSync(elsewhere)) execFileSync("mv", [dataDir, elsewhere]);
  writeFileSync(join(folder, "belongs-to"), `${dataDir}\n`);
  if (!existsSync(pointer))
    tell(`The database's own user may not enter this folder, so the database's files stand in ${folder}.`);
  writeFileSync(pointer, `${folder}\n`);
  return { binaries, dataDir: elsewhere, account: accountFor(elsewhere) };
}

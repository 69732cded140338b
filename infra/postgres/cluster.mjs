// @ts-check
import { spawnSync } from "node:child_process";
import { randomBytes } from "node:crypto";
import {
  chownSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import { diskIsFull, fullDisk, PlainFailure } from "../process/failure.mjs";
import { MAJOR_VERSION } from "./binaries.mjs";

/** Written as the very last thing of making a data folder: a folder without it was never finished. */
const FINISHED = "pith-finished";

/** A killed run's initdb may go on for a moment and write into what is being removed. */
const STUBBORNLY = { recursive: true, force: true, maxRetries: 20, retryDelay: 100 };

export const SUPERUSER = "postgres";

/** @typedef {import("./place.mjs").Place} Place */

/** @param {string} path @param {import("./account.mjs").Account} account */
const giveTo = (path, account) => "uid" in account && chownSync(path, account.uid, account.gid);

/**
 * @param {string} dataDir
 * @returns {"absent" | "unfinished" | "finished"}
 */
export function stateOf(dataDir) {
  if (!existsSync(dataDir)) return "absent";
  if (!existsSync(join(dataDir, FINISHED)) || !existsSync(join(dataDir, "PG_VERSION"))) return "unfinished";
  const version = readFileSync(join(dataDir, "PG_VERSION"), "utf8").trim();
  if (version !== MAJOR_VERSION)
    throw new PlainFailure(
      `The data in ${dataDir} was made by Postgres ${version}, but this Pith brings Postgres ${MAJOR_VERSION}: move that folder away, or set DATABASE_URL to a server of version ${version}.`,
    );
  return "finished";
}

/** Removes what a run that was killed in the middle of making a data folder left beside it.
 * @param {string} dataDir */
export function removeUnfinished(dataDir) {
  const prefix = `${basename(dataDir)}.new-`;
  for (const name of readdirSync(dirname(dataDir)))
    if (name.startsWith(prefix)) rmSync(join(dirname(dataDir), name), STUBBORNLY);
}

/**
 * Makes a data folder: in another folder first, which is renamed when it is complete, so that a data folder is
 * either whole or not there.
 *
 * @param {Place} place
 * @param {{ password: string, throwaway: boolean }} options password: of the superuser; throwaway: need not outlive a power cut
 */
export async function makeCluster({ binaries, dataDir, account }, { password, throwaway }) {
  const unfinished = `${dataDir}.new-${process.pid}`;
  const passwordFile = `${unfinished}.password`;
  try {
    mkdirSync(unfinished, { mode: 0o700 });
    giveTo(unfinished, account);
    writeFileSync(passwordFile, password, { mode: 0o600 });
    giveTo(passwordFile, account);
    const made = spawnSync(
      join(binaries, "bin", "initdb"),
      [
        `--pgdata=${unfinished}`,
        `--username=${SUPERUSER}`,
        `--pwfile=${passwordFile}`,
        "--auth=scram-sha-256",
        "--encoding=UTF8",
        `--locale=${process.platform === "darwin" ? "en_US.UTF-8" : "C.UTF-8"}`,
        "--lc-messages=C",
        ...(throwaway ? ["--no-sync"] : []),
      ],
      {
        ...account,
        cwd: "/",
        encoding: "utf8",
        stdio: ["ignore", "pipe", "pipe"],
        env: { ...process.env, LC_ALL: "C" },
      },
    );
    if (made.status !== 0) {
      const said = `${made.error?.message ?? ""}${made.stderr ?? ""}`;
      if (await diskIsFull(dirname(dataDir), said)) throw fullDisk(dirname(dataDir), "make the database");
      throw new PlainFailure(`The database's folder ${dataDir} could not be made: ${reasonIn(said)}`);
    }
    writeFileSync(join(unfinished, FINISHED), "");
    giveTo(join(unfinished, FINISHED), account);
    renameSync(unfinished, dataDir);
  } finally {
    rmSync(unfinished, STUBBORNLY);
    rmSync(passwordFile, { force: true });
  }
}

/**
 * Gives the superuser of a server that is not running a new password, for when the old one was lost.
 *
 * @param {Place} place
 * @param {string} password
 */
export function resetPassword({ binaries, dataDir, account }, password) {
  const done = spawnSync(join(binaries, "bin", "postgres"), ["--single", "-D", dataDir, "postgres"], {
    ...account,
    cwd: "/",
    encoding: "utf8",
    input: `ALTER ROLE ${SUPERUSER} PASSWORD '${password}'\n`,
  });
  if (done.status !== 0)
    throw new PlainFailure(`The password of the database in ${dataDir} is lost and could not be set anew.`);
}

export const newPassword = () => randomBytes(24).toString("base64url");

/**
 * The one line of Postgres' own words that names the reason.
 *
 * @param {string} said
 * @returns {string}
 */
export function reasonIn(said) {
  const lines = said.trim().split("\n");
  const telling = lines.findLast((line) => /FATAL|PANIC|error:|ERROR/.test(line)) ?? lines.at(-1) ?? "";
  return telling.replace(/^.*?(FATAL|PANIC|ERROR|error):\s*/, "") || "it gave no reason";
}

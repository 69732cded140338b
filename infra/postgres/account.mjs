// @ts-check
import { execFileSync, spawnSync } from "node:child_process";
import { statSync } from "node:fs";
import { PlainFailure } from "../process/failure.mjs";

/**
 * Who the server runs as: nobody else for an ordinary user; another account for root, as Postgres refuses root.
 * @typedef {{ uid: number, gid: number } | {}} Account
 */

const USER = "postgres";

const iAmRoot = () => process.getuid?.() === 0;

/** @param {string} option */
const idOf = (option) =>
  Number.parseInt(
    execFileSync("id", [option, USER], { encoding: "utf8", stdio: ["ignore", "pipe", "ignore"] }),
    10,
  );

/** @returns {{ uid: number, gid: number }} */
function postgresUser() {
  try {
    return { uid: idOf("-u"), gid: idOf("-g") };
  } catch {
    const made = spawnSync("useradd", [
      "--system",
      "--user-group",
      "--no-create-home",
      "--shell",
      "/usr/sbin/nologin",
      USER,
    ]);
    if (made.status !== 0)
      throw new PlainFailure(
        `Postgres refuses to run as root, and a user named ${USER} could not be created: create one, or run Pith as an ordinary user.`,
      );
    return { uid: idOf("-u"), gid: idOf("-g") };
  }
}

/**
 * @param {string} dataDir if it exists and belongs to an ordinary user, that user runs the server
 * @returns {Account}
 */
export function accountFor(dataDir) {
  if (!iAmRoot()) return {};
  const found = statSync(dataDir, { throwIfNoEntry: false });
  if (found && found.uid !== 0) return { uid: found.uid, gid: found.gid };
  return postgresUser();
}

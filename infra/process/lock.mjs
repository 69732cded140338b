// @ts-check
import { linkSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { identityOf, stillRuns } from "./identity.mjs";

/**
 * @typedef {{ pid: number, identity: string, note?: string }} Holder
 * @typedef {{ heldBy: Holder } | { release: () => void }} LockAnswer
 */

/**
 * @param {string} path of a lock
 * @returns {Holder | undefined} whoever took it, alive or not; undefined when there is no lock
 */
export function holderOf(path) {
  try {
    return JSON.parse(readFileSync(path, "utf8"));
  } catch {
    return undefined;
  }
}

/**
 * Takes a lock that only one living process can hold; a lock whose holder is dead counts for nothing.
 * The file is written whole and linked into place, so nobody ever reads half of it.
 *
 * @param {string} path
 * @param {string} [note] kept with the lock for whoever finds it taken
 * @returns {LockAnswer}
 */
export function takeLock(path, note) {
  const me = { pid: process.pid, identity: identityOf(process.pid) ?? "", note };
  const own = `${path}.${process.pid}`;
  const aside = `${own}.stale`;
  writeFileSync(own, JSON.stringify(me));
  try {
    for (;;) {
      try {
        linkSync(own, path);
        return { release: () => void (holderOf(path)?.pid === process.pid && rmSync(path, { force: true })) };
      } catch (error) {
        if (/** @type {NodeJS.ErrnoException} */ (error).code !== "EEXIST") throw error;
      }
      const holder = holderOf(path);
      if (holder && stillRuns(holder)) return { heldBy: holder };
      try {
        renameSync(path, aside);
      } catch {
        continue; // somebody else cleared it at the same moment
      }
      // Between reading and renaming another start may have taken the lock: then it is theirs, put it back.
      const moved = holderOf(aside);
      if (moved && stillRuns(moved)) {
        linkSync(aside, path);
        return { heldBy: moved };
      }
    }
  } finally {
    rmSync(own, { force: true });
    rmSync(aside, { force: true });
  }
}

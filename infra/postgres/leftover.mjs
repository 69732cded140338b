// @ts-check
import { readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { commandLineOf, identityOf } from "../process/identity.mjs";
import { endProcess, until } from "../process/wait.mjs";

/**
 * Reads what a running server says of itself in its data folder.
 *
 * @param {string} dataDir
 * @returns {{ pid: number, port: number, ready: boolean } | undefined} undefined when the file is missing or half written
 */
export function readPostmaster(dataDir) {
  try {
    const lines = readFileSync(join(dataDir, "postmaster.pid"), "utf8").split("\n");
    const pid = Number(lines[0]);
    const port = Number(lines[3]);
    return pid > 0 ? { pid, port, ready: lines[7]?.trim() === "ready" } : undefined;
  } catch {
    return undefined;
  }
}

/** Fast shutdown first (open sessions are ended, all is written), then without writing, then at once. */
/** @type {Array<[NodeJS.Signals, number]>} */
export const SERVER_STOP = [
  ["SIGINT", 15_000],
  ["SIGQUIT", 5_000],
  ["SIGKILL", 2_000],
];

/**
 * Looks whether a server of an earlier run still works on this folder. A note whose process is dead, or is by
 * now some other program, is removed.
 *
 * @param {string} dataDir
 * @param {AbortSignal} [signal]
 * @returns {Promise<{ pid: number, port: number } | undefined>} a server that takes connections
 */
export async function findLeftover(dataDir, signal) {
  const noted = readPostmaster(dataDir);
  const isServerOfThisFolder =
    noted && identityOf(noted.pid) && commandLineOf(noted.pid).split(" ").includes(dataDir);
  if (!isServerOfThisFolder) {
    rmSync(join(dataDir, "postmaster.pid"), { force: true });
    return undefined;
  }
  const ready = await until(
    () => (identityOf(noted.pid) ? readPostmaster(dataDir)?.ready || undefined : false) || undefined,
    { withinMs: 10_000, signal },
  );
  if (ready) return { pid: noted.pid, port: noted.port };
  await endProcess(noted.pid, SERVER_STOP); // it neither came up nor went away by itself
  return undefined;
}

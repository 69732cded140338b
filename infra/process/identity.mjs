// @ts-check
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";

/**
 * Process numbers are used again, so a number alone does not say that a process is still the one that was
 * started. These functions add when it began. On Linux they read /proc, which is there on the barest machine;
 * elsewhere they ask `ps`.
 */

const onLinux = process.platform === "linux";

/** The state and start of a process from /proc/<pid>/stat; the name in brackets may itself hold spaces and brackets.
 * @param {number} pid */
function linuxStat(pid) {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, "utf8");
    const fields = stat.slice(stat.lastIndexOf(")") + 2).split(" ");
    return { state: fields[0], startTicks: fields[19] };
  } catch {
    return undefined;
  }
}

/** @param {number} pid @param {string} column */
function ps(pid, column) {
  try {
    return execFileSync("ps", ["-ww", "-o", `${column}=`, "-p", String(pid)], {
      encoding: "utf8",
      stdio: ["ignore", "pipe", "ignore"],
    }).trim();
  } catch {
    return "";
  }
}

/**
 * What tells this process from any other that ever had its number.
 *
 * @param {number} pid
 * @returns {string | undefined} undefined when no such process runs (a dead one not yet collected does not run)
 */
export function identityOf(pid) {
  if (onLinux) {
    const stat = linuxStat(pid);
    if (!stat || stat.state === "Z" || stat.state === "X") return undefined;
    return `${readFileSync("/proc/sys/kernel/random/boot_id", "utf8").trim()}/${stat.startTicks}`;
  }
  const state = ps(pid, "state");
  return state === "" || state.startsWith("Z") ? undefined : ps(pid, "lstart");
}

/**
 * @param {{ pid: number, identity: string }} known
 * @returns {boolean} whether that very process still runs
 */
export const stillRuns = ({ pid, identity }) => identityOf(pid) === identity;

/**
 * @param {number} pid
 * @returns {string} the command line, words separated by spaces; empty when it cannot be told
 */
export function commandLineOf(pid) {
  if (!onLinux) return ps(pid, "command");
  try {
    return readFileSync(`/proc/${pid}/cmdline`, "utf8").replaceAll("\0", " ").trim();
  } catch {
    return "";
  }
}

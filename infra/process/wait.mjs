// @ts-check
import { setTimeout as sleep } from "node:timers/promises";
import { identityOf, stillRuns } from "./identity.mjs";

/**
 * Asks again and again until the answer is something, or the time is over.
 *
 * @template T
 * @param {() => T | undefined | Promise<T | undefined>} ask
 * @param {{ withinMs: number, everyMs?: number, signal?: AbortSignal }} options
 * @returns {Promise<T | undefined>} undefined when the time was over
 * @throws the signal's reason when it aborts
 */
export async function until(ask, { withinMs, everyMs = 25, signal }) {
  const end = Date.now() + withinMs;
  for (;;) {
    signal?.throwIfAborted();
    const answer = await ask();
    if (answer !== undefined && answer !== false) return answer;
    if (Date.now() >= end) return undefined;
    await sleep(everyMs);
  }
}

/**
 * Ends one process by number: gently first, then less so, never waiting without bound.
 *
 * @param {number} pid
 * @param {Array<[NodeJS.Signals, number]>} steps each signal with how long to wait for it [ms]
 * @param {{ wholeGroup?: boolean }} [options] wholeGroup: the process leads a group of its own; end all of it
 * @returns {Promise<void>}
 */
export async function endProcess(pid, steps, { wholeGroup = false } = {}) {
  const identity = identityOf(pid);
  if (identity === undefined) return;
  for (const [signal, withinMs] of steps) {
    try {
      process.kill(wholeGroup ? -pid : pid, signal);
    } catch {
      return; // it went by itself
    }
    const gone = await until(() => !stillRuns({ pid, identity }) || undefined, { withinMs });
    if (gone) break;
  }
  // What the leader started may outlive it for a moment; nothing in its group may stay.
  if (wholeGroup)
    try {
      process.kill(-pid, "SIGKILL");
    } catch {
      // nobody left, as it should be
    }
}

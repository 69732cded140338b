// @ts-check
import { spawn } from "node:child_process";
import { closeSync, openSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { identityOf, stillRuns } from "./identity.mjs";
import { endProcess } from "./wait.mjs";

/**
 * @typedef {{ name: string, pid: number, identity: string }} Member
 * @typedef {{ name: string, command: string, args: string[], cwd?: string, env?: NodeJS.ProcessEnv }} Order
 * @typedef {{ code: number | null, signal: NodeJS.Signals | null }} Ending
 * @typedef {ReturnType<typeof openFamily>} Family
 */

/** @type {Array<[NodeJS.Signals, number]>} */
const GENTLY_THEN_NOT = [
  ["SIGTERM", 5_000],
  ["SIGKILL", 2_000],
];

/** Enough of what a program said last to find the reason in it. */
const TAIL_CHARACTERS = 20_000;

/**
 * Keeps account of every process started here. Each leads a group of its own, so that Ctrl-C in the terminal
 * reaches this process alone, which then ends them in order; and each is written down, so that the next run
 * can end what a killed run left behind.
 *
 * @param {{ folder: string, signal: AbortSignal }} options folder: where the account and the logs are kept
 */
export function openFamily({ folder, signal }) {
  const accountPath = join(folder, "processes.json");
  /** @type {Map<number, Member>} */
  const members = new Map();
  let closed = false;

  const writeAccount = () => {
    const next = `${accountPath}.next`;
    writeFileSync(next, JSON.stringify([...members.values()]));
    renameSync(next, accountPath);
  };

  /** @param {import("node:child_process").ChildProcess} child @param {string} name */
  const enter = (child, name) => {
    const { pid } = child;
    if (pid === undefined) return;
    members.set(pid, { name, pid, identity: identityOf(pid) ?? "" });
    child.once("exit", () => {
      members.delete(pid);
      try {
        if (!closed) writeAccount();
      } catch {
        // A full disk. The account then names a process that is gone, which does no harm.
      }
    });
    writeAccount();
  };

  /** @param {string} name */
  const logPath = (name) => join(folder, `${name}.log`);

  return {
    logPath,

    /**
     * Ends what an earlier run left behind.
     * @returns {Promise<string[]>} the names of what was ended
     */
    async endLeftovers() {
      /** @type {Member[]} */
      let left = [];
      try {
        left = JSON.parse(readFileSync(accountPath, "utf8"));
      } catch {
        // no earlier run, or one that ended in order
      }
      const alive = left.filter(stillRuns);
      await Promise.all(alive.map(({ pid }) => endProcess(pid, GENTLY_THEN_NOT, { wholeGroup: true })));
      rmSync(accountPath, { force: true });
      return alive.map(({ name }) => name);
    },

    /**
     * Runs a program to its end.
     * @param {Order} order
     * @returns {Promise<Ending & { said: string, out: string }>} said: the end of everything it printed; out: of its standard output
     * @throws the signal's reason when it aborts; the program has been ended by then
     */
    async run({ name, command, args, cwd, env }) {
      signal.throwIfAborted();
      const log = openSync(logPath(name), "w");
      const child = spawn(command, args, { cwd, env, detached: true, stdio: ["ignore", "pipe", "pipe"] });
      enter(child, name);
      let said = "";
      let out = "";
      let logging = true;
      /** @param {Buffer} chunk @param {boolean} standard */
      const hear = (chunk, standard) => {
        said = (said + chunk).slice(-TAIL_CHARACTERS);
        if (standard) out = (out + chunk).slice(-TAIL_CHARACTERS);
        try {
          if (logging) writeFileSync(log, chunk);
        } catch (error) {
          logging = false; // a full disk: what was heard is still in memory, and says why
          said += ` ${/** @type {Error} */ (error).message}`;
        }
      };
      child.stdout.on("data", (chunk) => hear(chunk, true));
      child.stderr.on("data", (chunk) => hear(chunk, false));
      /** @type {Promise<void> | undefined} */
      let ending;
      const end = () => {
        ending = child.pid ? endProcess(child.pid, GENTLY_THEN_NOT, { wholeGroup: true }) : undefined;
      };
      signal.addEventListener("abort", end, { once: true });
      try {
        return await new Promise((resolve, reject) => {
          child.once("error", reject);
          child.once("close", (code, by) => resolve({ code, signal: by, said, out }));
        });
      } finally {
        signal.removeEventListener("abort", end);
        closeSync(log);
        await ending;
        signal.throwIfAborted();
      }
    },

    /**
     * Starts a program that is meant to stay.
     * @param {Order} order
     * @returns {{ name: string, pid: number | undefined, logPath: string, ended: Promise<Ending> }}
     */
    start({ name, command, args, cwd, env }) {
      signal.throwIfAborted();
      const log = openSync(logPath(name), "w");
      const child = spawn(command, args, { cwd, env, detached: true, stdio: ["ignore", log, log] });
      closeSync(log);
      enter(child, name);
      /** @type {Promise<Ending>} */
      const ended = new Promise((resolve) => {
        child.once("error", () => resolve({ code: null, signal: null }));
        child.once("exit", (code, by) => resolve({ code, signal: by }));
      });
      return { name, pid: child.pid, logPath: logPath(name), ended };
    },

    /** Ends every member, at the same time and within a bound. */
    async endAll() {
      closed = true;
      await Promise.all(
        [...members.keys()].map((pid) => endProcess(pid, GENTLY_THEN_NOT, { wholeGroup: true })),
      );
      rmSync(accountPath, { force: true });
    },
  };
}

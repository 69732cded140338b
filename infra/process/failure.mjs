// @ts-check
import { statfs } from "node:fs/promises";
import { dirname } from "node:path";

/** A failure whose message is one sentence for the person at the terminal: it is shown as it stands, without a stack. */
export class PlainFailure extends Error {
  /**
   * @param {string} sentence
   * @param {{ cause?: unknown }} [options]
   */
  constructor(sentence, options) {
    super(sentence, options);
    this.name = "PlainFailure";
  }
}

/** How the operating system, Postgres (SQLSTATE 53100) and npm say that there is no room left. */
const FULL = /ENOSPC|EDQUOT|No space left on device|Disk quota exceeded|53100|disk_full/i;

/** Below this much room a server cannot even write its next log segment, which is 16 MiB. */
const TOO_LITTLE_BYTES = 16 * 1024 * 1024;

/**
 * Whether something failed because the disk is full: by what it said, or, because a full disk also swallows
 * the logs that would say so, by asking the file system.
 *
 * @param {string} path a file or folder on the disk in question; it need not exist
 * @param {string} said what the failing program or error said
 * @returns {Promise<boolean>}
 */
export async function diskIsFull(path, said = "") {
  if (FULL.test(said)) return true;
  for (let at = path; ; at = dirname(at)) {
    try {
      const { bavail, bsize } = await statfs(at);
      return bavail * bsize < TOO_LITTLE_BYTES;
    } catch {
      if (dirname(at) === at) return false;
    }
  }
}

/**
 * @param {string} path
 * @param {string} doing what needed the room, as in "start the database"
 */
export const fullDisk = (path, doing) =>
  new PlainFailure(
    `The disk that holds ${path} is full, so Pith could not ${doing}: free some space and run it again.`,
  );

/**
 * Everything an error says about itself, its causes and parts included.
 *
 * @param {unknown} error
 * @returns {string}
 */
export function textOf(error) {
  if (!(error instanceof Error)) return String(error);
  const { code } = /** @type {{ code?: unknown }} */ (error);
  const parts = error instanceof AggregateError ? error.errors.map(textOf) : [];
  const cause = error.cause === undefined ? [] : [textOf(error.cause)];
  return [typeof code === "string" ? code : "", error.message, ...parts, ...cause].filter(Boolean).join(" ");
}

/**
 * Turns any error into a sentence for people, naming what was being done and where.
 *
 * @param {unknown} error
 * @param {{ path: string, doing: string }} about
 * @returns {Promise<PlainFailure>}
 */
export async function plain(error, { path, doing }) {
  if (error instanceof PlainFailure) return error;
  const said = textOf(error);
  if (await diskIsFull(path, said)) return fullDisk(path, doing);
  const where = error instanceof Error && "path" in error && error.path ? String(error.path) : path;
  if (/EACCES|EPERM/.test(said))
    return new PlainFailure(
      `Pith could not ${doing}: this user may not use ${where}; run it as the user that owns it, or delete it.`,
      { cause: error },
    );
  if (/EROFS/.test(said))
    return new PlainFailure(`Pith could not ${doing}: ${where} is on a read-only disk.`, { cause: error });
  return new PlainFailure(`Pith could not ${doing}: ${firstLine(said)}`, { cause: error });
}

/** @param {string} text */
const firstLine = (text) => text.trim().split("\n")[0] ?? "";

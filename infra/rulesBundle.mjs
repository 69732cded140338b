// @ts-check
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, renameSync, writeFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { ROOT } from "./home.mjs";

/** What an issued entry is computed and said by, with everything it needs. */
const ENTRY = "packages/services/src/ledger/compute.ts";

/**
 * Keeps the code of the rules, as they are now, as one file under its SHA-256. Entries of the ledger name it, and it
 * computes them again when the rules have long changed. What was kept before stays.
 *
 * @param {string} parent where the folder `rules` of kept bundles is
 * @returns {Promise<{ sha256: string, folder: string }>}
 */
export async function keepRulesBundle(parent) {
  const { build } = await import("esbuild"); // installed by now, which this file's import would not wait for
  const { outputFiles } = await build({
    entryPoints: [ENTRY],
    absWorkingDir: ROOT,
    bundle: true,
    write: false,
    format: "esm",
    platform: "browser",
    target: "es2022",
    // Neither names of folders nor of this machine may get into it: the same sources give the same bytes anywhere.
    minify: true,
    legalComments: "eof",
    charset: "utf8",
  });
  const text = outputFiles[0]?.text ?? "";
  const sha256 = createHash("sha256").update(text).digest("hex");
  const folder = join(parent, "rules");
  const path = join(folder, `${sha256}.mjs`);
  if (!existsSync(path)) {
    mkdirSync(folder, { recursive: true });
    writeFileSync(`${path}.next`, text);
    renameSync(`${path}.next`, path); // whole or not there
  }
  return { sha256, folder };
}

/**
 * Reads kept rules from a folder, by their SHA-256.
 *
 * @param {string} folder
 * @returns {(sha256: string) => Promise<string | undefined>}
 */
export const readBundleIn = (folder) => async (sha256) => {
  if (!/^[0-9a-f]{64}$/.test(sha256)) return undefined;
  return readFile(join(folder, `${sha256}.mjs`), "utf8").catch(() => undefined);
};

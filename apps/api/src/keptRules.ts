import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { z } from "zod";

/** Settings of the ledger, for the programs on Node. */
export const ledgerSettings = {
  LEDGER_SIGNING_KEY: z.string().optional(),
  PITH_RULES_BUNDLE: z
    .string()
    .regex(/^[0-9a-f]{64}$/, "must be a SHA-256 in hex")
    .optional(),
  /** Folder of kept rules. */
  PITH_RULES_BUNDLES: z.string().optional(),
};

/** Reads kept rules from a folder, by their SHA-256. */
export const readBundleIn =
  (folder: string | undefined) =>
  async (sha256: string): Promise<string | undefined> => {
    if (folder === undefined || !/^[0-9a-f]{64}$/.test(sha256)) return undefined;
    return readFile(join(folder, `${sha256}.mjs`), "utf8").catch(() => undefined);
  };

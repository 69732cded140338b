import { sha256Hex } from "./canonical.ts";
import type { Computer } from "./compute.ts";
import { openSigner, type Signer } from "./signing.ts";

/** What a program brings along for the ledger; none of it lies in the database. */
export interface LedgerTools {
  /** SHA-256 of the bundle of the rules that this program runs, where one was kept of it. */
  rulesBundle: string | null;
  /** Text of a kept bundle by its SHA-256. Left out where a program cannot load code, as on the edge. */
  readBundle?: (sha256: string) => Promise<string | undefined>;
  /** Signs checkpoints and exports; none where the server has no key. */
  signer: Signer | null;
}

/** What the settings of a program say of it. */
export interface LedgerSettings {
  /** The private key as JWK. */
  LEDGER_SIGNING_KEY?: string | undefined;
  PITH_RULES_BUNDLE?: string | undefined;
}

export const openLedgerTools = async (
  settings: LedgerSettings,
  readBundle?: LedgerTools["readBundle"],
): Promise<LedgerTools> => ({
  rulesBundle: settings.PITH_RULES_BUNDLE || null,
  signer: settings.LEDGER_SIGNING_KEY ? await openSigner(settings.LEDGER_SIGNING_KEY) : null,
  ...(readBundle && { readBundle }),
});

/** What a kept bundle computes. It is run only if its bytes give the hash that the entry names. */
export async function computerOf(tools: LedgerTools | undefined, sha256: string): Promise<Computer | string> {
  if (!tools?.readBundle) {
    return "this program cannot run kept rules; replay it where the worker or the command line runs";
  }
  const text = await tools.readBundle(sha256);
  if (text === undefined) return `the bundle ${sha256} is not in the folder of kept rules`;
  if ((await sha256Hex(text)) !== sha256) return `the file of the bundle ${sha256} does not give that hash`;
  return (await import(/* @vite-ignore */ `data:text/javascript,${encodeURIComponent(text)}`)) as Computer;
}

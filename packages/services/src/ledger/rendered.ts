import type { Said } from "@pith/contract";
import { canonicalText, hexOf, randomSalt, sha256Hex } from "./canonical.ts";

/**
 * What the farmer reads, as it is kept beside the chain: it names the beds, which the ledger does not, so the entry
 * holds a salted hash of it. The salt lies beside the words and goes with them when they are erased.
 */
interface Rendered {
  en: Said;
  salt: string;
}

export async function sealed(en: Said): Promise<{ stored: Record<string, unknown>; sha256: string }> {
  const salt = hexOf(randomSalt());
  return { stored: { en, salt }, sha256: await sealOf({ en, salt }) };
}

export const sealHolds = async (stored: Record<string, unknown>, sha256: string | null): Promise<boolean> =>
  (await sealOf(stored as unknown as Rendered)) === sha256;

/** The words as they were issued. */
export const saidIn = (stored: Record<string, unknown>): Said => (stored as unknown as Rendered).en;

const sealOf = (rendered: Rendered): Promise<string> => sha256Hex(canonicalText(rendered));

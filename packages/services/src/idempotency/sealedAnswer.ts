import { seal, unseal } from "../delivery/secrets.ts";
import { sha256Hex } from "../ledger/canonical.ts";

/** An answer as it is kept: what a second try is given. */
export interface KeptAnswer {
  status: number;
  headers: Record<string, string>;
  body: string;
}

const encoder = new TextEncoder();

/**
 * A kept answer may hold a secret that is shown once, or somebody's name. It is sealed with the request's own key, of
 * which the database has the hash alone, so that only who sends the key again can open it.
 */
export const sealAnswer = async (key: string, answer: KeptAnswer): Promise<string> =>
  seal(await sealKeyOf(key), await keyHash(key), JSON.stringify(answer));

export const openAnswer = async (key: string, sealed: string): Promise<KeptAnswer> =>
  JSON.parse(await unseal(await sealKeyOf(key), await keyHash(key), sealed)) as KeptAnswer;

/** Under which the key stands in the database. */
export const keyHash = (key: string): Promise<string> => sha256Hex(`key ${key}`);

async function sealKeyOf(key: string): Promise<string> {
  const bytes = await globalThis.crypto.subtle.digest("SHA-256", encoder.encode(`seal ${key}`));
  return btoa(String.fromCharCode(...new Uint8Array(bytes)));
}

/** Two requests are the same where method, address and body are, byte for byte. */
export const requestHash = (method: string, address: string, body: string): Promise<string> =>
  sha256Hex(`${method} ${address}\n${body}`);

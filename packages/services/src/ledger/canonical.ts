import canonicalize from "canonicalize";

/**
 * The one way from a value to bytes and from bytes to a hash. Web Crypto and TextEncoder only: the same code runs on
 * Node and on an edge runtime.
 */
const encoder = new TextEncoder();

/** RFC 8785 canonical JSON. */
export function canonicalText(value: unknown): string {
  const text = canonicalize(value);
  if (text === undefined) throw new Error("nothing to make canonical");
  return text;
}

export const hexOf = (bytes: Uint8Array): string =>
  Array.from(bytes, (b) => b.toString(16).padStart(2, "0")).join("");

/** SHA-256 of bytes or of a text in UTF-8, as 64 hex digits. */
export async function sha256Hex(of: string | Uint8Array<ArrayBuffer>): Promise<string> {
  const bytes = typeof of === "string" ? encoder.encode(of) : of;
  return hexOf(new Uint8Array(await globalThis.crypto.subtle.digest("SHA-256", bytes)));
}

/** 32 random bytes for a person's text, so that its hash cannot be guessed from likely words. */
export const randomSalt = (): Uint8Array<ArrayBuffer> =>
  globalThis.crypto.getRandomValues(new Uint8Array(32));

/** SHA-256 of (salt, text in UTF-8). */
export function saltedHash(salt: Uint8Array, text: string): Promise<string> {
  const words = encoder.encode(text);
  const both = new Uint8Array(salt.length + words.length);
  both.set(salt);
  both.set(words, salt.length);
  return sha256Hex(both);
}

import { canonicalText } from "./canonical.ts";

/** Ed25519 by Web Crypto, with keys as JWK (RFC 8037). The private key comes from outside the database and stays out of it. */
export interface PublicKey {
  kty: "OKP";
  crv: "Ed25519";
  x: string;
}

export interface Signer {
  keyId: string;
  publicKey: PublicKey;
  /** Signature of a text in UTF-8, in base64url. */
  sign(text: string): Promise<string>;
}

const encoder = new TextEncoder();
const { subtle } = globalThis.crypto;

/** Opens a private key, given as the JSON of its JWK. @throws Error that says what is wrong with it, and not what it is */
export async function openSigner(jwkText: string): Promise<Signer> {
  const { kty, crv, x, d } = readJwk(jwkText);
  if (kty !== "OKP" || crv !== "Ed25519" || !x || !d) {
    throw new Error("the ledger's key must be the private JWK of an Ed25519 key");
  }
  const publicKey: PublicKey = { kty, crv, x };
  const key = await subtle.importKey("jwk", { ...publicKey, d }, "Ed25519", false, ["sign"]);
  return {
    publicKey,
    keyId: await keyIdOf(publicKey),
    sign: async (text) => base64url(new Uint8Array(await subtle.sign("Ed25519", key, encoder.encode(text)))),
  };
}

function readJwk(text: string): Record<string, string | undefined> {
  try {
    return JSON.parse(text);
  } catch {
    throw new Error("the ledger's key is not JSON");
  }
}

/** A key's thumbprint (RFC 7638): the name by which people compare keys. */
export async function keyIdOf({ kty, crv, x }: PublicKey): Promise<string> {
  const digest = await subtle.digest("SHA-256", encoder.encode(canonicalText({ crv, kty, x })));
  return base64url(new Uint8Array(digest));
}

export async function signatureHolds(key: PublicKey, text: string, signature: string): Promise<boolean> {
  try {
    const { kty, crv, x } = key;
    const opened = await subtle.importKey("jwk", { kty, crv, x }, "Ed25519", false, ["verify"]);
    return await subtle.verify("Ed25519", opened, fromBase64url(signature), encoder.encode(text));
  } catch {
    return false; // no key, or no signature, in form
  }
}

const base64url = (bytes: Uint8Array): string =>
  btoa(String.fromCharCode(...bytes))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replaceAll("=", "");

const fromBase64url = (text: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(text.replaceAll("-", "+").replaceAll("_", "/")), (c) => c.charCodeAt(0));

/** Secrets that are handed out once, and those that must be read again. Web Crypto only, so that the edge has them too. */

const base64url = (bytes: Uint8Array): string =>
  btoa(String.fromCharCode(...bytes))
    .replace(/\+/g, "-")
    .replace(/\//g, "_")
    .replace(/=+$/, "");
const bytesOf = (text: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(text.replace(/-/g, "+").replace(/_/g, "/")), (c) => c.charCodeAt(0));
const random = (length: number): Uint8Array<ArrayBuffer> =>
  globalThis.crypto.getRandomValues(new Uint8Array(length));

/** 256 random bits, as they stand in an address. */
export const newLinkSecret = (): string => base64url(random(32));
export const LINK_SECRET = /^[A-Za-z0-9_-]{43}$/;

/** A webhook's secret as the convention writes it. */
export const newWebhookSecret = (): string => `whsec_${btoa(String.fromCharCode(...random(32)))}`;

const keyOf = (sealKey: string) =>
  globalThis.crypto.subtle.importKey("raw", bytesOf(sealKey), "AES-GCM", false, ["encrypt", "decrypt"]);
const nameOf = (of: string) => new TextEncoder().encode(of);

/** Seals a secret (AES-256-GCM) for the one thing it belongs to: moved to another row, it does not open. */
export async function seal(sealKey: string, of: string, secret: string): Promise<string> {
  const iv = random(12);
  const sealed = await globalThis.crypto.subtle.encrypt(
    { name: "AES-GCM", iv, additionalData: nameOf(of) },
    await keyOf(sealKey),
    new TextEncoder().encode(secret),
  );
  return `${base64url(iv)}.${base64url(new Uint8Array(sealed))}`;
}

export async function unseal(sealKey: string, of: string, sealed: string): Promise<string> {
  const [iv = "", bytes = ""] = sealed.split(".");
  const opened = await globalThis.crypto.subtle.decrypt(
    { name: "AES-GCM", iv: bytesOf(iv), additionalData: nameOf(of) },
    await keyOf(sealKey),
    bytesOf(bytes),
  );
  return new TextDecoder().decode(opened);
}

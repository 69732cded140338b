// @ts-check
import { createECDH, generateKeyPairSync, randomBytes } from "node:crypto";
import { chmodSync, existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/** The repository's own folder. */
export const ROOT = fileURLToPath(new URL("..", import.meta.url)).replace(/\/$/, "");

/**
 * Opens the folder where a running Pith keeps its data, logs and secrets: `.pith` of the project, or PITH_HOME.
 *
 * @returns {string}
 */
export function openHome() {
  const home = process.env.PITH_HOME || join(ROOT, ".pith");
  // Our own new folder: a database server that must run as another user may pass through, nobody may look around.
  if (mkdirSync(home, { recursive: true }) !== undefined) chmodSync(home, 0o711);
  return home;
}

/**
 * What the parts of one installation know each other by.
 * @typedef {{ appPassword: string, authPassword: string, jobsPassword: string, authSecret: string, ledgerKey: string, sealKey: string, vapid: { publicKey: string, privateKey: string } }} Secrets
 */

/** @returns {Secrets} */
export const newSecrets = () => {
  const secret = () => randomBytes(32).toString("base64url");
  return {
    appPassword: secret(),
    authPassword: secret(),
    jobsPassword: secret(),
    authSecret: secret(),
    // Beside the database and never in it: what it signs is what shows that the database was rewritten.
    ledgerKey: JSON.stringify(generateKeyPairSync("ed25519").privateKey.export({ format: "jwk" })),
    // What webhooks' secrets are sealed with, so that the database alone does not sign for an office.
    sealKey: secret(),
    vapid: newVapidKeys(),
  };
};

/** A key of its own for web push, as RFC 8292 writes it: the point, and the number, each in base64url. */
function newVapidKeys() {
  const ecdh = createECDH("prime256v1");
  ecdh.generateKeys();
  // A number that begins with zeros is written with them.
  const number = Buffer.concat([Buffer.alloc(32), ecdh.getPrivateKey()]).subarray(-32);
  return { publicKey: ecdh.getPublicKey("base64url"), privateKey: number.toString("base64url") };
}

/**
 * Reads the secrets of this installation; they are made once, and only their owner may read them.
 *
 * @param {string} home
 * @returns {Secrets}
 */
export function openSecrets(home) {
  const path = join(home, "secrets.json");
  const known = existsSync(path) ? JSON.parse(readFileSync(path, "utf8")) : {};
  // An older installation gets those that it has not yet.
  const secrets = { ...newSecrets(), ...known };
  if (Object.keys(secrets).every((name) => name in known)) return secrets;
  const next = `${path}.next`;
  writeFileSync(next, JSON.stringify(secrets), { mode: 0o600 });
  renameSync(next, path); // whole or not there
  return secrets;
}

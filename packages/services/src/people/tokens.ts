import { createHash, randomBytes } from "node:crypto";

/** A secret for a mail's link: 256 bits, of which only the hash is stored. */
export const newToken = (): string => randomBytes(32).toString("base64url");

export const sha256Of = (token: string): string => createHash("sha256").update(token).digest("hex");

import library from "web-push";
import type { Push } from "./means.ts";

/** Web push by the kept library: it seals the words for one browser and signs for this installation; we send. */
export const webPush = (keys: { publicKey: string; privateKey: string; subject: string }): Push => ({
  publicKey: keys.publicKey,
  sealed({ endpoint, p256dh, auth }, words, { urgent, aliveS }) {
    const made = library.generateRequestDetails({ endpoint, keys: { p256dh, auth } }, words, {
      vapidDetails: keys,
      TTL: aliveS,
      urgency: urgent ? "high" : "normal",
      contentEncoding: "aes128gcm",
    });
    const headers = Object.entries(made.headers).map(([name, value]) => [name, String(value)]);
    return { url: made.endpoint, headers: Object.fromEntries(headers), body: made.body };
  },
});

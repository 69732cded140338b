const HERE = ["127.0.0.1", "::1", "::ffff:127.0.0.1"];

/**
 * The caller's network address. What `X-Forwarded-For` says is believed only from this machine and from the proxies that
 * are named, and of that the last: each proxy adds whom it saw, and what stands before it anybody can have written.
 */
export function whoCalls(peer: string, said: string | undefined, proxies: readonly string[] = []): string {
  if (!HERE.includes(peer) && !proxies.includes(peer)) return peer;
  return said?.split(",").at(-1)?.trim() || peer;
}

/** Addresses with commas between, as a setting gives them. */
export const proxiesIn = (setting: string): string[] =>
  setting.split(/[\s,]+/).filter((address) => address !== "");

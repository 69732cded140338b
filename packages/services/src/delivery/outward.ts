import ipaddr from "ipaddr.js";

/** Addresses that people type in and this installation then calls. They must lead out of the house. */

/** What is wrong with an address as it is written; where its name leads to is looked at again when it is called. */
export function outwardProblem(address: string, localToo: boolean): string | null {
  if (!URL.canParse(address)) return "must be an address";
  const url = new URL(address);
  if (url.username !== "" || url.password !== "") return "must not carry a name or password";
  const host = hostOf(url);
  if (localToo && isThisMachine(host) && /^https?:$/.test(url.protocol)) return null;
  if (url.protocol !== "https:") return "must begin with https://";
  if (ipaddr.isValid(host)) return isPublic(host) ? null : "must lead to a public address";
  return /(^|\.)(localhost|local|internal|home|lan)$|^[^.]+$/i.test(host)
    ? "must lead to a public address"
    : null;
}

/** Whether an IP address is one of the open net: not this machine, not a private net, not one that wraps such an address. */
export function isPublic(address: string): boolean {
  if (!ipaddr.isValid(address)) return false;
  return ipaddr.process(address).range() === "unicast";
}

export const isThisMachine = (host: string): boolean =>
  host === "localhost" || (ipaddr.isValid(host) && ipaddr.process(host).range() === "loopback");

/** The host without the brackets of an IPv6 address. */
export const hostOf = (url: URL): string => url.hostname.replace(/^\[|\]$/g, "").replace(/\.$/, "");

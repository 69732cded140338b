import { type LookupAddress, lookup } from "node:dns";
import { request as httpRequest } from "node:http";
import { request as httpsRequest } from "node:https";
import { isIP, type LookupFunction } from "node:net";
import type { Called, CallOut, Letter } from "./means.ts";
import { hostOf, isPublic, isThisMachine, outwardProblem } from "./outward.ts";

const TIMEOUT_MS = 10_000;
const MOST_BYTES = 64 * 1024;

/** Thrown by the look-up, so that no connection is opened. */
class LeadsInside extends Error {}

/**
 * One POST to an address that somebody typed in. It follows no redirect, waits ten seconds, reads little of the answer
 * and keeps none of it. The address a name leads to is judged in the very look-up that the connection is made with, so
 * that it cannot be another one a moment later; a name with one inner address among its outer ones is refused whole.
 */
export const guardedPost =
  ({ localToo = false, resolve = lookup as Resolve, now = () => Date.now() }: Guard = {}): CallOut =>
  (letter) =>
    new Promise<Called>((done) => {
      const from = now();
      const end = (posted: { status: number } | { status: null; outcome: string }) =>
        done({ ...posted, tookMs: Math.max(0, Math.round(now() - from)) });
      if (outwardProblem(letter.url, localToo)) return end({ status: null, outcome: "not a public address" });
      const url = new URL(letter.url);
      const local = localToo && isThisMachine(hostOf(url));
      const call = (url.protocol === "https:" ? httpsRequest : httpRequest)(
        url,
        {
          method: "POST",
          headers: { "user-agent": "Pith", ...letter.headers, "content-length": lengthOf(letter) },
          // A connection of its own: one that is kept open was judged for somebody else.
          agent: false,
          ...(isIP(hostOf(url)) === 0 && { lookup: guardedLookup(resolve, local) }),
          signal: AbortSignal.timeout(TIMEOUT_MS),
        },
        (answer) => {
          let bytes = 0;
          answer.on("data", (chunk: Uint8Array) => {
            bytes += chunk.length;
            if (bytes > MOST_BYTES) answer.destroy();
          });
          answer.on("close", () => end({ status: answer.statusCode ?? 0 }));
          answer.on("error", () => {});
        },
      );
      call.on("error", (error) => end({ status: null, outcome: outcomeOf(error) }));
      call.end(letter.body);
    });

type Resolve = (
  host: string,
  options: { all: true },
  done: (error: NodeJS.ErrnoException | null, found: LookupAddress[]) => void,
) => void;

interface Guard {
  /** This very machine may be called too. */
  localToo?: boolean;
  resolve?: Resolve;
  now?: () => number;
}

const lengthOf = ({ body }: Letter): number => Buffer.byteLength(body);

function guardedLookup(resolve: Resolve, local: boolean): LookupFunction {
  return (host, options, done) =>
    resolve(host, { all: true }, (error, found) => {
      if (error) return done(error, "", 0);
      const [first] = found;
      const allowed = ({ address }: LookupAddress) => (local ? isThisMachine(address) : isPublic(address));
      if (!first || !found.every(allowed)) return done(new LeadsInside(host), "", 0);
      // Node asks for all of them where it may try one after the other.
      if (options.all) return (done as unknown as (e: null, all: LookupAddress[]) => void)(null, found);
      done(null, first.address, first.family);
    });
}

function outcomeOf(error: Error & { code?: string }): string {
  if (error instanceof LeadsInside) return "not a public address";
  if (error.name === "AbortError" || error.name === "TimeoutError") return "no answer in ten seconds";
  if (error.code === "ENOTFOUND" || error.code === "EAI_AGAIN") return "there is no such name";
  if (error.code === "ECONNREFUSED" || error.code === "ECONNRESET") return "no connection";
  if (/CERT|TLS|SSL/i.test(error.code ?? "")) return "its certificate does not hold";
  return "no connection";
}

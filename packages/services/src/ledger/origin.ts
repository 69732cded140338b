import { cautions, claims, rules } from "@pith/rules";
import { canonicalText, sha256Hex } from "./canonical.ts";

/** Where an entry's numbers and words come from. */

let manifest: Promise<string> | undefined;

/**
 * SHA-256 of the rules' manifest: every rule's id and version, every caution whole and every claim whole, as canonical
 * JSON. It names what was in force; it is not a hash of the code. A coefficient changed without a new rule version
 * leaves it as it is: replay is what finds that.
 */
export function rulesManifest(): Promise<string> {
  manifest ??= sha256Hex(
    canonicalText({
      rules: rules.map(({ id, version }) => ({ id, version })),
      cautions: [...cautions.values()],
      claims: [...claims.values()],
    }),
  );
  return manifest;
}

interface Runtime {
  navigator?: { userAgent?: string };
  process?: { version?: string };
}

/** Engine and version: `node v20.20.2`, or what an edge runtime calls itself. */
export function runtimeName(runtime: Runtime = globalThis): string {
  const agent = runtime.navigator?.userAgent;
  // Node calls itself so as well from version 21 on, but leaves the minor version out.
  if (agent !== undefined && !agent.startsWith("Node")) return agent;
  return `node ${runtime.process?.version ?? "unknown"}`;
}

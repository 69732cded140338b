import type { Ctx } from "./context.ts";
import { ServiceError } from "./errors.ts";
import { sha256Hex } from "./ledger/canonical.ts";

/** A strong tag of a representation: of its very bytes. */
export const etagOfText = async (text: string): Promise<string> =>
  `"${(await sha256Hex(text)).slice(0, 32)}"`;

/** Whether a list of tags, or a star, holds this one. A tag marked as weak is told by what it marks. */
export const hasTag = (list: string, tag: string): boolean =>
  list.trim() === "*" || list.split(",").some((one) => one.trim().replace(/^W\//, "") === tag);

/**
 * Refuses a change to something that is no longer what the caller read. Called where the thing is locked, with what
 * reading it would give, so that of two who edit at once the second is told.
 */
export async function requireUnchanged(ctx: Ctx, representation: unknown): Promise<void> {
  const { ifMatch } = ctx;
  if (ifMatch === undefined) return;
  const tag = await etagOfText(JSON.stringify(representation));
  // A weak tag never matches here (RFC 9110, section 13.1.1).
  const strong = ifMatch.split(",").filter((one) => !one.trim().startsWith("W/"));
  if (!hasTag(strong.join(","), tag)) {
    throw new ServiceError("changed", "Somebody has changed this since you read it. Look at it again.");
  }
}

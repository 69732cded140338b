import { type Claim, openRoutes } from "@pith/contract";
import { cache } from "react";
import { call } from "../../server/api.ts";

/** The rules with the claims they lean on, in the reader's language, and every source. */
export const register = cache(() => call(openRoutes.listRules, {}));

/** Claims by id. */
export async function claimsById(): Promise<ReadonlyMap<string, Claim>> {
  const { rules } = await register();
  return new Map(rules.flatMap((rule) => rule.claims).map((claim) => [claim.id, claim]));
}

import { type Advisory, adviceRoutes } from "@pith/contract";
import { type Ctx, inOffice, requireAgent } from "../context.ts";
import { ServiceError } from "../errors.ts";
import { keepText } from "../texts.ts";
import { bodyOf } from "../wellFormed.ts";
import { readAdvisory } from "./advisories.ts";
import { changedSince, freshAnswer, lockDraft } from "./freshAnswer.ts";
import { issue } from "./issue.ts";
import { readIssuingSettings, wantsSecond } from "./issuingSettings.ts";

/**
 * Issues a draft under the agent's name. Where it no longer says what the agent read, nothing is issued and the agent
 * reads it again; where the office wants a second pair of eyes on it, it goes to a second agent instead (askSecond).
 */
export async function issueDraft(ctx: Ctx, draftId: string, raw: unknown): Promise<Advisory> {
  requireAgent(ctx);
  const { stateSha256, note } = bodyOf(adviceRoutes.issueDraft, raw);
  const id = await inOffice(ctx, async (tx) => {
    const draft = await lockDraft(tx, ctx, draftId);
    if (draft.stateSha256 !== stateSha256) return "changed";
    const fresh = await freshAnswer(tx, ctx, draft);
    if (fresh === "changed") return fresh;
    if (wantsSecond(await readIssuingSettings(tx, ctx.officeId), fresh.answer)) {
      throw new ServiceError(
        "conflict",
        "The office wants a second pair of eyes on this: send it to a second agent.",
      );
    }
    const kept = await keepText(tx, ctx, draft.farmId, note);
    const { userId } = ctx.actor;
    return issue(tx, ctx, fresh, { agentId: userId, confirmedBy: null, standingOrder: null, note: kept });
  });
  if (id === "changed") throw changedSince();
  return readAdvisory(ctx, id);
}

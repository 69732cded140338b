import { type IssuingSettings, standingOrderRoutes } from "@pith/contract";
import { issuingSettings, type Tx } from "@pith/db";
import { type Answer, refuse, rules } from "@pith/rules";
import { eq } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, nowOf, requireAgent, requireLead } from "../context.ts";
import { bodyOf } from "../wellFormed.ts";

/** For which advice the office wants a second pair of eyes. */
export async function getIssuingSettings(ctx: Ctx): Promise<IssuingSettings> {
  requireAgent(ctx);
  return inOffice(ctx, (tx) => readIssuingSettings(tx, ctx.officeId));
}

/** Only a lead says so: an agent could lift the check on themselves. */
export async function changeIssuingSettings(ctx: Ctx, raw: unknown): Promise<IssuingSettings> {
  requireLead(ctx);
  const { secondReader, ruleIds } = bodyOf(standingOrderRoutes.changeIssuingSettings, raw);
  for (const [i, id] of ruleIds.entries()) requireRule(`ruleIds.${i}`, id);
  return inOffice(ctx, async (tx) => {
    const set = { secondReader, ruleIds, changedBy: ctx.actor.userId, changedAt: nowOf(ctx) };
    await tx
      .insert(issuingSettings)
      .values({ officeId: ctx.officeId, ...set })
      .onConflictDoUpdate({ target: issuingSettings.officeId, set });
    await recordAudit(tx, ctx, {
      action: "office.issuing",
      entity: "offices",
      entityId: ctx.officeId,
      detail: { secondReader, ruleIds },
    });
    return { secondReader, ruleIds };
  });
}

export async function readIssuingSettings(tx: Tx, officeId: string): Promise<IssuingSettings> {
  const [row] = await tx.select().from(issuingSettings).where(eq(issuingSettings.officeId, officeId));
  return { secondReader: row?.secondReader ?? "never", ruleIds: row?.ruleIds ?? [] };
}

/** The rule of that id, or a refusal by field. */
export function requireRule(field: string, ruleId: string): (typeof rules)[number] {
  return (
    rules.find((rule) => rule.id === ruleId) ??
    refuse(field, "names no rule", rules.map((rule) => rule.id).join(", "), ruleId)
  );
}

/** Whether this answer goes out on two people's yes. */
export function wantsSecond({ secondReader, ruleIds }: IssuingSettings, answer: Answer): boolean {
  switch (secondReader) {
    case "never":
      return false;
    case "always":
      return true;
    case "rules":
      return ruleIds.includes(answer.rule.id);
    case "danger":
      return answer.kind === "advice" && answer.cautions.some(({ severity }) => severity === "danger");
  }
}

/** Whether a permission may come to issue what two people must say yes to: then two sign it. */
export const orderWantsSecond = ({ secondReader, ruleIds }: IssuingSettings, ruleId: string): boolean =>
  secondReader === "rules" ? ruleIds.includes(ruleId) : secondReader !== "never";

import { farmRoutes, type Office } from "@pith/contract";
import { offices, type Tx } from "@pith/db";
import { choices, refuse, SettingsSchema } from "@pith/rules";
import { eq } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, requireAgent } from "../context.ts";
import { adviseOffice } from "../drafts/adviseAgain.ts";
import { found } from "../errors.ts";
import { requireUnchanged } from "../unchanged.ts";
import { bodyOf } from "../wellFormed.ts";

/** The office and its settings. */
export const getOffice = (ctx: Ctx): Promise<Office> => inOffice(ctx, (tx) => readOffice(tx, ctx.officeId));

/** Sets floors, accepted risk and guide anew, whole, and advises every farm again. */
export async function changeOfficeSettings(ctx: Ctx, raw: unknown): Promise<Office> {
  requireAgent(ctx);
  const settings = bodyOf(farmRoutes.changeOfficeSettings, raw);
  for (const { id, options } of choices) {
    const chosen = settings.choices?.[id];
    if (chosen !== undefined && !options.some((o) => o.id === chosen)) {
      refuse(`choices.${id}`, "is no reading of this choice", options.map((o) => o.id).join(", "), chosen);
    }
  }
  const office = await inOffice(ctx, async (tx) => {
    if (ctx.ifMatch !== undefined) {
      await tx
        .select({ id: offices.id })
        .from(offices)
        .where(eq(offices.id, ctx.officeId))
        .for("no key update");
      await requireUnchanged(ctx, await readOffice(tx, ctx.officeId));
    }
    await tx.update(offices).set({ settings }).where(eq(offices.id, ctx.officeId));
    await recordAudit(tx, ctx, {
      action: "office.settings",
      entity: "offices",
      entityId: ctx.officeId,
      detail: { settings },
    });
    return readOffice(tx, ctx.officeId);
  });
  await adviseOffice(ctx);
  return office;
}

async function readOffice(tx: Tx, officeId: string): Promise<Office> {
  const [row] = await tx.select().from(offices).where(eq(offices.id, officeId));
  const { id, name, county, settings } = found(row, "office");
  return { id, name, county, settings: SettingsSchema.parse(settings) };
}

import { type Guides, guideRoutes, type OwnGuide } from "@pith/contract";
import { officeGuides, offices } from "@pith/db";
import { checkGuide, DomainError, type Guide, guideListings, guides } from "@pith/rules";
import { and, eq, isNull, sql } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, nowOf, requireAgent } from "../context.ts";
import { adviseOffice } from "../drafts/adviseAgain.ts";
import { found, ServiceError } from "../errors.ts";
import { bodyOf } from "../wellFormed.ts";
import { ownGuides } from "./ownGuides.ts";

/** As many as a state carries. */
const MOST_GUIDES = 20;

/** A guide held here, whole. */
export const getGuide = (guideId: string): Guide => found(guides.get(guideId), "guide");

/** The guides held here, and the office's own. */
export function listGuides(ctx: Ctx): Promise<Guides> {
  requireAgent(ctx);
  return inOffice(ctx, async (tx) => ({ held: [...guideListings], own: await ownGuides(tx, ctx.officeId) }));
}

/** Keeps a guide of the office's own, if nothing is wrong with it, and advises every farm again. */
export async function addGuide(ctx: Ctx, raw: unknown): Promise<OwnGuide> {
  requireAgent(ctx);
  const checked = checkGuide(bodyOf(guideRoutes.addGuide, raw).guide);
  if ("problems" in checked) {
    throw new DomainError(
      checked.problems.map((p) => ({ ...p, field: p.field ? `guide.${p.field}` : "guide" })),
    );
  }
  const { guide } = checked;
  const kept = await inOffice(ctx, async (tx) => {
    // One at a time for the office, so that two of the same name cannot slip in side by side.
    await tx.execute(sql`select pg_advisory_xact_lock(hashtextextended(${`guides ${ctx.officeId}`}, 0))`);
    const own = await ownGuides(tx, ctx.officeId);
    if (own.some((one) => one.guide.id === guide.id)) {
      throw new ServiceError("conflict", `A guide with the id ${guide.id} is in use; put it away first.`);
    }
    if (own.length >= MOST_GUIDES) {
      throw new ServiceError("conflict", `An office keeps at most ${MOST_GUIDES} guides in use.`);
    }
    const id = globalThis.crypto.randomUUID();
    const addedAt = nowOf(ctx);
    await tx
      .insert(officeGuides)
      .values({ officeId: ctx.officeId, id, guide: { ...guide }, addedBy: ctx.actor.userId, addedAt });
    await recordAudit(tx, ctx, { action: "guide.add", entity: "office_guides", entityId: id });
    return { id, addedAt, guide };
  });
  await adviseOffice(ctx);
  return kept;
}

/** Puts a guide away: no new advice is drawn from it, and settings that chose it choose none. */
export async function retireGuide(ctx: Ctx, id: string): Promise<{ done: true }> {
  requireAgent(ctx);
  await inOffice(ctx, async (tx) => {
    const gone = await tx
      .update(officeGuides)
      .set({ retiredAt: nowOf(ctx) })
      .where(
        and(eq(officeGuides.officeId, ctx.officeId), eq(officeGuides.id, id), isNull(officeGuides.retiredAt)),
      )
      .returning({ guide: officeGuides.guide });
    const chosen = String(found(gone[0], "guide").guide.id);
    // Else every soil answer of the office would be refused for a guide that nobody holds.
    await tx
      .update(offices)
      .set({ settings: sql`${offices.settings} - 'soilGuide'` })
      .where(and(eq(offices.id, ctx.officeId), sql`${offices.settings} ->> 'soilGuide' = ${chosen}`));
    await recordAudit(tx, ctx, { action: "guide.retire", entity: "office_guides", entityId: id });
  });
  await adviseOffice(ctx);
  return { done: true };
}

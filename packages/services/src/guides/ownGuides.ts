import type { OwnGuide } from "@pith/contract";
import { officeGuides, type Tx } from "@pith/db";
import type { Guide } from "@pith/rules";
import { and, asc, eq, isNull } from "drizzle-orm";

/** The office's own guides that are in use, oldest first. */
export async function ownGuides(tx: Tx, officeId: string): Promise<OwnGuide[]> {
  const rows = await tx
    .select()
    .from(officeGuides)
    .where(and(eq(officeGuides.officeId, officeId), isNull(officeGuides.retiredAt)))
    .orderBy(asc(officeGuides.addedAt), asc(officeGuides.id));
  // Looked over by `checkGuide` when it was added.
  return rows.map(({ id, addedAt, guide }) => ({ id, addedAt, guide: guide as unknown as Guide }));
}

import { memberships } from "@pith/db";
import { and, eq } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { inOffice, resolveMemberships } from "../context.ts";
import { byTheOffice, type Visitor } from "./visitor.ts";

/** What a person did to their own account, or what somebody tried with it. Words of ours; no address, no secret. */
export interface PersonEvent {
  action:
    | "sign-in"
    | "sign-in.refused"
    | "sign-out"
    | "password.change"
    | "password.reset"
    | "second-step.on"
    | "second-step.off"
    | "second-step.codes"
    | "session.end"
    | "person.rename";
  detail?: Record<string, unknown>;
}

/** Writes it down in every office the person belongs to, so that each lead can read it. */
export async function recordPersonEvent(visitor: Visitor, { action, detail }: PersonEvent): Promise<void> {
  for (const { officeId } of await resolveMemberships(visitor.db, visitor.userId)) {
    const ctx = byTheOffice(visitor, officeId);
    await inOffice(ctx, (tx) =>
      recordAudit(tx, ctx, { action, entity: "person", entityId: visitor.userId, detail }),
    );
  }
}

/** The name that each office reads. */
export async function renameInOffices(visitor: Visitor, name: string): Promise<void> {
  for (const { officeId } of await resolveMemberships(visitor.db, visitor.userId)) {
    const ctx = byTheOffice(visitor, officeId);
    await inOffice(ctx, async (tx) => {
      await tx
        .update(memberships)
        .set({ name })
        .where(and(eq(memberships.officeId, officeId), eq(memberships.userId, visitor.userId)));
      await recordAudit(tx, ctx, { action: "person.rename", entity: "person", entityId: visitor.userId });
    });
  }
}

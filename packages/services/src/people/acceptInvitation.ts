import type { Role } from "@pith/contract";
import { type AuthDb, farms, invitations, memberships, offices, type Tx, withPresentedKey } from "@pith/db";
import { and, eq, gt, inArray } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, isStaff, nowOf } from "../context.ts";
import { notFound } from "../errors.ts";
import { accountFor } from "./accounts.ts";
import { sha256Of } from "./tokens.ts";
import { byTheOffice, type Visitor } from "./visitor.ts";

/** One that never was, has run out, was used or was taken back: nobody learns which. */
const noSuch = () => notFound("invitation, or it has run out");

type Door = Omit<Visitor, "userId">;
const NOBODY = "00000000-0000-0000-0000-000000000000";

/** Whoever left the office, or lost the role that could ask somebody in as this, asks nobody in any more. */
async function mayStillAsk(tx: Tx, officeId: string, invitedBy: string, role: Role): Promise<void> {
  const [by] = await tx
    .select({ role: memberships.role })
    .from(memberships)
    .where(and(eq(memberships.officeId, officeId), eq(memberships.userId, invitedBy)));
  const may = by && (by.role === "lead" || (isStaff(by.role) && !isStaff(role)));
  if (!may) throw noSuch();
}

async function openInvitation(door: Door, token: string) {
  const [row] = await withPresentedKey(door.db, sha256Of(token), (tx) =>
    tx.select().from(invitations).where(gt(invitations.expiresAt, door.now().toISOString())),
  );
  if (!row) throw noSuch();
  return row;
}

export async function readInvitation(door: Door, token: string) {
  const { officeId, email, name, role, farmIds, invitedBy } = await openInvitation(door, token);
  return inOffice(byTheOffice({ ...door, userId: NOBODY }, officeId), async (tx) => {
    const [office] = await tx.select({ name: offices.name }).from(offices).where(eq(offices.id, officeId));
    const [by] = await tx
      .select({ name: memberships.name })
      .from(memberships)
      .where(and(eq(memberships.officeId, officeId), eq(memberships.userId, invitedBy)));
    const named = await tx
      .select({ name: farms.name })
      .from(farms)
      .where(and(eq(farms.officeId, officeId), inArray(farms.id, farmIds)))
      .orderBy(farms.name);
    return {
      officeName: office?.name ?? "",
      invitedBy: by?.name ?? "",
      email,
      name,
      role,
      farmNames: named.map((farm) => farm.name),
    };
  });
}

/**
 * Lets somebody in who holds the token. The account comes first, in its own database role; where the second half fails
 * the token still works and finds the account.
 */
export async function acceptInvitation(
  door: Door,
  accounts: { authDb: AuthDb; hash: (password: string) => Promise<string> },
  { token, name, password }: { token: string; name: string; password: string },
): Promise<{ userId: string }> {
  const asked = await openInvitation(door, token);
  // Hashed for an account that is there as well, so that both take as long.
  const passwordHash = await accounts.hash(password);
  const account = await accountFor(accounts.authDb, { email: asked.email, name, passwordHash });
  const ctx: Ctx = byTheOffice({ ...door, userId: account.id }, asked.officeId);
  await inOffice(ctx, async (tx) => {
    const [used] = await tx
      .delete(invitations)
      .where(
        and(
          eq(invitations.officeId, asked.officeId),
          eq(invitations.id, asked.id),
          eq(invitations.tokenSha256, asked.tokenSha256),
          gt(invitations.expiresAt, nowOf(ctx)),
        ),
      )
      .returning();
    if (!used) throw noSuch();
    const { officeId, email, role, farmIds, invitedBy } = used;
    await mayStillAsk(tx, officeId, invitedBy, role);
    const [joined] = await tx
      .insert(memberships)
      .values({ officeId, userId: account.id, name: account.name, email, role, farmIds })
      // Whoever is in already stays as they are: a role is changed by a lead, not by a letter.
      .onConflictDoNothing({ target: [memberships.officeId, memberships.userId] })
      .returning({ id: memberships.id });
    await recordAudit(tx, ctx, {
      action: "invitation.accept",
      entity: "invitation",
      entityId: used.id,
      detail: { role, farms: farmIds, joined: joined !== undefined },
    });
  });
  return { userId: account.id };
}

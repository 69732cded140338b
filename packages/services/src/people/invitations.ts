import { type Invitation, peopleRoutes } from "@pith/contract";
import { invitations, offices, type Tx } from "@pith/db";
import { and, desc, eq } from "drizzle-orm";
import { readPeople } from "../advice/names.ts";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, nowOf, requireAgent } from "../context.ts";
import { found, ServiceError } from "../errors.ts";
import { bodyOf } from "../wellFormed.ts";
import { INVITATION_LASTS_DAYS, invitationLetter } from "./letters.ts";
import { farmsOfPlace, requireMayPlace } from "./people.ts";
import { linkTo, type Post } from "./post.ts";
import { newToken, sha256Of } from "./tokens.ts";

type Row = typeof invitations.$inferSelect;

/** Whom the office has asked in: an agent sees farmers and readers, a lead everybody. */
export async function listInvitations(ctx: Ctx): Promise<{ invitations: Invitation[] }> {
  requireAgent(ctx);
  const rows = await inOffice(ctx, (tx) =>
    tx
      .select()
      .from(invitations)
      .where(eq(invitations.officeId, ctx.officeId))
      .orderBy(desc(invitations.invitedAt), desc(invitations.id)),
  );
  return { invitations: await wire(ctx, rows) };
}

/**
 * Asks somebody in. Nobody looks whether the address has an account: that is settled when the invitation is taken up, by
 * whoever reads that address's mail.
 */
export async function invite(ctx: Ctx, post: Post, raw: unknown): Promise<Invitation> {
  requireAgent(ctx);
  const { email, name, role, farmIds } = bodyOf(peopleRoutes.invite, raw);
  requireMayPlace(ctx, role);
  const token = newToken();
  const sent = await inOffice(ctx, async (tx) => {
    const asked = {
      name,
      role,
      farmIds: await farmsOfPlace(tx, ctx, { role, farmIds }),
      ...sentNow(ctx, token),
    };
    const [row] = await tx
      .insert(invitations)
      .values({ officeId: ctx.officeId, email: email.toLowerCase(), ...asked })
      .onConflictDoUpdate({ target: [invitations.officeId, invitations.email], set: asked })
      .returning()
      .catch(orAskedByLead);
    await post.mayWrite?.(email);
    return { row: await writtenDown(tx, ctx, "invitation.send", row), officeName: await officeName(tx, ctx) };
  });
  return send(ctx, post, token, sent);
}

/** A new link goes out and the old one ends. */
export async function resendInvitation(ctx: Ctx, post: Post, id: string): Promise<Invitation> {
  requireAgent(ctx);
  const token = newToken();
  const sent = await inOffice(ctx, async (tx) => {
    const [row] = await tx.update(invitations).set(sentNow(ctx, token)).where(its(ctx, id)).returning();
    await post.mayWrite?.(found(row, "invitation").email);
    return {
      row: await writtenDown(tx, ctx, "invitation.resend", row),
      officeName: await officeName(tx, ctx),
    };
  });
  return send(ctx, post, token, sent);
}

export async function revokeInvitation(ctx: Ctx, id: string): Promise<void> {
  requireAgent(ctx);
  await inOffice(ctx, async (tx) => {
    const [row] = await tx.delete(invitations).where(its(ctx, id)).returning();
    await writtenDown(tx, ctx, "invitation.revoke", row);
  });
}

/** Whom a lead asks in as staff is out of an agent's hands. */
function orAskedByLead(error: unknown): never {
  const cause = error instanceof Error ? (error.cause as { code?: string }) : {};
  if (cause?.code === "42501") {
    throw new ServiceError("conflict", "A lead of the office has asked this address in already.");
  }
  throw error;
}

const its = (ctx: Ctx, id: string) => and(eq(invitations.officeId, ctx.officeId), eq(invitations.id, id));

const sentNow = (ctx: Ctx, token: string) => ({
  tokenSha256: sha256Of(token),
  invitedBy: ctx.actor.userId,
  invitedAt: nowOf(ctx),
  expiresAt: new Date(ctx.now().getTime() + INVITATION_LASTS_DAYS * 24 * 3_600_000).toISOString(),
});

/** The audit holds no address. */
async function writtenDown(tx: Tx, ctx: Ctx, action: string, row: Row | undefined): Promise<Row> {
  const { id, role, farmIds } = found(row, "invitation");
  await recordAudit(tx, ctx, {
    action,
    entity: "invitation",
    entityId: id,
    detail: { role, farms: farmIds },
  });
  return found(row, "invitation");
}

async function officeName(tx: Tx, ctx: Ctx): Promise<string> {
  const [office] = await tx.select({ name: offices.name }).from(offices).where(eq(offices.id, ctx.officeId));
  return found(office, "office").name;
}

async function send(
  ctx: Ctx,
  post: Post,
  token: string,
  { row, officeName }: { row: Row; officeName: string },
): Promise<Invitation> {
  const asked = { name: row.name, officeName, by: ctx.actor.name, role: row.role };
  await post.queue(invitationLetter(row.email, asked, linkTo(post, "/join", token)));
  const [one] = await wire(ctx, [row]);
  return found(one, "invitation");
}

async function wire(ctx: Ctx, rows: Row[]): Promise<Invitation[]> {
  const names = await readPeople(
    ctx,
    rows.map((r) => r.invitedBy),
  );
  return rows.map(({ id, email, name, role, farmIds, invitedBy, invitedAt, expiresAt }) => ({
    id,
    email,
    name,
    role,
    farmIds,
    invitedBy: names.get(invitedBy) ?? "",
    invitedAt,
    expiresAt,
    expired: expiresAt <= nowOf(ctx),
  }));
}

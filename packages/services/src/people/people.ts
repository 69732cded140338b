import { type PersonOfOffice, peopleRoutes, type Role } from "@pith/contract";
import { farms, formerPeople, memberships, offices, type Tx } from "@pith/db";
import { and, asc, eq, inArray } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, isStaff, nowOf, requireAgent, requireLead } from "../context.ts";
import { found, ServiceError } from "../errors.ts";
import { bodyOf } from "../wellFormed.ts";
import { byTheOffice, type Visitor } from "./visitor.ts";

/** Who belongs to the office. A lead looks after everybody, an agent after farmers and readers. */

type Member = typeof memberships.$inferSelect;

export async function listPeople(
  ctx: Ctx,
): Promise<{ people: PersonOfOffice[]; secondStepForStaff: boolean }> {
  requireAgent(ctx);
  return inOffice(ctx, async (tx) => {
    const people = await tx
      .select()
      .from(memberships)
      .where(eq(memberships.officeId, ctx.officeId))
      .orderBy(asc(memberships.name), asc(memberships.id));
    const [office] = await tx
      .select({ asked: offices.secondStepForStaff })
      .from(offices)
      .where(eq(offices.id, ctx.officeId));
    return { people: people.map(wirePerson), secondStepForStaff: office?.asked ?? false };
  });
}

export async function changePerson(ctx: Ctx, id: string, raw: unknown): Promise<PersonOfOffice> {
  requireAgent(ctx);
  const place = bodyOf(peopleRoutes.changePerson, raw);
  requireMayPlace(ctx, place.role);
  return inOffice(ctx, async (tx) => {
    const before = await memberOf(tx, ctx, id);
    requireMayPlace(ctx, before.role);
    const farmIds = await farmsOfPlace(tx, ctx, place);
    const [after] = await tx
      .update(memberships)
      .set({ role: place.role, farmIds })
      .where(and(eq(memberships.officeId, ctx.officeId), eq(memberships.id, id)))
      .returning()
      .catch(orLastLead);
    await recordAudit(tx, ctx, {
      action: "person.role",
      entity: "person",
      entityId: before.userId,
      detail: { from: before.role, to: place.role, farmsBefore: before.farmIds, farms: farmIds },
    });
    return wirePerson(found(after, "person"));
  });
}

/** Takes somebody out of the office. Whoever wants to go by themselves leaves: see `leaveOffice`. */
export async function removePerson(ctx: Ctx, id: string): Promise<void> {
  requireAgent(ctx);
  await inOffice(ctx, async (tx) => {
    const member = await memberOf(tx, ctx, id);
    requireMayPlace(ctx, member.role);
    await takeOut(tx, ctx, member, "person.remove");
  });
}

export async function leaveOffice(visitor: Visitor, officeId: string): Promise<void> {
  const ctx = byTheOffice(visitor, officeId);
  await inOffice(ctx, async (tx) => {
    const [mine] = await tx
      .select()
      .from(memberships)
      .where(and(eq(memberships.officeId, officeId), eq(memberships.userId, visitor.userId)));
    await takeOut(tx, ctx, found(mine, "office"), "person.leave");
  });
}

/** Their name stays for what they issued and answered. */
async function takeOut(tx: Tx, ctx: Ctx, member: Member, action: string): Promise<void> {
  const { officeId, id, userId, name, role } = member;
  await tx
    .delete(memberships)
    .where(and(eq(memberships.officeId, officeId), eq(memberships.id, id)))
    .catch(orLastLead);
  await tx
    .insert(formerPeople)
    .values({ officeId, userId, name, leftAt: nowOf(ctx) })
    .onConflictDoUpdate({
      target: [formerPeople.officeId, formerPeople.userId],
      set: { name, takenIn: false },
    });
  await recordAudit(tx, ctx, { action, entity: "person", entityId: userId, detail: { role } });
}

export async function askForSecondStep(ctx: Ctx, raw: unknown): Promise<void> {
  requireLead(ctx);
  const { asked } = bodyOf(peopleRoutes.askForSecondStep, raw);
  await inOffice(ctx, async (tx) => {
    await tx.update(offices).set({ secondStepForStaff: asked }).where(eq(offices.id, ctx.officeId));
    await recordAudit(tx, ctx, {
      action: "office.second-step",
      entity: "office",
      entityId: ctx.officeId,
      detail: { asked },
    });
  });
}

/** Staff come and go by a lead. */
export function requireMayPlace(ctx: Ctx, role: Role): void {
  if (isStaff(role)) requireLead(ctx);
}

/** The farms that go with a role: staff have all, so none is named; farmer and reader have some of this office's. */
export async function farmsOfPlace(
  tx: Tx,
  ctx: Ctx,
  { role, farmIds }: { role: Role; farmIds: string[] },
): Promise<string[]> {
  const refuse = (message: string) =>
    new ServiceError("invalid", `farmIds: ${message}`, [{ field: "farmIds", message, received: farmIds }]);
  const named = [...new Set(farmIds)].sort();
  if (isStaff(role)) {
    if (named.length > 0) throw refuse("names no farm for a lead or an agent, who have every farm");
    return [];
  }
  if (named.length === 0) throw refuse("names at least one farm for a farmer or a reader");
  const there = await tx
    .select({ id: farms.id })
    .from(farms)
    .where(and(eq(farms.officeId, ctx.officeId), inArray(farms.id, named)));
  if (there.length < named.length) throw refuse("names a farm that is not one of this office's");
  return named;
}

async function memberOf(tx: Tx, ctx: Ctx, id: string): Promise<Member> {
  const [member] = await tx
    .select()
    .from(memberships)
    .where(and(eq(memberships.officeId, ctx.officeId), eq(memberships.id, id)));
  return found(member, "person");
}

/** The database keeps an office from losing its last lead; said here in words. */
function orLastLead(error: unknown): never {
  const cause = error instanceof Error ? (error.cause as { code?: string; constraint_name?: string }) : {};
  if (cause?.code === "23514" && cause.constraint_name === "keep_a_lead") {
    throw new ServiceError("conflict", "This is the office's only lead. Make somebody else a lead first.");
  }
  throw error;
}

const wirePerson = ({ id, userId, name, email, role, farmIds }: Member): PersonOfOffice => ({
  id,
  userId,
  name,
  email,
  role,
  farmIds,
});

import { exportRoutes } from "@pith/contract";
import { farms, formerPeople, invitations, memberships, photos, type Tx, texts } from "@pith/db";
import { and, count, eq, ne, or, sql } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, nowOf, requireLead, resolveMemberships, serverItself } from "../context.ts";
import { found, ServiceError } from "../errors.ts";
import { bodyOf } from "../wellFormed.ts";
import type { SignIns } from "./signIns.ts";
import { everybodysFarms, picturesOf, wordsOf } from "./theirs.ts";

/** Who could be erased, and how much of theirs would go: members, those who have left, and whose words came with a farm. */
export async function listErasable(ctx: Ctx) {
  requireLead(ctx);
  return inOffice(ctx, async (tx) => {
    const members = await tx
      .select({ userId: memberships.userId, name: memberships.name, role: memberships.role })
      .from(memberships)
      .where(and(eq(memberships.officeId, ctx.officeId), ne(memberships.userId, ctx.actor.userId)))
      .orderBy(memberships.name);
    const former = await tx
      .select({ userId: formerPeople.userId, name: formerPeople.name })
      .from(formerPeople)
      .where(and(eq(formerPeople.officeId, ctx.officeId), ne(formerPeople.userId, ctx.actor.userId)))
      .orderBy(formerPeople.name);
    const here = new Set(members.map(({ userId }) => userId));
    const left = former.filter(({ userId }) => !here.has(userId)).map((who) => ({ ...who, role: null }));
    for (const { userId } of left) here.add(userId);
    const came = (await cameWithFarms(tx, ctx))
      .filter(({ userId }) => !here.has(userId) && userId !== ctx.actor.userId)
      .map((who) => ({ ...who, role: null, cameWithFarm: true }));
    const people = [...[...members, ...left].map((who) => ({ ...who, cameWithFarm: false })), ...came];
    const counted = [];
    for (const person of people) {
      const [words] = await tx.select({ n: count() }).from(texts).where(wordsOf(ctx, person.userId));
      const [pictures] = await tx.select({ n: count() }).from(photos).where(picturesOf(ctx, person.userId));
      counted.push({ ...person, texts: words?.n ?? 0, photos: pictures?.n ?? 0 });
    }
    return { people: counted };
  });
}

export interface Erased {
  texts: number;
  photos: number;
  /** Farms whose contact they were. */
  contacts: number;
  signIn: boolean;
}

/**
 * Erases a person from an office: their place in it with name and e-mail, every word they wrote with the salt of its hash,
 * their photographs, and where they are a farm's contact. The ledger keeps its hashes of the words, which say nothing any
 * more, and the id of who acted, which is nobody's name any more: the chain still verifies.
 *
 * Their sign-in goes last, where no other office has them: should it fail, nothing is erased and it can be done again. It
 * stays where only a file says that they were ever of this office, because a file can name anybody.
 */
export async function erasePerson(ctx: Ctx, raw: unknown, signIns: SignIns): Promise<Erased> {
  requireLead(ctx);
  const { userId, name } = bodyOf(exportRoutes.erasePerson, raw);
  if (userId === ctx.actor.userId) {
    throw new ServiceError("conflict", "Nobody erases themselves: another lead of the office does.");
  }
  const known = await inOffice(ctx, (tx) => personIn(tx, ctx, userId));
  if (known.name !== name) {
    throw new ServiceError("invalid", "The name typed is not that person's.", [
      { field: "name", message: "must be the person's name as it stands in the office", received: name },
    ]);
  }
  const elsewhere = (await resolveMemberships(ctx.db, userId)).some((m) => m.officeId !== ctx.officeId);
  // Who has left is known here by name alone; the address they signed in with may still stand with a farm.
  const emails = known.wasHere ? [known.email, await signIns.emailOf(userId)].filter((e) => e !== null) : [];
  const addresses = emails.map((email) => email.toLowerCase());

  return inOffice(ctx, async (tx) => {
    const { cameWithFarm, wasHere } = await personIn(tx, ctx, userId);
    const words = await tx
      .update(texts)
      .set({ salt: null, bytes: null, erasedAt: nowOf(ctx) })
      .where(wordsOf(ctx, userId))
      .returning({ id: texts.id });
    const pictures = await tx.delete(photos).where(picturesOf(ctx, userId)).returning({ id: photos.id });
    const contacts = await tx
      .update(farms)
      .set({ contactName: null, phone: null, email: null })
      .where(
        and(
          eq(farms.officeId, ctx.officeId),
          or(
            // Whose words came with a farm is listed under the farm's name, which is nobody's.
            cameWithFarm ? sql`false` : sql`lower(${farms.contactName}) = lower(${name})`,
            ...addresses.map((address) => sql`lower(${farms.email}) = ${address}`),
          ),
        ),
      )
      .returning({ id: farms.id });
    await tx
      .delete(invitations)
      .where(
        and(
          eq(invitations.officeId, ctx.officeId),
          or(
            cameWithFarm ? sql`false` : eq(invitations.name, name),
            ...addresses.map((address) => eq(invitations.email, address)),
          ),
        ),
      );
    await tx
      .delete(memberships)
      .where(and(eq(memberships.officeId, ctx.officeId), eq(memberships.userId, userId)));
    await tx
      .delete(formerPeople)
      .where(and(eq(formerPeople.officeId, ctx.officeId), eq(formerPeople.userId, userId)));
    const erased = {
      texts: words.length,
      photos: pictures.length,
      contacts: contacts.length,
      signIn: wasHere && !elsewhere,
    };
    await recordAudit(tx, ctx, {
      action: "person.erase",
      entity: "memberships",
      entityId: userId,
      detail: erased,
    });
    if (erased.signIn) await signIns.remove(userId);
    return erased;
  });
}

interface Known {
  name: string;
  email: string | null;
  /** Their words came with a farm, and nothing else of them is here. */
  cameWithFarm: boolean;
  /** They are of the office or were, and not only by what a file says. */
  wasHere: boolean;
}

async function personIn(tx: Tx, ctx: Ctx, userId: string): Promise<Known> {
  const [person] = await tx
    .select({ name: memberships.name, email: memberships.email })
    .from(memberships)
    .where(and(eq(memberships.officeId, ctx.officeId), eq(memberships.userId, userId)));
  if (person) return { ...person, cameWithFarm: false, wasHere: true };
  const [former] = await tx
    .select({ name: formerPeople.name, takenIn: formerPeople.takenIn })
    .from(formerPeople)
    .where(and(eq(formerPeople.officeId, ctx.officeId), eq(formerPeople.userId, userId)));
  if (former) return { name: former.name, email: null, cameWithFarm: false, wasHere: !former.takenIn };
  const came = (await cameWithFarms(tx, ctx)).find((who) => who.userId === userId);
  return { name: found(came, "person").name, email: null, cameWithFarm: true, wasHere: false };
}

/** Whose words or photographs are here, by the name of the farm. Those of members are among them. */
async function cameWithFarms(tx: Tx, ctx: Ctx): Promise<{ userId: string; name: string }[]> {
  const rows = await tx.execute<{ userId: string; farmName: string }>(everybodysFarms(ctx));
  return rows
    .filter(({ userId }) => userId !== serverItself.userId)
    .map(({ userId, farmName }) => ({ userId, name: farmName }));
}

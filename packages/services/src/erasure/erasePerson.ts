import { exportRoutes } from "@pith/contract";
import { farms, formerPeople, invitations, memberships, photos, type Tx, texts } from "@pith/db";
import { and, count, eq, isNull, ne, or, type SQL, sql } from "drizzle-orm";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, nowOf, requireLead, resolveMemberships } from "../context.ts";
import { found, ServiceError } from "../errors.ts";
import { bodyOf } from "../wellFormed.ts";

/** Who could be erased, those who have left too, and how much of theirs would go. */
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
    const people = [...members, ...left];
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
 * `removeSignIn` goes first, and only where no other office has them: what fails after it can be done again.
 */
export async function erasePerson(
  ctx: Ctx,
  raw: unknown,
  removeSignIn: (userId: string) => Promise<void>,
): Promise<Erased> {
  requireLead(ctx);
  const { userId, name } = bodyOf(exportRoutes.erasePerson, raw);
  if (userId === ctx.actor.userId) {
    throw new ServiceError("conflict", "Nobody erases themselves: another lead of the office does.");
  }
  const person = await inOffice(ctx, (tx) => personIn(tx, ctx, userId));
  if (person.name !== name) {
    throw new ServiceError("invalid", "The name typed is not that person's.", [
      { field: "name", message: "must be the person's name as it stands in the office", received: name },
    ]);
  }
  const elsewhere = (await resolveMemberships(ctx.db, userId)).some((m) => m.officeId !== ctx.officeId);
  if (!elsewhere) await removeSignIn(userId);

  return inOffice(ctx, async (tx) => {
    const { email } = await personIn(tx, ctx, userId);
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
            sql`lower(${farms.contactName}) = lower(${name})`,
            email ? sql`lower(${farms.email}) = lower(${email})` : undefined,
          ),
        ),
      )
      .returning({ id: farms.id });
    await tx
      .delete(invitations)
      .where(
        and(
          eq(invitations.officeId, ctx.officeId),
          or(eq(invitations.name, name), email ? eq(invitations.email, email.toLowerCase()) : undefined),
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
      signIn: !elsewhere,
    };
    await recordAudit(tx, ctx, {
      action: "person.erase",
      entity: "memberships",
      entityId: userId,
      detail: erased,
    });
    return erased;
  });
}

async function personIn(tx: Tx, ctx: Ctx, userId: string) {
  const [person] = await tx
    .select({ name: memberships.name, email: memberships.email })
    .from(memberships)
    .where(and(eq(memberships.officeId, ctx.officeId), eq(memberships.userId, userId)));
  if (person) return person;
  const [former] = await tx
    .select({ name: formerPeople.name })
    .from(formerPeople)
    .where(and(eq(formerPeople.officeId, ctx.officeId), eq(formerPeople.userId, userId)));
  return { ...found(former, "person"), email: null };
}

/** Words that a person wrote. Of older ones it is said only by the row that they belong to. */
function wordsOf({ officeId }: Ctx, userId: string): SQL | undefined {
  const older = (table: string, text: string, who: string) =>
    sql`(${texts.writtenBy} is null and exists (select from ${sql.raw(table)} o
      where o.office_id = ${officeId} and o.${sql.raw(text)} = ${texts.id} and o.${sql.raw(who)} = ${userId}))`;
  return and(
    eq(texts.officeId, officeId),
    isNull(texts.erasedAt),
    or(
      eq(texts.writtenBy, userId),
      older("field_notes", "text_id", "recorded_by"),
      older("signs", "text_id", "recorded_by"),
      older("answers", "reason_text_id", "answered_by"),
      older("advisories", "note_text_id", "issued_by"),
      older("advisories", "withdrawn_text_id", "withdrawn_by"),
      older("applications", "person_text_id", "recorded_by"),
    ),
  );
}

const picturesOf = ({ officeId }: Ctx, userId: string): SQL | undefined =>
  and(eq(photos.officeId, officeId), eq(photos.recordedBy, userId));

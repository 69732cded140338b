import { type AuthDb, authTables } from "@pith/db";
import { and, desc, eq, gt, ne } from "drizzle-orm";

/** What is done to accounts beside the sign-in library: it makes none by itself, because nobody signs themselves up. */

const { user, account, session } = authTables;

export interface Account {
  id: string;
  name: string;
  email: string;
}

export async function accountOf(authDb: AuthDb, email: string): Promise<Account | undefined> {
  const [found] = await authDb.drizzle
    .select({ id: user.id, name: user.name, email: user.email })
    .from(user)
    .where(eq(user.email, email.toLowerCase()));
  return found;
}

/**
 * The account of an address whose mail this person reads: the one there is, as it is, or a new one with this password.
 * One that was never confirmed is somebody's claim only: whoever reads the mail takes it over, and its sessions end.
 */
export async function accountFor(
  authDb: AuthDb,
  { email, name, passwordHash }: { email: string; name: string; passwordHash: string },
): Promise<Account> {
  return authDb.drizzle.transaction(async (tx) => {
    const [made] = await tx
      .insert(user)
      .values({ email, name, emailVerified: true })
      .onConflictDoNothing({ target: user.email })
      .returning();
    const [there] = made ? [made] : await tx.select().from(user).where(eq(user.email, email)).for("update");
    if (!there) throw new Error("an account was removed while it was joined");
    if (made || !there.emailVerified) {
      await tx.delete(session).where(eq(session.userId, there.id));
      await tx.delete(account).where(eq(account.userId, there.id));
      await tx.insert(account).values({
        userId: there.id,
        accountId: there.id,
        providerId: "credential",
        password: passwordHash,
      });
      await tx.update(user).set({ emailVerified: true }).where(eq(user.id, there.id));
    }
    return { id: there.id, name: there.name, email: there.email };
  });
}

export async function renameAccount(authDb: AuthDb, userId: string, name: string): Promise<void> {
  await authDb.drizzle.update(user).set({ name, updatedAt: new Date() }).where(eq(user.id, userId));
}

/** A person's sessions that have not ended, newest first. Tokens stay here. */
export const sessionsOf = (authDb: AuthDb, userId: string, now: Date) =>
  authDb.drizzle
    .select({
      id: session.id,
      startedAt: session.createdAt,
      seenAt: session.updatedAt,
      endsAt: session.expiresAt,
      networkAddress: session.ipAddress,
      browser: session.userAgent,
    })
    .from(session)
    .where(and(eq(session.userId, userId), gt(session.expiresAt, now)))
    .orderBy(desc(session.createdAt), desc(session.id));

/** Whether there was such a session of this person. */
export async function endSessionOf(authDb: AuthDb, userId: string, id: string): Promise<boolean> {
  const gone = await authDb.drizzle
    .delete(session)
    .where(and(eq(session.userId, userId), eq(session.id, id)))
    .returning({ id: session.id });
  return gone.length > 0;
}

export async function endOtherSessionsOf(authDb: AuthDb, userId: string, keep: string): Promise<number> {
  const gone = await authDb.drizzle
    .delete(session)
    .where(and(eq(session.userId, userId), ne(session.id, keep)))
    .returning({ id: session.id });
  return gone.length;
}

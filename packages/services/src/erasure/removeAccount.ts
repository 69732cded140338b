import { type AuthDb, authTables } from "@pith/db";
import { eq } from "drizzle-orm";

/** Removes a person's sign-in: account, sessions and second step go with it. Doing it again changes nothing. */
export const removeAccount =
  (authDb: AuthDb) =>
  async (userId: string): Promise<void> => {
    await authDb.drizzle.delete(authTables.user).where(eq(authTables.user.id, userId));
  };
